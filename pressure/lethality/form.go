package lethality

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// MarshalJSON writes the fields, each in its text.
func (l Lethality) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (l *Lethality) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// MarshalJSON writes the fields, each in its text.
func (e Equivalent) MarshalJSON() ([]byte, error) { return wire.Marshal(e) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (e *Equivalent) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, e) }

// MarshalJSON writes the fields, each in its text.
func (k Kill) MarshalJSON() ([]byte, error) { return wire.Marshal(k) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (k *Kill) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, k) }

// MarshalJSON writes the fields, each in its text.
func (s Survival) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (s *Survival) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// MarshalJSON writes the fields, each in its text.
func (p Parts) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (p *Parts) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// MarshalJSON writes the fields, each in its text.
func (v Value) MarshalJSON() ([]byte, error) { return wire.Marshal(v) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (v *Value) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, v) }

// MarshalJSON writes the fields, each in its text.
func (r Result) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (r *Result) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// MarshalJSON writes the fields, each in its text.
func (b Band) MarshalJSON() ([]byte, error) { return wire.Marshal(b) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (b *Band) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, b) }

// MarshalJSON writes the fields, each in its text.
func (f Factors) MarshalJSON() ([]byte, error) { return wire.Marshal(f) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (f *Factors) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, f) }

// MarshalJSON writes the fields, each in its text.
func (a Answer) MarshalJSON() ([]byte, error) { return wire.Marshal(a) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (a *Answer) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, a) }

// MarshalJSON writes the fields, each in its text.
func (k KillTime) MarshalJSON() ([]byte, error) { return wire.Marshal(k) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (k *KillTime) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, k) }

// MarshalJSON writes the two figures.
func (r Reference) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads the two figures, of which neither may be missing, strictly: anything else is a units.FieldError.
func (r *Reference) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// MarshalJSON writes the figures.
func (r Run) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads the figures, of which none may be missing, strictly: anything else is a units.FieldError.
func (r *Run) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// MarshalJSON writes the figures.
func (b Formula) MarshalJSON() ([]byte, error) { return wire.Marshal(b) }

// UnmarshalJSON reads the figures; only the come-up may be missing, strictly: anything else is a units.FieldError.
func (b *Formula) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, b) }

// MarshalJSON writes the shares.
func (c Composition) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads the shares; what the food does not hold may be missing, strictly: anything else is a
// units.FieldError.
func (c *Composition) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// cylinderForm is a Cylinder as it leaves the process: a held surface is said, and is no film.
type cylinderForm struct {
	Radius       units.Length      `wire:"required"`
	Height       units.Length      `wire:"required"`
	Diffusivity  units.Diffusivity `wire:"required"`
	Film         units.FilmCoefficient
	Conductivity units.Conductivity
	HeldSurface  bool
}

// MarshalJSON writes the fields, each in its text; HeldSurface is written as heldSurface, without a film.
func (c Cylinder) MarshalJSON() ([]byte, error) {
	f := cylinderForm{Radius: c.Radius, Height: c.Height, Diffusivity: c.Diffusivity, Film: c.Film, Conductivity: c.Conductivity}
	if c.Film == HeldSurface {
		f.Film, f.HeldSurface = 0, true
	}
	return wire.Marshal(f)
}

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, a measure that is missing too, is a
// units.FieldError, a film beside a held surface a RangeError, neither of the two a units.UnsetError. On an error c
// keeps its value.
func (c *Cylinder) UnmarshalJSON(data []byte) error {
	var f cylinderForm
	if err := wire.Unmarshal(data, &f); err != nil {
		return err
	}
	switch {
	case f.HeldSurface && f.Film != 0:
		return units.RangeError{
			What: "film beside a held surface", Got: f.Film.String(), High: units.FilmCoefficient(0).String(),
		}
	case f.HeldSurface:
		f.Film = HeldSurface
	case f.Film == 0:
		return units.UnsetError{What: "film coefficient of the cylinder"}
	}
	*c = Cylinder{Radius: f.Radius, Height: f.Height, Diffusivity: f.Diffusivity, Film: f.Film, Conductivity: f.Conductivity}
	return nil
}
