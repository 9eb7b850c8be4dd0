package cite

// The bibliography of yield, one entry an edition of one document.
var yieldDocuments = [...]Document{
	{
		Key: "USDASR26", Kind: KindData, Title: "National Nutrient Database for Standard Reference, release 26",
		Publisher: "USDA", Year: "2013", HowRead: "copy of the data files",
	},
	{
		Key: "USDASR28", Kind: KindData, Title: "National Nutrient Database for Standard Reference, release 28",
		Publisher: "USDA", Year: "2015", HowRead: "copy of the data files",
	},
	{
		Key: "FAOCWPHandbook", Kind: KindData, Title: "Handbook of Fishery Statistics, indicative conversion factors",
		Publisher: "FAO and CWP", HowRead: "text copies and a machine-readable copy",
	},
	{
		Key: "FAOFoodComposition1953", Kind: KindData, Title: "Food composition tables for international use, items 220-225",
		Publisher: "FAO", Edition: "1949 and 1953", HowRead: "direct",
	},
	{
		Key: "FAOSTATDefinitions", Kind: KindData, Title: "fish food commodity definitions",
		Publisher: "FAOSTAT", HowRead: "direct",
	},
	{
		Key: "GLFCWeightConventions", Kind: KindData, Title: "commercial catch database, note on weight conventions",
		Publisher: "Great Lakes Fishery Commission", HowRead: "direct",
	},
	{
		Key: "AbdollahiRezaei2014", Kind: KindStudy, Author: "Abdollahi and Rezaei", Title: "yields of farmed rainbow trout",
		Publisher: "Journal of Fisheries Science and Technology 2(4):23-34", Year: "2014", HowRead: "abstract",
	},
	{
		Key: "CohoCarcassStudy2004", Kind: KindStudy, Author: "Neira et al.", Title: "carcass quality of two coho populations in a breeding programme",
		Publisher: "Aquaculture", Year: "2004", HowRead: "abstract that contradicts itself; attribution from memory",
	},
	{
		Key: "SalmonSizeDecline2020", Kind: KindStudy, Author: "Oke et al.", Title: "size decline of salmon in Alaska, analysis code",
		Publisher: "Nature Communications", Year: "2020", HowRead: "analysis code; attribution from memory",
	},
	{
		Key: "CommercialFisheriesReview", Kind: KindGuidance, Title: "Commercial Fisheries Review, market forms of fish",
		Publisher: "US Bureau of Commercial Fisheries", HowRead: "scan",
	},
	{
		Key: "PanfishFilletYield2017", Kind: KindStudy, Title: "fillet yields of panfish in Wisconsin",
		Publisher: "North American Journal of Fisheries Management", Year: "2017", HowRead: "abstract",
	},
	{
		Key: "BemidjiYieldStudy2024", Kind: KindStudy, Title: "student study of fillet yields in Minnesota",
		Publisher: "Journal of Earth and Life Science (Bemidji)", Year: "2024", HowRead: "abstract",
	},
	{
		Key: "SalmonIndustryHandbook", Kind: KindBook, Title: "salmon industry handbook",
		Publisher: "industry, as quoted on a fish-count data sheet", HowRead: "as quoted",
	},
	{
		Key: "NOAATechMemoAFSC173", Kind: KindGuidance, Title: "Technical Memorandum NMFS-AFSC-173, weight lost by bleeding",
		Publisher: "NOAA", Year: "2007", HowRead: "abstract",
	},
	{
		Key: "AlaskaSeaGrantMAB37", Kind: KindBook, Author: "Crapo, Paust and Babbitt", Title: "Recoveries and Yields from Pacific Fish and Shellfish, MAB-37",
		Publisher: "Alaska Sea Grant", Edition: "rev. 2004", Year: "2004", HowRead: FromMemory,
	},
	{
		Key: "ExtensionYieldRule", Kind: KindGuidance, Title: "rules of thumb for fillet shares and for pounds of fish per jar",
		Publisher: "extension services, not identified", HowRead: FromMemory,
	},
	{
		Key: "NPAFCYearbook", Kind: KindData, Title: "statistical yearbook, table 26, mean weights",
		Publisher: "NPAFC", Year: "1997 catch", HowRead: "direct",
	},
	{
		Key: "BirginGentil2009", Kind: KindStudy, Author: "Birgin and Gentil", Title: "New and improved results for packing identical unitary radius circles",
		Year: "2009", HowRead: "text copy of table 1",
	},
	{
		Key: "CirclePackingData", Kind: KindData, Title: "28-digit radii of packed circles",
		Publisher: "public C source file", HowRead: "direct; misprints n = 18",
	},
	{
		Key: "TradeCannerTables", Kind: KindUnofficial, Title: "jars per canner load, trade tables (makers not named)",
		Publisher: "trade", HowRead: "several tables, a few figures from memory",
	},
	{
		Key: "TradeJarSizes", Kind: KindUnofficial, Title: "jar size charts (makers not named)",
		Publisher: "trade", HowRead: "general charts",
	},
	{
		Key: "CanningGuideAuthorsPage", Kind: KindUnofficial, Title: "page citing the authors of the USDA guide on three layers",
		Publisher: "web page", HowRead: "direct",
	},
	{
		Key: "FDAEPATechnicalPage", Kind: KindGuidance, Title: "technical page behind the advice about eating fish",
		Publisher: "US FDA and EPA", HowRead: "direct, in part",
	},
	{
		Key: "EPALocalFish", Kind: KindGuidance, Title: "page on locally caught fish",
		Publisher: "US EPA", HowRead: "direct",
	},
	{
		Key: "WisconsinPossession", Kind: KindGuidance, Title: "page on possession of fish",
		Publisher: "Wisconsin DNR", HowRead: "direct",
	},
	{
		Key: "CaliforniaPossession", Kind: KindGuidance, Title: "answer on possession of fish",
		Publisher: "California DFW", HowRead: "direct",
	},
	{
		Key: "OntarioPossession", Kind: KindGuidance, Title: "angling pages on possession of fish",
		Publisher: "Province of Ontario", HowRead: "direct",
	},
	{
		Key: "MichiganHouseBill5481", Kind: KindUnofficial, Title: "news report on House Bill 5481 of 2010",
		Publisher: "Michigan press", Year: "2010", HowRead: "direct, current law not read",
	},
	{
		Key: "AlaskaPossession5AAC", Kind: KindRegulation, Title: "5 AAC 65.020 and 5 AAC 39.975, possession of fish",
		Publisher: "State of Alaska", HowRead: "direct, one definition from memory",
	},
	{
		Key: "AlaskaMagazineSupply", Kind: KindUnofficial, Title: "article on a family's yearly salmon",
		Publisher: "Alaska magazine", HowRead: "direct",
	},
	{
		Key: "Birkeland2004", Kind: KindStudy, Author: "Birkeland et al.", Title: "salting and smoking losses of salmon",
		Year: "2004", HowRead: "abstract",
	},
	{
		Key: "TradeSmokingLosses", Kind: KindUnofficial, Title: "step losses in hot smoking",
		Publisher: "trade knowledge, document not identified", HowRead: FromMemory,
	},
}
