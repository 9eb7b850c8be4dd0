// Package chart writes the few lines of SVG that every example's picture is made of. Styles are SVG attributes.
package chart

import (
	"fmt"
	"html"
	"strings"
)

// Point is a place in the picture, in pixels from its upper left corner.
type Point struct{ X, Y float64 }

// Picture is an SVG in the making.
type Picture struct{ b strings.Builder }

// New starts a picture of this size on white.
func New(width, height int) *Picture {
	p := &Picture{}
	fmt.Fprintf(&p.b, `<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d" font-family="sans-serif" font-size="13">`+"\n", width, height, width, height)
	p.Rect(0, 0, float64(width), float64(height), `fill="white"`)
	return p
}

// Text writes words; anchor is start, middle or end.
func (p *Picture) Text(x, y float64, anchor, style, words string) {
	fmt.Fprintf(&p.b, `<text x="%.1f" y="%.1f" text-anchor="%s" %s>%s</text>`+"\n", x, y, anchor, style, html.EscapeString(words))
}

// Turned writes words whose middle is at a place, turned by degrees clockwise.
func (p *Picture) Turned(x, y float64, degrees int, style, words string) {
	fmt.Fprintf(&p.b, `<text transform="translate(%.1f %.1f) rotate(%d)" text-anchor="middle" %s>%s</text>`+"\n", x, y, degrees, style, html.EscapeString(words))
}

// Line draws a straight line.
func (p *Picture) Line(x1, y1, x2, y2 float64, style string) {
	fmt.Fprintf(&p.b, `<line x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f" %s/>`+"\n", x1, y1, x2, y2, style)
}

// Rect fills a rectangle whose upper left corner is at x and y.
func (p *Picture) Rect(x, y, width, height float64, style string) {
	fmt.Fprintf(&p.b, `<rect x="%.1f" y="%.1f" width="%.1f" height="%.1f" %s/>`+"\n", x, y, width, height, style)
}

// Curve joins points by straight lines.
func (p *Picture) Curve(style string, points []Point) {
	fmt.Fprintf(&p.b, `<polyline fill="none" %s points="%s"/>`+"\n", style, join(points))
}

// Area fills what points enclose.
func (p *Picture) Area(style string, points []Point) {
	fmt.Fprintf(&p.b, `<polygon %s points="%s"/>`+"\n", style, join(points))
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
