package brine

import (
	"sort"
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Batch is a cure for several fillets: one for each, in the order given, and what to weigh out for all of them, to
// the quantum.
type Batch struct {
	Cures []Cure
	Fish  units.Mass
	Salt  units.Mass
	Sugar units.Mass
	Total units.Mass
}

// MarshalJSON writes the batch as an app shows it.
func (b Batch) MarshalJSON() ([]byte, error) { return wire.Marshal(b) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (b *Batch) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, b) }

// CureEach returns the cure of every fillet by its own weight, as DryCure has it, and the totals. A fillet that
// DryCure refuses is refused with its number, the first being 1, and so is a list without fillets or with more than
// 1,000.
func CureEach(fillets []units.Mass, salt units.Ratio, mix Mix) (Batch, error) {
	if len(fillets) == 0 || len(fillets) > 1000 {
		return Batch{}, units.RangeError{What: "number of fillets", Got: strconv.Itoa(len(fillets)), Low: "1", High: "1000"}
	}
	var b Batch
	for i, fillet := range fillets {
		c, err := DryCure(fillet, salt, mix)
		if err != nil {
			return Batch{}, FilletError{Number: i + 1, Err: err}
		}
		b.Cures = append(b.Cures, c)
		b.Fish, b.Salt, b.Sugar, b.Total = b.Fish+c.Fillet, b.Salt+c.Salt, b.Sugar+c.Sugar, b.Total+c.Total
		if b.Total < 0 || b.Total > 100*units.Tonne {
			most := 100 * units.Tonne
			return Batch{}, units.RangeError{What: "total of the cure", Got: b.Total.String(), High: most.String()}
		}
	}
	return b, nil
}

// FilletError says which fillet of a list was refused, the first being 1.
type FilletError struct {
	Number int
	Err    error
}

// Error is the number and the reason.
func (e FilletError) Error() string { return "fillet " + strconv.Itoa(e.Number) + ": " + e.Err.Error() }

// Unwrap is the reason.
func (e FilletError) Unwrap() error { return e.Err }

// Layer is one layer of a box: which fillets lie in it, by their numbers from 1, and the cure strewn over it, the
// sum of theirs.
type Layer struct {
	Fillets []int
	Cure    units.Mass
}

// Layers returns the batch in layers of so many fillets, from the bottom of the box up, heaviest fillets first so
// that what is ready first lies on top. Each layer takes exactly the cures of its own fillets, and all of them
// together are Total. PerLayer must be above 0: otherwise a RangeError. Common practice of the trade.
func (b Batch) Layers(perLayer int) ([]Layer, error) {
	if perLayer <= 0 {
		return nil, units.RangeError{What: "fillets to a layer", Got: strconv.Itoa(perLayer), Low: "1"}
	}
	var layers []Layer
	for n, i := range b.heaviestFirst() {
		if n%perLayer == 0 {
			layers = append(layers, Layer{})
		}
		top := &layers[len(layers)-1]
		top.Fillets = append(top.Fillets, i+1)
		top.Cure += b.Cures[i].Total
	}
	return layers, nil
}

// heaviestFirst is the order of the cures by weight of fillet; equal ones keep theirs.
func (b Batch) heaviestFirst() []int {
	order := make([]int, len(b.Cures))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(i, j int) bool { return b.Cures[order[i]].Fillet > b.Cures[order[j]].Fillet })
	return order
}
