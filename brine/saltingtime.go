package brine

import (
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Fatness chooses the column of the dry-salting table. Salmon and lake trout are fat fish. The zero Fatness is not stated.
type Fatness uint8

// The two columns.
const (
	FatnessNotStated Fatness = iota
	FatFish
	LeanFish
)

// String is the fatness in words: "fat fish".
func (f Fatness) String() string {
	switch f {
	case FatnessNotStated:
		return "fatness not stated"
	case FatFish:
		return "fat fish"
	case LeanFish:
		return "lean fish"
	}
	return "Fatness(" + strconv.Itoa(int(f)) + ")"
}

// SaltingTime is how long a piece lies in dry salt, by its thickness.
type SaltingTime struct {
	Thickness units.Length
	Fatness   Fatness
	Time      time.Duration
	Citation  cite.Citation
	Cautions  []cite.Caution
}

// FindSaltingTime returns the time in dry salt for a thickness, measured at the thickest place: printed for ¾ to 3 inches, and between the
// printed rows by a straight line, rounded up to the minute, the safe side for salt; then its citation is computed. Outside,
// or with no fatness, it is a RangeError: diffusion goes with the square of the thickness and the table does not. It is for fish buried in
// salt, not for a measured dose, and says nothing of water phase salt. Source: a book on smoking salmon and trout.
func FindSaltingTime(thickness units.Length, fatness Fatness) (SaltingTime, error) {
	if fatness != FatFish && fatness != LeanFish {
		return SaltingTime{}, units.RangeError{What: "fatness", Got: fatness.String(), Low: FatFish.String(), High: LeanFish.String()}
	}
	const step = units.Inch / 100
	first, last := saltingTimes[0], saltingTimes[len(saltingTimes)-1]
	if err := units.Check("thickness", thickness, units.Length(first.hundredths)*step, units.Length(last.hundredths)*step); err != nil {
		return SaltingTime{}, err
	}
	found := SaltingTime{Thickness: thickness, Fatness: fatness, Cautions: AfterSalting()}
	for i, row := range saltingTimes {
		at := units.Length(row.hundredths) * step
		if thickness > at {
			continue
		}
		found.Time, found.Citation = row.time(fatness), cite.Citation{Source: cite.WhelanSmoking, Where: "dry-salting table", Basis: cite.Read}
		if thickness < at {
			before := saltingTimes[i-1]
			from := units.Length(before.hundredths) * step
			span := int64(row.time(fatness)-before.time(fatness)) / int64(time.Minute)
			minutes := (span*int64(thickness-from) + int64(at-from) - 1) / int64(at-from)
			found.Time = before.time(fatness) + time.Duration(minutes)*time.Minute
			found.Citation.Where, found.Citation.Basis = "dry-salting table, on a straight line between two rows", cite.Computed
		}
		break
	}
	return found, nil
}

// AfterSalting returns what goes with every dry salting and follows it, as cautions to show: the cold, the rinse and the rest. The slice is
// the caller's own.
func AfterSalting() []cite.Caution {
	return []cite.Caution{
		keepCold,
		{
			Text:     "rinse the salt off afterwards",
			Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.5(4)", Basis: cite.Read},
		},
		{
			Text:     "then let the fish rest in the cold, at 38 °F (3.3 °C) or below, so that the salt evens out: the surface is far saltier than the loin",
			Citation: cite.Citation{Where: "usual caution", Basis: cite.Practice},
		},
	}
}
