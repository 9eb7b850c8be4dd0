package cite

// The bibliography of smoke, one entry an edition of one document.
var smokeDocuments = [...]Document{
	{
		Key: "WhelanSmoking", Kind: KindBook, Author: "Whelan", Title: "Smoking Salmon & Trout",
		HowRead: "transcription of single tables",
	},
	{
		Key: "WSUSmokingCuring", Kind: KindGuidance, Title: "Preservation Tips: Smoking/Curing",
		Publisher: "Washington State University Extension", HowRead: "copy",
	},
	{
		Key: "WisconsinSeaGrantSmoking", Kind: KindGuidance, Title: "Home Smoking of Fish",
		Publisher: "Wisconsin Sea Grant", HowRead: "copy",
	},
	{
		Key: "PNW238", Kind: KindGuidance, Title: "Smoking Fish at Home Safely, PNW 238",
		Publisher: "Pacific Northwest Extension", Edition: "1999 and 2003 printings", HowRead: "copies and a paraphrase",
	},
	{
		Key: "OregonEarlySmokingBulletin", Kind: KindGuidance, Title: "early bulletin on smoking fish",
		Publisher: "Oregon State University", HowRead: "copy",
	},
	{
		Key: "SeafoodHACCPAlliance2017", Kind: KindGuidance, Title: "model plan, Hot Smoked Salmon in reduced oxygen packs",
		Publisher: "Seafood HACCP Alliance", Year: "September 2017", HowRead: "copy",
	},
	{
		Key: "OntarioFishPlantFB1415", Kind: KindGuidance, Title: "Fish Plant Guidelines FB.14.15",
		Publisher: "Province of Ontario", HowRead: "direct",
	},
	{
		Key: "Poysky1997", Kind: KindStudy, Author: "Poysky et al.", Title: "Listeria on hot-smoked salmon steaks",
		Publisher: "Journal of Food Protection 60:649-654", Year: "1997", HowRead: "abstract",
	},
	{
		Key: "Dimitriadou2008", Kind: KindStudy, Author: "Dimitriadou et al.", Title: "steamed trout fillets with liquid smoke",
		Publisher: "Food Science and Technology International 14", Year: "2008", HowRead: "abstract",
	},
	{
		Key: "YaparErdol", Kind: KindStudy, Author: "Yapar and Erdol", Title: "drying of trout fillets",
		HowRead: "abstract",
	},
	{
		Key: "FranceCooling2012", Kind: KindRegulation, Title: "official text of 8 March 2012 on cooling and storage",
		Publisher: "France", Year: "2012", HowRead: "as quoted",
	},
}
