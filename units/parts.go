package units

import (
	"math"
	"math/bits"
	"strings"
)

// Parts is a proportion of one thing to another, such as one part of salt to four of sugar. It says nothing of the
// whole, and a Ratio is another thing: one part to four is a fifth of both together. Both parts are above zero; any
// other value is not set. In Prorate the parts stand as ratios: the sugar for this salt is Prorate(salt,
// Ratio(p.Second), Ratio(p.First)).
type Parts struct {
	First, Second int64
}

// IsSet reports whether both parts are above zero.
func (p Parts) IsSet() bool { return p.First > 0 && p.Second > 0 }

// String prints "1:4" so that ParseParts gives it back, and "not set" when it is not.
func (p Parts) String() string {
	if !p.IsSet() {
		return notSet
	}
	return itoa(p.First) + ":" + itoa(p.Second)
}

// ParseParts reads "1:4" as it stands, and "not set" as the zero value. Where a part is no whole number ("1:2.5", "1
// 1/2:4") both are raised to whole numbers in lowest terms, 2:5 and 3:8. Text that is no two numbers around a colon is
// a ParseError; a part of zero, below it or past int64 a RangeError.
func ParseParts(s string) (Parts, error) {
	if s == notSet {
		return Parts{}, nil
	}
	if len(s) > maxText {
		return Parts{}, tooLong("proportion", s, maxText)
	}
	fail := func(reason string) error { return ParseError{Quantity: "proportion", Text: s, Reason: reason} }
	colon := strings.IndexByte(s, ':')
	if colon < 0 {
		return Parts{}, fail("expected two numbers with a colon between them, as in 1:4")
	}
	first, reason := partOf(s[:colon])
	if reason != "" {
		return Parts{}, fail(reason)
	}
	second, reason := partOf(s[colon+1:])
	if reason != "" {
		return Parts{}, fail(reason)
	}
	p, ok := raised(first, second)
	if !ok {
		most := itoa(math.MaxInt64)
		return Parts{}, RangeError{What: "part of a proportion", Got: clip(s), Low: "0", High: most, LowExclusive: true}
	}
	return p, nil
}

// raised makes two numbers whole, in lowest terms where one was not, and reports whether both are from 1 to the largest
// int64.
func raised(first, second number) (Parts, bool) {
	a, fits1 := times64(first.num, second.den)
	b, fits2 := times64(second.num, first.den)
	if first.den != 1 || second.den != 1 {
		if common := divisor(a, b); common > 1 {
			a, b = a/common, b/common
		}
	}
	p := Parts{First: int64(a), Second: int64(b)}
	return p, fits1 && fits2 && a <= math.MaxInt64 && b <= math.MaxInt64 && p.IsSet()
}

// partOf reads a number and nothing else.
func partOf(s string) (number, string) {
	i := skipSpace(s, 0)
	n, used, reason := scan(s[i:])
	switch {
	case reason != "":
		return n, reason
	case skipSpace(s, i+used) != len(s):
		return n, "unexpected " + echo(s[i+used:]) + " behind a number"
	case n.wide != nil:
		return n, "a part may have at most nineteen digits"
	}
	return n, ""
}

func times64(a, b uint64) (uint64, bool) {
	hi, lo := bits.Mul64(a, b)
	return lo, hi == 0
}

func divisor(a, b uint64) uint64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// MarshalText is String as bytes, "not set" for what is not; it never fails.
func (p Parts) MarshalText() ([]byte, error) { return []byte(p.String()), nil }

// UnmarshalText is ParseParts; on an error the value stays as it was.
func (p *Parts) UnmarshalText(text []byte) error {
	v, err := ParseParts(string(text))
	if err == nil {
		*p = v
	}
	return err
}
