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
	s.unitColumn()
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
	return s.noReadings(i)
}

// statedColumn finds the column that the caller names.
func (s *sniffer) statedColumn() error {
	p := plan[units.Mass]{names: s.nameList()}
	i, err := p.find(s.stated.Value)
	if err != nil {
		return err
	}
	if i >= len(s.cols) {
		return LineError{Line: s.format.Preamble + 1, Err: wrap(ErrHeader, "no column "+strconv.Itoa(i+1)+"; "+listed(s.nameList()))}
	}
	s.format.Value = s.heading(i)
	return nil
}

// chooseColumn takes the only column whose unit is one of the wanted quantity, or the only one whose heading names it. Otherwise it asks.
func (s *sniffer) chooseColumn(plausible func(float64) bool) error {
	var stated, named, free []int
	for i, c := range s.cols {
		if s.isTime(i) || !s.hasNumbers(i) && !(c.kind == s.kind && c.class <= classEmpty || c.kind == s.kind && c.class == classNone) {
			continue
		}
		switch {
		case c.kind == s.kind:
			stated = append(stated, i)
		case c.kind == unknown && saysQuantity(s.kind, c.name):
			named = append(named, i)
		case c.kind == unknown && !s.isIndex(i) && !saysOther(c.name):
			free = append(free, i)
		}
	}
	choice := stated
	if len(s.sheet.rows[s.sheet.first].cells) > 0 && s.format.Header > 0 { // headings that stop before the columns do
		for _, i := range free {
			if s.cols[i].name == "" && i > 0 && len(stated) > 0 && i > stated[len(stated)-1] {
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
	switch len(choice) {
	case 0:
		return wrap(ErrUnit, "no column of "+string(s.kind)+"; "+listed(s.nameList()))
	case 1:
		s.format.Value = s.heading(choice[0])
		s.because("Value", "column %d %q is the only one that can hold the %s", choice[0]+1, short(s.cols[choice[0]].name), string(s.kind))
		return nil
	}
	s.candidates = choice
	var choices []Choice
	for _, i := range choice {
		choices = append(choices, Choice{strconv.Itoa(i + 1), s.example(i)})
	}
	s.ask(AskColumn, choices, "Which column holds the wanted %s?", string(s.kind))
	return nil
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

func (s *sniffer) hasNumbers(i int) bool { return s.cols[i].class == classNumber }

// isIndex reports a column that counts the rows, or a mark of the device that is no measurement.
func (s *sniffer) isIndex(i int) bool {
	c := s.cols[i]
	if !allWhole(c.values) {
		return false
	}
	name := strings.ToLower(strings.Trim(c.name, " .:"))
	switch name {
	case "#", "no", "nr", "index", "record", "row", "rn", "id", "sample", "count", "n", "line", "seq", "serial", "serialnumber", "ms", "number":
		return true
	}
	if name == "" || strings.Contains(name, "rowid") || strings.HasPrefix(name, "record") {
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

// saysOther reports a heading of something else that a logger writes without a unit.
func saysOther(name string) bool {
	lower := strings.ToLower(name)
	for _, word := range []string{"batt", "humid", "rssi", "serial", "voltage", "signal", "latit", "longit", "lontit", "altit", "record", "snr", "alarm",
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

// noReadings collects what stands in the column for no reading; a word or a number that may be a code is asked.
func (s *sniffer) noReadings(i int) error {
	texts, doubtful := map[string]bool{}, map[string]bool{}
	for _, v := range s.cols[i].values {
		switch c := classify(v); {
		case c == classNone || s.impossible(v):
			texts[v] = true
		case c == classText && len(v) < longestNumber || s.suspicious(v):
			doubtful[v] = true
		}
	}
	for _, known := range s.stated.Missing {
		delete(doubtful, known)
		delete(texts, known)
	}
	for _, v := range sortedNames(texts) {
		s.format.Missing = append(s.format.Missing[:len(s.format.Missing):len(s.format.Missing)], v)
		s.because("Missing", "%q stands for no reading", short(v))
	}
	if len(doubtful) > 20 {
		return LineError{Line: s.format.Preamble + 1, Column: short(s.cols[i].name), Err: wrap(ErrNotANumber, "the column holds words")}
	}
	for _, v := range sortedNames(doubtful) {
		s.ask(AskMissing, []Choice{{v, "no reading"}}, "In column %d %q, does %q mean that there is no reading?", i+1, short(s.cols[i].name), short(v))
	}
	return nil
}

func sortedNames(set map[string]bool) []string {
	var names []string
	for name := range set {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}

// impossible reports a code below absolute zero, whatever the scale.
func (s *sniffer) impossible(v string) bool {
	if s.kind != temperature || classify(v) == classText {
		return false
	}
	switch bare(v) {
	case "-999", "-999.9", "-999.99", "-9999", "-9999.9", "-6999", "-7999", "-99999", "-32768", "-3276.8", "-300", "-500", "-1000":
		return true
	}
	return false
}

// suspicious reports a number that programs write for no reading and that might be one.
func (s *sniffer) suspicious(v string) bool {
	switch bare(v) {
	case "-99", "-99.9", "-99.99", "-200", "-242", "-250", "999", "999.9", "999.99", "9999", "9999.9", "65535", "6553.5", "7999", "850":
		return s.kind == temperature
	}
	return false
}
