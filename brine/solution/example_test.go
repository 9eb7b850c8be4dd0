package solution_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
)

// A 60 degree brine on every scale, at 60 °F.
func ExampleStrengthOf() {
	share, _ := solution.FromSalometer(60 * units.Percent)
	s, err := solution.StrengthOf(share, units.Fahrenheit(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.Share, "by mass")
	fmt.Println(units.In(s.SpecificGravity, units.One, 4), "specific gravity,", units.In(s.Baume, units.One, 1), "degrees Baumé")
	fmt.Println(units.In(s.PerWater, units.PerMille, 2), "g per kg of water")
	fmt.Println(units.In(s.PerVolumeWater, units.GramPerLitre, 1), "g per L of water,", units.In(s.PerVolumeBrine, units.GramPerLitre, 1), "g per L of brine")
	fmt.Println(units.In(s.PerVolumeWater, solution.PoundPerGallon, 4), "lb per US gallon of water")
	fmt.Println(units.In(s.PerVolumeWater, solution.PoundPerImperialGallon, 4), "lb per imperial gallon of water")
	// Output:
	// 15.837 % by mass
	// 1.118 specific gravity, 15.3 degrees Baumé
	// 188.17 g per kg of water
	// 188 g per L of water, 176.9 g per L of brine
	// 1.5688 lb per US gallon of water
	// 1.8841 lb per imperial gallon of water
}

// 26.395 % at 100 degrees; more does not exist.
func ExampleFromSalometer() {
	fmt.Println(solution.FromSalometer(80 * units.Percent))
	_, err := solution.FromSalometer(101 * units.Percent)
	fmt.Println(err)
	// Output:
	// 21.116 % <nil>
	// salometer reading 101 % is out of range: expected 0 % to 100 %
}

func ExampleFromSpecificGravity() {
	share, err := solution.FromSpecificGravity(1_118 * units.PerMille)
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 15.83 % <nil>
}

func ExampleFromBaume() {
	share, err := solution.FromBaume(153 * units.One / 10)
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 15.83 % <nil>
}

func ExampleFromPerWater() {
	share, err := solution.FromPerWater(188 * units.PerMille)
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 15.82 % <nil>
}

// The same pounds in another gallon are another solution.
func ExampleFromPerVolumeWater() {
	us, _ := solution.FromPerVolumeWater(2*solution.PoundPerGallon, units.Fahrenheit(60))
	imperial, _ := solution.FromPerVolumeWater(2*solution.PoundPerImperialGallon, units.Fahrenheit(60))
	fmt.Println(units.Text(us, units.Percent, 1), units.Text(imperial, units.Percent, 1))
	// Output: 19.3 % 16.6 %
}

func ExampleFromPerVolumeBrine() {
	share, err := solution.FromPerVolumeBrine(177*units.GramPerLitre, units.Fahrenheit(60))
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 15.85 % <nil>
}

// A reading of 58 in a brine of 70 °F is 59 at 60 °F.
func ExampleSalometerAt60() {
	degrees, citation, err := solution.SalometerAt60(58*units.Percent, units.Fahrenheit(70))
	fmt.Println(units.In(degrees, units.Percent, 1), err)
	fmt.Println(citation)
	// Output:
	// 59 <nil>
	// Province of British Columbia, Preparing a Saltbrine, correction of the salometer for temperature (read)
}

func ExampleDensity() {
	d, err := solution.Density(10*units.Percent, units.Celsius(20))
	fmt.Println(units.Text(d, units.GramPerMillilitre, 4), err)
	// Output: 1.0707 g/mL <nil>
}

func ExampleDensityCitation() {
	fmt.Println(solution.DensityCitation().Unverified())
	// Output: true
}

// Five litres of a 60 degree solution.
func ExampleMakeBrine() {
	share, _ := solution.FromSalometer(60 * units.Percent)
	m, err := solution.MakeBrine(5*units.Litre, share, units.Fahrenheit(60))
	fmt.Println(units.Text(units.CeilTo(m.Salt, units.Gram), units.Gram, 0), "of salt in", units.Text(m.WaterVolume, units.Litre, 2), "of water", err)
	fmt.Println(m.Salt+m.Water == m.Mass)
	// Output:
	// 885 g of salt in 4.70 L of water <nil>
	// true
}

func ExampleFreezingPoint() {
	at, citation, err := solution.FreezingPoint(188 * units.PerMille)
	fmt.Println(at, citation.Basis, err)
	_, _, err = solution.FreezingPoint(25 * units.Percent)
	fmt.Println(err)
	// Output:
	// -15.2 °C read <nil>
	// salt by mass of brine 25 % is out of range: expected 0 % to 23.1 %
}

func ExampleActivity() {
	aw, err := solution.Activity(35 * units.PerMille)
	fmt.Println(units.In(aw, units.One, 4), err)
	fmt.Println(solution.ActivityCitation())
	// Output:
	// 0.9796 <nil>
	// Hamer and Wu, osmotic and activity coefficients of uni-univalent electrolytes in water at 25 C (Journal of Physical and Chemical Reference Data 1, 1972), sodium chloride at 25 °C (as quoted in another document: check this one before relying on it)
}

func ExampleActivityCitation() {
	fmt.Println(solution.ActivityCitation().Where, solution.ActivityCitation().Unverified())
	// Output: sodium chloride at 25 °C true
}

func ExampleShareAt() {
	share, err := solution.ShareAt(85 * units.Percent)
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 19.08 % <nil>
}

func ExampleSugarActivity() {
	aw, err := solution.SugarActivity(50 * units.PerMille)
	fmt.Println(units.In(aw, units.One, 4), err)
	// Output: 0.9973 <nil>
}

// 4 g of salt in 100 g of water are 3.85 % of water phase salt.
func ExampleMixedActivity() {
	aw, err := solution.MixedActivity(4*units.Gram, 5*units.Gram, 100*units.Gram)
	fmt.Println(units.In(aw, units.One, 4), err)
	// Output: 0.9748 <nil>
}

func ExampleSugarActivityCitation() {
	fmt.Println(solution.SugarActivityCitation().Basis)
	// Output: recalled
}

func ExampleMixedActivityCitation() {
	fmt.Println(solution.MixedActivityCitation().Basis)
	// Output: recalled
}

func ExampleSaturation() {
	limit, citation := solution.Saturation()
	fmt.Println(limit, citation)
	// Output: 26.395 % Province of British Columbia, Preparing a Saltbrine, 100 salometer degrees at 60 °F (read)
}

// More salt than the water can dissolve: the error holds the figure.
func ExampleSaturatedError() {
	err := solution.CheckShare("water phase salt", 527*units.PerMille)
	var saturated solution.SaturatedError
	fmt.Println(errors.As(err, &saturated), errors.Is(err, units.ErrRange))
	fmt.Println(saturated.Share)
	// Output:
	// true true
	// 52.7 %
}

func ExampleCheckShare() {
	fmt.Println(solution.CheckShare("water phase salt", 35*units.PerMille))
	fmt.Println(solution.CheckShare("water phase salt", 30*units.Percent))
	// Output:
	// <nil>
	// water phase salt 30 % is out of range: expected at most 26.395 %, saturation; part of the salt is not dissolved, or a figure is wrong
}

func ExampleStrength() {
	s, _ := solution.StrengthOf(10*units.Percent, units.Fahrenheit(60))
	text, err := json.Marshal(s)
	fmt.Println(string(text), err)
	// Output:
	// {"temperature":"60 °F","share":"10 %","salometer":"37.8859632506 %","specificGravity":"107.3363553058 %","baume":"991.0635742266 %","perWater":"11.1111111111 %","perVolumeWater":"111.002157217 kg/m³","perVolumeBrine":"107.231102881 kg/m³","density":"1072.311028807 kg/m³"} <nil>
}

func ExampleMakeup() {
	m, _ := solution.MakeBrine(units.Litre, 10*units.Percent, units.Celsius(4))
	text, err := json.Marshal(m)
	var back solution.Makeup
	fmt.Println(err, json.Unmarshal(text, &back), back == m)
	// Output: <nil> <nil> true
}
