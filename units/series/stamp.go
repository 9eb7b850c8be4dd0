package series

import "strings"

// stamp is what one cell says of a moment: a date, a time of day, an offset from UTC, or some of them.
type stamp struct {
	day     int64 // days since 1970
	clock   int64 // nanoseconds since midnight
	offset  int64 // seconds east of Greenwich
	shape   shape
	year    int
	guessed bool   // the order of the date was taken from the Format
	zone    string // letters for a time zone behind the clock, which must stay the same
}

// shape is what a stamp consists of; the rows of a record have one shape.
type shape uint8

const (
	hasDate shape = 1 << iota
	hasClock
	hasOffset
	hasHalf
)

const (
	second = int64(1e9)
	minute = 60 * second
	hour   = 60 * minute
	day    = 24 * hour
)

// readStamp reads a cell as a date, a clock or both; false for anything else. Dates are 2026-08-01 with -, / or
// . between, the year in two digits or four, the month by its name in English, or 20260801; a clock is 9:05,
// 21:05:30.5, 9:05 PM, after a date also 2105 or 210530.
func readStamp(cell string, order DateOrder) (s stamp, ok bool) {
	if cell == "" || len(cell) > longestNumber {
		return s, false
	}
	if cell[0] > '9' {
		if cell = withoutWeekday(cell); s.readUnixDate(cell) {
			return s, true
		}
	}
	rest, ok := cell, true
	if n := leadingDigits(cell); !(n > 0 && n <= 2 && n < len(cell) && cell[n] == ':') {
		if rest, ok = s.readDate(cell, order); !ok {
			return s, false
		}
		if rest == "" {
			return s, true
		}
		switch rest[0] {
		case ' ', 'T', 't', '_', '-', ',':
			rest = strings.TrimLeft(rest[1:], " ")
		default:
			if n != 12 && n != 14 {
				return s, false
			}
		}
		if n := leadingDigits(rest); n == 4 || n == 6 {
			rest, ok = s.readCompact(rest, n)
			return s, ok && s.readTail(rest)
		}
	}
	if rest, ok = s.readClock(rest); !ok {
		return s, false
	}
	if len(rest) > 7 && rest[0] == ' ' && s.shape&hasDate == 0 { // the date behind the clock
		if more, ok := s.readDate(rest[1:], order); ok && more == "" {
			return s, true
		}
	}
	return s, s.readTail(rest)
}

// withoutWeekday takes "Thu " or "Thursday, " off a date.
func withoutWeekday(cell string) string {
	i := strings.IndexAny(cell, " ,")
	if i < 3 || !strings.Contains("sunmontuewedthufrisat", strings.ToLower(cell[:3])) {
		return cell
	}
	if month, _ := monthNamed(cell); month != 0 {
		return cell
	}
	return strings.TrimLeft(cell[i:], " ,")
}

// readUnixDate reads "Oct 11 12:11:00 2012", the year behind the clock and perhaps letters for a zone before it.
func (s *stamp) readUnixDate(cell string) bool {
	words := strings.Fields(cell)
	if len(words) != 4 && len(words) != 5 {
		return false
	}
	month, size := monthNamed(words[0])
	n, year := leadingDigits(words[1]), words[len(words)-1]
	if month == 0 || size != len(words[0]) || n == 0 || n > 2 || n != len(words[1]) || len(year) != 4 ||
		leadingDigits(year) != 4 {
		return false
	}
	rest, ok := s.readClock(words[2])
	if !ok || rest != "" || !s.setDate(whole(year, 4), month, whole(words[1], n)) {
		*s = stamp{}
		return false
	}
	if len(words) == 5 && !s.readTail(words[3]) {
		*s = stamp{}
		return false
	}
	return true
}

func leadingDigits(s string) int {
	i := 0
	for i < len(s) && s[i] >= '0' && s[i] <= '9' {
		i++
	}
	return i
}

// whole reads n digits.
func whole(s string, n int) int {
	v := 0
	for i := 0; i < n; i++ {
		v = v*10 + int(s[i]-'0')
	}
	return v
}

// readDate reads the date at the start of a cell.
func (s *stamp) readDate(cell string, order DateOrder) (rest string, ok bool) {
	n := leadingDigits(cell)
	if n == 8 || n == 12 || n == 14 {
		ok = s.setDate(whole(cell, 4), whole(cell[4:], 2), whole(cell[6:], 2))
		return cell[8:], ok && s.year >= 1970
	}
	var numbers [3]int
	var widths [3]int
	named := -1
	between := byte(0)
	for i := range numbers {
		if i > 0 {
			if named >= 0 && strings.HasPrefix(cell, ", ") { // Aug 1, 2026
				cell = cell[1:]
			}
			if cell == "" || cell[0] != '-' && cell[0] != '/' && cell[0] != '.' && cell[0] != ' ' || i == 2 &&
				cell[0] != between && named < 0 {
				return "", false
			}
			between, cell = cell[0], cell[1:]
		}
		n := leadingDigits(cell)
		if n == 0 {
			month, size := monthNamed(cell)
			if month == 0 || named >= 0 {
				return "", false
			}
			numbers[i], named, n = month, i, size
			if size < len(cell) && cell[size] == ',' {
				n++
			}
		} else if n > 4 || n == 3 {
			return "", false
		} else {
			numbers[i], widths[i] = whole(cell, n), n
		}
		cell = cell[n:]
	}
	if between == ' ' && named < 0 {
		return "", false
	}
	return cell, s.arrange(numbers, widths, named, order)
}

// arrange finds which part is which.
func (s *stamp) arrange(p, width [3]int, named int, order DateOrder) bool {
	switch {
	case named == 0: // Aug 1 2026
		return width[1] <= 2 && s.setDate(fullYear(p[2], width[2]), p[0], p[1])
	case named == 1 && width[0] == 4:
		return width[2] <= 2 && s.setDate(p[0], p[1], p[2])
	case named == 1:
		return s.setDate(fullYear(p[2], width[2]), p[1], p[0])
	case named == 2 || width[1] == 4:
		return false
	case width[0] == 4:
		return width[2] <= 2 && s.setDate(p[0], p[1], p[2])
	}
	s.guessed = true
	switch order {
	case YearFirst:
		return width[0] == 2 && width[2] <= 2 && s.setDate(fullYear(p[0], 2), p[1], p[2])
	case DayFirst:
		return s.setDate(fullYear(p[2], width[2]), p[1], p[0])
	case MonthFirst:
		return s.setDate(fullYear(p[2], width[2]), p[0], p[1])
	case OneDate: // whether it is a date in any order; it is not kept
		known := (&stamp{}).arrange(p, width, named, DayFirst) || (&stamp{}).arrange(p, width, named, MonthFirst) ||
			(&stamp{}).arrange(p, width, named, YearFirst)
		s.day, s.shape = int64(p[0]*1_000_000+p[1]*10_000+p[2]), s.shape|hasDate
		return known
	}
	return false
}

// fullYear takes two digits for a year from 1970 to 2069; another width than two and four is no year.
func fullYear(y, width int) int {
	switch {
	case width == 4:
		return y
	case width != 2:
		return 0
	case y < 70:
		return 2000 + y
	}
	return 1900 + y
}

func monthNamed(s string) (month, size int) {
	const names = "janfebmaraprmayjunjulaugsepoctnovdec"
	for size < len(s) && (s[size]|0x20) >= 'a' && (s[size]|0x20) <= 'z' {
		size++
	}
	if size < 3 || size > len("september") {
		return 0, 0
	}
	i := strings.Index(names, strings.ToLower(s[:3]))
	if i < 0 || i%3 != 0 {
		return 0, 0
	}
	return i/3 + 1, size
}

// setDate counts the days since 1970 in the Gregorian calendar.
func (s *stamp) setDate(y, m, d int) bool {
	if y < 1 || m < 1 || m > 12 || d < 1 || d > daysIn(y, m) {
		return false
	}
	s.year, s.shape = y, s.shape|hasDate
	s.day = daysSince1970(y, m, d)
	return true
}

func daysIn(y, m int) int {
	if m == 2 && y%4 == 0 && (y%100 != 0 || y%400 == 0) {
		return 29
	}
	return [...]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}[m-1]
}

// daysSince1970 counts from a year that begins in March, so that the leap day is its last.
func daysSince1970(y, m, d int) int64 {
	if m <= 2 {
		y, m = y-1, m+12
	}
	return int64(365*y + y/4 - y/100 + y/400 + (153*(m-3)+2)/5 + d - 719469)
}
