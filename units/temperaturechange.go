package units

// TemperatureChange is the difference of two temperatures, a whole number of 1/9,000,000 kelvin. Exact in it:
// kelvins and Fahrenheit degrees to 0.000001. A difference has no 32 in it: 9 °F of change is 5 K.
type TemperatureChange int64

// Units of temperature difference: a Fahrenheit degree is 5/9 K exactly (NIST SP 811, B.9).
const (
	Kelvins           TemperatureChange = 9_000_000
	CelsiusDegrees    TemperatureChange = 9_000_000
	FahrenheitDegrees TemperatureChange = 5_000_000
)

var temperatureChanges = dimension{
	name: "temperature difference",
	units: []unit{
		{int64(Kelvins), 1, []string{"K", "kelvin", "kelvins", "°C", "C°", "C"}},
		{int64(FahrenheitDegrees), 1, []string{"F°", "°F", "F"}},
	},
	short: []form{
		{size: int64(Kelvins), places: 6, symbol: "K"},
		{size: int64(FahrenheitDegrees), places: 6, symbol: "F°"},
		{size: int64(Kelvins), places: 7, symbol: "K"},
	},
}

// ParseTemperatureChange reads "0.5 K", "2 C°" and "1.8 F°" as differences, and the degree sign before the letter too, rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseTemperatureChange(s string) (TemperatureChange, error) {
	v, err := temperatureChanges.parse(s)
	return TemperatureChange(v), err
}

// String prints the value so that ParseTemperatureChange gives it back to the quantum.
func (c TemperatureChange) String() string { return temperatureChanges.format(int64(c)) }

// MarshalText is String as bytes; it never fails.
func (c TemperatureChange) MarshalText() ([]byte, error) { return []byte(c.String()), nil }

// UnmarshalText is ParseTemperatureChange; on an error the value stays as it was.
func (c *TemperatureChange) UnmarshalText(text []byte) error {
	return temperatureChanges.unmarshal(text, (*int64)(c))
}
