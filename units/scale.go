package units

// Scale is a temperature scale for doors in and out.
type Scale uint8

// The three scaleWords (NIST SP 811, B.9): t/°C = T/K − 273.15, t/°F = 1.8 T/K − 459.67.
const (
	CelsiusScale Scale = iota
	FahrenheitScale
	KelvinScale
)

var scaleWords = words{"scale", []string{"°C", "°F", "K"}}

// ParseScale reads "°C", "°F" or "K"; anything else is an UnknownError.
func ParseScale(s string) (Scale, error) {
	v, err := scaleWords.parse(s)
	return Scale(v), err
}

// String is the scale's symbol: °C, °F or K.
func (s Scale) String() string { return scaleWords.of(uint8(s)) }

// MarshalText is String as bytes; a value that is no Scale is an UnknownError.
func (s Scale) MarshalText() ([]byte, error) { return scaleWords.marshal(uint8(s)) }

// UnmarshalText is ParseScale; on an error the value stays as it was.
func (s *Scale) UnmarshalText(text []byte) error { return scaleWords.unmarshal(text, (*uint8)(s)) }

// degree is one degree of the scale in quanta, origin its zero above absolute zero.
func (s Scale) degree() int64 {
	if s == FahrenheitScale {
		return int64(FahrenheitDegrees)
	}
	return int64(Kelvins)
}

func (s Scale) origin() int64 {
	switch s {
	case CelsiusScale:
		return 2_458_350_000 // 273.15 K
	case FahrenheitScale:
		return 2_298_350_000 // 459.67 Fahrenheit degrees
	}
	return 0
}

// readScale reads a whole name, or says in words why it is none.
func readScale(name string) (Scale, string) {
	scale, ok := scaleNamed(name)
	switch {
	case ok:
		return scale, ""
	case name == "":
		return 0, "the scale is missing; expected °C, °F or K"
	}
	return 0, "unknown scale " + echo(name) + "; expected °C, °F or K"
}

func scaleNamed(name string) (Scale, bool) {
	switch name {
	case "°C", "C", "ºC", "℃", "deg C", "degC", "c", "°c":
		return CelsiusScale, true
	case "°F", "F", "ºF", "℉", "deg F", "degF", "f", "°f":
		return FahrenheitScale, true
	case "K", "kelvin":
		return KelvinScale, true
	}
	return 0, false
}
