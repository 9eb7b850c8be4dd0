package wire

import (
	"math"
	"strings"
	"time"
)

// spans are the units of a time, larger ones first, each with its names and how many decimals of it are whole nanoseconds.
var spans = []struct {
	size   uint64
	places int
	names  []string
}{
	{uint64(time.Hour), 9, []string{"h"}},
	{uint64(time.Minute), 9, []string{"min", "m"}},
	{uint64(time.Second), 9, []string{"s"}},
	{uint64(time.Millisecond), 6, []string{"ms"}},
	{uint64(time.Microsecond), 3, []string{"µs", "μs", "us"}},
	{uint64(time.Nanosecond), 0, []string{"ns"}},
}

const expectedTime = `expected a time, such as "100 min", "1 h 50 min" or "45 s"`

// parseLasting reads what units.Lasting prints, to the nanosecond: counts and units in falling order, with or without a blank between them.
func parseLasting(s string) (time.Duration, error) {
	rest, negative := strings.CutPrefix(s, "-")
	total, last := uint64(0), -1
	for ok := true; rest != "" || last < 0; {
		var part uint64
		var unit int
		part, unit, rest, ok = takeSpan(rest)
		switch {
		case !ok || unit <= last:
			return 0, problem("cannot read " + quoted(s) + " as a time: " + expectedTime)
		case part > math.MaxInt64+1-total:
			return 0, problem("the time " + quoted(s) + " is too long: a time has at most 292 years")
		}
		total, last = total+part, unit
	}
	switch {
	case negative:
		return time.Duration(-total), nil
	case total > math.MaxInt64:
		return 0, problem("the time " + quoted(s) + " is too long: a time has at most 292 years")
	}
	return time.Duration(total), nil
}

// takeSpan reads one count and its unit from the start of s, and the blank after them where more follows.
func takeSpan(s string) (part uint64, unit int, rest string, ok bool) {
	whole, fraction := digits(s), ""
	rest = s[len(whole):]
	if after, point := strings.CutPrefix(rest, "."); point {
		fraction = digits(after)
		rest = after[len(fraction):]
		if fraction == "" {
			return 0, 0, "", false
		}
	}
	rest = strings.TrimPrefix(rest, " ")
	end := strings.IndexFunc(rest, func(r rune) bool { return r == ' ' || r >= '0' && r <= '9' })
	if end < 0 {
		end = len(rest)
	}
	unit = spanNamed(rest[:end])
	more, blank := strings.CutPrefix(rest[end:], " ")
	if whole == "" || unit < 0 || blank && more == "" {
		return 0, 0, "", false
	}
	part, ok = times(whole, fraction, spans[unit].size, spans[unit].places)
	return part, unit, more, ok
}

func digits(s string) string {
	end := 0
	for end < len(s) && s[end] >= '0' && s[end] <= '9' {
		end++
	}
	return s[:end]
}

func spanNamed(name string) int {
	for i, span := range spans {
		for _, known := range span.names {
			if known == name {
				return i
			}
		}
	}
	return -1
}

// times is whole.fraction of a unit in nanoseconds; false where that is no whole number of them. What is too long comes out as too long.
func times(whole, fraction string, size uint64, places int) (uint64, bool) {
	const tooLong = math.MaxUint64 / 2
	n := uint64(0)
	for _, c := range []byte(whole) {
		if n > tooLong/size/10 || n*10+uint64(c-'0') > tooLong/size {
			return tooLong + 2, true
		}
		n = n*10 + uint64(c-'0')
	}
	n *= size
	for i, c := range []byte(fraction) {
		digit := uint64(c - '0')
		if i >= places && digit != 0 {
			return 0, false
		}
		if i < places {
			size /= 10
			n += digit * size
		}
	}
	return n, true
}
