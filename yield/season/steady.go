package season

import "example.org/lakelarder/units"

// steadySteps is how many steps all searches of Steady take together.
const steadySteps = 5 * searchSteps

// Steady returns the largest whole percentage of the weekly mass that can be eaten in every week of the year without
// a short one, and its plan; 100 % for a year that is feasible as it is. A zero share is that not even one percent
// can: its plan is that of the whole wish. With a Lag above 1 it is the largest that a search found. Keep says
// instead what can be eaten at most, with short weeks. Errors are those of Keep.
func Steady(y Year) (units.Ratio, Plan, error) {
	wish, err := Keep(y)
	if err != nil {
		return 0, Plan{}, err
	}
	if wish.Feasible() {
		return units.One, wish, nil
	}
	share, plan, open := units.Ratio(0), wish, []wished(nil)
	for percent := units.Ratio(99); percent > 0 && share == 0; percent-- {
		less := y
		if less.Weekly, err = units.ProrateDown(y.Weekly, percent*units.Percent, units.One); err != nil {
			return 0, Plan{}, err
		}
		if less.Weekly < units.Gram {
			break
		}
		switch p := less.ordered(); {
		case p.Feasible():
			share, plan = percent*units.Percent, p
		case less.most(p) == less.Weekly*units.Mass(less.Weeks): // else no choice holds it
			open = append(open, wished{percent * units.Percent, less})
		}
	}
	return searched(share, plan, open)
}

// wished is a year that eats a share of its wish.
type wished struct {
	share units.Ratio
	year  Year
}

// searched is the share and its plan, or the largest of greater ones that a search holds. They stand from the greatest
// down, and are tried from the least up: the next above what is found is the likeliest.
func searched(share units.Ratio, plan Plan, open []wished) (units.Ratio, Plan, error) {
	steps := steadySteps
	for i := len(open) - 1; i >= 0 && steps > 0; i-- {
		y := open[i].year
		p := y.ordered()
		if p = y.improved(p, y.most(p), &steps); p.Feasible() {
			share, plan = open[i].share, p
		}
	}
	plan.Cautions = plan.cautions()
	return share, plan, nil
}
