package cite

// The bibliography of heat, one entry an edition of one document.
var heatDocuments = [...]Document{
	{
		Key: "AdamsMoss", Kind: KindBook, Author: "Adams and Moss", Title: "Food Microbiology",
		HowRead: "excerpt",
	},
	{
		Key: "FloridaTeachingDeck", Kind: KindGuidance, Title: "thermal processing, teaching deck",
		Publisher: "University of Florida", HowRead: "direct",
	},
	{
		Key: "Stumbo1973", Kind: KindBook, Author: "Stumbo", Title: "Thermobacteriology in Food Processing",
		Publisher: "Academic Press", Edition: "2nd ed.", Year: "1973", HowRead: FromMemory,
	},
	{
		Key: "BotulinumCookUK", Kind: KindGuidance, Title: "botulinum cook of three minutes",
		Publisher: "UK and Codex practice", HowRead: FromMemory,
	},
	{
		Key: "FDAAcidifiedDraft", Kind: KindGuidance, Title: "draft guidance on acidified foods, table 7",
		Publisher: "US FDA", Edition: "draft", HowRead: "copy",
	},
	{
		Key: "SporesIJFST1988", Kind: KindStudy, Title: "heat resistance of spores",
		Publisher: "International Journal of Food Science and Technology 23:373", Year: "1988", HowRead: "abstract",
	},
	{
		Key: "OdlaugPflug1977", Kind: KindStudy, Author: "Odlaug and Pflug", Title: "heat resistance of botulinum spores",
		Publisher: "Applied and Environmental Microbiology 34:23", Year: "1977", HowRead: "abstract",
	},
	{
		Key: "Rhodehamel1991", Kind: KindStudy, Author: "Rhodehamel et al.", Title: "type E spores in menhaden surimi",
		Publisher: "Journal of Food Science", Year: "1991", HowRead: "abstract",
	},
	{
		Key: "Lindstrom2003", Kind: KindStudy, Author: "Lindstrom et al.", Title: "non-proteolytic botulinum in vacuum-packed hot-smoked fish",
		Publisher: "Applied and Environmental Microbiology 69:4029", Year: "2003", HowRead: "abstract",
	},
	{
		Key: "Wachnicka2016", Kind: KindStudy, Author: "Wachnicka et al.", Title: "review of D values of non-proteolytic botulinum",
		Publisher: "Applied and Environmental Microbiology", Year: "2016", HowRead: "abstract",
	},
	{
		Key: "BenEmbarekHuss1993", Kind: KindStudy, Author: "Ben Embarek and Huss", Title: "Listeria in cooked fish",
		Publisher: "International Journal of Food Microbiology 20:85", Year: "1993", HowRead: "abstract",
	},
	{
		Key: "ColdSmokedPasteurizing", Kind: KindStudy, Title: "pasteurising cold-smoked salmon",
		Publisher: "Journal of Aquatic Food Product Technology", HowRead: "abstract",
	},
	{
		Key: "HarrisonHuang1990", Kind: KindStudy, Author: "Harrison and Huang", Title: "Listeria in crab meat",
		Publisher: "Journal of Food Protection 53:878", Year: "1990", HowRead: "abstract",
	},
	{
		Key: "BuduAmoako1992", Kind: KindStudy, Author: "Budu-Amoako et al.", Title: "Listeria in lobster meat",
		Publisher: "Journal of Food Protection 55:211", Year: "1992", HowRead: "abstract",
	},
	{
		Key: "LiHuangHwang2016", Kind: KindStudy, Author: "Li, Huang and Hwang", Title: "Listeria in fish",
		Publisher: "Food Control", Year: "2016", HowRead: "abstract",
	},
	{
		Key: "HeatStudyJFP1991", Kind: KindStudy, Title: "heat resistance study",
		Publisher: "Journal of Food Protection 54:334", Year: "1991", HowRead: "abstract",
	},
	{
		Key: "Bradshaw1985", Kind: KindStudy, Author: "Bradshaw et al.", Title: "Listeria in milk",
		Publisher: "Journal of Food Protection", Year: "1985", HowRead: "abstract",
	},
	{
		Key: "FoodMicrobiologyHandbook", Kind: KindBook, Title: "D and z values, table 10.10",
		Publisher: "food microbiology handbook", HowRead: "table",
	},
	{
		Key: "Geankoplis", Kind: KindBook, Author: "Geankoplis", Title: "Transport Processes and Unit Operations",
		Edition: "3rd ed. by its title", HowRead: "transcription of worked examples in open notebooks; section 9.6 from memory",
	},
	{
		Key: "ToledoSlides", Kind: KindBook, Author: "Toledo", Title: "exercise slides on thermal processing, after his textbook",
		Publisher: "course slides", HowRead: "statements read; answers from memory",
	},
	{
		Key: "BerkSlides", Kind: KindBook, Author: "Berk", Title: "exercise slides on thermal processing, after his textbook",
		Publisher: "course slides", HowRead: "statements",
	},
	{
		Key: "ThermalLectureNotes", Kind: KindBook, Title: "Thermal process calculation, lecture notes",
		Publisher: "university course", HowRead: "direct",
	},
	{
		Key: "UnofficialStudentAssignment", Kind: KindUnofficial, Title: "student assignment with a slip in its answer",
		Publisher: "unofficial", HowRead: "direct, a warning only",
	},
	{
		Key: "FoodBiochemistryProcessing2", Kind: KindBook, Title: "Food Biochemistry and Food Processing, chapter 38",
		Publisher: "Wiley-Blackwell", Edition: "2nd ed.", Year: "2012", HowRead: "table 38.6 and text",
	},
	{
		Key: "BallOlson1957", Kind: KindBook, Author: "Ball and Olson", Title: "Sterilization in Food Technology",
		Publisher: "McGraw-Hill", Year: "1957", HowRead: FromMemory,
	},
	{
		Key: "FSAVacuumTraining", Kind: KindGuidance, Title: "vacuum packing training, module 3 section 2",
		Publisher: "UK Food Standards Agency", HowRead: "direct; data credited there to a chilled-food guide, 4th ed. 2006",
	},
	{
		Key: "FSAListeriaShortList", Kind: KindGuidance, Title: "equivalents of 70 C for 2 minutes",
		Publisher: "UK FSA and ACMSF", HowRead: "as quoted in three training pages",
	},
	{
		Key: "NZMPI201605", Kind: KindGuidance, Title: "technical paper 2016/05, origin of 70 C for 2 minutes",
		Publisher: "New Zealand MPI", Year: "2016", HowRead: "direct",
	},
	{
		Key: "FSISAppendixA1999", Kind: KindGuidance, Title: "Appendix A, compliance guidelines for cooked beef",
		Publisher: "USDA FSIS", Year: "1999", HowRead: "copy, superseded by later revisions",
	},
	{
		Key: "Cengel", Kind: KindBook, Author: "Cengel", Title: "Heat and Mass Transfer",
		Publisher: "McGraw-Hill", HowRead: "page scan of table 4-2",
	},
	{
		Key: "NellisKlein", Kind: KindBook, Author: "Nellis and Klein", Title: "Heat Transfer, as used in the documentation of a general equation solver",
		Publisher: "Cambridge University Press", HowRead: "example line in function documentation",
	},
	{
		Key: "ChoiOkos1986", Kind: KindStudy, Author: "Choi and Okos", Title: "effects of temperature and composition on the thermal properties of foods",
		Publisher: "Elsevier", Year: "1986", HowRead: "as printed in Ibarz and Barbosa-Canovas, page scan",
	},
	{
		Key: "ASHRAERefrigeration2006", Kind: KindBook, Title: "Handbook of Refrigeration, thermal properties of foods",
		Publisher: "ASHRAE", Edition: "2006 ed.", Year: "2006", HowRead: "equations in a transcription inside an open fluid-property library; a table in a reproduction; compositions from memory",
	},
	{
		Key: "Earle", Kind: KindBook, Author: "Earle", Title: "Unit Operations in Food Processing",
		Publisher: "NZIFST", Edition: "web edition", HowRead: "direct",
	},
	{
		Key: "FAOV3630E", Kind: KindBook, Title: "document V3630E, freezing in fisheries, chapter 19",
		Publisher: "FAO", HowRead: "scan with errors",
	},
	{
		Key: "Tchigeov1979", Kind: KindStudy, Author: "Tchigeov", Title: "share of frozen water in foods",
		Year: "1979", HowRead: "the equation as coded after an ASHRAE chapter",
	},
	{
		Key: "Pham1986", Kind: KindStudy, Author: "Pham", Title: "simplified freezing times of foods",
		Year: "1986", HowRead: "form in a course outline; constants from memory",
	},
	{
		Key: "Plank", Kind: KindBook, Author: "Plank", Title: "freezing time equation",
		Publisher: "textbooks", HowRead: "as printed in textbooks; brick formula from memory",
	},
}
