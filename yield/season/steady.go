package season

import "example.org/lakelarder/units"

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
	for percent := units.Ratio(99); percent > 0; percent-- {
		less := y
		if less.Weekly, err = units.ProrateDown(y.Weekly, percent*units.Percent, units.One); err != nil {
			return 0, Plan{}, err
		}
		if less.Weekly < units.Gram {
			break
		}
		p := less.ordered()
		if most := less.most(p); most == less.Weekly*units.Mass(less.Weeks) { // else no choice holds it
			p = less.improved(p, most)
		}
		if p.Feasible() {
			p.Cautions = p.cautions()
			return percent * units.Percent, p, nil
		}
	}
	return 0, wish, nil
}
