package season

import "example.org/lakelarder/units"

// Parting is a week in which the year went another way than the plan: fish kept, round mass eaten, and what was held
// on its last day.
type Parting struct {
	Week    int `wire:"always"`
	Planned PastWeek
	Past    PastWeek
}

// Parted returns the weeks that are over in which the year went another way than a plan that begins at the start of
// the ledger. None where they went the same way; weeks that the plan has not are not held against it.
func (s State) Parted(p Plan) []Parting {
	var all []Parting
	for _, past := range s.Weeks {
		if past.Week < 0 || past.Week >= len(p.Weeks) {
			continue
		}
		w := p.Weeks[past.Week]
		planned := PastWeek{Week: past.Week, Kept: w.Kept, Eaten: w.Eaten, End: w.End}
		if planned != past {
			all = append(all, Parting{Week: past.Week, Planned: planned, Past: past})
		}
	}
	return all
}

// Making is how many containers of a product are still to be made: Wanted less those that are there and are food.
type Making struct {
	Product string
	Wanted  int `wire:"always"`
	Have    int `wire:"always"`
	More    int `wire:"always"`
	Loads   int // of the canner, for More
}

// ToMake returns what is still to be made of each product of a larder, by its name, in the order of the larder: Size
// it for the weeks that are left. A larder that Size did not return is a units.RangeError.
func (s State) ToMake(l Larder) ([]Making, error) {
	if err := l.check(); err != nil {
		return nil, err
	}
	all := make([]Making, len(l.Supplies))
	for i, supply := range l.Supplies {
		if supply.Containers < 0 {
			got := units.Count(supply.Containers).String()
			return nil, units.RangeError{What: "containers of " + supply.Want.Name, Got: got, Low: "0"}
		}
		m := Making{Product: supply.Want.Name, Wanted: supply.Containers}
		for _, f := range s.EatFirst {
			if f.Product == m.Product {
				m.Have += f.Count
			}
		}
		m.More = max(0, m.Wanted-m.Have)
		m.Loads = loads(m.More, supply.Want.Load)
		all[i] = m
	}
	return all, nil
}
