package smoke

import (
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// FallingRate is a published drying of unsalted trout fillets in hot air: the time from Initial moisture to Final. Salted and
// fatter fish dry more slowly. It is not interpolated between air temperatures.
type FallingRate struct {
	Air            units.Temperature
	Initial, Final units.Ratio // water in the whole, by mass
	Time           time.Duration
	Citation       cite.Citation
}

// FallingRates returns the published dryings, coldest air first. The slice is the caller's own. Source: Yapar and Erdöl, abstract.
func FallingRates() []FallingRate { return append([]FallingRate(nil), fallingRates[:]...) }

// PerHour returns the first-order constant that the drying implies, per hour, with an equilibrium moisture of zero and moisture on
// the dry basis: k = ln(M0/M)/t. Rounded to 1e-12. A FallingRate that FallingRates did not return may give a units.RangeError.
func (f FallingRate) PerHour() (units.Ratio, error) {
	if err := f.check(); err != nil {
		return 0, err
	}
	return units.OfFloat(f.perHour(), units.One)
}

// Moisture returns the moisture after a time, from any initial moisture (water in the whole, above 0 and below 100 %), as long as the
// drying stays first-order. At most thirty days; anything else is a units.RangeError.
func (f FallingRate) Moisture(initial units.Ratio, after time.Duration) (units.Ratio, error) {
	if err := f.check(); err != nil {
		return 0, err
	}
	if err := checkMoisture("initial moisture", initial); err != nil {
		return 0, err
	}
	if err := units.CheckDuration("drying time", after, 0, moistair.LongestDrying); err != nil {
		return 0, err
	}
	dry := float64(dryBasis(initial) * portable.Exp(-f.perHour()*after.Hours()))
	return units.OfFloat(dry/(1+dry), units.One)
}

// TimeTo returns how long the drying takes from one moisture down to another, to the nearest millisecond. Both must be above 0 and below
// 100 %, the second no higher than the first, and the time at most thirty days: otherwise a units.RangeError.
func (f FallingRate) TimeTo(initial, final units.Ratio) (time.Duration, error) {
	if err := f.check(); err != nil {
		return 0, err
	}
	if err := checkMoisture("initial moisture", initial); err != nil {
		return 0, err
	}
	if err := units.Check("final moisture", final, units.PartsPerMillion, initial); err != nil {
		return 0, err
	}
	h := portable.Log(dryBasis(initial)/dryBasis(final)) / f.perHour()
	if h > moistair.LongestDrying.Hours() {
		return 0, units.RangeError{What: "drying time", Got: "more than that", High: moistair.LongestDrying.String()}
	}
	return time.Duration(h * float64(time.Hour)).Round(time.Millisecond), nil
}

func (f FallingRate) check() error {
	if err := units.CheckDuration("drying time", f.Time, time.Minute, moistair.LongestDrying); err != nil {
		return err
	}
	if err := checkMoisture("initial moisture", f.Initial); err != nil {
		return err
	}
	return units.Check("final moisture", f.Final, units.PartsPerMillion, f.Initial-units.PartsPerMillion)
}

func (f FallingRate) perHour() float64 {
	return portable.Log(dryBasis(f.Initial)/dryBasis(f.Final)) / f.Time.Hours()
}

func checkMoisture(what string, m units.Ratio) error {
	return units.Check(what, m, units.PartsPerMillion, units.One-units.PartsPerMillion)
}

// dryBasis is water to dry matter.
func dryBasis(m units.Ratio) float64 {
	return units.Float(m, units.One) / units.Float(units.One-m, units.One)
}
