package byhand

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units/cite"
)

func TestEvaluate(t *testing.T) {
	for text, want := range map[string]float64{
		"1 + 2 × 3":                 7,
		"(1 + 2) × 3":               9,
		"8 − 3 − 2":                 3,
		"8 ÷ 4 ÷ 2":                 1,
		"2^3^2":                     512,
		"-2^2":                      -4,
		"2^-1":                      0.5,
		"9^0.5 + 8^(1/3)":           5,
		"1.5e-3 * 2 · 10":           0.03,
		"exp(1) / exp(1)":           1,
		"ln(exp(2)) + log10(100)":   4,
		"sqrt(16) + cbrt(27)":       7,
		"1 - -1":                    2,
		"10 ^ ((121.1 − 121.1)/10)": 1,
	} {
		v, err := Evaluate(text)
		require.NoError(t, err, text)
		require.InDelta(t, want, v, 1e-12, text)
	}
}

func TestEvaluateRefuses(t *testing.T) {
	for _, text := range []string{"", "1 +", "(1", "1)", "x", "2 3", "1..2", "tan 3", "sin()", "1 / 0", "ln(-1)",
		"sqrt(-1)", "1e", "× 2", "unknown(1)",
		strings.Repeat("(", 200) + "1" + strings.Repeat(")", 200)} {
		_, err := Evaluate(text)
		require.Error(t, err, text)
	}
}

func page(t *testing.T) string {
	t.Helper()
	var out bytes.Buffer
	p := New(&out, "an invented sum")
	p.Step("The circle", cite.Citation{Source: cite.NISTSP811, Where: "B.8", Basis: cite.Read})
	p.Let("R", "0.0337", "m", "the radius")
	p.Let("π", "3.1416", "", "the ratio")
	p.Work("A", "π × R^2", "m²", 5)
	p.Work("x", "-A + A / 3", "m²", 4)
	p.Work("y", "x^2 + exp(-A) + "+strings.Repeat("A + ", 20)+"1e-3", "", 4)
	p.Work("z", "1 / 3 + 2e-3", "", 4)
	p.Meets("A", 0.0035679, 0, "the area above")
	require.NoError(t, p.Close())
	require.Equal(t, "0.0035679", p.Value("A"))
	return out.String()
}

func TestPage(t *testing.T) {
	text := page(t)
	require.Contains(t, text, "    A = π × R^2 = 3.1416 × 0.0337^2 = 0.0035679 m²\n")
	require.Contains(t, text, "    z = 1 / 3 + 2e-3 = 0.3353\n")
	lines, err := Check(text)
	require.NoError(t, err)
	require.Equal(t, 4, lines)
	for _, line := range strings.Split(text, "\n") {
		require.LessOrEqual(t, len([]rune(line)), 100)
	}
}

// A page on which a digit is wrong does not come out.
func TestCheckRefuses(t *testing.T) {
	text := page(t)
	for old, new := range map[string]string{
		"= 0.0035679 m²":       "= 0.0035680 m²",
		"3.1416 × 0.0337^2":    "3.1416 × 0.0338^2",
		"R: 0.0337 m":          "R: 0.0338 m",
		"= 0.3353":             "= 0.3354",
		"z = 1 / 3 + 2e-3 = 0": "z = 0",
		"π × R^2":              "π × Q^2",
	} {
		require.Contains(t, text, old)
		_, err := Check(strings.Replace(text, old, new, 1))
		require.Error(t, err, old)
	}
}

func TestPageKeepsItsFault(t *testing.T) {
	for want, spoil := range map[string]func(p *Page){
		"expected a number in place of Q": func(p *Page) { p.Work("x", "Q + 1", "", 3) },
		"R: ":                             func(p *Page) { p.Let("R", "some", "m", "the radius") },
		"x is 0.333 by hand, and 0.334": func(p *Page) {
			p.Work("x", "1 / 3", "", 3)
			p.Meets("x", 0.334, 0,
				"above")
		},
		"no: ":               func(p *Page) { p.Meets("no", 1, 0, "above") },
		"comes to no number": func(p *Page) { p.Work("x", "1 / 0", "", 3) },
	} {
		p := New(&bytes.Buffer{}, "a fault")
		spoil(p)
		require.ErrorContains(t, p.Close(), want)
	}
}

func TestDigits(t *testing.T) {
	for want, v := range map[string]float64{"0.3333": 1. / 3, "1235": 1234.6, "12.00": 12, "1.430e-07": 1.43e-7,
		"0": 0, "-2.500": -2.5, "1.000e+09": 1e9} {
		require.Equal(t, want, Digits(v, 4))
	}
	require.InDelta(t, 0.0005, halfLast("1.234"), 1e-15)
	require.InDelta(t, 5e-11, halfLast("1.430e-07"), 1e-15)
	require.InDelta(t, 0.5, halfLast("12"), 1e-15)
	require.False(t, math.IsNaN(halfLast("0")))
}
