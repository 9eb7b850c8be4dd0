package series

import (
	"slices"
	"sort"
	"strings"
	"time"
)

// order settles which of day, month and year comes first: by dates that are possible in one order only, by what the headings or the preamble
// say, by the even step across midnight. Where all rows bear one date it does not matter; otherwise it is asked.
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
		{s.byPreamble, "the lines before the table name the first day"}, {s.byStep, "the step across midnight is then as even as the others"},
	} {
		if len(left) > 1 {
			if kept := settle.by(left, moments); len(kept) > 0 && len(kept) < len(left) {
				left, why = kept, settle.why
			}
		}
	}
	switch {
	case len(left) == 0:
		return LineError{Line: s.sheet.rows[s.sheet.first].line, Err: wrap(ErrNotAClock, "the dates are of no known form, or not all of one")}
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

func (s *sniffer) askOrder(left []DateOrder) {
	var choices []Choice
	i := s.format.Time[0].Column.Number - 1
	for _, order := range left {
		means := ""
		if st, ok := readStamp(s.cols[i].values[0], order); ok {
			means = s.cols[i].values[0] + " is " + dayText(st.day)
		}
		choices = append(choices, Choice{order.String(), means})
	}
	s.ask(AskDateOrder, choices, "In the dates of column %d, %q for one, what comes first?", i+1, short(s.cols[i].values[0]))
}

// moments are the times of the rows in seconds under an order of the date; nil where a row is no time. guessed reports that the order matters.
func (s *sniffer) moments(order DateOrder) (at []int64, guessed bool) {
	t := timer{order: order}
	for _, c := range ordered(s.format.Time) {
		if c.Part == Elapsed || c.Part == ElapsedClock {
			continue
		}
		t.columns = append(t.columns, timeCell{index: c.Column.Number - 1, part: c.Part, unit: int64(timeUnit(c.Unit))})
	}
	t.clocked = true
	for _, r := range s.sheet.data {
		cells := s.sheet.rows[r].cells
		for len(cells) < len(s.cols) {
			cells = append(cells[:len(cells):len(cells)], "")
		}
		now, _, err := t.at(cells)
		if err != nil {
			if r < mostRows {
				return nil, false
			}
			continue
		}
		at = append(at, now/second)
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
	i := s.format.Time[0].Column.Number - 1
	if first := s.cols[i].values[0]; leadingDigits(first) < len(first) && first[leadingDigits(first)] == '.' {
		return kept(left, func(o DateOrder) bool { return o != MonthFirst })
	}
	return nil
}

// byPreamble looks for a date in words or with a year of four digits first in the lines before the table, and keeps the orders whose first or
// last row falls on it, a day more or less.
func (s *sniffer) byPreamble(left []DateOrder, _ map[DateOrder][]int64) []DateOrder {
	named := map[int64]bool{}
	for _, line := range s.lines[:s.format.Preamble] {
		for _, d := range datesIn(line) {
			named[d-1], named[d], named[d+1] = true, true, true
		}
	}
	values := s.cols[s.format.Time[0].Column.Number-1].values
	return kept(left, func(o DateOrder) bool {
		first, ok := readStamp(values[0], o)
		last, fine := readStamp(values[len(values)-1], o)
		return ok && named[first.day] || fine && named[last.day]
	})
}

// datesIn are the days that a line names beyond doubt: 2012-10-11, 11 Oct 2012, Thu Oct 11 12:11:00 CST 2012.
func datesIn(line string) (days []int64) {
	words := strings.FieldsFunc(line, func(r rune) bool { return r == ' ' || r == '\t' || r == ',' || r == ';' || r == '"' })
	for i, word := range words {
		if s, ok := readStamp(word, 0); ok && s.shape&hasDate != 0 && !s.guessed {
			days = append(days, s.day)
		}
		month, size := monthNamed(word)
		if month == 0 || size != len(word) {
			continue
		}
		day, year := 0, 0
		for k := max(0, i-1); k < len(words) && k < i+5; k++ {
			n := leadingDigits(words[k])
			switch {
			case n != len(words[k]) || n == 0:
			case n <= 2 && day == 0:
				day = whole(words[k], n)
			case n == 4 && year == 0:
				year = whole(words[k], n)
			}
		}
		if st := (&stamp{}); st.setDate(year, month, day) && year > 1969 {
			days = append(days, st.day)
		}
	}
	return days
}

// byStep keeps the orders under which a step over midnight is about as long as those within a day; of dates without a clock, those under which most
// rows lie a day apart.
func (s *sniffer) byStep(left []DateOrder, moments map[DateOrder][]int64) []DateOrder {
	return kept(left, func(o DateOrder) bool {
		at := moments[o]
		var within, across []int64
		for i := 1; i < len(at); i++ {
			if s.dateOf(i) == s.dateOf(i-1) {
				within = append(within, at[i]-at[i-1])
			} else {
				across = append(across, at[i]-at[i-1])
			}
		}
		usual, needed := int64(0), 1
		if len(within) > 0 {
			sort.Slice(within, func(a, b int) bool { return within[a] < within[b] })
			usual = within[len(within)/2]
		} else {
			usual, needed = 86400/2, max(3, (len(across)+1)/2)
		}
		even := 0
		for _, step := range across {
			if step > 0 && step <= 2*usual {
				even++
			}
		}
		return even >= needed
	})
}

// dateOf is the date of a data row as it is written.
func (s *sniffer) dateOf(row int) string {
	cells := s.sheet.rows[s.sheet.data[row]].cells
	i := s.format.Time[0].Column.Number - 1
	if i >= len(cells) {
		return ""
	}
	date, _, _ := strings.Cut(cells[i], " ")
	return date
}

func (s *sniffer) alike(left []DateOrder, moments map[DateOrder][]int64) bool {
	first := s.dateOf(0)
	for i := range s.sheet.data {
		if s.dateOf(i) != first {
			return false
		}
	}
	for _, o := range left[1:] {
		if !slices.Equal(moments[left[0]], moments[o]) {
			return false
		}
	}
	return true
}

// dayText writes a day since 1970 as a date.
func dayText(days int64) string { return time.Unix(days*86400, 0).UTC().Format("2 January 2006") }
