package units

import "strings"

// unit is one unit of a dimension: num/den quanta, its printed symbol first among its names.
type unit struct {
	num, den int64
	names    []string
}

// dimension is what the text form of one type needs to know.
type dimension struct {
	name     string           // "length", as errors say it
	compound bool             // "1 lb 6 oz" makes sense
	units    []unit           // those that errors suggest come first
	before   map[string]int64 // the only unit that may follow a name in a compound, where it is not any smaller one
	short    []form           // how String prints: the first that is exact and fits, else the last
	shortest bool             // of the forms that are exact, the one with the fewest digits
}

// maxText bounds a text before anything is worked out: every value of every type prints in less than half of it.
const maxText = 100

// parse reads one count and unit, or, where the dimension allows, several in falling order.
func (d *dimension) parse(s string) (int64, error) {
	if len(s) > maxText {
		return 0, tooLong(d.name, s, maxText)
	}
	i := skipSpace(s, 0)
	neg, size := sign(s[i:])
	i += size
	var total uint64
	var last part
	for first := true; ; first = false {
		p, end, reason := d.part(s, i)
		switch {
		case reason != "":
			return 0, d.fail(s, reason)
		case !p.fits || total+p.quanta > 1<<63:
			return 0, d.overflow(s)
		case !first:
			if reason := d.follows(last, p); reason != "" {
				return 0, d.fail(s, reason)
			}
		}
		total += p.quanta
		last, i = p, skipSpace(s, end)
		if i == len(s) {
			break
		}
	}
	v, ok := signed(total, neg)
	if !ok {
		return 0, d.overflow(s)
	}
	return v, nil
}

// part is one count and unit of a text.
type part struct {
	quanta uint64
	fits   bool // quanta is at most 2^63
	unit   int64
	name   string
}

// part reads the count and unit that start at i, and says where they end, or in words what was wrong.
func (d *dimension) part(s string, i int) (p part, end int, reason string) {
	n, used, reason := scan(s[i:])
	if reason != "" {
		return p, 0, reason
	}
	i = skipSpace(s, i+used)
	end = d.unitEnd(s, i)
	p.name = trimSpace(s[i:end])
	u, ok := d.find(p.name)
	if !ok {
		return p, 0, d.unknown(p.name)
	}
	p.unit = u.num
	p.quanta, p.fits = n.of(u)
	return p, end, ""
}

// follows says what is wrong with one part behind another.
func (d *dimension) follows(last, p part) string {
	switch only, ok := d.before[last.name]; {
	case p.unit >= last.unit:
		return "the parts must go from larger to smaller units"
	case ok && p.unit != only:
		name, _ := d.symbol(only)
		return "after " + last.name + " come only " + name
	case p.quanta >= uint64(last.unit):
		return "each part must be less than one of the unit before it"
	}
	return ""
}

// unitEnd returns where the unit name that starts at i ends: at the next digit where compounds
// make sense, else at the end of the text.
func (d *dimension) unitEnd(s string, i int) int {
	if !d.compound {
		return len(s)
	}
	for j := i; j < len(s); j++ {
		if c := s[j]; c >= '0' && c <= '9' {
			if end := d.digitEnd(s, i, j+1); end > 0 {
				return end
			}
			return j
		} else if c >= 0x80 {
			if _, _, size := vulgar(s[j:]); size > 0 {
				return j
			}
		}
	}
	return len(s)
}

// digitEnd returns end where s[i:end] is a unit whose name has a digit at its end, such as in3, and a space or nothing
// follows.
func (d *dimension) digitEnd(s string, i, end int) int {
	if end < len(s) && skipSpace(s, end) == end {
		return 0
	}
	if _, ok := d.find(s[i:end]); !ok {
		return 0
	}
	return end
}

func (d *dimension) find(name string) (*unit, bool) {
	for i := range d.units {
		for _, known := range d.units[i].names {
			if known == name {
				return &d.units[i], true
			}
		}
	}
	return nil, false
}

// unknown says which unit was not understood and which would be.
func (d *dimension) unknown(name string) string {
	var b strings.Builder
	if d.units[0].names[0] == "" {
		return "unexpected " + echo(name) + " after the number"
	}
	if name == "" {
		b.WriteString("the unit is missing; expected one of ")
	} else {
		b.WriteString("unknown unit " + echo(name) + "; expected one of ")
	}
	for i := range d.units {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(d.units[i].names[0])
	}
	return b.String()
}

func (d *dimension) fail(s, reason string) error {
	return ParseError{Quantity: d.name, Text: s, Reason: reason}
}

func (d *dimension) overflow(got string) error {
	low, high := d.format(leastQuanta), d.format(maxQuanta)
	return RangeError{What: d.name, Got: clip(strings.TrimSpace(got)), Low: low, High: high}
}

const (
	maxQuanta   = 1<<63 - 1
	leastQuanta = -1 << 63
)

// unmarshal is parse for text forms: it sets v only when the text was understood.
func (d *dimension) unmarshal(text []byte, v *int64) error {
	q, err := d.parse(string(text))
	if err == nil {
		*v = q
	}
	return err
}
