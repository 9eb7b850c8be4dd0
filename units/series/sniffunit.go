package series

import (
	"strconv"
	"strings"
)

// unitColumn finds a column that repeats the unit in every row, and gives it to the columns without one.
func (s *sniffer) unitColumn() error {
	if !s.stated.UnitColumn.isZero() {
		return nil
	}
	for i, c := range s.cols {
		name := strings.ToLower(strings.Trim(c.name, " .:"))
		if len(c.values) == 0 || name != "unit" && name != "units" && name != "scale" && name != "einheit" &&
			name != "uom" && !s.allScales(c.values) {
			continue
		}
		unit := ""
		for _, v := range c.values { // rows of other quantities have other units, and are those of another sensor
			u, ok := spelt(s.kind, v)
			if ok && unit != "" && u != unit {
				return LineError{Line: s.lineWith(i, v), Column: short(c.name), Text: short(v),
					Err: wrap(ErrUnit, "the rows before say "+unit)}
			}
			if ok {
				unit = u
			}
		}
		if unit == "" {
			continue
		}
		for k := range s.cols {
			if o := &s.cols[k]; k != i && o.kind == unknown && (o.class == classNumber ||
				o.class == classNone) && !s.isTime(k) && !s.isIndex(k) && !saysOther(o.name) {
				o.kind, o.unit = s.kind, unit
			}
		}
		s.format.UnitColumn = s.heading(i)
		s.because("UnitColumn", "column %d %q says %s", i+1, short(c.name), unit)
		return nil
	}
	return nil
}

// lineWith is the first line with a text in a column.
func (s *sniffer) lineWith(i int, text string) int {
	for _, r := range s.sheet.data {
		if cells := s.sheet.rows[r].cells; i < len(cells) && cells[i] == text {
			return s.sheet.rows[r].line
		}
	}
	return 0
}

// fromPreamble looks for a line before the table that names a column by the parts of its heading, or the unit of
// all: "Unit: °C".
func (s *sniffer) fromPreamble() {
	for _, line := range s.lines[:s.format.Preamble] {
		s.contradicted(line)
		k, unit := s.unitOfLine(line)
		if k == unknown {
			continue
		}
		words := " " + strings.Join(strings.FieldsFunc(line,
			func(r rune) bool { return strings.ContainsRune(" \t#:,;\"", r) }), " ") + " "
		label := strings.ToLower(strings.TrimLeft(line, "#\" \t"))
		alone := strings.HasPrefix(label, "unit") || strings.HasPrefix(label, "temperature unit") ||
			strings.HasPrefix(label, "temp unit")
		for i := range s.cols {
			c := &s.cols[i]
			if alone && c.kind == s.kind && c.unit != unit && c.clash == "" && s.onlyOfKind(i) {
				c.clash = unit
			}
			if c.kind != unknown || c.class != classNumber || s.isTime(i) || c.name == "" {
				continue
			}
			parts := strings.Split(c.name, "_")
			all := len(parts) > 1
			for _, part := range parts {
				all = all && strings.Contains(words, " "+part+" ")
			}
			if all || alone && k == s.kind && saysQuantity(k, c.name) || alone && k == s.kind && s.onlyColumn(i) {
				c.kind, c.unit = k, unit
				s.because("Unit", "a line before the table says %s", short(strings.TrimSpace(line)))
			}
		}
	}
}

// onlyOfKind reports the only column with a unit of the wanted quantity.
func (s *sniffer) onlyOfKind(i int) bool {
	for k, c := range s.cols {
		if k != i && c.kind == s.kind {
			return false
		}
	}
	return true
}

// onlyColumn reports the only column of numbers that has no unit and is no time.
func (s *sniffer) onlyColumn(i int) bool {
	for k, c := range s.cols {
		if k != i && c.class == classNumber && !s.isTime(k) && !s.isIndex(k) {
			return false
		}
	}
	return true
}

// unitOfLine finds the one unit of the wanted quantity in a line of words.
func (s *sniffer) unitOfLine(line string) (kind, string) {
	found := ""
	for _, word := range strings.FieldsFunc(line, func(r rune) bool { return strings.ContainsRune(" \t:,;=()[]\"", r) }) {
		unit, ok := spelt(s.kind, word)
		if !ok || word == "of" || len(plain(word)) == 1 && !strings.HasSuffix(strings.TrimRight(line, "\" \t\r"), word) {
			continue
		}
		if found != "" && found != unit {
			return unknown, ""
		}
		found = unit
	}
	if found == "" {
		return unknown, ""
	}
	return s.kind, found
}

// unitOf settles the unit of the wanted column.
func (s *sniffer) unitOf(i int, plausible func(float64) bool) error {
	c := s.cols[i]
	inCells := s.unitInCells(c)
	if inCells != "" {
		s.format.UnitInCells = true
	}
	if s.stated.Unit != "" {
		return nil
	}
	absolute, vacuum := saysReference(c.name + c.under)
	switch {
	case s.kind == pressure && vacuum:
		return LineError{Line: s.format.Preamble + 1, Column: short(c.name), Text: short(c.unit),
			Err: wrap(ErrUnit, "a vacuum counts downward from the pressure of the air; a gauge pressure is wanted")}
	case c.kind != unknown && c.kind != s.kind:
		return LineError{Line: s.format.Preamble + 1, Column: short(c.name), Text: short(c.unit),
			Err: wrap(ErrUnit, "no unit of "+string(s.kind))}
	case c.clash != "" || inCells != "" && c.kind == s.kind && inCells != c.unit:
		other := c.clash
		if other == "" {
			other = inCells
		}
		s.ask(AskUnit, []Choice{{c.unit, "as the heading says"}, {other, "as stands beside, below or above it"}},
			"Column %d %q says two units. Which one is it?", i+1, short(c.name))
	case c.kind == s.kind && saysFactor(c.name+c.under):
		s.askFactor(i)
	case s.kind == pressure && c.kind == pressure && absolute:
		s.askAbsolute(i)
	case c.kind == s.kind:
		s.format.Unit = c.unit
		s.because("Unit", "column %d %q says %s", i+1, short(c.name), c.unit)
	case inCells != "":
		s.format.Unit = inCells
		s.because("Unit", "%s stands behind every number", inCells)
	default:
		s.askUnit(i, plausible)
	}
	return nil
}

// unitInCells is the unit that stands behind every number of a column, "" without.
func (s *sniffer) unitInCells(c column) string {
	found := ""
	for _, v := range c.values {
		if classify(v) != classUnit {
			continue
		}
		unit, ok := spelt(s.kind, v[strings.LastIndexAny(v, "0123456789")+1:])
		if !ok || found != "" && unit != found {
			return ""
		}
		found = unit
	}
	return found
}

// askUnit asks for a unit that is nowhere in the file; whole numbers beyond every temperature may count parts of one.
func (s *sniffer) askUnit(i int, plausible func(float64) bool) {
	c := s.cols[i]
	units := map[kind][]string{temperature: {"°C", "°F", "K"}, pressure: {"kPa", "psi", "hPa", "bar", "mbar",
		"Pa", waterMetre, "inHg", "mmHg"},
		mass: {"g", "kg", "lb", "oz"}, ratio: {"%", "‰", "ppm"}}[s.kind]
	if s.kind == temperature && allWhole(c.values) && !s.anyMedian(i, plausible) {
		units = []string{"0.001 °C", "0.01 °C", "0.1 °C", "0.1 °F", "0.01 °F", "0.001 °F"}
	} else if s.kind == temperature && allWhole(c.values) {
		units = append(units, "0.1 °C", "0.1 °F")
	}
	var choices []Choice
	for _, unit := range units {
		means := c.values[0] + " " + unit
		if share, _ := partsOf(unit); share != "1" {
			means = c.values[0] + " × " + unit
		}
		choices = append(choices, Choice{unit, short(means)})
	}
	name := "column " + strconv.Itoa(i+1)
	if c.name != "" {
		name += " " + strconv.Quote(short(c.name))
	}
	s.ask(AskUnit, choices, "In which unit is %s? The first number is %s, and the file does not say.", name,
		short(c.values[0]))
}

func (s *sniffer) anyMedian(i int, plausible func(float64) bool) bool {
	xs := s.numbers(i)
	n := 0
	for _, x := range xs {
		if plausible(x) {
			n++
		}
	}
	return 2*n > len(xs)
}
