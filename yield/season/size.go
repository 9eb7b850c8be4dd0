package season

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Household is who eats, for how long, and from which fish. Fish is the mean round mass of one; the lighter it is
// taken, the more are planned for.
type Household struct {
	People int        `wire:"required"`
	Weeks  int        `wire:"required"`
	Fish   units.Mass `wire:"required"`
}

// MarshalJSON writes the household as an object of its fields.
func (h Household) MarshalJSON() ([]byte, error) { return wire.Marshal(h) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, a figure that is missing too, is a
// units.FieldError.
func (h *Household) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, h) }

// Supply is what one Want comes to. All counts are rounded up: the safe side for a supply.
type Supply struct {
	Want       Want
	Need       units.Mass // what is served in all the weeks
	Each       units.Mass // what one container serves
	Containers int
	Packed     units.Mass // raw fish in the containers
	Round      units.Mass // whole fish for that
	Fish       int        // for this product alone
	Loads      int        // of the canner
	LastLoad   int        // jars in the last one
	Makings    int        // it must be made at least so often, for none to pass its keeping time
}

// Larder is everything wanted together. Fish and Weekly reckon with the sum of round masses, so Fish may be fewer
// than the supplies' added up.
type Larder struct {
	Household  Household
	Supplies   []Supply
	Containers int
	Round      units.Mass
	Fish       int
	Loads      int
	Weekly     units.Mass // round mass a week, for Year.Weekly
	Cautions   []cite.Caution
}

// MarshalJSON writes the larder as an object of its fields.
func (l Larder) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (l *Larder) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// Size returns what a household needs to eat what it wants: need = people × meals a week × serving × weeks, whole
// containers of it, and from what those hold the round mass and the fish. Containers, fish and loads are rounded up,
// what a container serves down. Nothing wanted, or a figure missing or out of range, is a RangeError that names it.
func Size(h Household, wants ...Want) (Larder, error) {
	if err := h.check(len(wants)); err != nil {
		return Larder{}, err
	}
	l := Larder{Household: h, Supplies: make([]Supply, 0, len(wants))}
	for _, w := range wants {
		s, err := h.supply(w)
		if err != nil {
			return Larder{}, err
		}
		l.Supplies = append(l.Supplies, s)
		l.Containers += s.Containers
		l.Loads += s.Loads
		if l.Round, err = units.Sum(l.Round, s.Round); err != nil {
			return Larder{}, err
		}
	}
	l.Weekly = l.Round / units.Mass(h.Weeks)
	l.Fish = int(ceil(l.Round, h.Fish))
	l.Cautions = l.cautions()
	return l, nil
}

func (h Household) check(wants int) error {
	if err := within("number of people", h.People, 1, most); err != nil {
		return err
	}
	if err := within("weeks of the supply", h.Weeks, 1, century); err != nil {
		return err
	}
	if err := within("number of products wanted", wants, 1, most); err != nil {
		return err
	}
	return units.Check("mass of a fish", h.Fish, units.Gram, units.Tonne/10)
}

func (h Household) supply(w Want) (Supply, error) {
	if err := w.check(); err != nil {
		return Supply{}, err
	}
	s := Supply{Want: w}
	var err error
	if s.Each, err = units.ProrateDown(w.Pack, w.Served, units.One); err != nil {
		return Supply{}, err
	}
	person, err := units.Times(w.Serving, int64(h.People)*int64(h.Weeks))
	if err != nil {
		return Supply{}, err
	}
	if s.Need, err = units.Prorate(person, w.Meals, units.One); err != nil {
		return Supply{}, err
	}
	count := ceil(s.Need, s.Each)
	if err := within("containers of "+w.Name, int(min(count, 1e9)), 1, 1e6); err != nil {
		return Supply{}, err
	}
	s.Containers = int(count)
	if s.Packed, err = units.Times(w.Pack, count); err != nil {
		return Supply{}, err
	}
	if s.Round, err = units.Prorate(s.Packed, units.One, w.Yield); err != nil {
		return Supply{}, err
	}
	s.Fish = int(ceil(s.Round, h.Fish))
	if w.Load > 0 {
		s.Loads = (s.Containers + w.Load - 1) / w.Load
		s.LastLoad = s.Containers - (s.Loads-1)*w.Load
	}
	keeps := w.Keeps.weeks() + 1
	s.Makings = (h.Weeks + keeps - 1) / keeps
	return s, nil
}

func ceil(m, by units.Mass) int64 { return int64((m + by - 1) / by) }

func (l Larder) cautions() []cite.Caution {
	all := []cite.Caution{
		{
			ID: "season.weigh-the-first-batch",
			Text: "How much fish a jar holds and how much of a fish is packed differ from kitchen to kitchen. " +
				"Weigh the first batch and plan again with that.",
		},
		{
			ID: "season.follow-advice", Deciding: true,
			Text: "Can no more than is eaten within the keeping time. Follow local consumption advice for the water. " +
				"Preserving removes neither mercury nor PCBs.",
		},
	}
	for _, s := range l.Supplies {
		if s.Makings > 1 {
			all = append(all, cite.Caution{
				ID: "season.make-in-parts", Citation: s.Want.Keeps.Citation,
				Text: "This does not keep for the whole supply and is made in parts: " + s.Want.Name + ".",
			})
		}
	}
	return all
}
