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
