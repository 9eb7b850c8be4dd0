package yield

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Share is one published share: the mass at one stage for the mass at another. Likely is the printed
// figure: the mean where a standard deviation is printed with it, 1/Factor where a conversion factor is
// printed instead, and the middle (ours, not printed) where only a range is. Low and High are the ends of the printed
// range, or one standard deviation to either side; where no spread is printed both equal Likely.
type Share struct {
	Species  Species
	Stock    string // which fish, in few words: "farmed, male"; empty where the source says no more
	From     Stage
	To       Stage
	Likely   units.Ratio
	Low      units.Ratio
	High     units.Ratio
	Spread   Spread
	Factor   units.Ratio // the printed mass at From for one at To; zero where none is printed
	Citation cite.Citation
	Cautions []cite.Caution
}

// MarshalJSON writes the share as an object of its fields.
func (s Share) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (s *Share) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// Of returns what the share makes of a mass at its From stage: at its low, likely and high end, each rounded down as
// by Split. All three are equal where no spread is printed, which does not mean that the likely mass is sure. A
// negative mass, or a share outside 0 to 100 %, is a RangeError.
func (s Share) Of(mass units.Mass) (units.Range[units.Mass], error) {
	var e units.Range[units.Mass]
	for _, end := range []struct {
		share units.Ratio
		kept  *units.Mass
	}{{s.Low, &e.Low}, {s.Likely, &e.Likely}, {s.High, &e.High}} {
		kept, _, err := Split(mass, end.share)
		if err != nil {
			return units.Range[units.Mass]{}, err
		}
		*end.kept = kept
	}
	return e, nil
}

// After returns the share that the step from before to s keeps, where both count from the same stage: a
// headed share of 75 % after a gutted one of 88 % keeps 75/88. Likely figures alone, rounded to the
// nearest 1e-12. Another From, a before not above zero or below s, or a part (Stage.IsPart), which no step keeps, is a
// RangeError. Whether the two are of one species and stock is for the caller to see.
func (s Share) After(before Share) (units.Ratio, error) {
	if s.From != before.From {
		return 0, units.RangeError{
			What: "stage that the earlier share counts from",
			Got:  before.From.String(), Low: s.From.String(), High: s.From.String(),
		}
	}
	for _, part := range [...]Share{s, before} {
		if part.To.IsPart() {
			return 0, units.RangeError{
				What: "stage that a step leaves", Got: part.To.String(), Low: Live.String(), High: Salted.String(),
			}
		}
	}
	if before.Likely <= 0 || s.Likely < 0 || before.Likely < s.Likely {
		return 0, units.RangeError{
			What: "share at " + before.To.String(),
			Got:  before.Likely.String(), Low: s.Likely.String(), High: units.One.String(),
		}
	}
	return units.RatioOf(s.Likely, before.Likely)
}
