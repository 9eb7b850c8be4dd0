package cite

// The bibliography of units and physics, one entry an edition of one document.
var physicsDocuments = [...]Document{
	{
		Key: "NISTSP811", Kind: KindStandard, Author: "Thompson and Taylor", Title: "Guide for the Use of the International System of Units, NIST Special Publication 811",
		Publisher: "NIST", HowRead: "machine-readable transcription of appendix B, edition not stated there",
	},
	{
		Key: "CFR21Part101Sec9", Kind: KindRegulation, Title: "21 CFR 101.9, nutrition labelling, household measures",
		Publisher: "US FDA", HowRead: "as quoted in a public ticket",
	},
	{
		Key: "KitchenMeasures", Kind: KindUnofficial, Title: "kitchen measures outside the SI (metric cup, Australian tablespoon)",
		Publisher: "common usage", HowRead: "as quoted on other pages",
	},
	{
		Key: "USStandardAtmosphere1976", Kind: KindStandard, Title: "US Standard Atmosphere",
		Publisher: "NOAA, NASA and USAF", Year: "1976", HowRead: "equations and constants as written in open-source codes, printed tables not read",
	},
	{
		Key: "SFSUAtmosphericPressure", Kind: KindGuidance, Title: "Atmospheric Pressure, course page with the usual range at sea level",
		Publisher: "San Francisco State University, Geosciences", HowRead: "excerpt",
	},
	{
		Key: "ISO2533y1975", Kind: KindStandard, Title: "ISO 2533, Standard Atmosphere",
		Publisher: "ISO", Year: "1975", HowRead: "machine-readable transcription of the tables, trailing zeros not kept",
	},
	{
		Key: "ISO2533y2025", Kind: KindStandard, Title: "ISO 2533, Standard Atmosphere",
		Publisher: "ISO", Year: "2025", HowRead: "output of the reference implementation, print not read",
	},
	{
		Key: "ICAODoc7488Ed3", Kind: KindStandard, Title: "Doc 7488, Manual of the ICAO Standard Atmosphere",
		Publisher: "ICAO", Edition: "3rd ed.", Year: "1993", HowRead: "two figures as quoted in the tests of an open-source atmosphere library",
	},
	{
		Key: "ASHRAEFundamentals2017", Kind: KindBook, Title: "Handbook of Fundamentals, chapter 1, Psychrometrics (SI)",
		Publisher: "ASHRAE", Edition: "2017 ed.", Year: "2017", HowRead: "equations and table rows as quoted in the source and tests of an open psychrometric library",
	},
	{
		Key: "ASHRAEFundamentalsIPReprint", Kind: KindBook, Title: "Handbook of Fundamentals, chapter 1, standard atmosphere table (I-P)",
		Publisher: "ASHRAE", Edition: "edition not stated", HowRead: "reprint of the table, three rows also quoted in the tests of an open psychrometric library",
	},
	{
		Key: "HylandWexler1983", Kind: KindStudy, Author: "Hyland and Wexler", Title: "formulations of the saturation pressure of water and ice",
		Publisher: "ASHRAE Transactions 89", Year: "1983", HowRead: "coefficients as carried by ASHRAE Fundamentals, paper not read",
	},
	{
		Key: "PsychroLib", Kind: KindSoftware, Title: "PsychroLib, psychrometric functions and their tests",
		Publisher: "open-source library", Edition: "2.5.0", HowRead: "source and tests",
	},
	{
		Key: "LudwigProcessDesign3", Kind: KindBook, Author: "Ludwig", Title: "Applied Process Design for Chemical and Petrochemical Plants, volume 1",
		Edition: "3rd ed.", HowRead: "scanned copy of the table",
	},
	{
		Key: "IAPWSR797", Kind: KindStandard, Title: "R7-97, Industrial Formulation 1997 (IF97) for the properties of water and steam",
		Publisher: "IAPWS", Year: "2012", HowRead: "coefficients and check values as quoted in several open-source codes",
	},
	{
		Key: "IAPWSSR186", Kind: KindStandard, Title: "SR1-86, saturation properties of ordinary water substance",
		Publisher: "IAPWS", Year: "1992", HowRead: "coefficients and check values as quoted in two open-source codes",
	},
	{
		Key: "InternationalSteamTables2019", Kind: KindBook, Author: "Kretzschmar and Wagner", Title: "International Steam Tables",
		Publisher: "Springer", Edition: "3rd ed.", Year: "2019", HowRead: "rows as quoted in the tests of an open-source steam library, trailing zeros not kept",
	},
	{
		Key: "NBSNRCSteamTables1984", Kind: KindBook, Author: "Haar, Gallagher and Kell", Title: "NBS/NRC Steam Tables",
		Publisher: "Hemisphere", Year: "1984", HowRead: "rows as quoted in open-source copies of a public list of test values",
	},
	{
		Key: "GaugeSteamListReprint", Kind: KindUnofficial, Title: "saturated steam by gauge pressure at sea level, whole degrees",
		Publisher: "unnamed engineering handbook, reprinted", HowRead: "reprint with misprints, a warning only",
	},
	{
		Key: "HighAltitudeCookingChart", Kind: KindUnofficial, Title: "US high-altitude cooking chart",
		Publisher: "reprint, original not named", HowRead: "reprint",
	},
	{
		Key: "EncyclopediaHighAltitude", Kind: KindUnofficial, Title: "High-altitude cooking, table of boiling points",
		Publisher: "encyclopedia, credited there to NOAA and NASA", HowRead: "direct",
	},
	{
		Key: "FSISHighAltitude", Kind: KindGuidance, Title: "statement on the boiling point at altitude",
		Publisher: "USDA FSIS", HowRead: "as quoted on a trade news page",
	},
	{
		Key: "UnofficialBoilingTable", Kind: KindUnofficial, Title: "boiling points from an isothermal atmosphere, credited to the USDA guide",
		Publisher: "unofficial web page", HowRead: "direct, a warning only",
	},
	{
		Key: "UnofficialBoilingTableMetric", Kind: KindUnofficial, Title: "metric list of boiling points",
		Publisher: "unofficial web page", HowRead: "direct, a warning only",
	},
	{
		Key: "DryingCourseText", Kind: KindUnofficial, Title: "heat transfer to air along a wet surface",
		Publisher: "course text and worked page on drying", HowRead: "direct",
	},
}
