package season

import (
	"github.com/shopspring/decimal"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Prices are what a product costs to make, in the caller's currency. Each may be zero; none negative. They are
// decimals, so compare them with Equal and never with ==.
type Prices struct {
	Kilogram  decimal.Decimal // of whole fish: bait, fuel and licences shared out, or the price paid
	Container decimal.Decimal // of a jar's share and its lid, or a bag
	Load      decimal.Decimal // of one canner load: fuel
	Together  decimal.Decimal // of everything else: salt, sugar, wood, ice
}

// Cost is what one Supply comes to. Total is exact; the others are rounded to the places asked for, ties away from
// zero. The decimals make it not comparable by ==.
type Cost struct {
	Total     decimal.Decimal
	Container decimal.Decimal
	Meal      decimal.Decimal // one person's
	Kilogram  decimal.Decimal // of what is served
}

// MarshalJSON writes the amounts as decimal numbers in quotes.
func (c Cost) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (c *Cost) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// Costs returns what a supply costs, each container, each meal of one person and each kilogram served. Places are of
// the currency, 0 to 8. The supply must be one that Size returned, with its household; a negative price or other
// figures are a RangeError.
func Costs(h Household, s Supply, prices Prices, places int32) (Cost, error) {
	if err := within("decimal places", int(places), 0, 8); err != nil {
		return Cost{}, err
	}
	for _, p := range []struct {
		what  string
		price decimal.Decimal
	}{{"kilogram", prices.Kilogram}, {"container", prices.Container}, {"load", prices.Load}, {"everything else", prices.Together}} {
		if p.price.IsNegative() {
			return Cost{}, units.RangeError{What: "price of a " + p.what, Got: p.price.String(), Low: "0"}
		}
	}
	if err := h.check(1); err != nil {
		return Cost{}, err
	}
	if s.Containers < 1 || s.Need <= 0 || s.Want.Meals <= 0 {
		return Cost{}, units.RangeError{
			What: "containers of the supply", Got: decimal.NewFromInt(int64(s.Containers)).String(), Low: "1",
		}
	}
	round := exact(int64(s.Round), int64(units.Kilogram))
	total := round.Mul(prices.Kilogram).
		Add(prices.Container.Mul(decimal.NewFromInt(int64(s.Containers)))).
		Add(prices.Load.Mul(decimal.NewFromInt(int64(s.Loads)))).
		Add(prices.Together)
	meals := exact(int64(s.Want.Meals), int64(units.One)).Mul(decimal.NewFromInt(int64(h.People) * int64(h.Weeks)))
	return Cost{
		Total:     total,
		Container: total.DivRound(decimal.NewFromInt(int64(s.Containers)), places),
		Meal:      total.DivRound(meals, places),
		Kilogram:  total.DivRound(exact(int64(s.Need), int64(units.Kilogram)), places),
	}, nil
}

// exact is a quantity in its unit; a quantum of mass is 2^-4 · 10^-12 kg, so sixteen places hold it.
func exact(quanta, unit int64) decimal.Decimal {
	return decimal.NewFromInt(quanta).DivRound(decimal.NewFromInt(unit), 16)
}
