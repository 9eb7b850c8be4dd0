package brine_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
)

// Three fillets, each with its own cure; what lies longest lies at the bottom.
func ExampleCureEach() {
	b, err := brine.CureEach([]units.Mass{800 * units.Gram, 1_200 * units.Gram, 950 * units.Gram}, 36*units.PerMille, brine.Mix{Salt: 1, Sugar: 2})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range b.Cures {
		fmt.Println(units.Text(c.Salt, units.Gram, 1), units.Text(c.Sugar, units.Gram, 1))
	}
	fmt.Println("in all", units.Text(b.Total, units.Gram, 1))
	// Output:
	// 28.8 g 57.6 g
	// 43.2 g 86.4 g
	// 34.2 g 68.4 g
	// in all 318.6 g
}

func ExampleBatch_Layers() {
	b, _ := brine.CureEach([]units.Mass{800 * units.Gram, 1_200 * units.Gram, 950 * units.Gram}, 36*units.PerMille, brine.Mix{Salt: 1, Sugar: 2})
	layers, err := b.Layers(2)
	for _, l := range layers {
		fmt.Println(l.Fillets, units.Text(l.Cure, units.Gram, 1))
	}
	fmt.Println(err)
	// Output:
	// [2 3] 232.2 g
	// [1] 86.4 g
	// <nil>
}

func ExampleFilletError() {
	_, err := brine.CureEach([]units.Mass{units.Kilogram, 0}, 3*units.Percent, brine.Mix{Salt: 1})
	fmt.Println(err)
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output:
	// fillet 2: fillet 0 g is out of range: expected 1 g to 100 kg
	// true
}

// Raw Chinook salmon holds 71.64 % of water; with a third more salt than that can dissolve, the rest stays dry.
func ExampleBuryCure() {
	c, err := brine.BuryCure(units.Kilogram, 7_164*units.Percent/100, 30*units.Percent, brine.Mix{Salt: 1})
	fmt.Println(units.Text(c.Salt, units.Gram, 0), err)
	// Output: 334 g <nil>
}

// Four cups to one are three to one on the scale, and nearly five to one with light flakes.
func ExampleMixOfVolumes() {
	salt, _ := brine.FindIngredient("table salt")
	sugar, _ := brine.FindIngredient("packed brown sugar")
	v, err := brine.MixOfVolumes(units.Cup, salt, 4*units.Cup, sugar)
	fmt.Println(units.Text(v.Salt, units.Percent, 1), "salt, not", units.Text(v.AsWeights, units.Percent, 1), err)
	fmt.Println(units.Text(v.Lightest, units.Percent, 1), "to", units.Text(v.Heaviest, units.Percent, 1), "with other salts")
	// Output:
	// 24.7 % salt, not 20.0 % <nil>
	// 13.1 % to 25.7 % with other salts
}

func ExampleVolumeMix() {
	salt, _ := brine.FindIngredient("table salt")
	sugar, _ := brine.FindIngredient("white sugar")
	v, err := brine.MixOfVolumes(units.Cup, salt, 2*units.Cup, sugar)
	fmt.Println(v.Mix, err)
	// Output:
	// 18 parts of salt to 25 of sugar <nil>
}

func ExampleSaltingTime() {
	s, _ := brine.FindSaltingTime(units.Inch, brine.FatFish)
	text, err := json.Marshal(s)
	fmt.Println(string(text)[:56], err)
	// Output:
	// {"thickness":"1 in","fatness":"fat fish","time":"12 h"," <nil>
}

func ExampleNitriteError() {
	_, err := brine.DryCure(units.Kilogram, 3*units.Percent, brine.Mix{Salt: 1, Others: []brine.Part{{Name: "sodium nitrite", Parts: 1}}})
	fmt.Println(err)
	// Output: "sodium nitrite" is not dosed here: nitrite and nitrate wrong by a factor of ten are dangerous, and fish at home needs none
}

func ExampleNitriteLimits() {
	for _, l := range brine.NitriteLimits() {
		fmt.Println(l.Salt, "at most", units.Text(l.Most, units.PartsPerMillion, 0), "in", l.Fish)
	}
	// Output:
	// sodium nitrite at most 200 ppm in smoked cured salmon, sablefish, shad
	// sodium nitrate at most 500 ppm in smoked cured salmon, sablefish, shad
	// sodium nitrite at most 10 ppm in smoked cured tunafish
	// sodium nitrite at most 200 ppm in smoked chub, in the loin, with 3.5 % water phase salt
}

// An inch and a tenth of fat fish: between two printed rows.
func ExampleFindSaltingTime() {
	s, err := brine.FindSaltingTime(11*units.Inch/10, brine.FatFish)
	fmt.Println(s.Time, s.Citation.Basis, err)
	s, _ = brine.FindSaltingTime(units.Inch, brine.LeanFish)
	fmt.Println(s.Time, s.Citation.Basis)
	// Output:
	// 13h12m0s computed <nil>
	// 7h0m0s read
}

// A kilogram of Chinook with 30 g of salt, 80 g of drip and 100 g lost in the smokehouse.
func ExampleCuring_Equilibrium() {
	e, err := brine.Curing{
		Raw: units.Kilogram, Water: 716_400 * units.Milligram, Salt: 30 * units.Gram, Drip: 80 * units.Gram, Drying: 100 * units.Gram,
	}.Equilibrium()
	fmt.Println(units.Text(e.Cured, units.Percent, 2), "after the cure,", units.Text(e.Final, units.Percent, 2), "after smoking", err)
	fmt.Println(units.Text(e.Kept, units.Gram, 2), "in the fish,", units.Text(e.InDrip, units.Gram, 2), "in the drip")
	// Output:
	// 4.02 % after the cure, 4.73 % after smoking <nil>
	// 26.65 g in the fish, 3.35 g in the drip
}

func ExampleCuring_SaltToEnd() {
	salt, err := brine.Curing{
		Raw: units.Kilogram, Water: 716_400 * units.Milligram, Drip: 80 * units.Gram, Drying: 100 * units.Gram,
	}.SaltToEnd(35 * units.PerMille)
	fmt.Println(units.Text(salt, units.Gram, 2), err)
	// Output: 21.90 g <nil>
}

func ExampleSaltBeforeLoss() {
	salt, err := brine.SaltBeforeLoss(35*units.PerMille, units.Kilogram, 716_400*units.Milligram, 20*units.Percent)
	fmt.Println(units.Text(salt, units.Gram, 2), err)
	// Output: 18.73 g <nil>
}

func ExampleSlab_Uptake() {
	d, _ := units.ParseDiffusivity("1e-10 m²/s")
	up, err := brine.Slab{Thickness: 25 * units.Millimetre, Faces: brine.OneFace}.Uptake(d, 12*time.Hour)
	fmt.Println(units.Text(up, units.Percent, 1), err)
	// Output: 9.4 % <nil>
}

func ExampleSlab_CoreUptake() {
	d, _ := units.ParseDiffusivity("1e-10 m²/s")
	up, err := brine.Slab{Thickness: 25 * units.Millimetre, Faces: brine.OneFace}.CoreUptake(d, 5*24*time.Hour)
	fmt.Println(units.Text(up, units.Percent, 1), err)
	// Output: 1.4 % <nil>
}

// Under dry salt for a day, with salt for 4 % in all.
func ExampleSlab_WaterPhaseSaltRange() {
	saturated, _ := solution.Saturation()
	e, err := brine.Slab{Thickness: units.Inch, Faces: brine.OneFace}.WaterPhaseSaltRange(saturated, 4*units.Percent, brine.FleshDiffusivity(), 24*time.Hour)
	fmt.Println(units.Text(e.Low, units.Percent, 1), units.Text(e.Likely, units.Percent, 1), units.Text(e.High, units.Percent, 1), err)
	// Output: 1.5 % 2.6 % 4.0 % <nil>
}

func ExampleFleshDiffusivity() {
	fmt.Println(brine.FleshDiffusivity().Low, brine.FleshDiffusivity().High)
	// Output: 0.00001 mm²/s 0.0001 mm²/s
}

// Where a strong brine and four pounds of fish come to rest.
func ExampleBrineEnd() {
	m, _ := solution.MakeBrine(units.Gallon, 10*units.Percent, units.Celsius(4))
	end, err := brine.BrineEnd(m.Salt, m.Water, 70*(4*units.Pound)/100)
	fmt.Println(units.Text(end, units.Percent, 1), err)
	// Output: 7.6 % <nil>
}

func ExampleMix() {
	var m brine.Mix
	err := json.Unmarshal([]byte(`{"salt": 1, "sugar": 2, "others": [{"name": "pepper", "parts": 1}]}`), &m)
	fmt.Println(m, err)
	err = json.Unmarshal([]byte(`{"sugar": 2}`), &m)
	fmt.Println(err)
	typed, err := units.ReadTyped[units.Parts]("1 : 2.5")
	fmt.Println(brine.Mix{Salt: typed.Value.First, Sugar: typed.Value.Second}, err)
	// Output:
	// 1 part of salt to 2 of sugar, 1 of pepper <nil>
	// salt (line 1, column 1): it is required and missing
	// 2 parts of salt to 5 of sugar <nil>
}

func ExampleMixOf() {
	fmt.Println(brine.MixOf(50*units.Gram, 125*units.Gram))
	_, err := brine.MixOf(units.Gram, 41*units.Gram)
	fmt.Println(err)
	// Output:
	// 2 parts of salt to 5 of sugar <nil>
	// sugar 41 parts to 1 of salt is out of range: expected 0 to 20 parts to 1 of salt
}

func ExampleCuring() {
	var c brine.Curing
	err := json.Unmarshal([]byte(`{"raw": "1 kg", "water": "716.4 g", "salt": "30 g"}`), &c)
	fmt.Println(c.Raw, c.Water, c.Salt, err)
	// Output:
	// 1 kg 716.4 g 30 g <nil>
}

func ExampleSlab() {
	text, err := json.Marshal(brine.Slab{Thickness: units.Inch, Faces: brine.OneFace})
	fmt.Println(string(text), err)
	// Output:
	// {"thickness":"1 in","faces":"one face"} <nil>
}

func ExampleEquilibrium() {
	e, err := brine.Curing{Raw: units.Kilogram, Water: 700 * units.Gram, Salt: 30 * units.Gram, Drip: 70 * units.Gram}.Equilibrium()
	fmt.Println(e.Kept, e.InDrip, e.LeftOver, e.Cautions[0].ID, err)
	// Output: 27 g 3 g 0 g brine.an-estimate <nil>
}

func ExampleEstimate() {
	e, err := brine.Slab{Thickness: units.Inch, Faces: brine.TwoFaces}.WaterPhaseSaltRange(10*units.Percent, 10*units.Percent, brine.FleshDiffusivity(), 48*time.Hour)
	fmt.Println(e, err)
	// Output:
	// 1.28 % to 3.95 %, likely 2.26 % <nil>
}
