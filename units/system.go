package units

// System is the system of units in which an Amount is printed. The zero System is Both.
type System uint8

// The systems.
const (
	Both   System = iota // US customary, and metric behind it in parentheses: "11 psi (75.8 kPa)"
	US                   // US customary
	Metric               // SI and the units used with it
)

var systems = words{"system of units", []string{"both", "us", "metric"}}

// ParseSystem reads "both", "us" or "metric"; anything else is an UnknownError.
func ParseSystem(s string) (System, error) {
	v, err := systems.parse(s)
	return System(v), err
}

// String is the system in one word: "metric".
func (s System) String() string { return systems.of(uint8(s)) }

// MarshalText is String as bytes; a value that is no System is an UnknownError.
func (s System) MarshalText() ([]byte, error) { return systems.marshal(uint8(s)) }

// UnmarshalText is ParseSystem; on an error the value stays as it was.
func (s *System) UnmarshalText(text []byte) error { return systems.unmarshal(text, (*uint8)(s)) }
