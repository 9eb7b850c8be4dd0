package brine

import "example.org/lakelarder/units"

// Water of raw salmon and trout in USDA SR28, least and most: Atlantic farmed and brook trout.
const (
	driest  = 6_489 * units.Percent / 100
	wettest = 7_567 * units.Percent / 100
)

func judgeWaterPhaseSalt(c Claim, a *Assessment) error {
	limit := a.Limit
	f := Finding{What: "water phase salt", Published: percent(limit.Least), Citation: limit.Citation}
	if c.WaterPhaseSalt.Given {
		if share := c.WaterPhaseSalt.Value; share < limit.Least {
			f.Kind, f.Stated, f.Difference = Short, percent(share), percent(limit.Least-share)
			a.find(f)
		}
		return nil
	}
	if err := estimate(c, a); err != nil {
		return err
	}
	best, ok, err := bestCase(c, a)
	switch {
	case err != nil:
		return err
	case ok && best < limit.Least:
		f.Kind, f.Stated = Short, "at most "+percent(best)+" by the salt"
		f.Difference = percent(limit.Least - best)
	case a.Estimate.Citation.IsZero():
		f.Kind = NotStated
	default: // the model bounds neither end: drip takes salt away and the loin gets it last, while thin carp in 20 % brine took 5.2 % in ten minutes
		f.Kind, f.Stated = NotStated, percent(a.Estimate.Low)+" to "+percent(a.Estimate.High)+" by estimate"
	}
	a.find(f)
	return nil
}

// bestCase is the most that the recipe can come to, however long it takes: the driest fish with all the salt of the dose in it, or with its
// water as strong as the brine.
func bestCase(c Claim, a *Assessment) (units.Ratio, bool, error) {
	salt := a.SaltToFish
	if surface, _ := Saturation(); a.Strength > 0 {
		surface = min(surface, a.Strength)
		perWater, err := units.RatioOf(surface, units.One-surface)
		if err != nil {
			return 0, false, err
		}
		if salt, err = units.Prorate(driest, perWater, units.One); err != nil {
			return 0, false, err
		}
	}
	if salt == 0 || !c.Loss.Given {
		return 0, false, nil
	}
	share, err := shareIn(salt, driest, c.Loss.Value)
	return share, err == nil, err
}

// estimate works out the average water phase salt after time and loss, where the recipe states enough.
func estimate(c Claim, a *Assessment) error {
	surface, _ := Saturation()
	if a.Method == WetBrined {
		surface = min(surface, a.Strength)
	}
	dosed := a.SaltToFish > 0 || a.Method == WetBrined && a.Strength > 0
	if !dosed || !c.Time.Given || !c.Thickness.Given || c.Faces == FacesNotStated || !c.Loss.Given {
		return nil
	}
	slab := Slab{Thickness: c.Thickness.Value, Faces: c.Faces}
	e, err := slab.WaterPhaseSaltRange(surface, surface, FleshDiffusivity(), c.Time.Value)
	if err != nil {
		return err
	}
	for _, end := range []struct {
		share *units.Ratio
		water units.Ratio
	}{{&e.Low, wettest}, {&e.Likely, (driest + wettest) / 2}, {&e.High, driest}} {
		perWater, err := units.RatioOf(*end.share, units.One-*end.share)
		if err != nil {
			return err
		}
		salt, err := units.Prorate(end.water, perWater, units.One)
		if err != nil {
			return err
		}
		if a.Method == DrySalted {
			salt = min(salt, a.SaltToFish)
		}
		if *end.share, err = shareIn(salt, end.water, c.Loss.Value); err != nil {
			return err
		}
	}
	a.Estimate = e
	return nil
}

// shareIn is salt/(salt + water left), all per mass of raw fish, at most saturation; a loss of all the water is refused.
func shareIn(salt, water, loss units.Ratio) (units.Ratio, error) {
	if loss >= water {
		return 0, units.RangeError{What: "loss", Got: loss.String(), Low: "0 %", High: "less than the water of the fish, " + water.String()}
	}
	share, err := units.RatioOf(salt, salt+water-loss)
	limit, _ := Saturation()
	return min(share, limit), err
}
