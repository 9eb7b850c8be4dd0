package series

import (
	"slices"
	"sort"
	"strings"
	"time"
)

// byPreamble looks for a date in words or with a year of four digits first in the lines before the table, and
// keeps the orders whose first or last row falls on it, a day more or less.
func (s *sniffer) byPreamble(left []DateOrder, _ map[DateOrder][]int64) []DateOrder {
	named := map[int64]bool{}
	for _, line := range s.lines[:s.format.Preamble] {
		for _, d := range datesIn(line) {
			named[d-1], named[d], named[d+1] = true, true, true
		}
	}
	values := s.cols[s.dateColumn()].values
	return kept(left, func(o DateOrder) bool {
		first, ok := readStamp(values[0], o)
		last, fine := readStamp(values[len(values)-1], o)
		return ok && named[first.day] || fine && named[last.day]
	})
}

// byOtherDates keeps the order of dates in the lines before the table that are possible in one order only: the
// same program wrote them.
func (s *sniffer) byOtherDates(left []DateOrder, _ map[DateOrder][]int64) []DateOrder {
	fits := map[DateOrder]bool{}
	for _, line := range s.lines[:s.format.Preamble] {
		for _, word := range strings.FieldsFunc(line, func(r rune) bool { return strings.ContainsRune(" \t,;\"", r) }) {
			possible := kept([]DateOrder{YearFirst, DayFirst, MonthFirst}, func(o DateOrder) bool {
				st, ok := readStamp(word, o)
				return ok && st.guessed && st.shape == hasDate
			})
			if len(possible) == 1 {
				fits[possible[0]] = true
			}
		}
	}
	if len(fits) != 1 {
		return nil
	}
	return kept(left, func(o DateOrder) bool { return fits[o] })
}

// datesIn are the days that a line names beyond doubt: 2012-10-11, 11 Oct 2012, Thu Oct 11 12:11:00 CST 2012.
func datesIn(line string) (days []int64) {
	words := strings.FieldsFunc(line, func(r rune) bool {
		return r == ' ' || r == '\t' || r == ',' || r == ';' ||
			r == '"'
	})
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

// byStep keeps the orders under which a step over midnight is about as long as those within a day; of dates
// without a clock, those under which most rows lie a day apart.
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
	i := s.dateColumn()
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
