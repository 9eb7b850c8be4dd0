package cite

// The bibliography of canning, one entry an edition of one document.
var canningDocuments = [...]Document{
	{
		Key: "USDAGuide1Rev1994", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 1",
		Publisher: "USDA", Edition: "AIB 539, rev. 1994", Year: "1994", HowRead: "plain-text transcriptions of single sections",
	},
	{
		Key: "USDAGuide2Rev1994", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 2",
		Publisher: "USDA", Edition: "AIB 539, rev. 1994", Year: "1994", HowRead: "plain-text transcription that does not state its revision",
	},
	{
		Key: "USDAGuide5Rev1994", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 5",
		Publisher: "USDA", Edition: "AIB 539, rev. 1994", Year: "1994", HowRead: "plain-text transcriptions of single tables",
	},
	{
		Key: "USDAGuide1Rev2009", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 1",
		Publisher: "USDA", Edition: "AIB 539, rev. 2009", Year: "2009", HowRead: "as cited in an extension column",
	},
	{
		Key: "USDAGuide1Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 1",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	{
		Key: "USDAGuide3Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 3",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	{
		Key: "USDAGuide4Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 4",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	{
		Key: "USDAGuide5Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 5",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	{
		Key: "USDAHomeCanningMeat", Kind: KindGuidance, Title: "Home Canning of Meat and Poultry",
		Publisher: "USDA ARS", Edition: "edition not stated", HowRead: "one table",
	},
	{
		Key: "MSUEPreservingFoodSafely1997", Kind: KindGuidance, Title: "Preserving Food Safely, data base of numbered items",
		Publisher: "Michigan State University Extension", Year: "1997", HowRead: "plain-text copies of single items",
	},
	{
		Key: "MissouriCanningQuestions", Kind: KindGuidance, Title: "Pressure canning questions and expert advice, web page",
		Publisher: "University of Missouri Extension", HowRead: "excerpt",
	},
	{
		Key: "PNW421", Kind: KindGuidance, Title: "Using and Caring for Your Pressure Canner, PNW 421",
		Publisher: "Pacific Northwest Extension", HowRead: "transcription",
	},
	{
		Key: "PNW450", Kind: KindGuidance, Title: "Canning Smoked Fish at Home, PNW 450",
		Publisher: "Pacific Northwest Extension", HowRead: "transcription, in part",
	},
	{
		Key: "WisconsinSeaGrantCanning", Kind: KindGuidance, Title: "Home Canning of Fish, WISCU-G-14-010",
		Publisher: "Wisconsin Sea Grant", HowRead: "transcription",
	},
	{
		Key: "AskExtension889422", Kind: KindGuidance, Title: "answer 889422",
		Publisher: "Ask Extension", Year: "2024", HowRead: "direct",
	},
	{
		Key: "IowaState20240102", Kind: KindGuidance, Title: "article of 2024-01-02 on pressure canners and small loads",
		Publisher: "Iowa State University Extension", Year: "2024", HowRead: "direct",
	},
	{
		Key: "RaabHilderbrand1993", Kind: KindStudy, Author: "Raab and Hilderbrand", Title: "home-canned smoked fish",
		Publisher: "Journal of Food Protection 56(7):619", Year: "1993", HowRead: "abstract; authors and year from memory",
	},
	{
		Key: "PublicGaugeTestingPage", Kind: KindUnofficial, Title: "public gauge-testing page citing USDA",
		Publisher: "web page", HowRead: "direct",
	},
	{
		Key: "UtahStateHighAltitude", Kind: KindGuidance, Title: "high-altitude canning publication",
		Publisher: "Utah State University Extension", HowRead: FromMemory,
	},
	{
		Key: "ColoradoStateHighAltitude", Kind: KindGuidance, Title: "high-altitude canning publication",
		Publisher: "Colorado State University Extension", HowRead: FromMemory,
	},
	{
		Key: "MinnesotaCanningGuides2024", Kind: KindGuidance, Title: "Canning quick reference guides",
		Publisher: "University of Minnesota Extension", Edition: "reviewed 2024", Year: "2024", HowRead: "direct",
	},
	{
		Key: "UnofficialConsumerCharts", Kind: KindUnofficial, Title: "consumer altitude charts (a jar leaflet and household pages, makers not named)",
		Publisher: "unofficial", HowRead: "direct, a warning only",
	},
	{
		Key: "UnofficialOldPressureRule", Kind: KindUnofficial, Title: "tabulation of the older continuous pressure rule",
		Publisher: "unofficial", HowRead: "direct, superseded",
	},
	{
		Key: "UnofficialMetricBands", Kind: KindUnofficial, Title: "metric restatement of the USDA bands",
		Publisher: "unofficial", HowRead: "direct",
	},
	{
		Key: "UnofficialRecipePages", Kind: KindUnofficial, Title: "recipe and hobby pages with canning figures",
		Publisher: "unofficial", HowRead: "direct, a warning only",
	},
	{
		Key: "UnofficialCanningPages", Kind: KindUnofficial, Title: "secondary pages on canning fish",
		Publisher: "unofficial", HowRead: "direct",
	},
	{
		Key: "EnvironmentCanadaSalmon", Kind: KindGuidance, Title: "How to Can Salmon",
		Publisher: "Fisheries Service, Environment Canada", Edition: "1970s by its style", HowRead: "old leaflet, historical",
	},
	{
		Key: "FederalAdviceAtRisk", Kind: KindGuidance, Title: "advice on refrigerated smoked fish for people at risk",
		Publisher: "US federal agencies", HowRead: FromMemory,
	},
}
