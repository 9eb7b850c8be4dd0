package season

import (
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Ledger is what happened to the fish of a household, and what it is held against. Start is the first day of week 0 of
// the plan and of the annual cap; entries before it are of earlier years and count as held. Fresh is how long whole
// fish keeps. Unsealed says until when a jar that did not seal counts as fish held. Entries may stand in any order.
type Ledger struct {
	Rule     Rule     `wire:"required"`
	Unsealed Counting `wire:"required"`
	Start    Day      `wire:"required"`
	Fresh    Keeping  `wire:"required"`
	Products []Product
	Entries  []Entry
}

// MarshalJSON writes the ledger as an object of its fields.
func (l Ledger) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, a figure that is missing too, is a
// units.FieldError. Only products and entries may be left out.
func (l *Ledger) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// Product is what an entry makes: pints of salmon, smoked fillets in the refrigerator, the same in the freezer. Keeps
// counts from the day of the entry. Quality says that the time is one of quality and not of safety, as the year of a
// jar is.
type Product struct {
	Name    string  `wire:"required"`
	Keeps   Keeping `wire:"required"`
	Quality bool
}

// mostEntries is the most entries of a ledger, mostProducts of its products.
const (
	mostEntries  = 100_000
	mostProducts = 200
)

func (l *Ledger) check(on Day) error {
	if err := l.Rule.check(); err != nil {
		return err
	}
	if err := countings.Check(l.Unsealed); err != nil {
		return err
	}
	if err := l.Start.check("start of the ledger"); err != nil {
		return err
	}
	if err := on.check("day of the state"); err != nil {
		return err
	}
	if err := l.Fresh.check("fresh fish", 24*time.Hour); err != nil {
		return err
	}
	if err := within("products of the ledger", len(l.Products), 0, mostProducts); err != nil {
		return err
	}
	if err := within("entries of the ledger", len(l.Entries), 0, mostEntries); err != nil {
		return err
	}
	for i, p := range l.Products {
		if err := checkName("product", p.Name); err != nil {
			return err
		}
		if err := p.Keeps.check(p.Name, 24*time.Hour); err != nil {
			return err
		}
		for _, before := range l.Products[:i] {
			if before.Name == p.Name {
				return units.RangeError{What: "product", Got: p.Name + " a second time", High: "one of a name"}
			}
		}
	}
	return l.checkEntries()
}

func (l *Ledger) checkEntries() error {
	var sum units.Mass
	for i := range l.Entries {
		e := &l.Entries[i]
		err := e.check()
		if err == nil && e.Event.makes() && l.product(e.Product) < 0 {
			err = units.UnknownError{What: "product", Got: e.Product, Known: l.productNames()}
		}
		if sum += e.Round; err == nil {
			err = units.Check("round mass of all fish kept", sum, 0, 400*units.Tonne)
		}
		if err != nil {
			return units.FieldError{Field: "entries[" + strconv.Itoa(i) + "]", Err: err}
		}
	}
	return nil
}

// product is the place of a product, -1 of one that is not there.
func (l *Ledger) product(name string) int {
	for i := range l.Products {
		if l.Products[i].Name == name {
			return i
		}
	}
	return -1
}

func (l *Ledger) productNames() []string {
	all := make([]string, len(l.Products))
	for i, p := range l.Products {
		all[i] = p.Name
	}
	return all
}
