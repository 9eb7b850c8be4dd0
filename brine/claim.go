package brine

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
)

// Method is how a recipe salts the fish. The zero Method is not stated.
type Method uint8

// The methods.
const (
	MethodNotStated Method = iota
	DrySalted
	WetBrined
)

// String is the method in words: "dry salted".
func (m Method) String() string {
	switch m {
	case DrySalted:
		return "dry salted"
	case WetBrined:
		return "wet brined"
	}
	return "method not stated"
}

// Claim is what a recipe states about its salting. What it does not state stays zero. Salt and sugar are told by weight, or by volume of a
// named ingredient; a dry cure also as salt to fish, a brine also as its strength by mass. Claims are comparable.
type Claim struct {
	Method Method
	Fish   units.Stated[units.Mass]

	Salt       units.Stated[units.Mass]
	SaltVolume units.Stated[units.Volume]
	SaltAs     Ingredient // of SaltVolume; the zero Ingredient is a salt without a name
	SaltToFish units.Stated[units.Ratio]

	Sugar       units.Stated[units.Mass]
	SugarVolume units.Stated[units.Volume]
	SugarAs     Ingredient

	Water    units.Stated[units.Volume] // of the brine
	Strength units.Stated[units.Ratio]  // of the brine, salt/(salt + water) by mass

	Time        units.Stated[time.Duration]
	Temperature units.Stated[units.Temperature]
	Thickness   units.Stated[units.Length]
	Faces       Faces
	Fatness     Fatness

	ForJars        bool // salted for jars: salt is flavour there, and the process alone keeps the fish
	Smoked         Smoking
	Pack           Pack
	Loss           units.Stated[units.Ratio] // of raw weight, in drying and smoking
	WaterPhaseSalt units.Stated[units.Ratio] // measured in the loin
	Nitrite        bool
}

// check refuses figures that no recipe can have.
func (c Claim) check() error {
	for _, w := range []struct {
		what             string
		got, first, last fmt.Stringer
		unknown          bool // an unknown one would have no limit
	}{
		{"method", c.Method, DrySalted, WetBrined, c.Method > WetBrined}, {"faces", c.Faces, OneFace, TwoFaces, c.Faces > TwoFaces},
		{"fatness", c.Fatness, FatFish, LeanFish, c.Fatness > LeanFish}, {"smoking", c.Smoked, HotSmoked, ColdSmoked, c.Smoked > ColdSmoked},
		{"pack", c.Pack, AirPack, LowOxygenPack, c.Pack > LowOxygenPack},
	} {
		if w.unknown {
			return units.RangeError{What: w.what, Got: w.got.String(), Low: w.first.String(), High: w.last.String()}
		}
	}
	for _, m := range []struct {
		what string
		mass units.Stated[units.Mass]
		most units.Mass
	}{{"fish", c.Fish, largestFillet}, {"salt", c.Salt, largestFillet}, {"sugar", c.Sugar, sweetest * largestFillet}} {
		if m.mass.Given && (m.mass.Value <= 0 || m.mass.Value > m.most) {
			return units.RangeError{What: m.what, Got: m.mass.Value.String(), Low: "more than 0 g", High: m.most.String()}
		}
	}
	for _, v := range []struct {
		what   string
		volume units.Stated[units.Volume]
	}{{"salt", c.SaltVolume}, {"sugar", c.SugarVolume}, {"water", c.Water}} {
		if v.volume.Given && (v.volume.Value <= 0 || v.volume.Value > largestBrine) {
			return units.RangeError{What: v.what, Got: v.volume.Value.String(), Low: "more than 0 mL", High: largestBrine.String()}
		}
	}
	for _, r := range []struct {
		what  string
		share units.Stated[units.Ratio]
	}{{"salt to fish", c.SaltToFish}, {"brine strength", c.Strength}, {"loss", c.Loss}} {
		if err := units.Check(r.what, r.share.Value, 0, units.One); err != nil {
			return err
		}
	}
	if err := checkShare(c.WaterPhaseSalt.Value); err != nil {
		return err
	}
	if c.Time.Given {
		if c.Time.Value <= 0 || c.Time.Value > longest {
			return units.RangeError{What: "time", Got: units.Lasting(c.Time.Value), Low: "more than 0 min", High: units.Lasting(longest)}
		}
	}
	if c.Thickness.Given {
		if err := units.Check("thickness", c.Thickness.Value, thinnest, thickest); err != nil {
			return err
		}
	}
	if c.Temperature.Given {
		return units.CheckTemperature("temperature", c.Temperature.Value, units.Celsius(-30), units.Celsius(60))
	}
	return nil
}

// largestBrine catches slips of units; practice, no source.
const largestBrine = 1_000 * units.Litre

// method is the one stated, or else the one that the figures of the claim tell.
func (c Claim) method() Method {
	switch {
	case c.Method != MethodNotStated:
		return c.Method
	case c.Water.Given || c.Strength.Given:
		return WetBrined
	case c.SaltToFish.Given || c.Fish.Given && (c.Salt.Given || c.SaltVolume.Given):
		return DrySalted
	}
	return MethodNotStated
}
