package byhand

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Float is the value of a symbol, from its printed digits.
func (p *Page) Float(symbol string) float64 {
	v, err := Evaluate(p.printed[symbol])
	if err != nil {
		p.fail("%s: %w", symbol, err)
	}
	return v
}

// Grams gives a symbol a mass.
func (p *Page) Grams(symbol string, m units.Mass, what string) {
	p.Let(symbol, units.In(m, units.Gram, 6).String(), "g", what)
}

// Count is Work where a whole number comes out.
func (p *Page) Count(symbol, formula, unit string) {
	filled, _ := p.fill(formula)
	v, err := Evaluate(filled)
	if err != nil || v != math.Trunc(v) {
		p.fail("%s = %s is no whole number", symbol, filled)
		return
	}
	p.Work(symbol, formula, unit, len(strconv.FormatFloat(math.Abs(v), 'f', 0, 64)))
}

// Uptake works out the average uptake of a slab by its Fourier number: the first term of the short form up to 0.1,
// where the next is below a millionth of it, and three terms of the long form beyond.
func (p *Page) Uptake(symbol, fourier string) {
	if p.Float(fourier) <= 0.1 {
		p.Work(symbol, "2 × sqrt("+fourier+" / 3.14159265)",
			"(share of what it takes up in the end; short form, first term)", 6)
		return
	}
	p.Work("g", "3.14159265^2 × "+fourier+" / 4", "(exponent of the first term)", 7)
	p.Work(symbol, "1 − 8 / 3.14159265^2 × (exp(-g) + exp(-9 × g) / 9 + exp(-25 × g) / 25)",
		"(share of what it takes up in the end; long form, three terms)", 6)
}

// Apart works out how far a stated figure and a wanted one are apart, in the unit of a system; figures that are not of
// one unit are left out.
func (p *Page) Apart(what string, stated, wanted, by units.Amount, system units.System, from cite.Citation) {
	if system == units.Both {
		system = units.US
	}
	a, unit, known := digitsOf(stated, system)
	b, same, ok := digitsOf(wanted, system)
	if !known || !ok || unit != same {
		return
	}
	p.Step("By how much: "+what, from)
	p.Let("stated", a, unit, "by the recipe or the record")
	p.Let("wanted", b, unit, "published")
	p.Work("apart", "wanted − stated", unit, 4)
	found, _, known := digitsOf(by, system)
	v, err := Evaluate(found)
	if !known || err != nil {
		return
	}
	p.Meets("apart", math.Copysign(v, p.Float("apart")), 1e-3, "the difference that was found")
}

// digitsOf is a number and its unit; a time in minutes.
func digitsOf(a units.Amount, system units.System) (digits, unit string, known bool) {
	if d, ok := units.As[time.Duration](a); ok {
		return fmt.Sprint(d.Minutes()), "min", true
	}
	digits, unit, _ = strings.Cut(strings.ReplaceAll(a.Text(system, units.Nearest), ",", ""), " ")
	if _, ok := units.As[units.Temperature](a); ok { // what is between two temperatures is not one
		unit = map[string]string{"°F": "F°", "°C": "C°"}[unit]
	}
	_, err := Evaluate(digits)
	return digits, unit, err == nil
}
