package ice

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Trip is a catch to be chilled and kept until it is home. Constant not set is the largest in circulation. Box not
// set is a box that was not measured: the rough keeping rule stands in. Spare is what is to be left over, as a share
// of the ice that melts. IceShare is stated where the ice comes as a slurry.
type Trip struct {
	Fish     units.Mass        `wire:"required"`
	From     units.Temperature `wire:"required"` // of the fish as caught
	To       units.Temperature `wire:"required"` // that it is to have
	Constant Constant
	Box      MeltRate
	Outside  units.Temperature `wire:"required"`
	For      time.Duration     `wire:"required"`
	Spare    units.Ratio
	IceShare units.Stated[units.Ratio]
}

// MarshalJSON writes the trip in the words that UnmarshalJSON reads.
func (t Trip) MarshalJSON() ([]byte, error) { return wire.Marshal(t) }

// UnmarshalJSON reads a trip strictly; fish, temperatures and time must be there.
func (t *Trip) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, t) }

// Load is the ice of a Trip: what chilling melts, what keeping melts, what is left over and their total. Slurry is the
// mass to load where the ice comes as one, zero otherwise. Rough says that keeping is by the rule of thumb.
type Load struct {
	Chill, Hold, Spare, Total units.Mass
	Slurry                    units.Mass
	Rough                     bool
	Cautions                  []cite.Caution
}

// MarshalJSON writes the ice as an app shows it.
func (l Load) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (l *Load) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// keptIced is the warmest that fish in ice is to be: more is fish that is not to be chilled.
var keptIced = units.Fahrenheit(40)

// mostSpare is the largest spare share accepted; more is taken for a slip.
const mostSpare = 3 * units.One

// Plan returns the ice of a whole trip: ToChill from the catch to the aim, MeltRate.Hold or RoughHold for the time, and
// the spare. Its limits are theirs, and fish is to be kept at 40 °F or below; Spare must be 0 to 300 % and IceShare as for Slurry: otherwise a units.RangeError.
// Each part is rounded up to the gram. The fish is counted as all caught at the start, which is the safe side for the
// ice.
func Plan(trip Trip) (Load, error) {
	chill, err := ToChill(trip.Fish, trip.From, trip.To, trip.Constant)
	if err != nil {
		return Load{}, err
	}
	if err := units.CheckTemperature("fish that is kept in ice", trip.To, units.Celsius(0), keptIced); err != nil {
		return Load{}, err
	}
	rough := trip.Box == MeltRate{}
	var hold Need
	if rough {
		hold, err = RoughHold(trip.Fish, trip.Outside, trip.For)
	} else {
		hold, err = trip.Box.Hold(trip.Outside, trip.For)
	}
	if err != nil {
		return Load{}, err
	}
	if err := units.Check("spare ice", trip.Spare, 0, mostSpare); err != nil {
		return Load{}, err
	}
	melted, err := units.Sum(chill.Mass, hold.Mass)
	if err != nil {
		return Load{}, err
	}
	spare, err := upTo(units.Gram, []int64{int64(melted), int64(trip.Spare)}, []int64{int64(units.One)})
	if err != nil {
		return Load{}, err
	}
	t := Load{Chill: chill.Mass, Hold: hold.Mass, Spare: spare, Rough: rough}
	if t.Total, err = units.Sum(melted, spare); err != nil {
		return Load{}, err
	}
	t.Cautions = append(append(make([]cite.Caution, 0, 6), chill.Cautions...), hold.Cautions...)
	if trip.Spare == 0 {
		t.Cautions = append(t.Cautions, noSpare)
	}
	if trip.IceShare.Given {
		slurry, err := Slurry(t.Total, trip.IceShare.Value)
		if err != nil {
			return Load{}, err
		}
		t.Slurry, t.Cautions = slurry.Mass, append(t.Cautions, slurry.Cautions...)
	}
	return t, nil
}

// Slurry returns how much slurry, ice and water together, holds an amount of ice: ice over its share. The share must be
// 5 to 100 % by mass and the ice 0 to 100 t: otherwise a units.RangeError. A share of 33 % makes it three times the
// mass. Rounded up to the gram. Source: Icelandic guidance on handling fish.
func Slurry(ice units.Mass, share units.Ratio) (Need, error) {
	if err := checkMass("ice", ice, 100*units.Tonne); err != nil {
		return Need{}, err
	}
	if err := units.Check("share of ice in the slurry", share, 5*units.Percent, units.One); err != nil {
		return Need{}, err
	}
	mass, err := upTo(units.Gram, []int64{int64(ice), int64(units.One)}, []int64{int64(share)})
	return Need{mass, keepingCitation, []cite.Caution{slurryWater}}, err
}

var (
	noSpare = cite.Caution{
		ID: "ice.no-spare", Deciding: true,
		Text:     "Nothing is left over at the end: a trip that takes longer, or hotter air, leaves fish without ice.",
		Citation: cite.Citation{Where: "spare ice", Basis: cite.Practice},
	}
	slurryWater = cite.Caution{
		ID:       "ice.slurry-water",
		Text:     "The water of the slurry must be cold already: cooling it melts ice that is not counted here.",
		Citation: cite.Citation{Where: "mixing a slurry", Basis: cite.Practice},
	}
)
