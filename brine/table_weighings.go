package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// weighings are the printed rows, the rows of a name together. The first row of a name is the one in use: the
// lightest for salt, the cup for the others. NDB is the number of the food in the table.
var weighings = [...]Ingredient{
	perMeasure("table salt", Salt, units.Teaspoon, 6_000, "NDB 02047"),
	perMeasure("table salt", Salt, units.Tablespoon, 18_000, "NDB 02047"),
	perMeasure("table salt", Salt, units.Cup, 292_000, "NDB 02047"),
	perMeasure("packed brown sugar", Sugar, units.Cup, 220_000, "NDB 19334"),
	perMeasure("packed brown sugar", Sugar, units.Teaspoon, 4_600, "NDB 19334"),
	perMeasure("unpacked brown sugar", Sugar, units.Cup, 145_000, "NDB 19334"),
	perMeasure("unpacked brown sugar", Sugar, units.Teaspoon, 3_000, "NDB 19334"),
	perMeasure("white sugar", Sugar, units.Cup, 200_000, "NDB 19335"),
	perMeasure("white sugar", Sugar, units.Teaspoon, 4_200, "NDB 19335"),
	perMeasure("unsifted powdered sugar", Sugar, units.Cup, 120_000, "NDB 19336"),
	perMeasure("honey", Sugar, units.Cup, 339_000, "NDB 19296"),
	perMeasure("honey", Sugar, units.Tablespoon, 21_000, "NDB 19296"),
}

func perMeasure(name string, substance Substance, measure units.Volume, milligrams int, ndb string) Ingredient {
	return Ingredient{
		Name: name, Substance: substance, Volume: measure, Mass: units.Mass(milligrams) * units.Milligram,
		Citation: cite.Citation{Source: cite.USDASR28, Where: "weight table, " + ndb, Basis: cite.Read},
	}
}
