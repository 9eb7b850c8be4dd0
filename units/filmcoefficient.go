package units

// FilmCoefficient, of heat through a surface or a wall, is a whole number of 1e-9 W/(m² K).
type FilmCoefficient int64

// Unit of film coefficient.
const (
	WattPerSquareMetreKelvin FilmCoefficient = 1_000_000_000
)

var filmCoefficients = dimension{
	name: "film coefficient",
	units: []unit{
		{int64(WattPerSquareMetreKelvin), 1, []string{"W/(m² K)", "W/m2K", "W/m²K", "W/(m2 K)", "W/(m²·K)"}},
	},
	short: []form{
		{size: int64(WattPerSquareMetreKelvin), places: 9, symbol: "W/(m² K)"},
	},
}

// ParseFilmCoefficient reads "20 W/(m² K)" or "20 W/m2K", rounded once to the nearest quantum.
// Text in an unknown unit, without a unit or with a number that is not understood is a
// ParseError; a value past the range a RangeError.
func ParseFilmCoefficient(s string) (FilmCoefficient, error) {
	v, err := filmCoefficients.parse(s)
	return FilmCoefficient(v), err
}

// String prints the value so that ParseFilmCoefficient gives it back to the quantum.
func (h FilmCoefficient) String() string { return filmCoefficients.format(int64(h)) }

// MarshalText is String as bytes; it never fails.
func (h FilmCoefficient) MarshalText() ([]byte, error) { return []byte(h.String()), nil }

// UnmarshalText is ParseFilmCoefficient; on an error the value stays as it was.
func (h *FilmCoefficient) UnmarshalText(text []byte) error {
	return filmCoefficients.unmarshal(text, (*int64)(h))
}
