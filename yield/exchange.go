package yield

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Exchange is what passes between a piece of fish and the world in one step: what leaves it (water in drying,
// water and some fat as drip) and what comes in (salt in curing).
type Exchange struct {
	Lost   Makeup
	Gained Makeup
}

// MarshalJSON writes what is lost and gained, without what is nothing.
func (x Exchange) MarshalJSON() ([]byte, error) { return wire.Marshal(x) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (x *Exchange) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, x) }

// After returns the piece after an exchange: what was there, and what came in, less what was lost. Exact, and
// After and Before undo each other to the quantum. A negative mass, more lost than there is, or a total past the range
// of Mass, is a RangeError.
func (m Makeup) After(x Exchange) (Makeup, error) {
	with, err := m.Plus(x.Gained)
	if err != nil {
		return Makeup{}, err
	}
	return with.Less(x.Lost)
}

// Before returns the piece as it was before an exchange that left m: the inverse of After, to the quantum. A
// negative mass, more gained than there is, or a total past the range of Mass, is a RangeError.
func (m Makeup) Before(x Exchange) (Makeup, error) {
	with, err := m.Plus(x.Lost)
	if err != nil {
		return Makeup{}, err
	}
	return with.Less(x.Gained)
}

// ToWeight returns the exchange that leaves a piece at a weighed mass after it took up this much salt, where all
// else that it lost is water: protein, fat and ash stay. Exact. A final mass that would need water to be
// taken up, or more water lost than there is, or a negative salt gain, is a RangeError.
func (m Makeup) ToWeight(salt, final units.Mass) (Exchange, error) {
	with, err := m.salted(salt)
	if err != nil {
		return Exchange{}, err
	}
	total, err := with.Total()
	if err != nil {
		return Exchange{}, err
	}
	if err := units.Check("final mass", final, total-with.Water, total); err != nil {
		return Exchange{}, err
	}
	return Exchange{Lost: Makeup{Water: total - final}, Gained: Makeup{Salt: salt}}, nil
}

// ToMoisture returns the exchange that brings a piece to a moisture after it took up this much salt, where all that
// is lost is water: the final mass is (1 + gain − water)/(1 − moisture) of the raw, all as shares of the raw. The
// water kept rounds down, by less than 1/16 ng: the moisture is never above what was asked. The moisture must lie in
// 0 to less than 100 % and not above that of the salted piece, which must hold more than water; otherwise a
// RangeError.
func (m Makeup) ToMoisture(salt units.Mass, moisture units.Ratio) (Exchange, error) {
	with, err := m.salted(salt)
	if err != nil {
		return Exchange{}, err
	}
	if err := units.Check("moisture", moisture, 0, units.One-1); err != nil {
		return Exchange{}, err
	}
	solids := with.Salt + with.Protein + with.Fat + with.Ash
	if solids == 0 {
		return Exchange{}, nothingDry("salt, protein, fat and ash")
	}
	water, err := units.ProrateDown(solids, moisture, units.One-moisture)
	if err != nil || water > with.Water {
		return Exchange{}, tooMoist(with, moisture)
	}
	return Exchange{Lost: Makeup{Water: with.Water - water}, Gained: Makeup{Salt: salt}}, nil
}

// ToMoistureAndSalt returns the exchange that brings a piece to a moisture and a water phase salt at once: the salt
// that it must take up and the water it must lose, all else staying. Both targets are shares above 0 that leave room
// for the rest of the fish. Salt rounds up and water down, each by at most a few 1/16 ng: never less salt nor more
// moisture than asked. A piece that is saltier or drier already or holds no protein, fat or ash, or targets above 100
// % together, are a RangeError.
func (m Makeup) ToMoistureAndSalt(moisture, waterPhaseSalt units.Ratio) (Exchange, error) {
	if _, err := m.Total(); err != nil {
		return Exchange{}, err
	}
	if err := units.Check("moisture", moisture, 1, units.One-1); err != nil {
		return Exchange{}, err
	}
	if err := units.Check("water phase salt", waterPhaseSalt, 1, units.One-moisture-1); err != nil {
		return Exchange{}, err
	}
	// With N of protein, fat and ash, water and salt together are A = N·M/(1 − M − T), and the salt is T·A of them: the
	// same as k = T/(1−T)·M/(1−M), gain = (k·(1−w0) − s0)/(1−k) for a fish of 1.
	rest := m.Protein + m.Fat + m.Ash
	if rest == 0 {
		return Exchange{}, nothingDry("protein, fat and ash")
	}
	phase, err := units.ProrateDown(rest, moisture, units.One-moisture-waterPhaseSalt)
	if err != nil {
		return Exchange{}, tooMoist(m, moisture)
	}
	water, err := units.ProrateDown(phase, units.One-waterPhaseSalt, units.One)
	if err != nil {
		return Exchange{}, err
	}
	salt := phase - water
	switch {
	case water > m.Water:
		return Exchange{}, tooMoist(m, moisture)
	case salt < m.Salt:
		return Exchange{}, units.RangeError{
			What: "salt at that moisture and water phase salt, of fish that holds salt already", Got: salt.String(), Low: m.Salt.String(),
		}
	}
	return Exchange{Lost: Makeup{Water: m.Water - water}, Gained: Makeup{Salt: salt - m.Salt}}, nil
}

// salted is the piece with more salt, checked.
func (m Makeup) salted(salt units.Mass) (Makeup, error) {
	return m.Plus(Makeup{Salt: salt})
}

// nothingDry refuses a piece that has nothing to hold its water: no target tells how much to keep.
func nothingDry(of string) error {
	return units.RangeError{
		What: of + " of the piece", Got: units.Mass(0).String(), Low: units.Mass(0).String(), LowExclusive: true,
	}
}

func tooMoist(m Makeup, moisture units.Ratio) error {
	err := units.RangeError{What: "moisture to dry the piece to", Got: moisture.String()}
	if now, e := m.Moisture(); e == nil {
		err.High = now.String()
	}
	return err
}
