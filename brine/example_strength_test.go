package brine_test

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
)

// A 60 degree brine on every scale, at 60 °F.
func ExampleStrengthOf() {
	share, _ := brine.FromSalometer(60 * units.Percent)
	s, err := brine.StrengthOf(share, units.Fahrenheit(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.Share, "by mass")
	fmt.Println(units.In(s.SpecificGravity, units.One, 4), "specific gravity,", units.In(s.Baume, units.One, 1), "degrees Baumé")
	fmt.Println(units.In(s.PerWater, units.PerMille, 2), "g per kg of water")
	fmt.Println(units.In(s.PerVolumeWater, units.GramPerLitre, 1), "g per L of water,", units.In(s.PerVolumeBrine, units.GramPerLitre, 1), "g per L of brine")
	fmt.Println(units.In(s.PerVolumeWater, brine.PoundPerGallon, 4), "lb per US gallon of water")
	fmt.Println(units.In(s.PerVolumeWater, brine.PoundPerImperialGallon, 4), "lb per imperial gallon of water")
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
	fmt.Println(brine.FromSalometer(80 * units.Percent))
	_, err := brine.FromSalometer(101 * units.Percent)
	fmt.Println(err)
	// Output:
	// 21.116 % <nil>
	// salometer reading 101 % is out of range: expected 0 % to 100 %
}

func ExampleFromSpecificGravity() {
	share, err := brine.FromSpecificGravity(1_118 * units.PerMille)
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 15.83 % <nil>
}

func ExampleFromBaume() {
	share, err := brine.FromBaume(153 * units.One / 10)
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 15.83 % <nil>
}

func ExampleFromPerWater() {
	share, err := brine.FromPerWater(188 * units.PerMille)
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 15.82 % <nil>
}

// The same pounds in another gallon are another brine.
func ExampleFromPerVolumeWater() {
	us, _ := brine.FromPerVolumeWater(2*brine.PoundPerGallon, units.Fahrenheit(60))
	imperial, _ := brine.FromPerVolumeWater(2*brine.PoundPerImperialGallon, units.Fahrenheit(60))
	fmt.Println(units.Text(us, units.Percent, 1), units.Text(imperial, units.Percent, 1))
	// Output: 19.3 % 16.6 %
}

func ExampleFromPerVolumeBrine() {
	share, err := brine.FromPerVolumeBrine(177*units.GramPerLitre, units.Fahrenheit(60))
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 15.85 % <nil>
}

// A reading of 58 in a brine of 70 °F is 59 at 60 °F.
func ExampleSalometerAt60() {
	degrees, citation, err := brine.SalometerAt60(58*units.Percent, units.Fahrenheit(70))
	fmt.Println(units.In(degrees, units.Percent, 1), err)
	fmt.Println(citation)
	// Output:
	// 59 <nil>
	// Province of British Columbia, Preparing a Saltbrine, correction of the salometer for temperature (read)
}

func ExampleDensity() {
	d, err := brine.Density(10*units.Percent, units.Celsius(20))
	fmt.Println(units.Text(d, units.GramPerMillilitre, 4), err)
	// Output: 1.0707 g/mL <nil>
}

func ExampleDensityCitation() {
	fmt.Println(brine.DensityCitation().Unverified())
	// Output: true
}

// Five litres of a 60 degree brine.
func ExampleMakeBrine() {
	share, _ := brine.FromSalometer(60 * units.Percent)
	m, err := brine.MakeBrine(5*units.Litre, share, units.Fahrenheit(60))
	fmt.Println(units.Text(units.CeilTo(m.Salt, units.Gram), units.Gram, 0), "of salt in", units.Text(m.WaterVolume, units.Litre, 2), "of water", err)
	fmt.Println(m.Salt+m.Water == m.Mass)
	// Output:
	// 885 g of salt in 4.70 L of water <nil>
	// true
}

func ExampleBrineForFish() {
	volume, citation, err := brine.BrineForFish(10 * units.Pound)
	fmt.Println(units.Text(volume, units.Gallon, 1), err)
	fmt.Println(citation.Where)
	// Output:
	// 2.5 gal <nil>
	// item 01600579
}

// Where a strong brine and four pounds of fish come to rest.
func ExampleBrineEnd() {
	m, _ := brine.MakeBrine(units.Gallon, 10*units.Percent, units.Celsius(4))
	end, err := brine.BrineEnd(m.Salt, m.Water, 70*(4*units.Pound)/100)
	fmt.Println(units.Text(end, units.Percent, 1), err)
	// Output: 7.6 % <nil>
}

func ExampleFreezingPoint() {
	at, citation, err := brine.FreezingPoint(188 * units.PerMille)
	fmt.Println(at, citation.Basis, err)
	_, _, err = brine.FreezingPoint(25 * units.Percent)
	fmt.Println(err)
	// Output:
	// -15.2 °C read <nil>
	// salt by mass of brine 25 % is out of range: expected 0 % to 23.1 %
}

func ExampleActivity() {
	aw, err := brine.Activity(35 * units.PerMille)
	fmt.Println(units.In(aw, units.One, 4), err)
	fmt.Println(brine.ActivityCitation())
	// Output:
	// 0.9796 <nil>
	// Hamer and Wu, osmotic and activity coefficients of uni-univalent electrolytes in water at 25 C (Journal of Physical and Chemical Reference Data 1, 1972), sodium chloride at 25 °C (recalled: check the print before relying on it)
}

func ExampleActivityCitation() {
	fmt.Println(brine.ActivityCitation().Where, brine.ActivityCitation().Unverified())
	// Output: sodium chloride at 25 °C true
}

func ExampleShareAt() {
	share, err := brine.ShareAt(85 * units.Percent)
	fmt.Println(units.Text(share, units.Percent, 2), err)
	// Output: 19.08 % <nil>
}

func ExampleSugarActivity() {
	aw, err := brine.SugarActivity(50 * units.PerMille)
	fmt.Println(units.In(aw, units.One, 4), err)
	// Output: 0.9973 <nil>
}

// 4 g of salt in 100 g of water are 3.85 % of water phase salt.
func ExampleMixedActivity() {
	aw, err := brine.MixedActivity(4*units.Gram, 5*units.Gram, 100*units.Gram)
	fmt.Println(units.In(aw, units.One, 4), err)
	// Output: 0.9748 <nil>
}

func ExampleSugarActivityCitation() {
	fmt.Println(brine.SugarActivityCitation().Basis)
	// Output: recalled
}

func ExampleMixedActivityCitation() {
	fmt.Println(brine.MixedActivityCitation().Basis)
	// Output: recalled
}
