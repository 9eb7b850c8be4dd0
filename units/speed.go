package units

// Speed is a whole number of nanometres per second. Exact in it: m/s, ft/min, mph.
type Speed int64

// Units of speed.
const (
	MetrePerSecond Speed = 1_000_000_000
	FootPerMinute  Speed = 5_080_000
	MilePerHour    Speed = 447_040_000
)

var speeds = dimension{
	name: "speed",
	units: []unit{
		{int64(MetrePerSecond), 1, []string{"m/s"}},
		{int64(FootPerMinute), 1, []string{"ft/min", "fpm"}},
		{int64(MilePerHour), 1, []string{"mph", "mi/h"}},
		{2500000000, 9, []string{"km/h"}},
	},
	short: []form{
		{size: int64(MetrePerSecond), places: 9, symbol: "m/s"},
	},
}

// ParseSpeed reads "1.5 m/s", "300 ft/min", "5 km/h", rounded once to the nearest nanometre per second.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseSpeed(s string) (Speed, error) {
	v, err := speeds.parse(s)
	return Speed(v), err
}

// String prints the value so that ParseSpeed gives it back to the quantum.
func (v Speed) String() string { return speeds.format(int64(v)) }

// MarshalText is String as bytes; it never fails.
func (v Speed) MarshalText() ([]byte, error) { return []byte(v.String()), nil }

// UnmarshalText is ParseSpeed; on an error the value stays as it was.
func (v *Speed) UnmarshalText(text []byte) error { return speeds.unmarshal(text, (*int64)(v)) }
