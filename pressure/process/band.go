package process

import (
	"math"
	"strings"

	"example.org/lakelarder/units"
)

// NoLimit is the UpTo of a band that the table gives no upper limit.
const NoLimit units.Length = math.MaxInt64

// Band is a range of altitudes with one setting: above Over, up to and including UpTo. The table has
// 0-2,000 and 2,001-4,000 ft and leaves 2,000.5 ft nowhere; here what lies between belongs to the next,
// stricter band. The zero Band contains nothing.
type Band struct {
	Over units.Length
	UpTo units.Length // NoLimit: printed as "above", without an upper limit
}

// Contains reports whether the altitude lies in the band. Zero lies in the band that starts at zero; an
// altitude below sea level lies in none.
func (b Band) Contains(altitude units.Length) bool {
	above := altitude > b.Over || altitude == 0 && b.Over == 0
	return above && altitude <= b.UpTo && b.Over < b.UpTo
}

// ParseBand reads what String writes; anything else is a units.ParseError.
func ParseBand(s string) (Band, error) {
	fault := units.ParseError{Quantity: "altitude band", Text: s, Reason: "expected such as 0 to 2,000 ft, above 2,000 ft to 4,000 ft or above 1,000 ft"}
	low, high, bounded := strings.Cut(strings.TrimPrefix(s, "above "), " to ")
	if !bounded && low == s {
		return Band{}, fault
	}
	b := Band{UpTo: NoLimit}
	var err error
	if b.Over, err = units.ParseLength(strings.TrimSuffix(low, " ft") + " ft"); err != nil {
		return Band{}, fault
	}
	if bounded {
		if b.UpTo, err = units.ParseLength(high); err != nil {
			return Band{}, fault
		}
	}
	if b.String() != s {
		return Band{}, fault
	}
	return b, nil
}

// MarshalText is String as bytes, empty for the zero Band; it never fails.
func (b Band) MarshalText() ([]byte, error) {
	if b == (Band{}) {
		return []byte{}, nil
	}
	return []byte(b.String()), nil
}

// UnmarshalText is ParseBand, and the empty text is the zero Band; on an error the value stays as it was.
func (b *Band) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*b = Band{}
		return nil
	}
	read, err := ParseBand(string(text))
	if err == nil {
		*b = read
	}
	return err
}

// String is the band in feet, as it is read here: "0 to 2,000 ft", "above 2,000 ft to 4,000 ft", "above
// 1,000 ft".
func (b Band) String() string {
	switch {
	case b == Band{}:
		return "no altitude"
	case b.UpTo == NoLimit:
		return "above " + height(b.Over)
	case b.Over == 0:
		return "0 to " + height(b.UpTo)
	}
	return "above " + height(b.Over) + " to " + height(b.UpTo)
}
