package season

import (
	"strings"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Want is one product wanted on the shelf, such as pints of salmon, smoked fillets or frozen ones. Served is the
// share of Pack that is eaten: 0.77 to 0.81 for drained salmon with skin and bone, by the published weights of
// commercial cans (USDA SR26: pink 315 of 411 g, sockeye 337 of 417 g; the home jar was not weighed), or what the
// household's own smoker leaves. Yield is the share of the round fish that is packed (package yield).
type Want struct {
	Name    string      `wire:"required"`
	Meals   units.Ratio `wire:"required"` // meals a week of each person; units.One is one
	Serving units.Mass  `wire:"required"` // of what is served
	Pack    units.Mass  `wire:"required"` // raw fish ready to pack that goes into one jar or package
	Served  units.Ratio `wire:"required"`
	Yield   units.Ratio `wire:"required"`
	Load    int         // jars in one canner load; zero where no canner is used
	Keeps   Keeping     `wire:"required"`
}

// MarshalJSON writes the product as an object of its fields.
func (w Want) MarshalJSON() ([]byte, error) { return wire.Marshal(w) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, a figure that is missing too, is a
// units.FieldError. Only the load may be left out.
func (w *Want) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, w) }

func (w Want) check() error {
	if strings.TrimSpace(w.Name) == "" {
		return units.UnsetError{What: "name of a product"}
	}
	if err := units.Check("meals a week of "+w.Name, w.Meals, 1, 21*units.One); err != nil {
		return err
	}
	if err := units.Check("serving of "+w.Name, w.Serving, units.Gram, 10*units.Kilogram); err != nil {
		return err
	}
	if err := units.Check("pack of "+w.Name, w.Pack, units.Gram, 100*units.Kilogram); err != nil {
		return err
	}
	if err := units.Check("share served of "+w.Name, w.Served, units.Percent, units.One); err != nil {
		return err
	}
	if err := units.Check("yield of "+w.Name, w.Yield, units.Percent, units.One); err != nil {
		return err
	}
	if err := within("canner load of "+w.Name, w.Load, 0, most); err != nil {
		return err
	}
	return w.Keeps.check(w.Name, Week)
}
