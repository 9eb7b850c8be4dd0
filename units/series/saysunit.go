package series

import (
	"strings"
)

// unitSaid is the one unit of a quantity that a line of words states for what stands below it: "All temperatures in °F",
// "now in °F". A unit behind a number is that of the number only; a lone letter counts only where the line speaks of
// units.
func unitSaid(k kind, line string) (string, bool) {
	lower := strings.ToLower(line)
	speaks := false
	for _, word := range []string{" in ", "unit", "scale", "temperatures", "values", "readings"} {
		speaks = speaks || strings.Contains(lower, word)
	}
	found, before := "", ""
	for _, word := range strings.FieldsFunc(line, func(r rune) bool { return strings.ContainsRune(" \t#:,;=()[]\"", r) }) {
		word = strings.TrimRight(word, ".!")
		unit, ok := spelt(k, word)
		number := before != "" && before[len(before)-1] >= '0' && before[len(before)-1] <= '9'
		letters := len([]rune(plain(word)))
		before = word
		if !ok || number || word == "of" || letters < 3 && !strings.ContainsAny(word, "°º℃℉") && !speaks {
			continue
		}
		if found != "" && found != unit {
			return "", false
		}
		found = unit
	}
	return found, found != ""
}

// contradicted gives the columns of the wanted quantity a second unit where a line before the table states one that no
// heading has.
func (s *sniffer) contradicted(line string) {
	unit, ok := unitSaid(s.kind, line)
	if !ok {
		return
	}
	for i := range s.cols {
		if c := &s.cols[i]; c.kind == s.kind && c.unit == unit && !strings.Contains(strings.ToLower(line), "all ") {
			return
		}
	}
	for i := range s.cols {
		if c := &s.cols[i]; c.kind == s.kind && c.unit != unit && c.clash == "" {
			c.clash = unit
		}
	}
}

// otherUnit refuses a remark between the rows that states another unit: what follows would be misread.
func (p *plan[T]) otherUnit(line int, text string) error {
	if p.anyOf != nil {
		return nil
	}
	_, parts := partsOf(p.format.Unit)
	stated, ok := spelt(kindOf[T](), parts)
	said, other := unitSaid(kindOf[T](), text)
	if !ok || !other || said == stated {
		return nil
	}
	return LineError{Line: line, Text: strings.Clone(short(text)), Err: wrap(ErrUnit, "the rows before are in "+stated)}
}

// saysReference reports a heading that says against what a pressure is measured: absolute, or a vacuum, which counts
// downward. A plain record of pressures is one of gauge pressures.
func saysReference(heading string) (absolute, vacuum bool) {
	for _, word := range strings.FieldsFunc(strings.ToLower(heading), func(r rune) bool { return r < 'a' || r > 'z' }) {
		absolute = absolute || word == "absolute" || word == "abs" || word == "barometric" || word == "atmospheric" || word == "barometer"
		vacuum = vacuum || word == "vacuum" || word == "vac"
	}
	return absolute, vacuum
}

// askAbsolute asks whether numbers that are absolute pressures may be read as they stand.
func (s *sniffer) askAbsolute(i int) {
	c := s.cols[i]
	s.ask(AskUnit, []Choice{{c.unit, short(c.values[0] + " " + c.unit + " as it stands: of the air and what is above it, no gauge pressure")}},
		"Column %d %q says that the pressure is absolute. Is it to be read as it stands, for a use that takes absolute pressures?",
		i+1, short(c.name))
}

// remark keeps the first remark before the header that states a unit, and refuses one between the rows that states
// another.
func (f *plainFile) remark(text string) error {
	if f.other != nil {
		if err := f.other(text); err != nil {
			return LineError{Line: f.lines.n, Text: short(text), Err: err}
		}
		return nil
	}
	for _, k := range []kind{temperature, pressure, mass, ratio} {
		if _, ok := unitSaid(k, text); ok && f.said == "" {
			f.said, f.saidAt = text, f.lines.n
		}
	}
	return nil
}

// otherThan says what is wrong with a remark that states a unit which none of the columns has.
func otherThan(k kind, columns []heading, text string) error {
	said, ok := unitSaid(k, text)
	if !ok {
		return nil
	}
	for _, h := range columns {
		if unit, known := spelt(k, h.unit); !known || unit == said {
			return nil
		}
	}
	return wrap(ErrUnit, "the remark says "+said+", and the heading "+columns[0].unit)
}

// reference refuses a pressure that its heading says is no gauge pressure, unless it is asked for by name and counts
// upward.
func (h header) reference(found []heading, named bool) error {
	for _, c := range found {
		switch absolute, vacuum := saysReference(c.name); {
		case vacuum:
			return h.fault(c, wrap(ErrUnit, "a vacuum counts downward from the pressure of the air"))
		case absolute && !named:
			return h.fault(c, wrap(ErrUnit, "an absolute pressure is no gauge pressure; ask for the column by its name"))
		}
	}
	return nil
}
