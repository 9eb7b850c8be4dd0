package canner

import (
	"errors"
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Vessel is a pressure canner as it is measured. Its inside diameter is not its name: measure it.
type Vessel struct {
	Diameter units.Length // inside, where the jars stand
	Height   units.Length // inside, from the bottom to the lid
	Rack     units.Length // height of the rack under the jars
	Divider  units.Length // thickness of the rack between two layers; zero: there is none, so one layer
	Capacity units.Volume // as the canner is sold; zero: not known, and then not for smoked fish

	// Layers that the maker's manual allows, 1 or 2; zero: it does not say, and the published rule holds: one of
	// quarts, two at most of smaller jars. Three are not tested.
	QuartLayers   int
	SmallerLayers int
}

// MarshalJSON writes the vessel in the words that UnmarshalJSON reads.
func (v Vessel) MarshalJSON() ([]byte, error) { return wire.Marshal(v) }

// UnmarshalJSON reads a vessel strictly.
func (v *Vessel) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, v) }

// check returns the first figure of the vessel that cannot be one.
func (v Vessel) check() error {
	if err := units.Check("inside diameter", v.Diameter, smallest, largest); err != nil {
		return err
	}
	if err := units.Check("inside height", v.Height, smallest, largest); err != nil {
		return err
	}
	if bare(v.Rack, leastLength) || bare(v.Divider, leastLength) || bare(v.Capacity, leastVolume) {
		return errors.Join(units.CheckUnit("rack", v.Rack, leastLength), units.CheckUnit("divider", v.Divider, leastLength),
			units.CheckUnit("capacity", v.Capacity, leastVolume))
	}
	if err := units.Check("rack", v.Rack, 0, v.Height); err != nil {
		return err
	}
	if err := units.Check("divider", v.Divider, 0, v.Height); err != nil {
		return err
	}
	if v.Capacity < 0 {
		return units.RangeError{What: "capacity", Got: v.Capacity.String(), Low: "0 L"}
	}
	for _, n := range [...]int{v.QuartLayers, v.SmallerLayers} {
		if n < 0 || n > mostLayers {
			return units.RangeError{
				What: "layers that the maker allows", Got: strconv.Itoa(n), Low: "1", High: strconv.Itoa(mostLayers),
			}
		}
	}
	return nil
}
