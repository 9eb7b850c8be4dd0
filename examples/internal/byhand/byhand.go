// Package byhand writes how a result is worked out by hand: every formula in the order of its use, with its symbols,
// this case's numbers filled in, and the result to the digits that the next line takes. It computes from the printed
// digits only, as a person with a pocket calculator does, and never from what stands behind them; Meets then compares
// with what the library found on its own way. Check does it all once more from the printed page.
package byhand

import (
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"

	"example.org/lakelarder/examples/internal/sheet"
	"example.org/lakelarder/units/cite"
)

// Page is a way by hand in the making. It keeps its first fault; Close returns it.
type Page struct {
	w       io.Writer
	printed map[string]string // the digits of every symbol
	cited   []cite.Citation
	steps   int
	err     error
}

// New starts a page.
func New(w io.Writer, title string) *Page {
	p := &Page{w: w, printed: map[string]string{}}
	p.write("BY HAND: " + title)
	p.write("Only the printed digits are used. Trigonometry is in radians; J0 and J1 are Bessel functions.")
	return p
}

func (p *Page) write(line string) {
	fmt.Fprint(p.w, sheet.Wrap(line, len(line)-len(strings.TrimLeft(line, " "))+2))
}

func (p *Page) fail(format string, a ...any) {
	if p.err == nil {
		p.err = fmt.Errorf("by hand: "+format, a...)
	}
}

// Step starts a formula or a group of them: its name and where it is from.
func (p *Page) Step(name string, from ...cite.Citation) {
	p.steps++
	text := fmt.Sprintf("\n%d. %s", p.steps, name)
	for _, c := range from {
		if c.IsZero() {
			continue
		}
		if !slices.Contains(p.cited, c) {
			p.cited = append(p.cited, c)
		}
		text += fmt.Sprintf(" [%d]", slices.Index(p.cited, c)+1)
	}
	fmt.Fprintln(p.w)
	p.write(text[1:])
}

// Note writes words.
func (p *Page) Note(format string, a ...any) { p.write("    " + fmt.Sprintf(format, a...)) }

// Let gives a symbol its digits: "R: 0.0337 m, the radius inside the glass".
func (p *Page) Let(symbol, digits, unit, what string) {
	if _, err := Evaluate(digits); err != nil {
		p.fail("%s: %w", symbol, err)
	}
	p.printed[symbol] = digits
	p.write(strings.TrimRight(fmt.Sprintf("    %s: %s %s", symbol, digits, unit), " ") + ", " + what)
}

// Work writes a formula in symbols, with their digits filled in, and its result to so many significant digits, which
// the symbol stands for from here on. The result is worked out from the digits filled in.
func (p *Page) Work(symbol, formula, unit string, digits int) {
	filled, plain := p.fill(formula)
	v, err := Evaluate(filled)
	if err != nil {
		p.fail("%s: %w", symbol, err)
		return
	}
	result := Digits(v, digits)
	p.printed[symbol] = result
	text := symbol + " = " + formula
	if !plain {
		text += " = " + filled
	}
	text = strings.TrimRight(text+" = "+result+" "+unit, " ")
	fmt.Fprint(p.w, sheet.Wrap("    "+text, 8))
}

// Value is the digits of a symbol.
func (p *Page) Value(symbol string) string { return p.printed[symbol] }

// Meets writes that a symbol is what the library found, and is a fault when they are further apart than the last
// printed digit by a half, or than a share of what was found where within is given.
func (p *Page) Meets(symbol string, found float64, within float64, what string) {
	if p.Agrees(symbol, found, within, what) {
		p.write("    " + symbol + " is " + what)
	}
}

// Agrees is Meets without writing a line, for several symbols of which one line tells.
func (p *Page) Agrees(symbol string, found float64, within float64, what string) bool {
	v, err := Evaluate(p.printed[symbol])
	if err != nil {
		p.fail("%s: %w", symbol, err)
		return false
	}
	apart, allowed := math.Abs(v-found), halfLast(p.printed[symbol])*1.000001
	if within > 0 {
		allowed = math.Max(allowed, within*math.Abs(found))
	}
	if apart > allowed {
		p.fail("%s is %s by hand, and %v as %s", symbol, p.printed[symbol], found, what)
	}
	return apart <= allowed
}

// Close writes the sources of the formulas, and returns the first fault.
func (p *Page) Close() error {
	if len(p.cited) > 0 {
		fmt.Fprintln(p.w)
		p.write("Sources of the formulas:")
	}
	for i, c := range p.cited {
		p.write(fmt.Sprintf("[%d] %s", i+1, c))
	}
	return p.err
}

// fill puts digits in place of symbols; plain reports that there was none.
func (p *Page) fill(formula string) (filled string, plain bool) {
	var b strings.Builder
	plain = true
	letters := []rune(formula)
	for at := 0; at < len(letters); {
		if !isName(letters[at]) || letters[at] >= '0' && letters[at] <= '9' {
			// A number runs to its end, so that the e of a power of ten is no symbol.
			start := at
			at++
			if letters[start] >= '0' && letters[start] <= '9' {
				for at < len(letters) && (isName(letters[at]) || letters[at] == '.' || letters[at-1] == 'e' &&
					(letters[at] == '-' || letters[at] == '+')) {
					at++
				}
			}
			b.WriteString(string(letters[start:at]))
			continue
		}
		start := at
		for at < len(letters) && isName(letters[at]) {
			at++
		}
		name := string(letters[start:at])
		digits, known := p.printed[name]
		if !known {
			b.WriteString(name) // a function, or a symbol that evaluation then names
			continue
		}
		plain = false
		if strings.HasPrefix(digits, "-") || strings.ContainsAny(digits, "e") {
			digits = "(" + digits + ")"
		}
		b.WriteString(digits)
	}
	return b.String(), plain
}

// Digits prints a number to so many significant digits, without a power of ten where it is of a handy size.
func Digits(v float64, digits int) string {
	if size := math.Abs(v); v == 0 || size >= 1e-3 && size < 1e7 {
		places := 0
		if v != 0 {
			places = digits - 1 - int(math.Floor(math.Log10(size)))
		}
		return strconv.FormatFloat(v, 'f', max(0, places), 64)
	}
	return strconv.FormatFloat(v, 'e', digits-1, 64)
}

// halfLast is half of the last printed digit.
func halfLast(digits string) float64 {
	mantissa, power, _ := strings.Cut(digits, "e")
	_, fraction, _ := strings.Cut(mantissa, ".")
	exponent, err := strconv.Atoi(power)
	if err != nil {
		exponent = 0
	}
	return 0.5 * math.Pow(10, float64(exponent-len(fraction)))
}

// Crossing writes when the straight line between two readings of a record meets a limit. Its symbols are ta and tb for
// the times, a and b for the readings, and what the limit already is called.
func (p *Page) Crossing(symbol, limit string, ta, tb, a, b string, timeUnit, unit string) {
	p.Let("ta", ta, timeUnit, "time of the reading before")
	p.Let("a", a, unit, "that reading")
	p.Let("tb", tb, timeUnit, "time of the reading after")
	p.Let("b", b, unit, "that reading")
	p.Work(symbol, "ta + ("+limit+" − a) / (b − a) × (tb − ta)", timeUnit, 8)
}
