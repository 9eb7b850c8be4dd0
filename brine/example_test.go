package brine_test

import (
	"errors"
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/units"
)

// A fillet of 2 lb 4 oz, 36 g of salt to a kilogram, one part of salt to two of sugar by weight.
func ExampleDryCure() {
	fillet := 2*units.Pound + 4*units.Ounce
	cure, err := brine.DryCure(fillet, 36*units.PerMille, brine.Mix{Salt: 1, Sugar: 2})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("salt ", units.Text(units.CeilTo(cure.Salt, units.Gram/10), units.Gram, 1))
	fmt.Println("sugar", units.Text(cure.Sugar, units.Gram, 1))
	for _, caution := range cure.Cautions {
		fmt.Println("-", caution.Text)
	}
	// Output:
	// salt  36.8 g
	// sugar 73.5 g
	// - A dose is not a result. Have the water phase salt measured in the loin, the thickest and slowest part, against the limit for the pack.
	// - Put the salted fish straight back to 38 °F (3.3 °C) or below.
	// - No dose is published between 30 g per kg and 1 part of salt to 4 of fish. This is a plan of your own, not a tested recipe.
	// - Sugar does not count in water phase salt and replaces no salt.
}

// The same cure on spoons and cups: only through ingredients with a name and a weight.
func ExampleCure_Volumes() {
	cure, _ := brine.DryCure(units.Kilogram, 36*units.PerMille, brine.Mix{Salt: 1, Sugar: 2})
	salt, _ := brine.FindIngredient("table salt")
	sugar, _ := brine.FindIngredient("packed brown sugar")
	v, err := cure.Volumes(salt, sugar)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(units.Kitchen(units.CeilTo(v.Salt, units.Teaspoon/4), 4, units.Tablespoon, units.Teaspoon), "of", v.SaltAs.Name)
	fmt.Println(units.Kitchen(v.Sugar, 4, units.Tablespoon, units.Teaspoon), "of", v.SugarAs.Name)
	_, err = cure.Volumes(sugar, salt)
	fmt.Println(err)
	// Output:
	// 2 tbsp of table salt
	// 5 tbsp 3/4 tsp of packed brown sugar
	// ingredient "packed brown sugar" is sugar: expected salt
}

// What the volumes of a cure rest on goes along with them.
func ExampleCureVolumes() {
	cure, _ := brine.DryCure(units.Kilogram, 30*units.PerMille, brine.Mix{Salt: 1})
	salt, _ := brine.FindIngredient("table salt")
	v, err := cure.Volumes(salt, brine.Ingredient{})
	fmt.Println(units.Kitchen(v.Salt, 4, units.Teaspoon), "of", v.SaltAs.Name, err)
	fmt.Println(v.Cautions[len(v.Cautions)-1].ID)
	// Output:
	// 5 tsp of table salt <nil>
	// brine.weigh-it
}

// A salt without a published weight is refused; weigh it.
func ExampleFindIngredient() {
	salt, _ := brine.FindIngredient("Table salt")
	fmt.Println(salt.Citation)
	_, err := brine.FindIngredient("coarse salt")
	fmt.Println(errors.Is(err, units.ErrUnknown))
	// Output:
	// USDA, National Nutrient Database for Standard Reference, release 28 (2015), weight table, NDB 02047 (read)
	// true
}

func ExampleIngredients() {
	for _, i := range brine.Ingredients() {
		fmt.Printf("%s: %s weigh %s\n", i.Name, units.Kitchen(i.Volume, 1, units.Cup, units.Teaspoon), i.Mass)
	}
	// Output:
	// table salt: 1 tsp weigh 6 g
	// packed brown sugar: 1 cup weigh 220 g
	// unpacked brown sugar: 1 cup weigh 145 g
	// white sugar: 1 cup weigh 200 g
	// unsifted powdered sugar: 1 cup weigh 120 g
	// honey: 1 cup weigh 339 g
}

// All rows of table salt: they do not agree, 48 teaspoons are 288 g and the cup 292 g.
func ExampleWeighings() {
	for _, i := range brine.Weighings() {
		if i.Name == "table salt" {
			density, _ := i.Density()
			fmt.Println(i.Mass, units.Text(density, units.GramPerMillilitre, 3))
		}
	}
	// Output:
	// 6 g 1.217 g/mL
	// 18 g 1.217 g/mL
	// 292 g 1.234 g/mL
}

func ExampleWeighedSalt() {
	own, err := brine.WeighedSalt("coarse flake salt", units.Cup, 181*units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	m, _ := own.MassOf(units.Cup / 2)
	fmt.Println(m)
	fmt.Println(own.Citation)
	_, err = brine.WeighedSalt("coarse flake salt", units.Cup, 181*units.Milligram)
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output:
	// 90.5 g
	// weighed by the caller (common practice of the trade, no published source)
	// true
}

func ExampleWeighedSugar() {
	syrup, _ := brine.WeighedSugar("maple syrup", 100*units.Millilitre, 132*units.Gram)
	m, _ := syrup.MassOf(units.Tablespoon)
	fmt.Println(units.Text(m, units.Gram, 1))
	// Output: 19.5 g
}

func ExampleIngredient_MassOf() {
	salt, _ := brine.FindIngredient("table salt")
	m, _ := salt.MassOf(2 * units.Tablespoon)
	fmt.Println(m)
	// Output: 36 g
}

func ExampleIngredient_VolumeOf() {
	salt, _ := brine.FindIngredient("table salt")
	v, _ := salt.VolumeOf(40 * units.Gram)
	fmt.Println(units.Kitchen(units.CeilTo(v, units.Teaspoon/4), 4, units.Tablespoon, units.Teaspoon))
	// Output: 2 tbsp 3/4 tsp
}

func ExampleIngredient_Density() {
	honey, _ := brine.FindIngredient("honey")
	density, _ := honey.Density()
	fmt.Println(units.Text(density, units.GramPerMillilitre, 2))
	// Output: 1.43 g/mL
}

func ExampleParseSubstance() {
	s, err := brine.ParseSubstance("sugar")
	fmt.Println(s, err)
	// Output: sugar <nil>
}

func ExampleSubstance() {
	honey, _ := brine.FindIngredient("honey")
	fmt.Println(honey.Substance)
	fmt.Println(brine.SubstanceError{Name: "honey", Got: brine.Sugar, Want: brine.Salt})
	// Output:
	// sugar
	// ingredient "honey" is sugar: expected salt
}

func ExampleSubstanceError() {
	salt, _ := brine.FindIngredient("table salt")
	cure, _ := brine.DryCure(units.Kilogram, 36*units.PerMille, brine.Mix{Salt: 1, Sugar: 1})
	_, err := cure.Volumes(salt, salt)
	fmt.Println(err)
	// Output: ingredient "table salt" is salt: expected sugar
}

// 2.0 g of salt and 70.0 g of water in 100 g of smoked fish, and the salt that 3.5 % asks of 65 g of water.
func ExampleWaterPhaseSalt() {
	share, err := brine.WaterPhaseSalt(2*units.Gram, 70*units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(units.Text(share, units.Percent, 3))
	fmt.Println(share >= brine.DefaultSaltLimit().Least)
	// Output:
	// 2.778 %
	// false
}

func ExampleSaltFor() {
	salt, _ := brine.SaltFor(35*units.PerMille, 65*units.Gram)
	fmt.Println(units.Text(salt, units.Gram, 4))
	// Output: 2.3575 g
}

// Chinook, smoked, NDB 15077 of USDA SR28: 672 mg of sodium and 72.00 g of water in 100 g.
func ExampleSaltFromSodium() {
	salt, _ := brine.SaltFromSodium(672 * units.Milligram)
	share, _ := brine.WaterPhaseSalt(salt, 72*units.Gram)
	fmt.Println(units.Text(salt, units.Gram, 3), units.Text(share, units.Percent, 2))
	// Output: 1.708 g 2.32 %
}

func ExampleSaltLimits() {
	for _, l := range brine.SaltLimits() {
		if !l.Nitrite && l.Pack == brine.AirPack {
			fmt.Println(l.Least, l.Pack, l.Place)
		}
	}
	// Output:
	// 3 % air pack Michigan
	// 2.5 % air pack Maine
}

func ExampleDefaultSaltLimit() {
	limit := brine.DefaultSaltLimit()
	fmt.Println(limit.Least, limit.Pack)
	fmt.Println(limit.Citation)
	// Output:
	// 3.5 % low-oxygen pack
	// US FDA, warning letter FLA-02-27 of 12 February 2002 (2002), least water phase salt (read)
}
