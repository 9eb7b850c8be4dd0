package units

// System is the system of units in which an Amount is printed. The zero System is Both.
type System uint8

// The systems.
const (
	Both   System = iota // US customary, and metric behind it in parentheses: "11 psi (75.8 kPa)"
	US                   // US customary
	Metric               // SI and the units used with it
)

var systemWords = [...]string{"both", "us", "metric"}

// String is the system in one word: "metric".
func (s System) String() string {
	if int(s) < len(systemWords) {
		return systemWords[s]
	}
	return "system(" + utoa(uint64(s)) + ")"
}

// ParseSystem reads "both", "us" or "metric"; anything else is an UnknownError.
func ParseSystem(s string) (System, error) {
	for i, word := range systemWords {
		if s == word {
			return System(i), nil
		}
	}
	return 0, UnknownError{What: "system of units", Got: s, Known: systemWords[:]}
}

// MarshalText is String as bytes; a value that is no System is an UnknownError.
func (s System) MarshalText() ([]byte, error) {
	if int(s) >= len(systemWords) {
		return nil, UnknownError{What: "system of units", Got: s.String(), Known: systemWords[:]}
	}
	return []byte(s.String()), nil
}

// UnmarshalText is ParseSystem; on an error the value stays as it was.
func (s *System) UnmarshalText(text []byte) error {
	v, err := ParseSystem(string(text))
	if err == nil {
		*s = v
	}
	return err
}
