package lethality

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
)

// Reference is the temperature at which lethality is counted, and z, the change that makes it ten times as fast. F
// figures of two references do not compare. The zero Reference is refused everywhere.
type Reference struct {
	Temperature units.Temperature       `wire:"required"`
	Z           units.TemperatureChange `wire:"required"`
}

// F0 returns the reference of F0: 121.1 °C and z = 10 K (Geankoplis, section 9.12). Many European texts take 121 °C,
// which reads 2.33 % higher.
func F0() Reference { return Reference{units.Celsius(121.1), 10 * units.Kelvins} }

// F0Fahrenheit returns the reference of F0 in Fahrenheit: 250 °F and z = 18 °F. 250 °F is 121.111… °C, so the same
// record gives 0.256 % less than against F0.
func F0Fahrenheit() Reference {
	return Reference{units.Fahrenheit(250), 18 * units.FahrenheitDegrees}
}

// What the log-linear model is used for here. Beyond, nobody measured what a record would be worth.
var (
	coldest      = units.Celsius(-60)
	hottest      = units.Celsius(150)
	lowReference = units.Celsius(40)
)

const (
	lowZ  = units.Kelvins
	highZ = 50 * units.Kelvins

	longest = time.Duration(math.MaxInt64)
)

// String prints the reference as "121.1 °C, z 10 K".
func (r Reference) String() string { return r.Temperature.String() + ", z " + r.Z.String() }

// check returns a RangeError unless the temperature is 40 to 150 °C and z is 1 to 50 K.
func (r Reference) check() error {
	if err := units.CheckTemperature("reference temperature", r.Temperature, lowReference, hottest); err != nil {
		return err
	}
	return units.Check("z", r.Z, lowZ, highZ)
}

// Rate returns the lethal rate at a temperature, minutes of F for each minute: 10^((T − Tref)/z), to the nearest
// 1e-12. The temperature must be -60 to 150 °C, the reference 40 to 150 °C with z of 1 to 50 K; otherwise, or when
// the rate passes the range of Ratio, a RangeError.
func (r Reference) Rate(t units.Temperature) (units.Ratio, error) {
	if err := r.at(t); err != nil {
		return 0, err
	}
	return units.OfFloat(r.scale().rate(quanta(t)), units.One)
}

// Worth returns the F of a time at one temperature, rounded down to the nanosecond. Ranges as for Rate; the time must
// not be negative, and an F of more than 292 years is a RangeError.
func (r Reference) Worth(t units.Temperature, d time.Duration) (Lethality, error) {
	if err := r.at(t); err != nil {
		return Lethality{}, err
	}
	if err := units.CheckDuration("time", d, 0, longest); err != nil {
		return Lethality{}, err
	}
	f, err := floored("F", float64(d)*r.scale().rate(quanta(t)))
	if err != nil {
		return Lethality{}, err
	}
	return Lethality{F: f, Reference: r, Cautions: explains()}, nil
}

// TimeAt returns the time at one temperature that is worth an F, or the D at a temperature whose D at the reference
// is given: F·10^((Tref − T)/z), rounded up to the nanosecond. Ranges as for Worth.
func (r Reference) TimeAt(t units.Temperature, f time.Duration) (Equivalent, error) {
	held, err := r.timeAt(t, f)
	if err != nil {
		return Equivalent{}, err
	}
	return Equivalent{held, explains()}, nil
}

func (r Reference) timeAt(t units.Temperature, f time.Duration) (time.Duration, error) {
	if err := r.at(t); err != nil {
		return 0, err
	}
	if err := units.CheckDuration("F", f, 0, longest); err != nil {
		return 0, err
	}
	return ceiled("time", float64(f)*portable.Exp(-r.scale().exponent(quanta(t))))
}

func (r Reference) at(t units.Temperature) error {
	if err := r.check(); err != nil {
		return err
	}
	return units.CheckTemperature("temperature", t, coldest, hottest)
}

func quanta(t units.Temperature) int64 { return int64(t.AboveAbsoluteZero()) }

// floored and ceiled round nanoseconds to the safe side, a whole number within a part in 1e13 taken as that number.
func floored(what string, ns float64) (time.Duration, error) {
	if near := math.Round(ns); math.Abs(near-ns) <= 1e-13*near {
		ns = near
	}
	return duration(what, math.Floor(ns))
}

func ceiled(what string, ns float64) (time.Duration, error) {
	if near := math.Round(ns); math.Abs(near-ns) <= 1e-13*near {
		ns = near
	}
	return duration(what, math.Ceil(ns))
}

func duration(what string, ns float64) (time.Duration, error) {
	if !(math.Abs(ns) < math.MaxInt64) {
		return 0, units.RangeError{What: what, Got: short(ns/float64(time.Hour)) + " h", High: units.Lasting(longest)}
	}
	return time.Duration(ns), nil
}
