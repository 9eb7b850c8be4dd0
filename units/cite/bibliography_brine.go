package cite

// The bibliography of brine, one entry an edition of one document.
var brineDocuments = [...]Document{
	{
		Key: "FDAHazardsGuide3", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "3rd ed.", Year: "2001", HowRead: FromMemory,
	},
	{
		Key: "FDAHazardsGuide4", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "4th ed.", Year: "2011", HowRead: "mostly from memory; single figures as quoted in secondary notes",
	},
	{
		Key: "FDAHazardsGuide2020", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "4th ed., March 2020", Year: "2020", HowRead: "extracted text of the printing; page numbers are those of the print",
	},
	{
		Key: "FDAHazardsGuide2022", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "4th ed., June 2022", Year: "2022", HowRead: "two table rows as quoted in a public note, the rest from memory",
	},
	{
		Key: "FDAWarningFLA0227", Kind: KindGuidance, Title: "warning letter FLA-02-27 of 12 February 2002",
		Publisher: "US FDA", Year: "2002", HowRead: "direct",
	},
	{
		Key: "FDAColdSmoked2001", Kind: KindGuidance, Title: "processing parameters needed to control pathogens in cold-smoked fish",
		Publisher: "US FDA", Year: "2001", HowRead: "course copy",
	},
	{
		Key: "CFR21Part172Sec170", Kind: KindRegulation, Title: "21 CFR 172.170, sodium nitrate",
		Publisher: "US FDA", HowRead: "copy",
	},
	{
		Key: "CFR21Part172Sec175", Kind: KindRegulation, Title: "21 CFR 172.175, sodium nitrite",
		Publisher: "US FDA", Edition: "1 Apr 2006", Year: "2006", HowRead: "copy",
	},
	{
		Key: "CFR21Part172Sec177", Kind: KindRegulation, Title: "21 CFR 172.177, sodium nitrite in smoked chub",
		Publisher: "US FDA", HowRead: FromMemory,
	},
	{
		Key: "MichiganRegulation569", Kind: KindRegulation, Title: "Michigan Administrative Code, Regulation 569, Smoked Fish (R 285.569)",
		Publisher: "State of Michigan", HowRead: "copies",
	},
	{
		Key: "MaineRules01001Ch359", Kind: KindRegulation, Title: "Code of Maine Rules 01-001 chapter 359, smoked fish",
		Publisher: "State of Maine", HowRead: "copy",
	},
	{
		Key: "NewYork1NYCRR262", Kind: KindRegulation, Title: "1 NYCRR part 262, smoked fish",
		Publisher: "State of New York", HowRead: "copy, in part",
	},
	{
		Key: "NewYork10NYCRR141", Kind: KindRegulation, Title: "10 NYCRR subpart 14-1, food service and vacuum packing",
		Publisher: "State of New York", HowRead: "copy, in part",
	},
	{
		Key: "Alaska18AAC34", Kind: KindRegulation, Title: "18 AAC 34, seafood processing",
		Publisher: "State of Alaska", HowRead: "copy, in part",
	},
	{
		Key: "AFDOModelCode1991", Kind: KindRegulation, Title: "model code for smoked fish",
		Publisher: "AFDO", Year: "1991", HowRead: FromMemory,
	},
	{
		Key: "GreatLakesHACCP2000", Kind: KindGuidance, Title: "model HACCP plan for smoked Great Lakes fish",
		Publisher: "Great Lakes extension", Year: "July 2000", HowRead: "copy",
	},
	{
		Key: "CFIABulletinB21025", Kind: KindGuidance, Title: "bulletin on Food and Drug Regulations B.21.025",
		Publisher: "Canadian Food Inspection Agency", HowRead: "direct",
	},
	{
		Key: "TorryNote82", Kind: KindGuidance, Title: "Advisory Note 82 on smoking fish, earlier text",
		Publisher: "Torry Research Station", HowRead: "copy, in part",
	},
	{
		Key: "TorryNote82Revised", Kind: KindGuidance, Title: "Advisory Note 82 on smoking fish, with accompanying notes of FAO",
		Publisher: "Torry Research Station", Edition: "revised", HowRead: "copy, in part",
	},
	{
		Key: "TorrySmokedSalmonNote", Kind: KindGuidance, Title: "advisory note on smoked salmon",
		Publisher: "Torry Research Station", HowRead: "opening page and a quoted passage",
	},
	{
		Key: "SeaFishBrineTable", Kind: KindGuidance, Title: "training page with a brine strength table",
		Publisher: "UK Sea Fish Industry Authority", HowRead: "direct",
	},
	{
		Key: "BCSaltbrine", Kind: KindGuidance, Title: "Preparing a Saltbrine",
		Publisher: "Province of British Columbia", HowRead: "direct",
	},
	{
		Key: "KitsapExtension1992", Kind: KindGuidance, Title: "brining sheet",
		Publisher: "Kitsap Cooperative Extension", Year: "1992", HowRead: "direct",
	},
	{
		Key: "ColdSmokingTradeBook", Kind: KindBook, Title: "entry on dry salting",
		Publisher: "trade book on cold smoking", HowRead: "transcription",
	},
	{
		Key: "SaltWeighings2012", Kind: KindUnofficial, Title: "one writer's weighings of a quarter cup of seven salts",
		Publisher: "unofficial", Year: "2012", HowRead: "direct, a warning only",
	},
	{
		Key: "RobinsonStokes", Kind: KindBook, Author: "Robinson and Stokes", Title: "Electrolyte Solutions",
		Publisher: "Butterworths", HowRead: FromMemory,
	},
	{
		Key: "HamerWu1972", Kind: KindStudy, Author: "Hamer and Wu", Title: "osmotic and activity coefficients of uni-univalent electrolytes in water at 25 C",
		Publisher: "Journal of Physical and Chemical Reference Data 1", Year: "1972", HowRead: "form and coefficients of sodium chloride as quoted in open codes",
	},
	{
		Key: "PitzerMayorga1973", Kind: KindStudy, Author: "Pitzer and Mayorga", Title: "activity and osmotic coefficients of electrolytes",
		Publisher: "Journal of Physical Chemistry 77", Year: "1973", HowRead: "coefficients as carried by two public solution libraries",
	},
	{
		Key: "PitzerPeiperBusey1984", Kind: KindStudy, Author: "Pitzer, Peiper and Busey", Title: "thermodynamic properties of aqueous sodium chloride",
		Publisher: "Journal of Physical and Chemical Reference Data 13", Year: "1984", HowRead: "as quoted in the test data of an open solutions library",
	},
	{
		Key: "Simion2015", Kind: KindStudy, Author: "Simion", Title: "density polynomial of sodium chloride solutions",
		Year: "2015", HowRead: "coefficients as carried by a public solution library",
	},
	{
		Key: "InternationalCriticalTables", Kind: KindBook, Title: "International Critical Tables, density of sodium chloride solutions",
		Publisher: "McGraw-Hill", Edition: "as reprinted in Perry's Chemical Engineers' Handbook", HowRead: FromMemory,
	},
	{
		Key: "VDIBrine", Kind: KindBook, Title: "heat atlas, brine data",
		Publisher: "VDI", HowRead: "as stored in an open fluid-property library",
	},
	{
		Key: "CRCHandbook102", Kind: KindBook, Title: "Handbook of Chemistry and Physics, concentrative properties of aqueous solutions",
		Publisher: "CRC Press", Edition: "102nd ed.", Year: "2021", HowRead: "transcription of the table",
	},
	{
		Key: "PoradnikFizykochemiczny1974", Kind: KindBook, Title: "Poradnik fizykochemiczny, density of sodium chloride solutions",
		Publisher: "WNT, Warsaw", Year: "1974", HowRead: "copy of the table on a university page",
	},
	{
		Key: "WaterDataPage", Kind: KindData, Title: "Water (data page), list of density by temperature",
		HowRead: "the list on the public page; three of its values also in a copy of the list in a program",
	},
	{
		Key: "Norrish1966", Kind: KindStudy, Author: "Norrish", Title: "water activity of sugar solutions",
		Publisher: "Journal of Food Technology 1", Year: "1966", HowRead: FromMemory,
	},
	{
		Key: "Ross1975", Kind: KindStudy, Author: "Ross", Title: "water activity of mixed solutes",
		Publisher: "Food Technology 29", Year: "1975", HowRead: FromMemory,
	},
	{
		Key: "SaltDiffusivityJapan1992", Kind: KindStudy, Title: "salt diffusion in fish",
		Publisher: "Journal of Cookery Science of Japan 25(4):283", Year: "1992", HowRead: "abstract",
	},
	{
		Key: "SalmonSmokingFoods2020", Kind: KindStudy, Title: "salting and smoking of salmon",
		Publisher: "Foods 9:1048", Year: "2020", HowRead: "table 2",
	},
	{
		Key: "USDAARSGrowthFactors", Kind: KindGuidance, Title: "growth factors of foodborne pathogens (ICMSF 1996 values)",
		Publisher: "USDA ARS", HowRead: "web page",
	},
}
