// Package chart writes the few lines of SVG that every example's picture is made of. A picture has a title and a
// description that a screen reader says, is as wide as the screen of a phone, and is told apart without colours: by
// dashes, widths and shades of grey. Styles are SVG attributes.
package chart

import (
	"fmt"
	"html"
	"math"
	"strings"
)

// Width is that of every picture, in pixels; a screen that is wider or narrower scales it.
const Width = 400

// The styles that are told apart in grey.
const (
	Strong = `stroke="#000" stroke-width="1.6"`
	Thin   = `stroke="#333" stroke-width="1"`
	Second = `stroke="#555" stroke-width="1.6" stroke-dasharray="7 3"`
	Limit  = `stroke="#000" stroke-width="1.2" stroke-dasharray="3 3"`
	Grid   = `stroke="#ddd" stroke-width="0.7"`
	Shade  = `fill="#ccc"`
	Dark   = `fill="#888"`
	Small  = `font-size="10" fill="#333"`
	Note   = `font-size="11"`
	Halo   = `font-size="10" fill="#000" paint-order="stroke" stroke="#fff" stroke-width="3"`
	Bold   = `font-size="12" font-weight="bold"`
)

// Point is a place in the picture, in pixels from its upper left corner.
type Point struct{ X, Y float64 }

// Picture is an SVG in the making.
type Picture struct{ b strings.Builder }

// New starts a picture of this height on white. The title is what it shows, the description what is to be seen in it.
func New(title, description string, height int) *Picture {
	p := &Picture{}
	fmt.Fprintf(&p.b, `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="title desc" width="100%%" viewBox="0 0 %d %d" font-family="sans-serif" font-size="12">`+"\n",
		Width, height)
	fmt.Fprintf(&p.b, "<title id=\"title\">%s</title>\n<desc id=\"desc\">%s</desc>\n", html.EscapeString(title),
		html.EscapeString(description))
	p.Rect(0, 0, Width, float64(height), `fill="white"`)
	return p
}

// Text writes words; anchor is start, middle or end.
func (p *Picture) Text(x, y float64, anchor, style, words string) {
	fmt.Fprintf(&p.b, `<text x="%.1f" y="%.1f" text-anchor="%s" %s>%s</text>`+"\n", x, y, anchor, style,
		html.EscapeString(words))
}

// Turned writes words whose middle is at a place, turned by degrees clockwise.
func (p *Picture) Turned(x, y float64, degrees int, style, words string) {
	fmt.Fprintf(&p.b, `<text transform="translate(%.1f %.1f) rotate(%d)" text-anchor="middle" %s>%s</text>`+"\n", x,
		y, degrees, style, html.EscapeString(words))
}

// Line draws a straight line.
func (p *Picture) Line(x1, y1, x2, y2 float64, style string) {
	fmt.Fprintf(&p.b, `<line x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f" %s/>`+"\n", x1, y1, x2, y2, style)
}

// Rect fills a rectangle whose upper left corner is at x and y.
func (p *Picture) Rect(x, y, width, height float64, style string) {
	fmt.Fprintf(&p.b, `<rect x="%.1f" y="%.1f" width="%.1f" height="%.1f" %s/>`+"\n", x, y, width, height, style)
}

// Curve joins points by straight lines. Of more points than the picture can show the extremes are kept.
func (p *Picture) Curve(style string, points []Point) {
	fmt.Fprintf(&p.b, `<polyline fill="none" %s points="%s"/>`+"\n", style, join(Thinned(points)))
}

// Area fills what points enclose.
func (p *Picture) Area(style string, points []Point) {
	fmt.Fprintf(&p.b, `<polygon %s points="%s"/>`+"\n", style, join(points))
}

// Thinned leaves out points that the eye cannot tell apart: of those of one half pixel, the first, the lowest, the
// highest and the last stay, so that no extreme is lost. Points come in the order of X.
func Thinned(points []Point) []Point {
	if len(points) <= 4 {
		return points
	}
	var kept []Point
	column := func(q Point) float64 { return math.Floor(q.X * 2) }
	for from := 0; from < len(points); {
		to, low, high := from, from, from
		for ; to < len(points) && column(points[to]) == column(points[from]); to++ {
			if points[to].Y < points[low].Y {
				low = to
			}
			if points[to].Y > points[high].Y {
				high = to
			}
		}
		last := -1
		for _, at := range []int{from, min(low, high), max(low, high), to - 1} {
			if at > last {
				kept = append(kept, points[at])
				last = at
			}
		}
		from = to
	}
	return kept
}

func join(points []Point) string {
	var b strings.Builder
	for i, q := range points {
		if i > 0 {
			b.WriteByte(' ')
		}
		fmt.Fprintf(&b, "%.1f,%.1f", q.X, q.Y)
	}
	return b.String()
}

// String is the whole SVG.
func (p *Picture) String() string { return p.b.String() + "</svg>\n" }
