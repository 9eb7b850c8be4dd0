package series

import (
	"slices"
	"strings"
)

// order settles which of day, month and year comes first: by dates that are possible in one order only, by what
// the headings or the preamble say, by the even step across midnight. Where all rows bear one date it does not
// matter; otherwise it is asked.
func (s *sniffer) order() error {
	if s.stated.Order != 0 {
		return nil
	}
	moments := map[DateOrder][]int64{}
	var left []DateOrder
	for _, order := range []DateOrder{YearFirst, DayFirst, MonthFirst} {
		if at, guessed := s.moments(order); at != nil {
			if !guessed {
				return nil // the dates say it themselves
			}
			moments[order] = at
			left = append(left, order)
		}
	}
	if rising := s.rises(left, moments); len(rising) > 0 {
		left = rising
	}
	why := "in another order they are no dates or run backward"
	for _, settle := range []struct {
		by  func([]DateOrder, map[DateOrder][]int64) []DateOrder
		why string
	}{
		{s.byHeading, "the headings say it"}, {s.byDots, "dates with points have the day before the month"},
		{s.byPreamble, "the lines before the table name the first day"},
		{s.byOtherDates, "the dates before the table are possible in that order only"}, {s.byStep,
			"the step across midnight is then as even as the others"},
	} {
		if len(left) > 1 {
			if kept := settle.by(left, moments); len(kept) > 0 && len(kept) < len(left) {
				left, why = kept, settle.why
			}
		}
	}
	switch {
	case len(left) == 0 && len(s.questions) == 0 && s.firstFits():
		// the row that is no date, or another one, is found when the lines are read
	case len(left) == 0:
		return LineError{Line: s.sheet.rows[s.sheet.first].line, Err: wrap(ErrNotAClock,
			"the dates are of no known form, or not all of one")}
	case len(left) == 1:
		s.format.Order = left[0]
		s.because("Order", "%v: %s", left[0], why)
	case s.alike(left, moments):
		s.format.Order = OneDate
		s.because("Order", "every row bears the same date, and whichever it is the times are the same")
	default:
		s.askOrder(left)
	}
	return nil
}

// firstFits sets the first order under which the first row is a date.
func (s *sniffer) firstFits() bool {
	for _, order := range []DateOrder{0, YearFirst, DayFirst, MonthFirst} {
		if st, ok := readStamp(s.cols[s.dateColumn()].values[0], order); ok && st.shape != 0 {
			s.format.Order = order
			return true
		}
	}
	return false
}

func (s *sniffer) askOrder(left []DateOrder) {
	var choices []Choice
	i := s.dateColumn()
	for _, order := range left {
		means := ""
		if st, ok := readStamp(s.cols[i].values[0], order); ok {
			means = s.cols[i].values[0] + " is " + dayText(st.day)
		}
		choices = append(choices, Choice{order.String(), means})
	}
	s.ask(AskDateOrder, choices, "In the dates of column %d, %q for one, what comes first?", i+1,
		short(s.cols[i].values[0]))
}

// moments are the times of the rows in seconds under an order of the date; nil where a row is no time. guessed
// reports that the order matters.
func (s *sniffer) moments(order DateOrder) (at []int64, guessed bool) {
	t := timer{order: order}
	for _, c := range ordered(s.format.Time) {
		if c.Part == Elapsed || c.Part == ElapsedClock {
			continue
		}
		t.columns = append(t.columns, timeCell{index: c.Column.Number - 1, part: c.Part, unit: int64(timeUnit(c.Unit))})
	}
	t.clocked = len(t.columns) > 0
	for _, c := range s.format.Time {
		if !t.clocked { // only a count
			t.counted = true
			unit := max(int64(timeUnit(c.Unit)), 1)
			t.columns = append(t.columns, timeCell{index: c.Column.Number - 1, part: c.Part, unit: unit})
		}
	}
	if len(t.columns) == 0 {
		return nil, false
	}
	need := 0
	for _, c := range t.columns {
		need = max(need, c.index)
	}
	for _, r := range s.sheet.data {
		cells := s.sheet.rows[r].cells
		if len(cells) <= need {
			cells = append(cells[:len(cells):len(cells)], make([]string, need+1-len(cells))...)
		}
		now, _, err := t.at(cells)
		if err != nil {
			if r < mostRows {
				return nil, false
			}
			continue
		}
		if t.clocked {
			now /= second
		}
		at = append(at, now)
		for _, c := range t.columns {
			if st, ok := readStamp(cells[c.index], order); ok && st.guessed {
				guessed = true
			}
		}
	}
	return at, guessed
}

// rises keeps the orders under which the record never runs backward.
func (s *sniffer) rises(left []DateOrder, moments map[DateOrder][]int64) []DateOrder {
	return kept(left, func(o DateOrder) bool { return slices.IsSorted(moments[o]) })
}

func kept(left []DateOrder, keep func(DateOrder) bool) (found []DateOrder) {
	for _, o := range left {
		if keep(o) {
			found = append(found, o)
		}
	}
	return found
}

// byHeading looks for the order spelt out: M/D/Y, dd.mm.yyyy.
func (s *sniffer) byHeading(left []DateOrder, _ map[DateOrder][]int64) []DateOrder {
	for _, t := range s.format.Time {
		i := t.Column.Number - 1
		if i < 0 || i >= len(s.cols) {
			continue
		}
		for _, word := range strings.Fields(strings.ToLower(s.cols[i].name + " " + s.cols[i].under)) {
			word = strings.Trim(word, "()[],")
			for pattern, order := range map[string]DateOrder{"m/d/y": MonthFirst, "d/m/y": DayFirst, "y/m/d": YearFirst} {
				if squeezed(word) == pattern {
					return kept(left, func(o DateOrder) bool { return o == order })
				}
			}
		}
	}
	return nil
}

// squeezed is dd.mm.yyyy as d/m/y.
func squeezed(word string) string {
	var b []byte
	for i := 0; i < len(word); i++ {
		c := word[i]
		if c == '.' || c == '-' {
			c = '/'
		}
		if len(b) == 0 || b[len(b)-1] != c {
			b = append(b, c)
		}
	}
	return string(b)
}

// byDots: nobody writes the month first with points.
func (s *sniffer) byDots(left []DateOrder, _ map[DateOrder][]int64) []DateOrder {
	i := s.dateColumn()
	if first := s.cols[i].values[0]; leadingDigits(first) < len(first) && first[leadingDigits(first)] == '.' {
		return kept(left, func(o DateOrder) bool { return o != MonthFirst })
	}
	return nil
}
