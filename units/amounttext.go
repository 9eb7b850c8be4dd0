package units

import (
	"math/bits"
	"time"
)

// Rounding is to which side an Amount is rounded when it is printed. The zero Rounding is to the nearest.
type Rounding uint8

// The roundings. A figure that must be reached is printed rounded Up, one that must not be passed rounded Down, so that
// keeping to the text keeps to the figure.
const (
	Nearest Rounding = iota
	Down
	Up
)

var roundings = words{"rounding", []string{"nearest", "down", "up"}}

// ParseRounding reads "nearest", "down" or "up"; anything else is an UnknownError.
func ParseRounding(s string) (Rounding, error) {
	v, err := roundings.parse(s)
	return Rounding(v), err
}

// String is the rounding in one word: "up".
func (r Rounding) String() string { return roundings.of(uint8(r)) }

// MarshalText is String as bytes; a value that is no Rounding is an UnknownError.
func (r Rounding) MarshalText() ([]byte, error) { return roundings.marshal(uint8(r)) }

// UnmarshalText is ParseRounding; on an error the value stays as it was.
func (r *Rounding) UnmarshalText(text []byte) error { return roundings.unmarshal(text, (*uint8)(r)) }

// rung is one unit in which a measure is printed: from a size on, with so many decimals.
type rung struct {
	from, size, origin int64
	places             int
	symbol             string
}

// rungs are the units for a measure in one system, the largest first. None: printed as String does, alike in every system.
func (m measure) rungs(s System) []rung {
	if s == US {
		switch m {
		case ofLength:
			return usLengths[:]
		case ofMass:
			return usMasses[:]
		case ofVolume:
			return usVolumes[:]
		case ofPressure:
			return usPressures[:]
		case ofTemperature:
			return usTemperatures[:]
		case ofTemperatureChange:
			return usChanges[:]
		case ofSpeed:
			return usSpeeds[:]
		case ofArea:
			return usAreas[:]
		case ofEnergy:
			return usEnergies[:]
		}
	}
	switch m {
	case ofLength:
		return metricLengths[:]
	case ofMass:
		return metricMasses[:]
	case ofVolume:
		return metricVolumes[:]
	case ofPressure:
		return metricPressures[:]
	case ofTemperature:
		return metricTemperatures[:]
	case ofTemperatureChange:
		return metricChanges[:]
	case ofSpeed:
		return metricSpeeds[:]
	case ofArea:
		return metricAreas[:]
	case ofEnergy:
		return metricEnergies[:]
	case ofDensity:
		return anyDensities[:]
	case ofRatio:
		return percents[:]
	}
	return nil
}

var (
	usLengths = [...]rung{
		{from: int64(3 * Foot), size: int64(Foot), places: 1, symbol: "ft"},
		{size: int64(Inch), places: 2, symbol: "in"},
	}
	usMasses = [...]rung{
		{from: int64(Pound), size: int64(Pound), places: 2, symbol: "lb"},
		{size: int64(Ounce), places: 2, symbol: "oz"},
	}
	usVolumes = [...]rung{
		{from: int64(2 * Gallon), size: int64(Gallon), places: 2, symbol: "gal"},
		{from: int64(Quart), size: int64(Quart), places: 2, symbol: "qt"},
		{from: int64(Cup / 4), size: int64(Cup), places: 2, symbol: "cup"},
		{size: int64(Teaspoon), places: 2, symbol: "tsp"},
	}
	usPressures    = [...]rung{{size: int64(PSI), places: 2, symbol: "psi"}}
	usTemperatures = [...]rung{{size: int64(FahrenheitDegrees), origin: 2_298_350_000, places: 1, symbol: "°F"}}
	usChanges      = [...]rung{{size: int64(FahrenheitDegrees), places: 1, symbol: "F°"}}
	usSpeeds       = [...]rung{{size: int64(MilePerHour), places: 1, symbol: "mph"}}

	metricLengths = [...]rung{
		{from: int64(Metre), size: int64(Metre), places: 1, symbol: "m"},
		{from: int64(10 * Centimetre), size: int64(Centimetre), places: 1, symbol: "cm"},
		{size: int64(Millimetre), places: 1, symbol: "mm"},
	}
	metricMasses = [...]rung{
		{from: int64(Kilogram), size: int64(Kilogram), places: 2, symbol: "kg"},
		{size: int64(Gram), places: 1, symbol: "g"},
	}
	metricVolumes = [...]rung{
		{from: int64(Litre), size: int64(Litre), places: 2, symbol: "L"},
		{size: int64(Millilitre), places: 1, symbol: "mL"},
	}
	metricPressures    = [...]rung{{size: int64(Kilopascal), places: 1, symbol: "kPa"}}
	metricTemperatures = [...]rung{{size: int64(CelsiusDegrees), origin: 2_458_350_000, places: 1, symbol: "°C"}}
	metricChanges      = [...]rung{{size: int64(CelsiusDegrees), places: 1, symbol: "C°"}}
	metricSpeeds       = [...]rung{{size: int64(MetrePerSecond), places: 2, symbol: "m/s"}}

	usAreas = [...]rung{
		{from: int64(SquareFoot), size: int64(SquareFoot), places: 2, symbol: "ft²"},
		{size: int64(SquareInch), places: 1, symbol: "in²"},
	}
	metricAreas = [...]rung{
		{from: int64(SquareMetre), size: int64(SquareMetre), places: 2, symbol: "m²"},
		{size: int64(SquareCentimetre), places: 1, symbol: "cm²"},
	}
	usEnergies     = [...]rung{{size: int64(Kilocalorie), places: 0, symbol: "kcal"}}
	metricEnergies = [...]rung{{size: int64(Kilojoule), places: 0, symbol: "kJ"}}
	anyDensities   = [...]rung{{size: int64(KilogramPerCubicMetre), places: 1, symbol: "kg/m³"}}

	percents = [...]rung{{size: int64(Percent), places: 2, symbol: "%"}}
)

// Text prints the amount in a system of units, rounded to the given side at the digits that a kitchen uses (psi and per
// cent to 0.01; °F, °C and kPa to 0.1; a time to the second) and with more of them where it would round to nothing.
// Both gives US customary units and metric in parentheses. What has one unit everywhere is printed exactly, as String
// does; what is not stated is empty.
func (a Amount) Text(s System, r Rounding) string { return a.text(s, r, 0) }

// text is Text with more digits.
func (a Amount) text(s System, r Rounding, more int) string {
	switch {
	case a.of == ofDuration:
		return lastingRounded(time.Duration(a.quanta), r, more)
	case a.of.rungs(Metric) == nil:
		return a.String()
	case s == Metric || a.of == ofRatio || a.of == ofDensity:
		return a.one(Metric, r, more)
	case s == US:
		return a.one(US, r, more)
	}
	return a.one(US, r, more) + " (" + a.one(Metric, r, more) + ")"
}

// mostMore is how many digits more than usual tell any two amounts apart that a person could.
const mostMore = 6

// one prints in one system's unit for the size.
func (a Amount) one(s System, r Rounding, more int) string {
	rungs := a.of.rungs(s)
	m, _ := magnitude(a.quanta)
	step := rungs[len(rungs)-1]
	for _, candidate := range rungs {
		if m >= uint64(candidate.from) {
			step = candidate
			break
		}
	}
	q := a.quanta - step.origin
	var buffer [32]byte
	digits, zero := appendRounded(buffer[:0], q, step.size, step.places+more, r)
	for places := step.places + more + 1; zero && q != 0 && places < len(powersOfTen); places++ {
		digits, zero = appendRounded(buffer[:0], q, step.size, places, r)
	}
	return joined(digits, step.symbol)
}

// appendRounded appends q/size with at most places decimals, without trailing zeros and with commas between thousands,
// rounded to a side, and reports whether that is zero.
func appendRounded(dst []byte, q, size int64, places int, r Rounding) (digits []byte, zero bool) {
	m, neg := magnitude(q)
	whole, rest := m/uint64(size), m%uint64(size)
	places = min(places, len(powersOfTen)-1)
	hi, lo := bits.Mul64(rest, powersOfTen[places])
	frac, left := bits.Div64(hi, lo, uint64(size))
	away := r == Nearest && left >= uint64(size)-left || left != 0 && (r == Up && !neg || r == Down && neg)
	if away {
		frac++
	}
	if frac == powersOfTen[places] {
		whole, frac = whole+1, 0
	}
	zero = whole == 0 && frac == 0
	if neg && !zero {
		dst = append(dst, '-')
	}
	dst = appendGrouped(dst, whole)
	if frac != 0 {
		dst = append(dst, '.')
		for p := powersOfTen[places] / 10; frac != 0; p /= 10 {
			dst = append(dst, byte('0'+frac/p))
			frac %= p
		}
	}
	return dst, zero
}

// appendGrouped appends n with commas between thousands.
func appendGrouped(dst []byte, n uint64) []byte {
	if n < 1000 {
		return append(dst, utoa(n)...)
	}
	dst = append(appendGrouped(dst, n/1000), ',')
	n %= 1000
	return append(dst, byte('0'+n/100), byte('0'+n/10%10), byte('0'+n%10))
}

// lastingRounded prints a time to the second, rounded to a side; a time below a second, or with more digits asked for,
// exactly. From three days on whole days are days.
func lastingRounded(d time.Duration, r Rounding, more int) string {
	const day = 24 * time.Hour
	if d >= 3*day && d%day == 0 {
		return itoa(int64(d/day)) + " days"
	}
	rest := d % time.Second
	if rest == 0 || more > 0 || d > -time.Second && d < time.Second {
		return Lasting(d)
	}
	low := d - rest
	if rest < 0 {
		low -= time.Second
	}
	if r == Up || r == Nearest && d-low >= time.Second/2 {
		low += time.Second
	}
	return Lasting(low)
}
