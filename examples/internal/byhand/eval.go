package byhand

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
)

// functions are what an expression may call.
var functions = map[string]func(float64) float64{
	"exp": math.Exp, "ln": math.Log, "log10": math.Log10, "sqrt": math.Sqrt, "cbrt": math.Cbrt,
	"sin": math.Sin, "cos": math.Cos, "tan": math.Tan, "J0": math.J0, "J1": math.J1,
}

// Evaluate returns what an expression of printed numbers comes to: + − × ÷ (also - * / ·), powers with ^,
// parentheses, and the functions exp, ln, log10, sqrt, cbrt, sin, cos, tan, J0 and J1. A power binds before a sign
// and from the right.
func Evaluate(expression string) (float64, error) {
	p := &parser{text: []rune(expression)}
	v, err := p.sum()
	if err == nil && p.peek() != 0 {
		err = p.fault("the end")
	}
	if err == nil && (math.IsNaN(v) || math.IsInf(v, 0)) {
		err = fmt.Errorf("%q comes to no number", expression)
	}
	return v, err
}

type parser struct {
	text  []rune
	at    int
	depth int
}

func (p *parser) fault(wants string) error {
	return fmt.Errorf("%q: at letter %d: expected %s", string(p.text), p.at+1, wants)
}

// peek is the next letter that is no space, 0 at the end.
func (p *parser) peek() rune {
	for p.at < len(p.text) && unicode.IsSpace(p.text[p.at]) {
		p.at++
	}
	if p.at == len(p.text) {
		return 0
	}
	return p.text[p.at]
}

func (p *parser) sum() (float64, error) {
	v, err := p.product()
	for err == nil {
		var right float64
		switch p.peek() {
		case '+':
			p.at++
			right, err = p.product()
			v += right
		case '-', '−':
			p.at++
			right, err = p.product()
			v -= right
		default:
			return v, nil
		}
	}
	return v, err
}

func (p *parser) product() (float64, error) {
	v, err := p.signed()
	for err == nil {
		var right float64
		switch p.peek() {
		case '*', '×', '·':
			p.at++
			right, err = p.signed()
			v *= right
		case '/', '÷':
			p.at++
			right, err = p.signed()
			v /= right
		default:
			return v, nil
		}
	}
	return v, err
}

func (p *parser) signed() (float64, error) {
	if r := p.peek(); r == '-' || r == '−' {
		p.at++
		v, err := p.signed()
		return -v, err
	}
	base, err := p.atom()
	if err != nil || p.peek() != '^' {
		return base, err
	}
	p.at++
	power, err := p.signed()
	return math.Pow(base, power), err
}

func (p *parser) atom() (float64, error) {
	p.depth++
	defer func() { p.depth-- }()
	r := p.peek()
	switch {
	case p.depth > 100:
		return 0, p.fault("fewer parentheses")
	case r == '(':
		p.at++
		v, err := p.sum()
		if err != nil {
			return 0, err
		}
		if p.peek() != ')' {
			return 0, p.fault("a closing parenthesis")
		}
		p.at++
		return v, nil
	case unicode.IsDigit(r):
		return p.number()
	case unicode.IsLetter(r):
		name := p.word()
		if f, known := functions[name]; known && p.peek() == '(' {
			v, err := p.atom()
			return f(v), err
		}
		return 0, p.fault("a number in place of " + name)
	}
	return 0, p.fault("a number")
}

func (p *parser) word() string {
	start := p.at
	for p.at < len(p.text) && isName(p.text[p.at]) {
		p.at++
	}
	return string(p.text[start:p.at])
}

// isName reports whether a letter may stand in a symbol.
func isName(r rune) bool { return unicode.IsLetter(r) || unicode.IsNumber(r) || r == '_' || r == '\'' }

// number reads digits, a point, and e with a power of ten.
func (p *parser) number() (float64, error) {
	start := p.at
	for p.at < len(p.text) {
		r := p.text[p.at]
		power := (r == '-' || r == '+') && p.text[p.at-1] == 'e'
		if !(r >= '0' && r <= '9') && r != '.' && r != 'e' && !power {
			break
		}
		p.at++
	}
	v, err := strconv.ParseFloat(string(p.text[start:p.at]), 64)
	if err != nil {
		return 0, fmt.Errorf("%q: %w", strings.TrimSpace(string(p.text)), err)
	}
	return v, nil
}
