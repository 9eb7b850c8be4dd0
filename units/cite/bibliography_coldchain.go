package cite

// The bibliography of cold chain, one entry an edition of one document.
var coldchainDocuments = [...]Document{
	{
		Key: "FDAFoodCode", Kind: KindRegulation, Title: "Food Code",
		Publisher: "US FDA", Edition: "edition not stated", HowRead: "sections as adopted in state rules (Washington, District of Columbia, Tennessee, Wisconsin, South Dakota)",
	},
	{
		Key: "CDCTapeworm2017", Kind: KindStudy, Title: "Japanese broad tapeworm in Alaskan salmon",
		Publisher: "US CDC journal", Year: "2017", HowRead: "press summary",
	},
	{
		Key: "SNHDParasiteFAQ", Kind: KindGuidance, Title: "questions on freezing for parasites",
		Publisher: "Southern Nevada Health District", HowRead: "direct",
	},
	{
		Key: "EURegulation853y2004", Kind: KindRegulation, Title: "Regulation (EC) 853/2004, annex III section VIII, as amended by Regulation (EU) 1276/2011",
		Publisher: "European Union", Year: "2011", HowRead: "annex of the amending regulation, German text",
	},
	{
		Key: "CodexCXC52", Kind: KindStandard, Title: "CXC 52-2003, code of practice for fish and fishery products",
		Publisher: "Codex Alimentarius", Year: "2003", HowRead: FromMemory,
	},
	{
		Key: "MinnesotaParasites", Kind: KindGuidance, Title: "page on fish tapeworm",
		Publisher: "University of Minnesota Extension", HowRead: "as quoted second-hand",
	},
	{
		Key: "NorthDakotaGameFish", Kind: KindGuidance, Title: "page on fish parasites",
		Publisher: "North Dakota Game and Fish", HowRead: "direct",
	},
	{
		Key: "PublicHealthTrainingText", Kind: KindUnofficial, Title: "older US public-health training text on tapeworm",
		Publisher: "copy without its publisher", HowRead: "copy, a warning only",
	},
	{
		Key: "GLFCParasiteGuide", Kind: KindGuidance, Title: "guide to parasites of Great Lakes fish",
		Publisher: "Great Lakes Fishery Commission", HowRead: "copy",
	},
	{
		Key: "FederalColdStorageChart", Kind: KindGuidance, Title: "cold storage chart",
		Publisher: "US federal food safety site", HowRead: "as syndicated",
	},
	{
		Key: "FederalColdStorageChart2021", Kind: KindGuidance, Title: "cold storage chart",
		Publisher: "US federal food safety site", Edition: "since about 2021", HowRead: "two copies of the web page",
	},
	{
		Key: "USDAFDAConsumerAdvice", Kind: KindGuidance, Title: "consumer advice on time and temperature",
		Publisher: "USDA and FDA", HowRead: "several excerpts, primary text from memory",
	},
	{
		Key: "USDAAnswerPage", Kind: KindGuidance, Title: "answer page on storing fish",
		Publisher: "USDA", HowRead: "as repeated by a news page",
	},
	{
		Key: "USDAFoodKeeperData", Kind: KindData, Title: "data behind consumer storage advice",
		Publisher: "USDA", Edition: "edition not stated", HowRead: "copy of the data, two items",
	},
	{
		Key: "FDAStorageChart", Kind: KindGuidance, Title: "refrigerator and freezer storage chart",
		Publisher: "US FDA", HowRead: "as repeated by a grocery retailer",
	},
	{
		Key: "SeafoodTradeChart", Kind: KindUnofficial, Title: "storage chart",
		Publisher: "seafood trade body", HowRead: "excerpt",
	},
	{
		Key: "OregonConsumerPage", Kind: KindGuidance, Title: "consumer page on salmon",
		Publisher: "Oregon State University Extension", HowRead: "excerpt",
	},
	{
		Key: "ApplianceManual", Kind: KindUnofficial, Title: "household appliance manual citing USDA and Washington State EB1205",
		Publisher: "maker not named", HowRead: "excerpt",
	},
	{
		Key: "FreezerManuals", Kind: KindUnofficial, Title: "household freezer manuals citing USDA",
		Publisher: "makers not named", HowRead: "excerpts",
	},
	{
		Key: "CookbookStorage2012", Kind: KindUnofficial, Title: "cookbook storage table",
		Publisher: "unofficial", Year: "2012", HowRead: "excerpt",
	},
	{
		Key: "NCStateFAQ", Kind: KindGuidance, Title: "questions on stored food",
		Publisher: "North Carolina State Extension", HowRead: "excerpt",
	},
	{
		Key: "MinnesotaFreezing", Kind: KindGuidance, Title: "freezing page",
		Publisher: "University of Minnesota Extension", HowRead: "direct",
	},
	{
		Key: "WestVirginiaFreezing", Kind: KindGuidance, Title: "freezing page",
		Publisher: "West Virginia University Extension", HowRead: "direct",
	},
	{
		Key: "MSUEThawing", Kind: KindGuidance, Title: "thawing of vacuum-packed fish",
		Publisher: "Michigan State University Extension", HowRead: "trade magazine summary",
	},
	{
		Key: "ExtensionSmokedKeeping", Kind: KindGuidance, Title: "keeping of smoked fish, sheets not identified",
		Publisher: "extension services", HowRead: FromMemory,
	},
	{
		Key: "PowerOutageAdvice", Kind: KindGuidance, Title: "food safety in a power outage",
		Publisher: "USDA and FDA", HowRead: "as quoted on other pages",
	},
	{
		Key: "WSUPowerOutage2011", Kind: KindGuidance, Title: "news page on freezers in a power outage",
		Publisher: "Washington State University Extension", Year: "2011", HowRead: "direct",
	},
	{
		Key: "UKTenDayRule", Kind: KindGuidance, Title: "chilled vacuum-packed food, 3 C and ten days",
		Publisher: "UK Food Standards Agency", HowRead: "read in part, the rest from memory",
	},
	{
		Key: "FDACompendium", Kind: KindGuidance, Title: "compendium of fish and fishery product methods and limits",
		Publisher: "US FDA", HowRead: "excerpt",
	},
	{
		Key: "FAOWHOHistamine2018", Kind: KindGuidance, Title: "Histamine in Salmonids",
		Publisher: "FAO and WHO", Year: "2018", HowRead: "excerpt and a news summary",
	},
	{
		Key: "HistamineSurvey2021", Kind: KindStudy, Title: "histamine in fish on the Polish market",
		Publisher: "Journal of Veterinary Research 2021-0066", Year: "2021", HowRead: "table",
	},
	{
		Key: "FAO444", Kind: KindBook, Title: "Fisheries Technical Paper 444, Assessment and Management of Seafood Safety and Quality",
		Publisher: "FAO", Year: "2003", HowRead: "one page",
	},
	{
		Key: "Erikson2018", Kind: KindStudy, Author: "Erikson et al.", Title: "gutted and whole rainbow trout on ice",
		Year: "2018", HowRead: "abstract",
	},
	{
		Key: "FAO348", Kind: KindBook, Author: "Huss", Title: "Fisheries Technical Paper 348, Quality and Quality Changes in Fresh Fish",
		Publisher: "FAO", Year: "1995", HowRead: "as quoted in a trade journal and a textbook chapter; tables and equation from memory",
	},
	{
		Key: "Dalgaard2004", Kind: KindBook, Author: "Dalgaard, Murillo and Jorgensen", Title: "Seafood Quality and Safety, chapter 22, modelling shelf life",
		Year: "2004", HowRead: "summary",
	},
	{
		Key: "SkinnerLarkin1998", Kind: KindStudy, Author: "Skinner and Larkin", Title: "conservative prediction of time to botulinum toxin",
		Publisher: "Journal of Food Protection 61:1154", Year: "1998", HowRead: FromMemory,
	},
	{
		Key: "BakerGenigeorgis1990", Kind: KindStudy, Author: "Baker and Genigeorgis", Title: "time to botulinum toxin in fresh fish under modified atmosphere",
		Publisher: "Journal of Food Protection 53", Year: "1990", HowRead: FromMemory,
	},
	{
		Key: "Garcia1987", Kind: KindStudy, Author: "Garcia et al.", Title: "botulinum toxin in salmon fillets",
		Publisher: "Journal of Food Protection 50:330", Year: "1987", HowRead: "abstract",
	},
	{
		Key: "GarciaGenigeorgis1987", Kind: KindStudy, Author: "Garcia and Genigeorgis", Title: "botulinum toxin in salmon homogenate",
		Publisher: "Journal of Food Protection 50:390", Year: "1987", HowRead: "abstract",
	},
	{
		Key: "ListeriaRiskAssessment2003", Kind: KindGuidance, Title: "quantitative risk assessment of Listeria monocytogenes in ready-to-eat foods",
		Publisher: "FDA and FSIS", Year: "2003", HowRead: "excerpt of appendix 8",
	},
	{
		Key: "MejlholmDalgaard2009", Kind: KindStudy, Author: "Mejlholm and Dalgaard", Title: "growth of Listeria monocytogenes in ready-to-eat seafood",
		Publisher: "Journal of Food Protection", Year: "2009", HowRead: "equations in a transcription (open R package)",
	},
	{
		Key: "Jia2020", Kind: KindStudy, Author: "Jia et al.", Title: "growth of Listeria monocytogenes in raw salmon",
		Publisher: "Food Control 114", Year: "2020", HowRead: "coefficients in a transcription (open R package)",
	},
	{
		Key: "FAOWHOListeriaPackage", Kind: KindSoftware, Title: "R package of the FAO/WHO Listeria risk model",
		Publisher: "open-source library", HowRead: "reference pages",
	},
	{
		Key: "GermanRedfishStudy", Kind: KindStudy, Title: "redfish on ice",
		HowRead: "abstract",
	},
	{
		Key: "FAO331", Kind: KindBook, Title: "Fisheries Technical Paper 331, ice in small-scale fisheries",
		Publisher: "FAO", HowRead: "excerpt of chapter 3",
	},
	{
		Key: "FAO436", Kind: KindBook, Title: "Fisheries Technical Paper 436, ice in small fishing vessels, chapter 7",
		Publisher: "FAO", Year: "2003", HowRead: "text and symbols, equation images missing",
	},
	{
		Key: "FAOIceMeltTest", Kind: KindBook, Title: "ice meltage test of an insulated box",
		Publisher: "FAO", HowRead: FromMemory,
	},
	{
		Key: "IcelandicFishHandling", Kind: KindGuidance, Title: "guidance on handling fish with ice",
		Publisher: "Iceland", HowRead: "excerpt",
	},
	{
		Key: "TradeIceTable", Kind: KindUnofficial, Title: "ice to chill 10 kg of fish, in the manner of Torry and FAO",
		Publisher: "trade page", HowRead: "direct",
	},
	{
		Key: "IIRFrozenFoods1986", Kind: KindBook, Title: "Recommendations for the Processing and Handling of Frozen Foods",
		Publisher: "International Institute of Refrigeration", Edition: "3rd ed.", Year: "1986", HowRead: FromMemory,
	},
	{
		Key: "IIRFrozenFoods1972", Kind: KindBook, Title: "Recommendations for the Processing and Handling of Frozen Foods",
		Publisher: "International Institute of Refrigeration", Edition: "1972, as carried in FAO texts", Year: "1972", HowRead: FromMemory,
	},
	{
		Key: "IIRColdStoreQuote", Kind: KindUnofficial, Title: "IIR store temperatures",
		Publisher: "cold-store company page", HowRead: "as quoted",
	},
	{
		Key: "Perennia2022", Kind: KindGuidance, Title: "fact sheet on frozen seafood",
		Publisher: "Perennia", Year: "2022", HowRead: "direct",
	},
	{
		Key: "EncyclopaediaBritannica", Kind: KindBook, Title: "fish processing, freezing",
		Publisher: "Encyclopaedia Britannica", HowRead: "direct",
	},
	{
		Key: "UnofficialReaderComment", Kind: KindUnofficial, Title: "reader's comment on a draft hazards table",
		Publisher: "web page", HowRead: "excerpt",
	},
}
