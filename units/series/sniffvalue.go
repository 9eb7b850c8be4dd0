package series

import (
	"math"
	"sort"
	"strconv"
	"strings"

	"example.org/lakelarder/units"
)

// values finds the wanted column and its unit, and what stands there for no reading.
func (s *sniffer) values(plausible func(float64) bool) error {
	if err := s.unitColumn(); err != nil {
		return err
	}
	s.fromPreamble()
	if s.stated.Value.isZero() {
		if err := s.chooseColumn(plausible); err != nil {
			return err
		}
	} else if err := s.statedColumn(); err != nil {
		return err
	}
	if s.format.Value.isZero() {
		return nil
	}
	i := s.format.Value.Number - 1
	if err := s.unitOf(i, plausible); err != nil {
		return err
	}
	s.grouped(i)
	return s.noReadings(i)
}

// grouped asks where every number of the column may be one with a decimal comma or one with grouped thousands:
// 101,325 of pascals. For temperatures of thousands of degrees nobody need be asked.
func (s *sniffer) grouped(i int) {
	if s.stated.Decimal != 0 || s.format.Decimal != DecimalComma {
		return
	}
	for _, v := range s.cols[i].values {
		whole, after, ok := strings.Cut(strings.TrimLeft(v, "+-"), ",")
		if !ok || len(after) != 3 || len(whole) > 3 || strings.HasPrefix(whole, "0") || s.kind == temperature &&
			(len(whole) > 1 || whole > "3") {
			return
		}
	}
	first := s.cols[i].values[0]
	s.ask(AskDecimal, []Choice{{DecimalComma.String(), strings.Replace(first, ",", ".", 1)},
		{DecimalPoint.String(), strings.Replace(first, ",", "", 1) + ", which is refused"}},
		"Is the comma in %s of column %d a decimal mark?", short(first), i+1)
}

// statedColumn finds the column that the caller names.
func (s *sniffer) statedColumn() error {
	i, err := s.find(s.stated.Value)
	if err == nil {
		s.format.Value = s.heading(i)
	}
	return err
}

// find returns the index of a column that the caller names.
func (s *sniffer) find(h Heading) (int, error) {
	p := plan[units.Mass]{names: s.nameList(), headerLine: s.format.Preamble + 1}
	i, err := p.find(h)
	if err == nil && (i < 0 || i >= len(s.cols)) {
		err = LineError{Line: p.headerLine, Err: wrap(ErrHeader, "no column "+strconv.Itoa(i+1)+"; "+listed(s.nameList()))}
	}
	return i, err
}

// chooseColumn takes the only column whose unit is one of the wanted quantity, or the only one whose heading
// names it. Otherwise it asks.
func (s *sniffer) chooseColumn(plausible func(float64) bool) error {
	var stated, named, free []int
	for i, c := range s.cols {
		if s.isTime(i) || c.class != classNumber && c.kind != s.kind {
			continue
		}
		switch {
		case c.kind == s.kind:
			stated = append(stated, i)
		case c.kind == unknown && saysQuantity(s.kind, c.name):
			named = append(named, i)
		case c.kind == unknown && !s.isIndex(i) && !saysOther(c.name) && s.epoch(i) == "":
			free = append(free, i)
		}
	}
	choice := stated
	if s.format.Header > 0 { // headings that stop before the columns do
		for _, i := range free {
			if i >= s.headings0 && len(stated) > 0 && !s.oneNumber(stated[len(stated)-1], i) {
				choice = append(choice, i)
			}
		}
	}
	if len(choice) == 0 {
		choice = named
	}
	if len(choice) == 0 {
		choice = free
		if s.kind == temperature && len(free) > 0 && s.format.Header > 0 && !s.anyPlausible(free, plausible) {
			return wrap(ErrUnit, "no heading names a quantity or a unit, and the numbers are no temperatures on any scale; "+listed(s.nameList()))
		}
	}
	if len(choice) == 1 && saysSetting(s.cols[choice[0]].name) {
		choice = append(choice, without(append(named, free...), choice[0])...)
		return s.askColumn(choice)
	}
	switch len(choice) {
	case 0:
		return wrap(ErrUnit, "no column of "+string(s.kind)+"; "+listed(s.nameList()))
	case 1:
		s.format.Value = s.heading(choice[0])
		s.because("Value", "column %d %q is the only one that can hold the %s", choice[0]+1,
			short(s.cols[choice[0]].name), string(s.kind))
		return nil
	}
	return s.askColumn(choice)
}

func (s *sniffer) askColumn(choice []int) error {
	s.candidates = choice
	var choices []Choice
	for _, i := range choice {
		choices = append(choices, Choice{strconv.Itoa(i + 1), s.example(i)})
	}
	s.ask(AskColumn, choices, "Which column holds the wanted %s?", string(s.kind))
	return nil
}

func without(columns []int, one int) []int {
	var rest []int
	for _, i := range columns {
		if i != one {
			rest = append(rest, i)
		}
	}
	return rest
}

func (s *sniffer) isTime(i int) bool {
	if i < len(s.cols) && s.cols[i].class.isTime() {
		return true
	}
	for _, t := range s.format.Time {
		if t.Column.Number == i+1 {
			return true
		}
	}
	return false
}

// isIndex reports a column that counts the rows, or a mark of the device that is no measurement.
func (s *sniffer) isIndex(i int) bool {
	c := s.cols[i]
	if !allWhole(c.values) {
		return false
	}
	name := strings.ToLower(strings.Trim(c.name, " .:"))
	switch name {
	case "#", "no", "nr", "index", "record", "row", "rn", "id", "sample", "count", "n", "line", "seq",
		"serial", "serialnumber", "ms", "number":
		return true
	}
	if name == "" && i == 0 || strings.Contains(name, "rowid") || strings.HasPrefix(name, "record") {
		steps := 0
		for k := 1; k < len(c.values); k++ {
			a, b := whole(c.values[k-1], len(c.values[k-1])), whole(c.values[k], len(c.values[k]))
			if b == a+1 {
				steps++
			}
		}
		return len(c.values) > 1 && 2*steps >= len(c.values)-1
	}
	return false
}

// oneNumber reports two columns beside each other that look like one with decimal commas in every row.
func (s *sniffer) oneNumber(i, next int) bool {
	for _, r := range s.sheet.data {
		if cells := s.sheet.rows[r].cells; s.sheet.sep != Commas || next != i+1 || !commaIn(cells, i) {
			return false
		}
	}
	return true
}

// saysOther reports a heading of something else that a logger writes without a unit.
func saysOther(name string) bool {
	lower := strings.ToLower(name)
	for _, word := range []string{"batt", "humid", "rssi", "serial", "voltage", "signal", "latit", "longit",
		"lontit", "altit", "record", "snr", "alarm",
		"co2", "lux", "status", "state", "event", "latitude", "movement", "acceler", "sequence", "counter"} {
		if strings.Contains(lower, word) {
			return true
		}
	}
	switch strings.Trim(lower, " .%") {
	case "rh", "hum", "ph", "do", "lat", "lon", "alt", "id", "rel", "no", "nr", "#":
		return true
	}
	return false
}

// numbers are the values of a column as floating point, for judging and never for reading.
func (s *sniffer) numbers(i int) (xs []float64) {
	for _, v := range s.cols[i].values {
		end := strings.LastIndexAny(v, "0123456789") + 1
		if x, err := strconv.ParseFloat(strings.Replace(v[:end], ",", ".", 1), 64); err == nil && !math.IsNaN(x) {
			xs = append(xs, x)
		}
	}
	return xs
}

func (s *sniffer) anyPlausible(columns []int, plausible func(float64) bool) bool {
	for _, i := range columns {
		xs := s.numbers(i)
		sort.Float64s(xs)
		if len(xs) > 0 && (plausible(xs[len(xs)/2]) || allWhole(s.cols[i].values)) {
			return true
		}
	}
	return false
}

// plausibleFor is a rough judgement of a number without a unit: whether it is a temperature in °C, °F or K at all.
func plausibleFor[T Value]() func(float64) bool {
	if kindOf[T]() != temperature {
		return func(float64) bool { return true }
	}
	return func(x float64) bool { return x > -100 && x < 450 }
}
