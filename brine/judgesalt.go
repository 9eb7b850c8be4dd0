package brine

import (
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// Water of raw salmon and trout in USDA SR28, least and most: Atlantic farmed and brook trout.
const (
	driest  = 6_489 * units.Percent / 100
	wettest = 7_567 * units.Percent / 100
)

func (j *judgement) judgeWaterPhaseSalt() error {
	limit := j.found.Limit
	f := verdict.Finding{
		Rule: RuleWaterPhaseSalt, What: inTheWater, Kind: verdict.Short,
		Wanted: units.AtLeast(limit.Least), Citation: limit.Citation,
	}
	if j.WaterPhaseSalt.Given {
		if share := j.WaterPhaseSalt.Value; share < limit.Least {
			f.Stated, f.By = units.Exactly(share), units.AmountOf(limit.Least-share)
			j.find(f)
		}
		return nil
	}
	if err := j.estimate(); err != nil {
		return err
	}
	best, ok, err := j.bestCase()
	if err != nil {
		return err
	}
	if ok && best < limit.Least {
		f.Stated, f.By = units.AtMost(best).With("by the salt"), units.AmountOf(limit.Least-best)
	} else {
		// The estimate bounds neither end: drip takes salt away and the loin gets it last, while thin carp in 20 %
		// brine took 5.2 % in ten minutes.
		f.Kind = verdict.Missing
	}
	j.find(f)
	return nil
}

// bestCase is the most that the recipe can come to, however long it takes: the driest fish with all the salt of the
// dose in it, or with its water as strong as the brine, and no more than all the salt of the brine.
func (j *judgement) bestCase() (units.Ratio, bool, error) {
	salt := j.found.SaltToFish.Value
	if j.found.Strength.Value > 0 {
		var err error
		if salt, err = j.inItsWater(j.found.Strength.Value); err != nil {
			return 0, false, err
		}
		if inBrine, known, err := j.perFish(j.salt); err != nil {
			return 0, false, err
		} else if known {
			salt = min(salt, inBrine)
		}
	}
	if salt == 0 || !j.Loss.Given {
		return 0, false, nil
	}
	share, err := shareIn(salt, driest, j.Loss.Value)
	return share, err == nil, err
}

// estimate works out the average water phase salt after time and loss, where the recipe states enough.
func (j *judgement) estimate() error {
	surface, _ := solution.Saturation()
	if j.found.Method == WetBrined {
		surface = min(surface, j.found.Strength.Value)
	}
	dosed := j.found.SaltToFish.Value > 0 || j.found.Strength.Value > 0
	if !dosed || !j.Time.Given || !j.Thickness.Given || j.Faces == 0 || !j.Loss.Given {
		return nil
	}
	slab := Slab{Thickness: j.Thickness.Value, Faces: j.Faces}
	r, err := slab.waterPhaseSalt(surface, surface, FleshDiffusivity(), j.Time.Value)
	if err != nil {
		return err
	}
	for _, end := range [...]struct {
		share *units.Ratio
		water units.Ratio
	}{{&r.Low, wettest}, {&r.Likely, (driest + wettest) / 2}, {&r.High, driest}} {
		strong, err := perWater(*end.share)
		if err != nil {
			return err
		}
		salt, err := units.Prorate(end.water, strong, units.One)
		if err != nil {
			return err
		}
		if salt, err = j.atMost(salt, end.water); err != nil {
			return err
		}
		if *end.share, err = shareIn(salt, end.water, j.Loss.Value); err != nil {
			return err
		}
	}
	j.found.Estimate = Estimate{Range: r, Citation: diffusionCitation}
	return nil
}

// atMost is salt per mass of raw fish, as far as there is so much: all of a dose, or what brine and fish share in
// the end.
func (j *judgement) atMost(salt, water units.Ratio) (units.Ratio, error) {
	if j.found.Method == DrySalted {
		return min(salt, j.found.SaltToFish.Value), nil
	}
	if !j.Fish.Given || !j.Water.Given || j.salt == 0 {
		return salt, nil
	}
	inFish, err := water.Of(j.Fish.Value)
	if err != nil {
		return 0, err
	}
	inBrine, err := units.Prorate(litreAt60, j.Water.Value, units.Litre)
	if err != nil {
		return 0, err
	}
	end, err := units.RatioOf(j.salt, inBrine+inFish) // per water of both
	if err != nil {
		return 0, err
	}
	shared, err := units.Prorate(water, end, units.One)
	return min(salt, shared), err
}

// shareIn is salt/(salt + water left), all per mass of raw fish, at most saturation; a loss of all the water is
// refused.
func shareIn(salt, water, loss units.Ratio) (units.Ratio, error) {
	if loss >= water {
		return 0, units.RangeError{What: "loss", Got: loss.String(), Low: "0 %", High: water.String(), HighExclusive: true}
	}
	share, err := units.RatioOf(salt, salt+water-loss)
	saturated, _ := solution.Saturation()
	return min(share, saturated), err
}
