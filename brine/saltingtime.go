package brine

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// SaltingTime is how long a piece lies in dry salt, by its thickness.
type SaltingTime struct {
	Thickness units.Length
	Fatness   Fatness
	Time      time.Duration
	Citation  cite.Citation
	Cautions  []cite.Caution
}

// MarshalJSON writes the time as an app shows it.
func (s SaltingTime) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (s *SaltingTime) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

var saltingTimeCitation = cite.Citation{Source: cite.WhelanSmoking, Where: "dry-salting table", Basis: cite.Read}

// FindSaltingTime returns the time in dry salt for a thickness, measured at the thickest place: printed for ¾ to 3
// inches, and between the printed rows by a straight line, rounded up to the minute, the safe side for salt; then
// its citation is computed. Outside it is a RangeError, without a fatness an UnsetError: diffusion goes with the
// square of the thickness and the table does not. It is for fish buried in salt, not for a measured dose, and says
// nothing of water phase salt. Source: a book on smoking salmon and trout.
func FindSaltingTime(thickness units.Length, fatness Fatness) (SaltingTime, error) {
	long, from, err := saltingTime(thickness, fatness)
	if err != nil {
		return SaltingTime{}, err
	}
	return SaltingTime{Thickness: thickness, Fatness: fatness, Time: long, Citation: from, Cautions: afterSalting()}, nil
}

// saltingTime is the time and where it is from.
func saltingTime(thickness units.Length, fatness Fatness) (time.Duration, cite.Citation, error) {
	if err := fatnesses.Check(fatness); err != nil {
		return 0, cite.Citation{}, err
	}
	const step = units.Inch / 100
	first, last := saltingTimes[0], saltingTimes[len(saltingTimes)-1]
	low, high := units.Length(first.hundredths)*step, units.Length(last.hundredths)*step
	if err := units.Check("thickness", thickness, low, high); err != nil {
		return 0, cite.Citation{}, err
	}
	i := 0
	for units.Length(saltingTimes[i].hundredths)*step < thickness {
		i++
	}
	row := saltingTimes[i]
	at := units.Length(row.hundredths) * step
	if thickness == at {
		return row.time(fatness), saltingTimeCitation, nil
	}
	before := saltingTimes[i-1]
	from := units.Length(before.hundredths) * step
	span := int64(row.time(fatness)-before.time(fatness)) / int64(time.Minute)
	minutes := (span*int64(thickness-from) + int64(at-from) - 1) / int64(at-from)
	citation := saltingTimeCitation
	citation.Where, citation.Basis = "dry-salting table, on a straight line between two rows", cite.Computed
	return before.time(fatness) + time.Duration(minutes)*time.Minute, citation, nil
}
