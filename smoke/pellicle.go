package smoke

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Pellicle is the drying of a cured fillet before the smoke: from about Tacky on its surface may be called tacky, and by
// Stop smoke must be on it. Both are ranges over the film; the finger on the fillet decides.
type Pellicle struct {
	Surface  units.Temperature
	Tacky    units.Range[time.Duration] // until half a percent of the mass is lost
	Stop     units.Range[time.Duration] // until three percent are lost
	Cautions []cite.Caution
}

// MarshalJSON writes the drying as an app shows it.
func (p Pellicle) MarshalJSON() ([]byte, error) { return wire.Marshal(p) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (p *Pellicle) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, p) }

// What a pellicle costs of the fillet's mass. Practice, no published source.
const (
	leastPellicle = 5 * units.PerMille
	mostPellicle  = 3 * units.Percent
)

// DryPellicle returns how long a fillet of this mass and exposed area dries before the smoke, while its surface is wet. Evaporate says
// what the air, the film and the water activity must be; mass and area must be above zero, and the time at most thirty days: otherwise a
// units.RangeError. It never says that fish may stand warm: the cautions do the opposite. The losses of 0.5 to 3 % are practice.
func DryPellicle(fillet units.Mass, area units.Area, air moistair.Air, film moistair.Film, activity units.Ratio) (Pellicle, error) {
	e, err := moistair.Evaporate(air, film, activity)
	if err != nil {
		return Pellicle{}, err
	}
	if err := units.Check("fillet", fillet, units.Gram, units.Tonne); err != nil {
		return Pellicle{}, err
	}
	least, err := leastPellicle.Of(fillet)
	if err != nil {
		return Pellicle{}, err
	}
	most, err := mostPellicle.Of(fillet)
	if err != nil {
		return Pellicle{}, err
	}
	p := Pellicle{Surface: e.Surface}
	if p.Tacky, err = e.TimeTo(least, area); err != nil {
		return Pellicle{}, err
	}
	if p.Stop, err = e.TimeTo(most, area); err != nil {
		return Pellicle{}, err
	}
	p.Cautions = append(film.Cautions(), moistAtSmoke, dryCold, pellicleCost)
	return p, nil
}

var (
	pellicleCost = cite.Caution{
		ID:       "smoke.pellicle-cost",
		Text:     "A pellicle costs about 0.5 to 3 % of the mass and cannot make up for too little salt.",
		Citation: cite.Citation{Where: "loss of mass of a pellicle", Basis: cite.Practice},
	}
	moistAtSmoke = cite.Caution{
		ID:       "smoke.moist-at-smoke",
		Text:     "Start the smoke while the surface is still moist or tacky: smoke does not take on a skin that has sealed.",
		Citation: cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.6", Basis: cite.Read},
	}
	dryCold = cite.Caution{
		ID: "smoke.dry-cold", Deciding: true,
		Text:     "Fish for cold smoking is dried at 40 °F (4.4 °C) or below: warm drying is for hot smoking only.",
		Citation: cite.Citation{Source: cite.FDAColdSmoked2001, Where: "text based on the AFDO code", Basis: cite.Read},
	}
)
