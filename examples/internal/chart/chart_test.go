package chart

import (
	"encoding/xml"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestThinned: whatever the points, no extreme of them is lost, nor the ends, and a picture has no more than it can
// show.
func TestThinned(t *testing.T) {
	var points []Point
	for i := 0; i < 20_000; i++ {
		points = append(points, Point{float64(i) / 100, 50 + 10*math.Sin(float64(i)/7)})
	}
	points[7_777].Y, points[12_345].Y = -3, 103
	thin := Thinned(points)
	require.Less(t, len(thin), 4*401)
	require.Contains(t, thin, points[7_777])
	require.Contains(t, thin, points[12_345])
	require.Equal(t, points[0], thin[0])
	require.Equal(t, points[len(points)-1], thin[len(thin)-1])
	for i := 1; i < len(thin); i++ {
		require.Greater(t, thin[i].X, thin[i-1].X)
	}
	few := []Point{{0, 1}, {10, 2}, {20, 1}, {30, 4}, {40, 4}}
	require.Equal(t, few, Thinned(few), "what the eye can tell apart stays")
}

// TestPicture: it is well-formed, names itself, and escapes what it is given.
func TestPicture(t *testing.T) {
	c := &Plot{Picture: New("A <plot> & more", "what is \"seen\"", 300), Left: 40, Top: 40, Right: 390, Bottom: 250,
		X: Axis{0, 100}, Y: Fitted(3, 17)}
	c.Frame("minutes", "psi", nil, nil)
	c.Key(c.Patch(290, Shade, "shade <"), Limit, "limit")
	c.Area(Dark, []Point{{1, 2}, {3, 4}, {5, 6}})
	c.Turned(1, 2, 90, Small, "turned")
	c.Curve(Strong, []Point{c.At(0, 3), c.At(100, 17)})
	text := c.String()
	require.NoError(t, xml.Unmarshal([]byte(text), new(struct{})))
	require.Contains(t, text, "<title id=\"title\">A &lt;plot&gt; &amp; more</title>")
	require.Contains(t, text, "<desc id=\"desc\">what is &#34;seen&#34;</desc>")
	require.Contains(t, text, `viewBox="0 0 400 300"`)
	require.NotContains(t, text, "NaN")
	require.Equal(t, 1, strings.Count(text, "</svg>"))
}

func TestAxis(t *testing.T) {
	require.Equal(t, Axis{0, 20}, Fitted(3, 17))
	require.Equal(t, []float64{0, 5, 10, 15, 20}, Axis{0, 20}.Ticks(5))
	require.Equal(t, Axis{2, 3}, Fitted(2, 2))
	require.Equal(t, "−0.2", Number(-0.2))
	require.Equal(t, "0", Number(math.Copysign(0, -1)))
	require.Equal(t, "0.3", Number(0.1+0.2))
}
