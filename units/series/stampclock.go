package series

import "strings"

// readClock reads h:mm, h:mm:ss or h:mm:ss.fff and AM or PM after it. Seconds may want their leading zero.
func (s *stamp) readClock(text string) (rest string, ok bool) {
	var p [3]int
	count := 0
	for ; count < 3; count++ {
		n := leadingDigits(text)
		if n == 0 || n > 2 || count == 1 && n != 2 && !strings.Contains(text, ":") {
			return "", false
		}
		p[count], text = whole(text, n), text[n:]
		if count == 2 || text == "" || text[0] != ':' {
			count++
			break
		}
		text = text[1:]
	}
	if count < 2 || p[0] > 23 || p[1] > 59 || p[2] > 59 {
		return "", false
	}
	s.clock = int64(p[0])*hour + int64(p[1])*minute + int64(p[2])*second
	s.shape |= hasClock
	if count == 3 && len(text) > 1 && (text[0] == '.' || text[0] == ',') {
		n := leadingDigits(text[1:])
		if n == 0 {
			return "", false
		}
		s.clock += fraction(text[1 : 1+n])
		text = text[1+n:]
	}
	return s.readHalf(text, p[0])
}

// fraction reads the digits after a decimal mark as nanoseconds; digits beyond those are dropped.
func fraction(digits string) (ns int64) {
	unit := second / 10
	for i := 0; i < len(digits) && unit > 0; i++ {
		ns += int64(digits[i]-'0') * unit
		unit /= 10
	}
	return ns
}

// readHalf reads AM or PM, if there, and turns the hour: 12 AM is midnight, 12 PM noon.
func (s *stamp) readHalf(text string, h int) (rest string, ok bool) {
	t := strings.TrimLeft(text, " ")
	half, size := halfDay(t)
	if size == 0 {
		return text, true
	}
	if !s.half(half, h) {
		return "", false
	}
	s.shape |= hasHalf
	return t[size:], true
}

func (s *stamp) half(half byte, h int) bool {
	if h < 1 || h > 12 {
		return false
	}
	if h == 12 {
		s.clock -= 12 * hour
	}
	if half == 'p' {
		s.clock += 12 * hour
	}
	return true
}

// halfDay recognises AM and PM in any case, with points or without.
func halfDay(t string) (half byte, size int) {
	for _, word := range []string{"am", "pm", "a.m.", "p.m."} {
		if len(t) >= len(word) && strings.EqualFold(t[:len(word)], word) {
			half, size = word[0], len(word)
		}
	}
	return half, size
}

// readCompact reads 2105 or 210530 after a date.
func (s *stamp) readCompact(text string, n int) (rest string, ok bool) {
	h, m, sec := whole(text, 2), whole(text[2:], 2), 0
	if n == 6 {
		sec = whole(text[4:], 2)
	}
	if h > 23 || m > 59 || sec > 59 {
		return "", false
	}
	s.clock = int64(h)*hour + int64(m)*minute + int64(sec)*second
	s.shape |= hasClock
	return text[n:], true
}

// readTail reads an offset from UTC, if there, to the end of the cell.
func (s *stamp) readTail(text string) bool {
	if text = strings.TrimLeft(text, " "); text == "" {
		return true
	}
	if text == "Z" || text == "z" || text == "UTC" || text == "GMT" {
		s.shape |= hasOffset
		return true
	}
	if len(text) >= 2 && len(text) <= 5 && strings.Trim(text, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == "" {
		s.zone = text
		return true
	}
	offset, ok := readOffset(text)
	s.offset, s.shape = offset, s.shape|hasOffset
	return ok
}

// readOffset reads +02:00, +0200 or +02 as seconds.
func readOffset(text string) (int64, bool) {
	if len(text) < 3 || text[0] != '+' && text[0] != '-' {
		return 0, false
	}
	digits := strings.Replace(text[1:], ":", "", 1)
	n := leadingDigits(digits)
	if n != len(digits) || n != 2 && n != 4 {
		return 0, false
	}
	offset := int64(whole(digits, 2)) * 3600
	if n == 4 {
		offset += int64(whole(digits[2:], 2)) * 60
	}
	if offset > 14*3600 {
		return 0, false
	}
	if text[0] == '-' {
		offset = -offset
	}
	return offset, true
}

// readSpan reads a count written h:mm:ss, or h:mm, as nanoseconds: any number of hours, days before them as in
// "2 03:04:05" or "2.03:04:05".
func readSpan(cell string) (int64, bool) {
	days := int64(0)
	if i := strings.IndexAny(cell, " ."); i > 0 && i <= 5 && leadingDigits(cell) == i && strings.Contains(cell[i:], ":") {
		days, cell = int64(whole(cell, i)), cell[i+1:]
	}
	n := leadingDigits(cell)
	if n == 0 || n > 6 || n == len(cell) || cell[n] != ':' {
		return 0, false
	}
	h := int64(whole(cell, n))
	s := stamp{}
	rest, ok := s.readClock("0" + cell[n:])
	return days*day + h*hour + s.clock, ok && rest == ""
}
