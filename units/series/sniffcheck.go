package series

import (
	"errors"
	"strings"
	"time"
)

// dryRun reads the lines given as the proposal stands, with stand-ins for what is asked: a time that runs
// backward or repeats, a contradiction, a row that is no row are found now and not after all the questions.
func dryRun[T Value](s *sniffer) error {
	if s.asks(AskTime) || s.asks(AskDecimal) || s.asks(AskSensor) || s.asks(AskMissing) || s.zoneNamed() {
		return nil
	}
	f := s.format
	if s.asks(AskDateOrder) { // refused only where no answer helps
		var first error
		for _, order := range []DateOrder{YearFirst, DayFirst, MonthFirst} {
			f.Order = order
			err := dryRunAs[T](s, f)
			if err == nil {
				return nil
			}
			if at, _ := s.moments(order); at != nil && first == nil {
				first = err
			}
		}
		return first
	}
	return dryRunAs[T](s, f)
}

func dryRunAs[T Value](s *sniffer, f Format) error {
	f.Encoding = UTF8
	if f.Repeats == 0 {
		f.Repeats = RefuseRepeats
	}
	var candidates []int
	if f.Value.isZero() {
		candidates, f.Value = s.candidates, s.heading(s.candidates[0])
	} else if f.Unit == "" {
		candidates = []int{f.Value.Number - 1}
	}
	if f.Unit == "" {
		f.Unit = map[kind]string{temperature: "°C", pressure: "kPa", mass: "g", ratio: "%"}[s.kind]
	}
	for i := range f.Time {
		if f.Time[i].Part == Elapsed && f.Time[i].Unit == "" {
			f.Time = append([]TimeColumn(nil), f.Time...)
			f.Time[i].Unit = "s"
		}
	}
	for {
		err := tryRead[T](f, s.text, candidates)
		if err == nil {
			return nil
		}
		if errors.Is(err, ErrRepeated) && f.Repeats == RefuseRepeats && s.stated.Repeats == 0 &&
			s.isRepeat(err) && !s.inAutumn(lineOf(err)) {
			s.ask(AskRepeats, []Choice{{DropRepeats.String(), "read it once"}, {RefuseRepeats.String(), "refuse the file"}},
				"Line %d is the line before once more. Is it to be read once?", lineOf(err))
			f.Repeats = DropRepeats
			continue
		}
		return s.explain(err)
	}
}

func (s *sniffer) zoneNamed() bool {
	if s.format.Zone == "" {
		return false
	}
	_, err := newZone(s.format.Zone, nil)
	return err != nil
}

// tryRead reads and forgets. With candidates, a row is a reading that has something in one of these columns,
// whatever it is.
func tryRead[T Value](f Format, text string, candidates []int) error {
	file := newLines(strings.NewReader(text), f.Separator)
	if err := f.Check(); err != nil {
		return err
	}
	p, err := newPlan[T](file, f, nil)
	if err != nil {
		return err
	}
	p.anyOf = candidates
	_, err = p.read(file)
	return err
}

func lineOf(err error) int {
	var fault LineError
	errors.As(err, &fault)
	return fault.Line
}

// isRepeat reports a line that is the one before, letter by letter.
func (s *sniffer) isRepeat(err error) bool {
	n := lineOf(err)
	return n >= 2 && n <= len(s.lines) && s.lines[n-1] == s.lines[n-2]
}

// explain turns a time that runs backward or repeats into a question where an answer can help.
func (s *sniffer) explain(err error) error {
	if !errors.Is(err, ErrBackward) && !errors.Is(err, ErrRepeated) {
		return err
	}
	if s.stated.Only.Column.isZero() {
		for i, c := range s.cols {
			if s.isTime(i) || c.class == classNone || i == s.format.Value.Number-1 { // readings are no names of sensors
				continue
			}
			if names := s.distinct(i); len(names) > 1 && len(names) <= 50 && s.risesWithin(i) {
				s.askSensor(i, names)
				return nil
			}
		}
	}
	if s.inAutumn(lineOf(err)) {
		s.ask(AskZone, nil, "At line %d the clock stands still or steps back by an hour or less. "+
			"In which time zone did it run, by its name in the time zone database?", lineOf(err))
		return nil
	}
	return err
}

// risesWithin reports that the times rise strictly within the rows of each text of a column.
func (s *sniffer) risesWithin(i int) bool {
	last := map[string]int64{}
	at, _ := s.moments(s.format.Order)
	if at == nil || len(at) != len(s.sheet.data) {
		return false
	}
	for k, r := range s.sheet.data {
		cells := s.sheet.rows[r].cells
		if i >= len(cells) {
			return false
		}
		if before, ok := last[cells[i]]; ok && at[k] <= before {
			return false
		}
		last[cells[i]] = at[k]
	}
	return true
}

// inAutumn reports a dated clock without offset that steps back by at most an hour, at night, in a month in
// which summer time ends somewhere.
func (s *sniffer) inAutumn(line int) bool {
	if s.format.Zone != "" || !s.clockWithoutOffset() || s.format.Order == OneDate {
		return false
	}
	at, _ := s.moments(s.format.Order)
	for k := 1; k < len(at) && k < len(s.sheet.data); k++ {
		if s.sheet.rows[s.sheet.data[k]].line != line {
			continue
		}
		zero, ok := s.firstMoment()
		now := time.Unix(zero+at[k], 0).UTC()
		month := now.Month()
		return ok && at[k-1]-at[k] <= 3600 && now.Hour() <= 3 && (month >= time.September &&
			month <= time.November || month >= time.March && month <= time.May)
	}
	return false
}

// firstMoment is the first row's clock in seconds since 1970.
func (s *sniffer) firstMoment() (int64, bool) {
	total := int64(0)
	cells := s.sheet.rows[s.sheet.first].cells
	for _, t := range s.format.Time {
		if t.Part > Clock || t.Column.Number > len(cells) {
			continue
		}
		st, ok := readStamp(cells[t.Column.Number-1], s.format.Order)
		if !ok {
			return 0, false
		}
		total += st.day*86400 + st.clock/second
	}
	return total, true
}
