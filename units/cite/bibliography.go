package cite

// The sources, one constant an edition of one document. Constants are
// numbered by the compiler and may move: what is stored or sent is the key.
//
// A document that holds no figure used here has no place in the list.
const (
	_ Source = iota // not set

	// Units and physics.
	NISTSP811
	NISTHandbook44
	YardPoundAgreement1959
	CGPM1901
	CGPM1954
	CFR21Part101Sec9
	KitchenMeasures
	USStandardAtmosphere1976
	SFSUAtmosphericPressure
	ISO2533y1975
	ISO2533y2025
	ICAODoc7488Ed3
	ASHRAEFundamentals2017
	ASHRAEFundamentalsIPReprint
	HylandWexler1983
	PsychroLib
	LudwigProcessDesign3
	IAPWSR797
	IAPWSSR186
	IAPWSR695
	InternationalSteamTables2019
	NBSNRCSteamTables1984
	GaugeSteamListReprint
	CanIndustryArticle
	HighAltitudeCookingChart
	EncyclopediaHighAltitude
	FSISHighAltitude
	UnofficialBoilingTable
	UnofficialBoilingTableMetric
	Treybal
	DryingCourseText

	// Canning.
	USDAGuide1Rev1994
	USDAGuide2Rev1994
	USDAGuide3Rev1994
	USDAGuide4Rev1994
	USDAGuide5Rev1994
	USDAGuide1Rev2009
	USDAGuide5Rev2009
	USDAGuide1Rev2015
	USDAGuide2Rev2015
	USDAGuide3Rev2015
	USDAGuide4Rev2015
	USDAGuide5Rev2015
	USDAGuide7Rev2015
	USDAHomeCanningMeat
	USDASmokedFishExcerpt
	UnattributedQuartProcedure
	UnattributedGuideRestatements
	MSUEPreservingFoodSafely1997
	MissouriCanningQuestions
	NCHFPSmokedFish
	NCHFPFAQ
	PNW194
	PNW361
	PNW421
	PNW450
	UAFFNH00126
	UAFColumn2001
	UAFColumn2017
	AlaskaNewspaper2007
	AlaskaNewspaper2021
	NewspaperColumn2021
	WisconsinB2593
	WisconsinSeaGrantCanning
	AskExtension475755
	AskExtension889422
	IowaState20240102
	IowaState20240521
	MissouriQA86
	MissouriQA163
	MissouriFAQ
	Andress1983
	AndressSlides2008
	PakolaAndress2002
	WamburaEtAl2004
	WolfEtAl1978
	RaabHilderbrand1993
	UNHGaugeTesting
	TennesseeGaugeTesting
	PublicGaugeTestingPage
	Purdue4H
	UtahStateTimetables
	UtahStateHighAltitude
	ColoradoStateHighAltitude
	MinnesotaCanningGuides2024
	WisconsinExtensionColumn
	UnofficialConsumerCharts
	UnofficialOldPressureRule
	UnofficialMetricBands
	UnofficialMetricIncrements
	UnofficialRecipePages
	UnofficialCanningPages
	EnvironmentCanadaSalmon
	HealthCanadaNotices2013
	FirstNationsCanning2018
	SaskatchewanCanning
	BCTeachingProgramme
	AlbertaUtilityKitchen2019
	CodexCXC23
	FishProcessingHandbook
	FederalAdviceAtRisk

	// Brine.
	FDAHazardsGuide3
	FDAHazardsGuide4
	FDAHazardsGuide2020
	FDAHazardsGuide2022
	FDAHazardsGuideUndated
	FDAWarningFLA0227
	FDAColdSmoked2001
	CFR21Part123Sec16
	CFR21Part172Sec170
	CFR21Part172Sec175
	CFR21Part172Sec177
	MichiganRegulation569
	MaineRules01001Ch359
	NewYork1NYCRR262
	NewYork10NYCRR141
	Alaska18AAC34
	AFDOModelCode1991
	GreatLakesHACCP2000
	CFIABulletinB21025
	CodexCXFFP15344
	CodexCXS244
	CodexCXS311
	TorryNote82
	TorryNote82Revised
	TorrySmokedSalmonNote
	SeaFishBrineTable
	BCSaltbrine
	OregonBrineBulletin
	KitsapExtension1992
	ColdSmokingTradeBook
	UnofficialCureRecipes
	SaltWeighings2012
	CannTaylor1979
	WhitefishWPSStudy
	RobinsonStokes
	HamerWu1972
	PitzerMayorga1973
	PitzerPeiperBusey1984
	PhreeqcPitzerData
	Partanen2020
	Clegg1997
	Steiger2005
	Tang1986
	Simion2015
	Krumgalz1996
	InternationalCriticalTables
	Melinder2010
	VDIBrine
	CRCHandbook
	CRCHandbook102
	PoradnikFizykochemiczny1974
	WaterDataPage
	HydrometerScales
	LabuzaSaturatedSalts
	OsmoticInstrumentManual
	ResnikChirife1988
	LupinBoeriMoschiar1981
	Baeza2010
	Norrish1966
	Ross1975
	ZugarramurdiLupin1980
	Peleg1988
	SaltDiffusivityJapan1992
	SaltDiffusivityJFE2007
	SaltDiffusivityJFE2017
	SINTEFSalting
	WangTangCorreia2000
	GallartJornet2007
	SalmonSmokingFoods2020
	SaltUptakeMARDI38
	SaltUptakeJAVA2010
	SaltUptakePVJ2010
	Cardinal2001
	Rora2004
	Nguyen2010
	USDAARSGrowthFactors
	OhioStateGrowthLimits
	GrowthLimitTableTompkin

	// Smoke.
	WhelanSmoking
	WSUSmokingCuring
	WisconsinSeaGrantSmoking
	PNW238
	PNW238LaterRevision
	OregonEarlySmokingBulletin
	ExtensionHomeSmoking
	SeafoodHACCPAlliance2017
	OntarioFishPlantFB1415
	WisconsinATCP70
	ILOSmallScale1982
	Poysky1997
	Cheng2023
	Dimitriadou2008
	YaparErdol
	EURegulation2023No915
	EURegulation2015No1125
	EURegulation2014No1327
	EUSmokedFishPAHPage
	FranceCooling2012

	// Yield.
	USDASR26
	USDASR28
	FAOCWPHandbook
	FAOFoodComposition1953
	FAOSTATDefinitions
	GLFCWeightConventions
	AbdollahiRezaei2014
	CohoCarcassStudy2004
	SalmonSizeDecline2020
	CommercialFisheriesReview
	PanfishFilletYield2017
	BemidjiYieldStudy2024
	SalmonIndustryHandbook
	NOAATechMemoAFSC173
	AlaskaSeaGrantMAB37
	ExtensionYieldRule
	NPAFCYearbook
	BirginGentil2009
	CirclePackingData
	EncyclopediaCirclePacking
	TradeCannerTables
	TradeJarSizes
	CanningGuideAuthorsPage
	FDAEPAFishAdvice2017
	FDAEPAFishAdviceNewer
	FDAEPATechnicalPage
	EPALocalFish
	USDietaryGuidelines
	IJCAdvisoryReport
	StateAdvisoryAnswer
	GreatLakesProtocol1993
	GreatLakesMercury2007
	WisconsinPossession
	CaliforniaPossession
	OntarioPossession
	MichiganHouseBill5481
	AlaskaPossession5AAC
	AlaskaMagazineSupply
	Birkeland2004
	Rora1998
	TradeSmokingLosses
	OmegaThreeTable
	SiscowetFatStudy
	SuperiorLipidStudy
	OmegaThreeReview2016

	// Cold chain.
	FDAFoodCode
	CDCParasitePage
	CDCTapeworm2017
	SNHDParasiteFAQ
	EURegulation853y2004
	CodexCXC52
	MinnesotaParasites
	NorthDakotaGameFish
	PublicHealthTrainingText
	GLFCParasiteGuide
	FederalColdStorageChart
	FederalColdStorageChart2021
	USDAFDAConsumerAdvice
	USDAAnswerPage
	USDAFoodKeeperData
	FDAStorageChart
	SeafoodTradeChart
	OregonConsumerPage
	ApplianceManual
	FreezerManuals
	CookbookStorage2012
	NCStateFAQ
	OhioStateFreezing
	MinnesotaFreezing
	WestVirginiaFreezing
	MSUEThawing
	ExtensionSmokedKeeping
	PowerOutageAdvice
	WSUPowerOutage2011
	UKTenDayRule
	FDACompendium
	FAOWHOHistamine2018
	HistamineSurvey2021
	FAO444
	Erikson2018
	ChilledStorageStudy
	FAO348
	INFOFISH2024
	OlleyRatkowsky1973
	Dalgaard2004
	Koutsoumanis2000
	SkinnerLarkin1998
	BakerGenigeorgis1990
	Garcia1987
	GarciaGenigeorgis1987
	ListeriaRiskAssessment2003
	MejlholmDalgaard2009
	Jia2020
	FAOWHOListeriaPackage
	GermanRedfishStudy
	FAO331
	FAO436
	FAOIceMeltTest
	IcelandicFishHandling
	TradeIceTable
	IceHandbooks
	DryIceShippers
	Davey2012
	LiveFishBoxStudy
	TorryNote32
	SuperchillTradeArticle
	IIRFrozenFoods1986
	IIRFrozenFoods1972
	IIRColdStoreQuote
	FAO340
	Perennia2022
	TorryFrozenStorage
	EncyclopaediaBritannica
	UnofficialReaderComment

	// Heat.
	AdamsMoss
	FloridaTeachingDeck
	Stumbo1973
	BotulinumCookUK
	FDAAcidifiedDraft
	SporesIJFST1988
	OdlaugPflug1977
	Rhodehamel1991
	Lindstrom2003
	Wachnicka2016
	Pace1972
	UCDavisNote1999
	FinnishHotSmoking
	BenEmbarekHuss1993
	ColdSmokedPasteurizing
	HarrisonHuang1990
	BuduAmoako1992
	LiHuangHwang2016
	HeatStudyJFP1991
	Bradshaw1985
	FoodMicrobiologyHandbook
	F0ReviewExcerpts
	Geankoplis
	ToledoSlides
	BerkSlides
	ThermalLectureNotes
	UnofficialStudentAssignment
	FAO285
	FoodBiochemistryProcessing2
	Ball1923
	BallOlson1957
	OlsonJackson1942
	Simpson2012
	Patashnik1953
	FSAVacuumTraining
	FSAListeriaShortList
	NZMPI201605
	FSISAppendixA1999
	Cengel
	Incropera
	Yovanovich
	NellisKlein
	ChoiOkos1986
	ASHRAERefrigeration2006
	Earle
	FAOV3630E
	Tchigeov1979
	ClelandEarle1977
	Pham1986
	Plank
	SkipjackProperties
	MeatProteinConductivity1982
	SINTEFUnfreezable2015
	ThermalDiffusivityPage
	CatfishUnfreezable
)

// documents is the bibliography, in the order of the constants. Titles not
// seen in print are described, in lower case.
var documents = [...]Document{

	// Units and physics.

	NISTSP811: {
		Key: "NISTSP811", Kind: KindStandard, Author: "Thompson and Taylor", Title: "Guide for the Use of the International System of Units, NIST Special Publication 811",
		Publisher: "NIST", HowRead: "machine-readable transcription of appendix B, edition not stated there",
	},
	NISTHandbook44: {
		Key: "NISTHandbook44", Kind: KindStandard, Title: "Handbook 44, appendix C, General Tables of Units of Measurement",
		Publisher: "NIST", HowRead: "exact relations as quoted beside a transcription of SP 811",
	},
	YardPoundAgreement1959: {
		Key: "YardPoundAgreement1959", Kind: KindStandard, Title: "Federal Register notice on the international yard and pound",
		Publisher: "US National Bureau of Standards", Year: "1959", HowRead: "values as quoted in encyclopedias, notice itself not read",
	},
	CGPM1901: {
		Key: "CGPM1901", Kind: KindStandard, Title: "resolution of the 3rd General Conference on standard gravity",
		Publisher: "CGPM", Year: "1901", HowRead: FromMemory,
	},
	CGPM1954: {
		Key: "CGPM1954", Kind: KindStandard, Title: "resolution of the 10th General Conference on the standard atmosphere",
		Publisher: "CGPM", Year: "1954", HowRead: FromMemory,
	},
	CFR21Part101Sec9: {
		Key: "CFR21Part101Sec9", Kind: KindRegulation, Title: "21 CFR 101.9, nutrition labelling, household measures",
		Publisher: "US FDA", HowRead: "as quoted in a public ticket",
	},
	KitchenMeasures: {
		Key: "KitchenMeasures", Kind: KindUnofficial, Title: "kitchen measures outside the SI (metric cup, Australian tablespoon)",
		Publisher: "common usage", HowRead: "as quoted on other pages",
	},
	USStandardAtmosphere1976: {
		Key: "USStandardAtmosphere1976", Kind: KindStandard, Title: "US Standard Atmosphere",
		Publisher: "NOAA, NASA and USAF", Year: "1976", HowRead: "equations and constants as written in open-source codes, printed tables not read",
	},
	SFSUAtmosphericPressure: {
		Key: "SFSUAtmosphericPressure", Kind: KindGuidance, Title: "Atmospheric Pressure, course page with the usual range at sea level",
		Publisher: "San Francisco State University, Geosciences", HowRead: "excerpt",
	},
	ISO2533y1975: {
		Key: "ISO2533y1975", Kind: KindStandard, Title: "ISO 2533, Standard Atmosphere",
		Publisher: "ISO", Year: "1975", HowRead: "machine-readable transcription of the tables, trailing zeros not kept",
	},
	ISO2533y2025: {
		Key: "ISO2533y2025", Kind: KindStandard, Title: "ISO 2533, Standard Atmosphere",
		Publisher: "ISO", Year: "2025", HowRead: "output of the reference implementation, print not read",
	},
	ICAODoc7488Ed3: {
		Key: "ICAODoc7488Ed3", Kind: KindStandard, Title: "Doc 7488, Manual of the ICAO Standard Atmosphere",
		Publisher: "ICAO", Edition: "3rd ed.", Year: "1993", HowRead: "two figures as quoted in the tests of an open-source atmosphere library",
	},
	ASHRAEFundamentals2017: {
		Key: "ASHRAEFundamentals2017", Kind: KindBook, Title: "Handbook of Fundamentals, chapter 1, Psychrometrics (SI)",
		Publisher: "ASHRAE", Edition: "2017 ed.", Year: "2017", HowRead: "equations and table rows as quoted in the source and tests of an open psychrometric library",
	},
	ASHRAEFundamentalsIPReprint: {
		Key: "ASHRAEFundamentalsIPReprint", Kind: KindBook, Title: "Handbook of Fundamentals, chapter 1, standard atmosphere table (I-P)",
		Publisher: "ASHRAE", Edition: "edition not stated", HowRead: "reprint of the table, three rows also quoted in the tests of an open psychrometric library",
	},
	HylandWexler1983: {
		Key: "HylandWexler1983", Kind: KindStudy, Author: "Hyland and Wexler", Title: "formulations of the saturation pressure of water and ice",
		Publisher: "ASHRAE Transactions 89", Year: "1983", HowRead: "coefficients as carried by ASHRAE Fundamentals, paper not read",
	},
	PsychroLib: {
		Key: "PsychroLib", Kind: KindSoftware, Title: "PsychroLib, psychrometric functions and their tests",
		Publisher: "open-source library", Edition: "2.5.0", HowRead: "source and tests",
	},
	LudwigProcessDesign3: {
		Key: "LudwigProcessDesign3", Kind: KindBook, Author: "Ludwig", Title: "Applied Process Design for Chemical and Petrochemical Plants, volume 1",
		Edition: "3rd ed.", HowRead: "scanned copy of the table",
	},
	IAPWSR797: {
		Key: "IAPWSR797", Kind: KindStandard, Title: "R7-97, Industrial Formulation 1997 (IF97) for the properties of water and steam",
		Publisher: "IAPWS", Year: "2012", HowRead: "coefficients and check values as quoted in several open-source codes",
	},
	IAPWSSR186: {
		Key: "IAPWSSR186", Kind: KindStandard, Title: "SR1-86, saturation properties of ordinary water substance",
		Publisher: "IAPWS", Year: "1992", HowRead: "coefficients and check values as quoted in two open-source codes",
	},
	IAPWSR695: {
		Key: "IAPWSR695", Kind: KindStandard, Title: "R6-95, Formulation 1995 for scientific use (IAPWS-95)",
		Publisher: "IAPWS", HowRead: "through an open-source library only",
	},
	InternationalSteamTables2019: {
		Key: "InternationalSteamTables2019", Kind: KindBook, Author: "Kretzschmar and Wagner", Title: "International Steam Tables",
		Publisher: "Springer", Edition: "3rd ed.", Year: "2019", HowRead: "rows as quoted in the tests of an open-source steam library, trailing zeros not kept",
	},
	NBSNRCSteamTables1984: {
		Key: "NBSNRCSteamTables1984", Kind: KindBook, Author: "Haar, Gallagher and Kell", Title: "NBS/NRC Steam Tables",
		Publisher: "Hemisphere", Year: "1984", HowRead: "rows as quoted in open-source copies of a public list of test values",
	},
	GaugeSteamListReprint: {
		Key: "GaugeSteamListReprint", Kind: KindUnofficial, Title: "saturated steam by gauge pressure at sea level, whole degrees",
		Publisher: "unnamed engineering handbook, reprinted", HowRead: "reprint with misprints, a warning only",
	},
	CanIndustryArticle: {
		Key: "CanIndustryArticle", Kind: KindUnofficial, Title: "steam pressures for retorts at altitude",
		Publisher: "can industry article", HowRead: "article",
	},
	HighAltitudeCookingChart: {
		Key: "HighAltitudeCookingChart", Kind: KindUnofficial, Title: "US high-altitude cooking chart",
		Publisher: "reprint, original not named", HowRead: "reprint",
	},
	EncyclopediaHighAltitude: {
		Key: "EncyclopediaHighAltitude", Kind: KindUnofficial, Title: "High-altitude cooking, table of boiling points",
		Publisher: "encyclopedia, credited there to NOAA and NASA", HowRead: "direct",
	},
	FSISHighAltitude: {
		Key: "FSISHighAltitude", Kind: KindGuidance, Title: "statement on the boiling point at altitude",
		Publisher: "USDA FSIS", HowRead: "as quoted on a trade news page",
	},
	UnofficialBoilingTable: {
		Key: "UnofficialBoilingTable", Kind: KindUnofficial, Title: "boiling points from an isothermal atmosphere, credited to the USDA guide",
		Publisher: "unofficial web page", HowRead: "direct, a warning only",
	},
	UnofficialBoilingTableMetric: {
		Key: "UnofficialBoilingTableMetric", Kind: KindUnofficial, Title: "metric list of boiling points",
		Publisher: "unofficial web page", HowRead: "direct, a warning only",
	},
	Treybal: {
		Key: "Treybal", Kind: KindBook, Author: "Treybal", Title: "Mass-Transfer Operations",
		Publisher: "McGraw-Hill", HowRead: "one equation as used in a published computer solution, the rest from memory",
	},
	DryingCourseText: {
		Key: "DryingCourseText", Kind: KindUnofficial, Title: "heat transfer to air along a wet surface",
		Publisher: "course text and worked page on drying", HowRead: "direct",
	},

	// Canning.

	USDAGuide1Rev1994: {
		Key: "USDAGuide1Rev1994", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 1",
		Publisher: "USDA", Edition: "AIB 539, rev. 1994", Year: "1994", HowRead: "plain-text transcriptions of single sections",
	},
	USDAGuide2Rev1994: {
		Key: "USDAGuide2Rev1994", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 2",
		Publisher: "USDA", Edition: "AIB 539, rev. 1994", Year: "1994", HowRead: "plain-text transcription that does not state its revision",
	},
	USDAGuide3Rev1994: {
		Key: "USDAGuide3Rev1994", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 3",
		Publisher: "USDA", Edition: "AIB 539, rev. 1994", Year: "1994", HowRead: "plain-text transcription",
	},
	USDAGuide4Rev1994: {
		Key: "USDAGuide4Rev1994", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 4",
		Publisher: "USDA", Edition: "AIB 539, rev. 1994", Year: "1994", HowRead: "plain-text transcriptions, one table cut off",
	},
	USDAGuide5Rev1994: {
		Key: "USDAGuide5Rev1994", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 5",
		Publisher: "USDA", Edition: "AIB 539, rev. 1994", Year: "1994", HowRead: "plain-text transcriptions of single tables",
	},
	USDAGuide1Rev2009: {
		Key: "USDAGuide1Rev2009", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 1",
		Publisher: "USDA", Edition: "AIB 539, rev. 2009", Year: "2009", HowRead: "as cited in an extension column",
	},
	USDAGuide5Rev2009: {
		Key: "USDAGuide5Rev2009", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 5",
		Publisher: "USDA", Edition: "AIB 539, rev. 2009", Year: "2009", HowRead: FromMemory,
	},
	USDAGuide1Rev2015: {
		Key: "USDAGuide1Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 1",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	USDAGuide2Rev2015: {
		Key: "USDAGuide2Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 2",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	USDAGuide3Rev2015: {
		Key: "USDAGuide3Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 3",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	USDAGuide4Rev2015: {
		Key: "USDAGuide4Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 4",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	USDAGuide5Rev2015: {
		Key: "USDAGuide5Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 5",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	USDAGuide7Rev2015: {
		Key: "USDAGuide7Rev2015", Kind: KindGuidance, Title: "Complete Guide to Home Canning, Guide 7",
		Publisher: "USDA", Edition: "AIB 539, rev. 2015", Year: "2015", HowRead: "scanned text of the whole book",
	},
	USDAHomeCanningMeat: {
		Key: "USDAHomeCanningMeat", Kind: KindGuidance, Title: "Home Canning of Meat and Poultry",
		Publisher: "USDA ARS", Edition: "edition not stated", HowRead: "one table",
	},
	USDASmokedFishExcerpt: {
		Key: "USDASmokedFishExcerpt", Kind: KindGuidance, Title: "older text on canning smoked fish",
		Publisher: "USDA, excerpt printed in a magazine", Edition: "edition not stated", HowRead: "excerpt",
	},
	UnattributedQuartProcedure: {
		Key: "UnattributedQuartProcedure", Kind: KindUnofficial, Title: "come-up and vent of fish in quarts",
		Publisher: "passage printed without its source", HowRead: "passage, agrees with Guide 5 rev. 2015",
	},
	UnattributedGuideRestatements: {
		Key: "UnattributedGuideRestatements", Kind: KindUnofficial, Title: "restatements of the steps of the USDA guide (about 2015)",
		Publisher: "web pages", HowRead: "direct",
	},
	MSUEPreservingFoodSafely1997: {
		Key: "MSUEPreservingFoodSafely1997", Kind: KindGuidance, Title: "Preserving Food Safely, data base of numbered items",
		Publisher: "Michigan State University Extension", Year: "1997", HowRead: "plain-text copies of single items",
	},
	MissouriCanningQuestions: {
		Key: "MissouriCanningQuestions", Kind: KindGuidance, Title: "Pressure canning questions and expert advice, web page",
		Publisher: "University of Missouri Extension", HowRead: "excerpt",
	},
	NCHFPSmokedFish: {
		Key: "NCHFPSmokedFish", Kind: KindGuidance, Title: "web page on canning smoked fish",
		Publisher: "National Center for Home Food Preservation", HowRead: "opening only, table cut off",
	},
	NCHFPFAQ: {
		Key: "NCHFPFAQ", Kind: KindGuidance, Title: "answers on canning, web page",
		Publisher: "National Center for Home Food Preservation", HowRead: FromMemory,
	},
	PNW194: {
		Key: "PNW194", Kind: KindGuidance, Title: "Canning Seafood, PNW 194",
		Publisher: "Pacific Northwest Extension", HowRead: "opening of a later revision",
	},
	PNW361: {
		Key: "PNW361", Kind: KindGuidance, Title: "Canning Meat, Poultry and Game, PNW 361",
		Publisher: "Pacific Northwest Extension", HowRead: "garbled copy, in part",
	},
	PNW421: {
		Key: "PNW421", Kind: KindGuidance, Title: "Using and Caring for Your Pressure Canner, PNW 421",
		Publisher: "Pacific Northwest Extension", HowRead: "transcription",
	},
	PNW450: {
		Key: "PNW450", Kind: KindGuidance, Title: "Canning Smoked Fish at Home, PNW 450",
		Publisher: "Pacific Northwest Extension", HowRead: "transcription, in part",
	},
	UAFFNH00126: {
		Key: "UAFFNH00126", Kind: KindGuidance, Title: "canning fish in quarts, FNH-00126",
		Publisher: "University of Alaska Fairbanks Cooperative Extension", HowRead: "opening only",
	},
	UAFColumn2001: {
		Key: "UAFColumn2001", Kind: KindGuidance, Title: "extension column on home-canned fish",
		Publisher: "University of Alaska Fairbanks Cooperative Extension", Year: "2001", HowRead: "direct",
	},
	UAFColumn2017: {
		Key: "UAFColumn2017", Kind: KindGuidance, Title: "extension column on canning fish in pints",
		Publisher: "University of Alaska Fairbanks Cooperative Extension", Year: "2017", HowRead: "direct",
	},
	AlaskaNewspaper2007: {
		Key: "AlaskaNewspaper2007", Kind: KindUnofficial, Title: "article on the origin of the quart process",
		Publisher: "Alaska newspaper", Year: "2007", HowRead: "direct",
	},
	AlaskaNewspaper2021: {
		Key: "AlaskaNewspaper2021", Kind: KindUnofficial, Title: "column on keeping home-canned fish",
		Publisher: "Alaska newspaper", Year: "2021", HowRead: "direct",
	},
	NewspaperColumn2021: {
		Key: "NewspaperColumn2021", Kind: KindUnofficial, Title: "column on small canner loads",
		Publisher: "newspaper", Year: "2021", HowRead: "direct",
	},
	WisconsinB2593: {
		Key: "WisconsinB2593", Kind: KindGuidance, Author: "Mennes", Title: "canning bulletin B2593",
		Publisher: "University of Wisconsin Extension", HowRead: "transcription",
	},
	WisconsinSeaGrantCanning: {
		Key: "WisconsinSeaGrantCanning", Kind: KindGuidance, Title: "Home Canning of Fish, WISCU-G-14-010",
		Publisher: "Wisconsin Sea Grant", HowRead: "transcription",
	},
	AskExtension475755: {
		Key: "AskExtension475755", Kind: KindGuidance, Title: "answer 475755",
		Publisher: "Ask Extension", Year: "2018", HowRead: "direct",
	},
	AskExtension889422: {
		Key: "AskExtension889422", Kind: KindGuidance, Title: "answer 889422",
		Publisher: "Ask Extension", Year: "2024", HowRead: "direct",
	},
	IowaState20240102: {
		Key: "IowaState20240102", Kind: KindGuidance, Title: "article of 2024-01-02 on pressure canners and small loads",
		Publisher: "Iowa State University Extension", Year: "2024", HowRead: "direct",
	},
	IowaState20240521: {
		Key: "IowaState20240521", Kind: KindGuidance, Title: "article of 2024-05-21 on dial gauges",
		Publisher: "Iowa State University Extension", Year: "2024", HowRead: "direct",
	},
	MissouriQA86: {
		Key: "MissouriQA86", Kind: KindGuidance, Title: "consumer answer 86, heating canned fish before eating",
		Publisher: "University of Missouri Extension", HowRead: "direct",
	},
	MissouriQA163: {
		Key: "MissouriQA163", Kind: KindGuidance, Title: "consumer answer 163, weights and gauges",
		Publisher: "University of Missouri Extension", HowRead: "direct",
	},
	MissouriFAQ: {
		Key: "MissouriFAQ", Kind: KindGuidance, Title: "questions on pressure canner gauges",
		Publisher: "University of Missouri Extension", HowRead: "direct",
	},
	Andress1983: {
		Key: "Andress1983", Kind: KindStudy, Author: "Andress", Title: "survey of pressure canning at home",
		Publisher: "University of Georgia", Year: "1983", HowRead: "as quoted on a public page",
	},
	AndressSlides2008: {
		Key: "AndressSlides2008", Kind: KindGuidance, Author: "Andress", Title: "slides on gauge error and sterilising value",
		Publisher: "University of Georgia", Year: "2008", HowRead: "as quoted on a public page",
	},
	PakolaAndress2002: {
		Key: "PakolaAndress2002", Kind: KindStudy, Author: "Pakola and Andress", Title: "heating and lethality in small and large pressure vessels",
		Publisher: "University of Georgia", Year: "2002", HowRead: "summary of results",
	},
	WamburaEtAl2004: {
		Key: "WamburaEtAl2004", Kind: KindStudy, Author: "Wambura, Anderson and Walker", Title: "vent time and temperature in home pressure canners",
		Year: "2004", HowRead: "summary of results",
	},
	WolfEtAl1978: {
		Key: "WolfEtAl1978", Kind: KindStudy, Author: "Wolf et al.", Title: "processing at 15 psi in place of 10 psi",
		Year: "1978", HowRead: "abstract",
	},
	RaabHilderbrand1993: {
		Key: "RaabHilderbrand1993", Kind: KindStudy, Author: "Raab and Hilderbrand", Title: "home-canned smoked fish",
		Publisher: "Journal of Food Protection 56(7):619", Year: "1993", HowRead: "abstract; authors and year from memory",
	},
	UNHGaugeTesting: {
		Key: "UNHGaugeTesting", Kind: KindGuidance, Title: "dial gauge testing",
		Publisher: "University of New Hampshire Extension", HowRead: "direct",
	},
	TennesseeGaugeTesting: {
		Key: "TennesseeGaugeTesting", Kind: KindGuidance, Title: "dial gauge testing",
		Publisher: "University of Tennessee Extension", HowRead: "direct",
	},
	PublicGaugeTestingPage: {
		Key: "PublicGaugeTestingPage", Kind: KindUnofficial, Title: "public gauge-testing page citing USDA",
		Publisher: "web page", HowRead: "direct",
	},
	Purdue4H: {
		Key: "Purdue4H", Kind: KindGuidance, Title: "food preservation project manual",
		Publisher: "Purdue 4-H", HowRead: "direct",
	},
	UtahStateTimetables: {
		Key: "UtahStateTimetables", Kind: KindGuidance, Title: "Timetables for Canning at 3,000-10,000 ft (1994-based version)",
		Publisher: "Utah State University Extension", HowRead: "transcription",
	},
	UtahStateHighAltitude: {
		Key: "UtahStateHighAltitude", Kind: KindGuidance, Title: "high-altitude canning publication",
		Publisher: "Utah State University Extension", HowRead: FromMemory,
	},
	ColoradoStateHighAltitude: {
		Key: "ColoradoStateHighAltitude", Kind: KindGuidance, Title: "high-altitude canning publication",
		Publisher: "Colorado State University Extension", HowRead: FromMemory,
	},
	MinnesotaCanningGuides2024: {
		Key: "MinnesotaCanningGuides2024", Kind: KindGuidance, Title: "Canning quick reference guides",
		Publisher: "University of Minnesota Extension", Edition: "reviewed 2024", Year: "2024", HowRead: "direct",
	},
	WisconsinExtensionColumn: {
		Key: "WisconsinExtensionColumn", Kind: KindGuidance, Title: "extension column quoting a USDA rule on canners",
		Publisher: "University of Wisconsin Extension", HowRead: "direct",
	},
	UnofficialConsumerCharts: {
		Key: "UnofficialConsumerCharts", Kind: KindUnofficial, Title: "consumer altitude charts (a jar leaflet and household pages, makers not named)",
		Publisher: "unofficial", HowRead: "direct, a warning only",
	},
	UnofficialOldPressureRule: {
		Key: "UnofficialOldPressureRule", Kind: KindUnofficial, Title: "tabulation of the older continuous pressure rule",
		Publisher: "unofficial", HowRead: "direct, superseded",
	},
	UnofficialMetricBands: {
		Key: "UnofficialMetricBands", Kind: KindUnofficial, Title: "metric restatement of the USDA bands",
		Publisher: "unofficial", HowRead: "direct",
	},
	UnofficialMetricIncrements: {
		Key: "UnofficialMetricIncrements", Kind: KindUnofficial, Title: "pressure increments in feet and metres, unattributed",
		Publisher: "unofficial", HowRead: "direct, a warning only",
	},
	UnofficialRecipePages: {
		Key: "UnofficialRecipePages", Kind: KindUnofficial, Title: "recipe and hobby pages with canning figures",
		Publisher: "unofficial", HowRead: "direct, a warning only",
	},
	UnofficialCanningPages: {
		Key: "UnofficialCanningPages", Kind: KindUnofficial, Title: "secondary pages on canning fish",
		Publisher: "unofficial", HowRead: "direct",
	},
	EnvironmentCanadaSalmon: {
		Key: "EnvironmentCanadaSalmon", Kind: KindGuidance, Title: "How to Can Salmon",
		Publisher: "Fisheries Service, Environment Canada", Edition: "1970s by its style", HowRead: "old leaflet, historical",
	},
	HealthCanadaNotices2013: {
		Key: "HealthCanadaNotices2013", Kind: KindGuidance, Title: "notices on home canning",
		Publisher: "Health Canada and CFIA", Year: "2012-2013", HowRead: "direct",
	},
	FirstNationsCanning2018: {
		Key: "FirstNationsCanning2018", Kind: KindGuidance, Title: "guide to canning",
		Publisher: "First Nations Health Authority, British Columbia", Year: "2018", HowRead: "opening only",
	},
	SaskatchewanCanning: {
		Key: "SaskatchewanCanning", Kind: KindGuidance, Title: "statement of a least processing temperature",
		Publisher: "University of Saskatchewan", HowRead: "direct",
	},
	BCTeachingProgramme: {
		Key: "BCTeachingProgramme", Kind: KindUnofficial, Title: "statement of a processing temperature for fish",
		Publisher: "teaching programme in British Columbia", HowRead: "direct",
	},
	AlbertaUtilityKitchen2019: {
		Key: "AlbertaUtilityKitchen2019", Kind: KindUnofficial, Title: "boiling-water times with a raised base altitude",
		Publisher: "utility kitchen in Alberta", Year: "2019", HowRead: "direct",
	},
	CodexCXC23: {
		Key: "CodexCXC23", Kind: KindStandard, Title: "CAC/RCP 23-1979 (now CXC 23), hygienic practice for low-acid canned foods",
		Publisher: "Codex Alimentarius", Edition: "rev. 2", Year: "1993", HowRead: "contents and definitions",
	},
	FishProcessingHandbook: {
		Key: "FishProcessingHandbook", Kind: KindBook, Title: "processing temperatures for canned fish",
		Publisher: "older fish-processing handbook", HowRead: "one page",
	},
	FederalAdviceAtRisk: {
		Key: "FederalAdviceAtRisk", Kind: KindGuidance, Title: "advice on refrigerated smoked fish for people at risk",
		Publisher: "US federal agencies", HowRead: FromMemory,
	},

	// Brine.

	FDAHazardsGuide3: {
		Key: "FDAHazardsGuide3", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "3rd ed.", Year: "2001", HowRead: FromMemory,
	},
	FDAHazardsGuide4: {
		Key: "FDAHazardsGuide4", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "4th ed.", Year: "2011", HowRead: "mostly from memory; single figures as quoted in secondary notes",
	},
	FDAHazardsGuide2020: {
		Key: "FDAHazardsGuide2020", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "4th ed., March 2020", Year: "2020", HowRead: "extracted text of the printing; page numbers are those of the print",
	},
	FDAHazardsGuide2022: {
		Key: "FDAHazardsGuide2022", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "4th ed., June 2022", Year: "2022", HowRead: "two table rows as quoted in a public note, the rest from memory",
	},
	FDAHazardsGuideUndated: {
		Key: "FDAHazardsGuideUndated", Kind: KindGuidance, Title: "Fish and Fishery Products Hazards and Controls Guidance",
		Publisher: "US FDA", Edition: "edition not stated", HowRead: "single chapters or statements in copies without their date",
	},
	FDAWarningFLA0227: {
		Key: "FDAWarningFLA0227", Kind: KindGuidance, Title: "warning letter FLA-02-27 of 12 February 2002",
		Publisher: "US FDA", Year: "2002", HowRead: "direct",
	},
	FDAColdSmoked2001: {
		Key: "FDAColdSmoked2001", Kind: KindGuidance, Title: "processing parameters needed to control pathogens in cold-smoked fish",
		Publisher: "US FDA", Year: "2001", HowRead: "course copy",
	},
	CFR21Part123Sec16: {
		Key: "CFR21Part123Sec16", Kind: KindRegulation, Title: "21 CFR 123.16, smoked and smoke-flavored fishery products",
		Publisher: "US FDA", HowRead: "copy",
	},
	CFR21Part172Sec170: {
		Key: "CFR21Part172Sec170", Kind: KindRegulation, Title: "21 CFR 172.170, sodium nitrate",
		Publisher: "US FDA", HowRead: "copy",
	},
	CFR21Part172Sec175: {
		Key: "CFR21Part172Sec175", Kind: KindRegulation, Title: "21 CFR 172.175, sodium nitrite",
		Publisher: "US FDA", Edition: "1 Apr 2006", Year: "2006", HowRead: "copy",
	},
	CFR21Part172Sec177: {
		Key: "CFR21Part172Sec177", Kind: KindRegulation, Title: "21 CFR 172.177, sodium nitrite in smoked chub",
		Publisher: "US FDA", HowRead: FromMemory,
	},
	MichiganRegulation569: {
		Key: "MichiganRegulation569", Kind: KindRegulation, Title: "Michigan Administrative Code, Regulation 569, Smoked Fish (R 285.569)",
		Publisher: "State of Michigan", HowRead: "copies",
	},
	MaineRules01001Ch359: {
		Key: "MaineRules01001Ch359", Kind: KindRegulation, Title: "Code of Maine Rules 01-001 chapter 359, smoked fish",
		Publisher: "State of Maine", HowRead: "copy",
	},
	NewYork1NYCRR262: {
		Key: "NewYork1NYCRR262", Kind: KindRegulation, Title: "1 NYCRR part 262, smoked fish",
		Publisher: "State of New York", HowRead: "copy, in part",
	},
	NewYork10NYCRR141: {
		Key: "NewYork10NYCRR141", Kind: KindRegulation, Title: "10 NYCRR subpart 14-1, food service and vacuum packing",
		Publisher: "State of New York", HowRead: "copy, in part",
	},
	Alaska18AAC34: {
		Key: "Alaska18AAC34", Kind: KindRegulation, Title: "18 AAC 34, seafood processing",
		Publisher: "State of Alaska", HowRead: "copy, in part",
	},
	AFDOModelCode1991: {
		Key: "AFDOModelCode1991", Kind: KindRegulation, Title: "model code for smoked fish",
		Publisher: "AFDO", Year: "1991", HowRead: FromMemory,
	},
	GreatLakesHACCP2000: {
		Key: "GreatLakesHACCP2000", Kind: KindGuidance, Title: "model HACCP plan for smoked Great Lakes fish",
		Publisher: "Great Lakes extension", Year: "July 2000", HowRead: "copy",
	},
	CFIABulletinB21025: {
		Key: "CFIABulletinB21025", Kind: KindGuidance, Title: "bulletin on Food and Drug Regulations B.21.025",
		Publisher: "Canadian Food Inspection Agency", HowRead: "direct",
	},
	CodexCXFFP15344: {
		Key: "CodexCXFFP15344", Kind: KindStandard, Title: "CX/FFP 15/34/4 Add. 1, a member comment",
		Publisher: "Codex Alimentarius", Year: "2015", HowRead: "direct",
	},
	CodexCXS244: {
		Key: "CodexCXS244", Kind: KindStandard, Title: "CXS 244-2004, salted Atlantic herring and salted sprat",
		Publisher: "Codex Alimentarius", Year: "2004", HowRead: "abstract",
	},
	CodexCXS311: {
		Key: "CodexCXS311", Kind: KindStandard, Title: "CXS 311-2013, smoked fish, smoke-flavoured fish and smoke-dried fish",
		Publisher: "Codex Alimentarius", Year: "2013", HowRead: FromMemory,
	},
	TorryNote82: {
		Key: "TorryNote82", Kind: KindGuidance, Title: "Advisory Note 82 on smoking fish, earlier text",
		Publisher: "Torry Research Station", HowRead: "copy, in part",
	},
	TorryNote82Revised: {
		Key: "TorryNote82Revised", Kind: KindGuidance, Title: "Advisory Note 82 on smoking fish, with accompanying notes of FAO",
		Publisher: "Torry Research Station", Edition: "revised", HowRead: "copy, in part",
	},
	TorrySmokedSalmonNote: {
		Key: "TorrySmokedSalmonNote", Kind: KindGuidance, Title: "advisory note on smoked salmon",
		Publisher: "Torry Research Station", HowRead: "opening page and a quoted passage",
	},
	SeaFishBrineTable: {
		Key: "SeaFishBrineTable", Kind: KindGuidance, Title: "training page with a brine strength table",
		Publisher: "UK Sea Fish Industry Authority", HowRead: "direct",
	},
	BCSaltbrine: {
		Key: "BCSaltbrine", Kind: KindGuidance, Title: "Preparing a Saltbrine",
		Publisher: "Province of British Columbia", HowRead: "direct",
	},
	OregonBrineBulletin: {
		Key: "OregonBrineBulletin", Kind: KindGuidance, Title: "bulletin on brine",
		Publisher: "Oregon State University", HowRead: "one figure",
	},
	KitsapExtension1992: {
		Key: "KitsapExtension1992", Kind: KindGuidance, Title: "brining sheet",
		Publisher: "Kitsap Cooperative Extension", Year: "1992", HowRead: "direct",
	},
	ColdSmokingTradeBook: {
		Key: "ColdSmokingTradeBook", Kind: KindBook, Title: "entry on dry salting",
		Publisher: "trade book on cold smoking", HowRead: "transcription",
	},
	UnofficialCureRecipes: {
		Key: "UnofficialCureRecipes", Kind: KindUnofficial, Title: "cure recipes by volume",
		Publisher: "unofficial", HowRead: "direct, a warning only",
	},
	SaltWeighings2012: {
		Key: "SaltWeighings2012", Kind: KindUnofficial, Title: "one writer's weighings of a quarter cup of seven salts",
		Publisher: "unofficial", Year: "2012", HowRead: "direct, a warning only",
	},
	CannTaylor1979: {
		Key: "CannTaylor1979", Kind: KindStudy, Author: "Cann and Taylor", Title: "botulinum toxin in hot-smoked trout",
		Year: "1979", HowRead: "abstract",
	},
	WhitefishWPSStudy: {
		Key: "WhitefishWPSStudy", Kind: KindStudy, Title: "water phase salt and type E toxin in smoked whitefish",
		Publisher: "Journal of Food Protection 50(3):212", Year: "1987", HowRead: "abstract",
	},
	RobinsonStokes: {
		Key: "RobinsonStokes", Kind: KindBook, Author: "Robinson and Stokes", Title: "Electrolyte Solutions",
		Publisher: "Butterworths", HowRead: FromMemory,
	},
	HamerWu1972: {
		Key: "HamerWu1972", Kind: KindStudy, Author: "Hamer and Wu", Title: "osmotic and activity coefficients of uni-univalent electrolytes in water at 25 C",
		Publisher: "Journal of Physical and Chemical Reference Data 1", Year: "1972", HowRead: "form and coefficients of sodium chloride as quoted in open codes",
	},
	PitzerMayorga1973: {
		Key: "PitzerMayorga1973", Kind: KindStudy, Author: "Pitzer and Mayorga", Title: "activity and osmotic coefficients of electrolytes",
		Publisher: "Journal of Physical Chemistry 77", Year: "1973", HowRead: "coefficients as carried by two public solution libraries",
	},
	PitzerPeiperBusey1984: {
		Key: "PitzerPeiperBusey1984", Kind: KindStudy, Author: "Pitzer, Peiper and Busey", Title: "thermodynamic properties of aqueous sodium chloride",
		Publisher: "Journal of Physical and Chemical Reference Data 13", Year: "1984", HowRead: "as quoted in the test data of an open solutions library",
	},
	PhreeqcPitzerData: {
		Key: "PhreeqcPitzerData", Kind: KindData, Title: "pitzer.dat, parameters of an open geochemical code",
		Publisher: "US Geological Survey", Edition: "edition not stated", HowRead: "as asserted in a public test",
	},
	Partanen2020: {
		Key: "Partanen2020", Kind: KindStudy, Author: "Partanen and Partanen", Title: "osmotic and activity coefficients of sodium chloride solutions at 25 C",
		Publisher: "Journal of Chemical and Engineering Data 65:5226", Year: "2020", HowRead: "as quoted in a public test",
	},
	Clegg1997: {
		Key: "Clegg1997", Kind: KindStudy, Author: "Clegg", Title: "activity model of aqueous sodium chloride",
		Year: "1997", HowRead: "coefficients as carried by public codes",
	},
	Steiger2005: {
		Key: "Steiger2005", Kind: KindStudy, Author: "Steiger", Title: "Pitzer parameters of salts in porous materials",
		Year: "2005", HowRead: "coefficients as carried by public codes",
	},
	Tang1986: {
		Key: "Tang1986", Kind: KindStudy, Author: "Tang", Title: "water activity of sodium chloride solutions",
		Year: "1986", HowRead: "coefficients as carried by public codes",
	},
	Simion2015: {
		Key: "Simion2015", Kind: KindStudy, Author: "Simion", Title: "density polynomial of sodium chloride solutions",
		Year: "2015", HowRead: "coefficients as carried by a public solution library",
	},
	Krumgalz1996: {
		Key: "Krumgalz1996", Kind: KindStudy, Author: "Krumgalz", Title: "volumetric properties of salt solutions at 25 C",
		Year: "1996", HowRead: "coefficients as carried by a public solution library",
	},
	InternationalCriticalTables: {
		Key: "InternationalCriticalTables", Kind: KindBook, Title: "International Critical Tables, density of sodium chloride solutions",
		Publisher: "McGraw-Hill", Edition: "as reprinted in Perry's Chemical Engineers' Handbook", HowRead: FromMemory,
	},
	Melinder2010: {
		Key: "Melinder2010", Kind: KindBook, Author: "Melinder", Title: "properties of secondary refrigerants",
		Publisher: "International Institute of Refrigeration", Year: "2010", HowRead: "coefficients as stored in an open fluid-property library",
	},
	VDIBrine: {
		Key: "VDIBrine", Kind: KindBook, Title: "heat atlas, brine data",
		Publisher: "VDI", HowRead: "as stored in an open fluid-property library",
	},
	CRCHandbook: {
		Key: "CRCHandbook", Kind: KindBook, Title: "Handbook of Chemistry and Physics",
		Publisher: "CRC Press", Edition: "edition not stated", HowRead: FromMemory,
	},
	CRCHandbook102: {
		Key: "CRCHandbook102", Kind: KindBook, Title: "Handbook of Chemistry and Physics, concentrative properties of aqueous solutions",
		Publisher: "CRC Press", Edition: "102nd ed.", Year: "2021", HowRead: "transcription of the table",
	},
	PoradnikFizykochemiczny1974: {
		Key: "PoradnikFizykochemiczny1974", Kind: KindBook, Title: "Poradnik fizykochemiczny, density of sodium chloride solutions",
		Publisher: "WNT, Warsaw", Year: "1974", HowRead: "copy of the table on a university page",
	},
	WaterDataPage: {
		Key: "WaterDataPage", Kind: KindData, Title: "Water (data page), list of density by temperature",
		HowRead: "the list on the public page; three of its values also in a copy of the list in a program",
	},
	HydrometerScales: {
		Key: "HydrometerScales", Kind: KindBook, Title: "heavy Baume scales and their moduli",
		Publisher: "handbooks", HowRead: "direct, unnamed",
	},
	LabuzaSaturatedSalts: {
		Key: "LabuzaSaturatedSalts", Kind: KindStudy, Author: "Labuza", Title: "water activity of saturated salt solutions against temperature",
		HowRead: "regression as printed on a page that contradicts its own table",
	},
	OsmoticInstrumentManual: {
		Key: "OsmoticInstrumentManual", Kind: KindUnofficial, Title: "instrument manual citing Robinson and Stokes",
		Publisher: "maker not named", HowRead: "one figure",
	},
	ResnikChirife1988: {
		Key: "ResnikChirife1988", Kind: KindStudy, Author: "Resnik and Chirife", Title: "water activity of aqueous salt solutions",
		Publisher: "Journal of Food Protection 51", Year: "1988", HowRead: FromMemory,
	},
	LupinBoeriMoschiar1981: {
		Key: "LupinBoeriMoschiar1981", Kind: KindStudy, Author: "Lupin, Boeri and Moschiar", Title: "water activity of moist salted fish",
		Publisher: "Journal of Food Technology", Year: "1981", HowRead: "abstract",
	},
	Baeza2010: {
		Key: "Baeza2010", Kind: KindStudy, Author: "Baeza et al.", Title: "water activity of sugar solutions, form of the Norrish equation",
		Year: "2010", HowRead: "form read, constant from memory",
	},
	Norrish1966: {
		Key: "Norrish1966", Kind: KindStudy, Author: "Norrish", Title: "water activity of sugar solutions",
		Publisher: "Journal of Food Technology 1", Year: "1966", HowRead: FromMemory,
	},
	Ross1975: {
		Key: "Ross1975", Kind: KindStudy, Author: "Ross", Title: "water activity of mixed solutes",
		Publisher: "Food Technology 29", Year: "1975", HowRead: FromMemory,
	},
	ZugarramurdiLupin1980: {
		Key: "ZugarramurdiLupin1980", Kind: KindStudy, Author: "Zugarramurdi and Lupin", Title: "salt uptake and water loss of fish",
		Publisher: "Journal of Food Science", Year: "1980", HowRead: FromMemory,
	},
	Peleg1988: {
		Key: "Peleg1988", Kind: KindStudy, Author: "Peleg", Title: "two-constant model of moisture sorption",
		Publisher: "Journal of Food Science 53", Year: "1988", HowRead: FromMemory,
	},
	SaltDiffusivityJapan1992: {
		Key: "SaltDiffusivityJapan1992", Kind: KindStudy, Title: "salt diffusion in fish",
		Publisher: "Journal of Cookery Science of Japan 25(4):283", Year: "1992", HowRead: "abstract",
	},
	SaltDiffusivityJFE2007: {
		Key: "SaltDiffusivityJFE2007", Kind: KindStudy, Title: "salt diffusion in fish",
		Publisher: "Journal of Food Engineering 80:497", Year: "2007", HowRead: "abstract",
	},
	SaltDiffusivityJFE2017: {
		Key: "SaltDiffusivityJFE2017", Kind: KindStudy, Title: "salt diffusion in fish",
		Publisher: "Journal of Food Engineering", Year: "2017", HowRead: "abstract",
	},
	SINTEFSalting: {
		Key: "SINTEFSalting", Kind: KindStudy, Title: "salt diffusion in fish",
		Publisher: "SINTEF", HowRead: "abstract",
	},
	WangTangCorreia2000: {
		Key: "WangTangCorreia2000", Kind: KindStudy, Author: "Wang, Tang and Correia", Title: "salt diffusivity in salmon",
		Publisher: "Journal of Food Engineering 43:115", Year: "2000", HowRead: FromMemory,
	},
	GallartJornet2007: {
		Key: "GallartJornet2007", Kind: KindStudy, Author: "Gallart-Jornet et al.", Title: "brine salting of cod and salmon",
		Year: "2007", HowRead: "from memory; one comparison in an abstract",
	},
	SalmonSmokingFoods2020: {
		Key: "SalmonSmokingFoods2020", Kind: KindStudy, Title: "salting and smoking of salmon",
		Publisher: "Foods 9:1048", Year: "2020", HowRead: "table 2",
	},
	SaltUptakeMARDI38: {
		Key: "SaltUptakeMARDI38", Kind: KindStudy, Title: "salt uptake of river carp in brine",
		Publisher: "MARDI Journal 38(1)", HowRead: "abstract",
	},
	SaltUptakeJAVA2010: {
		Key: "SaltUptakeJAVA2010", Kind: KindStudy, Title: "salt uptake of fish",
		Publisher: "Journal of Animal and Veterinary Advances 9:2778", Year: "2010", HowRead: "abstract",
	},
	SaltUptakePVJ2010: {
		Key: "SaltUptakePVJ2010", Kind: KindStudy, Title: "salt uptake of fish",
		Publisher: "Pakistan Veterinary Journal 30(3)", Year: "2010", HowRead: "abstract",
	},
	Cardinal2001: {
		Key: "Cardinal2001", Kind: KindStudy, Author: "Cardinal et al.", Title: "salting and smoking of Atlantic salmon",
		Year: "2001", HowRead: "abstract",
	},
	Rora2004: {
		Key: "Rora2004", Kind: KindStudy, Author: "Rora et al.", Title: "salt uptake of pre-rigor salmon fillets",
		Year: "2004", HowRead: "abstract",
	},
	Nguyen2010: {
		Key: "Nguyen2010", Kind: KindStudy, Author: "Nguyen et al.", Title: "salt diffusion in cod at several brine strengths",
		Year: "2010", HowRead: "abstract",
	},
	USDAARSGrowthFactors: {
		Key: "USDAARSGrowthFactors", Kind: KindGuidance, Title: "growth factors of foodborne pathogens (ICMSF 1996 values)",
		Publisher: "USDA ARS", HowRead: "web page",
	},
	OhioStateGrowthLimits: {
		Key: "OhioStateGrowthLimits", Kind: KindGuidance, Title: "temperature limits of pathogens, after the USDA ARS list",
		Publisher: "Ohio State University", HowRead: "direct",
	},
	GrowthLimitTableTompkin: {
		Key: "GrowthLimitTableTompkin", Kind: KindStudy, Author: "Tompkin", Title: "growth limits of pathogens",
		HowRead: "excerpt",
	},

	// Smoke.

	WhelanSmoking: {
		Key: "WhelanSmoking", Kind: KindBook, Author: "Whelan", Title: "Smoking Salmon & Trout",
		HowRead: "transcription of single tables",
	},
	WSUSmokingCuring: {
		Key: "WSUSmokingCuring", Kind: KindGuidance, Title: "Preservation Tips: Smoking/Curing",
		Publisher: "Washington State University Extension", HowRead: "copy",
	},
	WisconsinSeaGrantSmoking: {
		Key: "WisconsinSeaGrantSmoking", Kind: KindGuidance, Title: "Home Smoking of Fish",
		Publisher: "Wisconsin Sea Grant", HowRead: "copy",
	},
	PNW238: {
		Key: "PNW238", Kind: KindGuidance, Title: "Smoking Fish at Home Safely, PNW 238",
		Publisher: "Pacific Northwest Extension", Edition: "1999 and 2003 printings", HowRead: "copies and a paraphrase",
	},
	PNW238LaterRevision: {
		Key: "PNW238LaterRevision", Kind: KindGuidance, Title: "Smoking Fish at Home Safely, PNW 238",
		Publisher: "Pacific Northwest Extension", Edition: "later revision", HowRead: FromMemory,
	},
	OregonEarlySmokingBulletin: {
		Key: "OregonEarlySmokingBulletin", Kind: KindGuidance, Title: "early bulletin on smoking fish",
		Publisher: "Oregon State University", HowRead: "copy",
	},
	ExtensionHomeSmoking: {
		Key: "ExtensionHomeSmoking", Kind: KindGuidance, Title: "home smoking method, sheet not identified",
		Publisher: "extension services", HowRead: FromMemory,
	},
	SeafoodHACCPAlliance2017: {
		Key: "SeafoodHACCPAlliance2017", Kind: KindGuidance, Title: "model plan, Hot Smoked Salmon in reduced oxygen packs",
		Publisher: "Seafood HACCP Alliance", Year: "September 2017", HowRead: "copy",
	},
	OntarioFishPlantFB1415: {
		Key: "OntarioFishPlantFB1415", Kind: KindGuidance, Title: "Fish Plant Guidelines FB.14.15",
		Publisher: "Province of Ontario", HowRead: "direct",
	},
	WisconsinATCP70: {
		Key: "WisconsinATCP70", Kind: KindRegulation, Title: "ATCP 70.18, smoked fish",
		Publisher: "State of Wisconsin", HowRead: "copy, in part",
	},
	ILOSmallScale1982: {
		Key: "ILOSmallScale1982", Kind: KindBook, Title: "Small-Scale Processing of Fish",
		Publisher: "International Labour Office", Year: "1982", HowRead: "copy",
	},
	Poysky1997: {
		Key: "Poysky1997", Kind: KindStudy, Author: "Poysky et al.", Title: "Listeria on hot-smoked salmon steaks",
		Publisher: "Journal of Food Protection 60:649-654", Year: "1997", HowRead: "abstract",
	},
	Cheng2023: {
		Key: "Cheng2023", Kind: KindStudy, Author: "Cheng et al.", Title: "hot smoking of fish",
		Publisher: "Frontiers in Sustainable Food Systems", Year: "2023", HowRead: "abstract",
	},
	Dimitriadou2008: {
		Key: "Dimitriadou2008", Kind: KindStudy, Author: "Dimitriadou et al.", Title: "steamed trout fillets with liquid smoke",
		Publisher: "Food Science and Technology International 14", Year: "2008", HowRead: "abstract",
	},
	YaparErdol: {
		Key: "YaparErdol", Kind: KindStudy, Author: "Yapar and Erdol", Title: "drying of trout fillets",
		HowRead: "abstract",
	},
	EURegulation2023No915: {
		Key: "EURegulation2023No915", Kind: KindRegulation, Title: "Regulation (EU) 2023/915, contaminants in food",
		Publisher: "European Union", Year: "2023", HowRead: FromMemory,
	},
	EURegulation2015No1125: {
		Key: "EURegulation2015No1125", Kind: KindRegulation, Title: "Regulation (EU) 2015/1125, PAH in smoked products",
		Publisher: "European Union", Year: "2015", HowRead: "as stored in a database of limits",
	},
	EURegulation2014No1327: {
		Key: "EURegulation2014No1327", Kind: KindRegulation, Title: "Regulation (EU) 1327/2014, PAH in traditionally smoked products",
		Publisher: "European Union", Year: "2014", HowRead: "recitals and one article, as quoted",
	},
	EUSmokedFishPAHPage: {
		Key: "EUSmokedFishPAHPage", Kind: KindUnofficial, Title: "page describing the EU limits of PAH",
		Publisher: "web page", HowRead: "direct",
	},
	FranceCooling2012: {
		Key: "FranceCooling2012", Kind: KindRegulation, Title: "official text of 8 March 2012 on cooling and storage",
		Publisher: "France", Year: "2012", HowRead: "as quoted",
	},

	// Yield.

	USDASR26: {
		Key: "USDASR26", Kind: KindData, Title: "National Nutrient Database for Standard Reference, release 26",
		Publisher: "USDA", Year: "2013", HowRead: "copy of the data files",
	},
	USDASR28: {
		Key: "USDASR28", Kind: KindData, Title: "National Nutrient Database for Standard Reference, release 28",
		Publisher: "USDA", Year: "2015", HowRead: "copy of the data files",
	},
	FAOCWPHandbook: {
		Key: "FAOCWPHandbook", Kind: KindData, Title: "Handbook of Fishery Statistics, indicative conversion factors",
		Publisher: "FAO and CWP", HowRead: "text copies and a machine-readable copy",
	},
	FAOFoodComposition1953: {
		Key: "FAOFoodComposition1953", Kind: KindData, Title: "Food composition tables for international use, items 220-225",
		Publisher: "FAO", Edition: "1949 and 1953", HowRead: "direct",
	},
	FAOSTATDefinitions: {
		Key: "FAOSTATDefinitions", Kind: KindData, Title: "fish food commodity definitions",
		Publisher: "FAOSTAT", HowRead: "direct",
	},
	GLFCWeightConventions: {
		Key: "GLFCWeightConventions", Kind: KindData, Title: "commercial catch database, note on weight conventions",
		Publisher: "Great Lakes Fishery Commission", HowRead: "direct",
	},
	AbdollahiRezaei2014: {
		Key: "AbdollahiRezaei2014", Kind: KindStudy, Author: "Abdollahi and Rezaei", Title: "yields of farmed rainbow trout",
		Publisher: "Journal of Fisheries Science and Technology 2(4):23-34", Year: "2014", HowRead: "abstract",
	},
	CohoCarcassStudy2004: {
		Key: "CohoCarcassStudy2004", Kind: KindStudy, Author: "Neira et al.", Title: "carcass quality of two coho populations in a breeding programme",
		Publisher: "Aquaculture", Year: "2004", HowRead: "abstract that contradicts itself; attribution from memory",
	},
	SalmonSizeDecline2020: {
		Key: "SalmonSizeDecline2020", Kind: KindStudy, Author: "Oke et al.", Title: "size decline of salmon in Alaska, analysis code",
		Publisher: "Nature Communications", Year: "2020", HowRead: "analysis code; attribution from memory",
	},
	CommercialFisheriesReview: {
		Key: "CommercialFisheriesReview", Kind: KindGuidance, Title: "Commercial Fisheries Review, market forms of fish",
		Publisher: "US Bureau of Commercial Fisheries", HowRead: "scan",
	},
	PanfishFilletYield2017: {
		Key: "PanfishFilletYield2017", Kind: KindStudy, Title: "fillet yields of panfish in Wisconsin",
		Publisher: "North American Journal of Fisheries Management", Year: "2017", HowRead: "abstract",
	},
	BemidjiYieldStudy2024: {
		Key: "BemidjiYieldStudy2024", Kind: KindStudy, Title: "student study of fillet yields in Minnesota",
		Publisher: "Journal of Earth and Life Science (Bemidji)", Year: "2024", HowRead: "abstract",
	},
	SalmonIndustryHandbook: {
		Key: "SalmonIndustryHandbook", Kind: KindBook, Title: "salmon industry handbook",
		Publisher: "industry, as quoted on a fish-count data sheet", HowRead: "as quoted",
	},
	NOAATechMemoAFSC173: {
		Key: "NOAATechMemoAFSC173", Kind: KindGuidance, Title: "Technical Memorandum NMFS-AFSC-173, weight lost by bleeding",
		Publisher: "NOAA", Year: "2007", HowRead: "abstract",
	},
	AlaskaSeaGrantMAB37: {
		Key: "AlaskaSeaGrantMAB37", Kind: KindBook, Author: "Crapo, Paust and Babbitt", Title: "Recoveries and Yields from Pacific Fish and Shellfish, MAB-37",
		Publisher: "Alaska Sea Grant", Edition: "rev. 2004", Year: "2004", HowRead: FromMemory,
	},
	ExtensionYieldRule: {
		Key: "ExtensionYieldRule", Kind: KindGuidance, Title: "rules of thumb for fillet shares and for pounds of fish per jar",
		Publisher: "extension services, not identified", HowRead: FromMemory,
	},
	NPAFCYearbook: {
		Key: "NPAFCYearbook", Kind: KindData, Title: "statistical yearbook, table 26, mean weights",
		Publisher: "NPAFC", Year: "1997 catch", HowRead: "direct",
	},
	BirginGentil2009: {
		Key: "BirginGentil2009", Kind: KindStudy, Author: "Birgin and Gentil", Title: "New and improved results for packing identical unitary radius circles",
		Year: "2009", HowRead: "text copy of table 1",
	},
	CirclePackingData: {
		Key: "CirclePackingData", Kind: KindData, Title: "28-digit radii of packed circles",
		Publisher: "public C source file", HowRead: "direct; misprints n = 18",
	},
	EncyclopediaCirclePacking: {
		Key: "EncyclopediaCirclePacking", Kind: KindUnofficial, Title: "table of circle packings, who proved what",
		Publisher: "encyclopedia", HowRead: "direct",
	},
	TradeCannerTables: {
		Key: "TradeCannerTables", Kind: KindUnofficial, Title: "jars per canner load, trade tables (makers not named)",
		Publisher: "trade", HowRead: "several tables, a few figures from memory",
	},
	TradeJarSizes: {
		Key: "TradeJarSizes", Kind: KindUnofficial, Title: "jar size charts (makers not named)",
		Publisher: "trade", HowRead: "general charts",
	},
	CanningGuideAuthorsPage: {
		Key: "CanningGuideAuthorsPage", Kind: KindUnofficial, Title: "page citing the authors of the USDA guide on three layers",
		Publisher: "web page", HowRead: "direct",
	},
	FDAEPAFishAdvice2017: {
		Key: "FDAEPAFishAdvice2017", Kind: KindGuidance, Title: "advice about eating fish",
		Publisher: "US FDA and EPA", Year: "2017", HowRead: "direct",
	},
	FDAEPAFishAdviceNewer: {
		Key: "FDAEPAFishAdviceNewer", Kind: KindGuidance, Title: "advice about eating fish",
		Publisher: "US FDA and EPA", Edition: "after 2017", HowRead: FromMemory,
	},
	FDAEPATechnicalPage: {
		Key: "FDAEPATechnicalPage", Kind: KindGuidance, Title: "technical page behind the advice about eating fish",
		Publisher: "US FDA and EPA", HowRead: "direct, in part",
	},
	EPALocalFish: {
		Key: "EPALocalFish", Kind: KindGuidance, Title: "page on locally caught fish",
		Publisher: "US EPA", HowRead: "direct",
	},
	USDietaryGuidelines: {
		Key: "USDietaryGuidelines", Kind: KindGuidance, Title: "dietary guidelines, servings of fish",
		Publisher: "US HHS and USDA", Edition: "edition not stated", HowRead: "direct",
	},
	IJCAdvisoryReport: {
		Key: "IJCAdvisoryReport", Kind: KindGuidance, Title: "report page on fish advisories around the Great Lakes",
		Publisher: "International Joint Commission", HowRead: "direct",
	},
	StateAdvisoryAnswer: {
		Key: "StateAdvisoryAnswer", Kind: KindGuidance, Title: "answer page on fish advisories",
		Publisher: "a Great Lakes state", HowRead: "direct",
	},
	GreatLakesProtocol1993: {
		Key: "GreatLakesProtocol1993", Kind: KindGuidance, Title: "protocol for a uniform Great Lakes sport fish consumption advisory",
		Publisher: "Great Lakes states", Year: "1993", HowRead: FromMemory,
	},
	GreatLakesMercury2007: {
		Key: "GreatLakesMercury2007", Kind: KindGuidance, Title: "mercury addendum to the protocol",
		Publisher: "Great Lakes states", Year: "2007", HowRead: FromMemory,
	},
	WisconsinPossession: {
		Key: "WisconsinPossession", Kind: KindGuidance, Title: "page on possession of fish",
		Publisher: "Wisconsin DNR", HowRead: "direct",
	},
	CaliforniaPossession: {
		Key: "CaliforniaPossession", Kind: KindGuidance, Title: "answer on possession of fish",
		Publisher: "California DFW", HowRead: "direct",
	},
	OntarioPossession: {
		Key: "OntarioPossession", Kind: KindGuidance, Title: "angling pages on possession of fish",
		Publisher: "Province of Ontario", HowRead: "direct",
	},
	MichiganHouseBill5481: {
		Key: "MichiganHouseBill5481", Kind: KindUnofficial, Title: "news report on House Bill 5481 of 2010",
		Publisher: "Michigan press", Year: "2010", HowRead: "direct, current law not read",
	},
	AlaskaPossession5AAC: {
		Key: "AlaskaPossession5AAC", Kind: KindRegulation, Title: "5 AAC 65.020 and 5 AAC 39.975, possession of fish",
		Publisher: "State of Alaska", HowRead: "direct, one definition from memory",
	},
	AlaskaMagazineSupply: {
		Key: "AlaskaMagazineSupply", Kind: KindUnofficial, Title: "article on a family's yearly salmon",
		Publisher: "Alaska magazine", HowRead: "direct",
	},
	Birkeland2004: {
		Key: "Birkeland2004", Kind: KindStudy, Author: "Birkeland et al.", Title: "salting and smoking losses of salmon",
		Year: "2004", HowRead: "abstract",
	},
	Rora1998: {
		Key: "Rora1998", Kind: KindStudy, Author: "Rora et al.", Title: "salting and smoking losses of salmon",
		Year: "1998", HowRead: "abstract",
	},
	TradeSmokingLosses: {
		Key: "TradeSmokingLosses", Kind: KindUnofficial, Title: "step losses in hot smoking",
		Publisher: "trade knowledge, document not identified", HowRead: FromMemory,
	},
	OmegaThreeTable: {
		Key: "OmegaThreeTable", Kind: KindUnofficial, Title: "omega-3 content of fish, units presumed",
		Publisher: "table on a web page", HowRead: "direct",
	},
	SiscowetFatStudy: {
		Key: "SiscowetFatStudy", Kind: KindStudy, Title: "fat of lean and siscowet lake trout",
		HowRead: "abstract",
	},
	SuperiorLipidStudy: {
		Key: "SuperiorLipidStudy", Kind: KindStudy, Title: "lipid of Lake Superior fish",
		HowRead: "abstract",
	},
	OmegaThreeReview2016: {
		Key: "OmegaThreeReview2016", Kind: KindStudy, Title: "review of omega-3 content, one cell in error",
		Year: "2016", HowRead: "one table",
	},

	// Cold chain.

	FDAFoodCode: {
		Key: "FDAFoodCode", Kind: KindRegulation, Title: "Food Code",
		Publisher: "US FDA", Edition: "edition not stated", HowRead: "sections as adopted in state rules (Washington, District of Columbia, Tennessee, Wisconsin, South Dakota)",
	},
	CDCParasitePage: {
		Key: "CDCParasitePage", Kind: KindGuidance, Title: "page on fish parasites and cooking",
		Publisher: "US CDC", HowRead: "direct",
	},
	CDCTapeworm2017: {
		Key: "CDCTapeworm2017", Kind: KindStudy, Title: "Japanese broad tapeworm in Alaskan salmon",
		Publisher: "US CDC journal", Year: "2017", HowRead: "press summary",
	},
	SNHDParasiteFAQ: {
		Key: "SNHDParasiteFAQ", Kind: KindGuidance, Title: "questions on freezing for parasites",
		Publisher: "Southern Nevada Health District", HowRead: "direct",
	},
	EURegulation853y2004: {
		Key: "EURegulation853y2004", Kind: KindRegulation, Title: "Regulation (EC) 853/2004, annex III section VIII, as amended by Regulation (EU) 1276/2011",
		Publisher: "European Union", Year: "2011", HowRead: "annex of the amending regulation, German text",
	},
	CodexCXC52: {
		Key: "CodexCXC52", Kind: KindStandard, Title: "CXC 52-2003, code of practice for fish and fishery products",
		Publisher: "Codex Alimentarius", Year: "2003", HowRead: FromMemory,
	},
	MinnesotaParasites: {
		Key: "MinnesotaParasites", Kind: KindGuidance, Title: "page on fish tapeworm",
		Publisher: "University of Minnesota Extension", HowRead: "as quoted second-hand",
	},
	NorthDakotaGameFish: {
		Key: "NorthDakotaGameFish", Kind: KindGuidance, Title: "page on fish parasites",
		Publisher: "North Dakota Game and Fish", HowRead: "direct",
	},
	PublicHealthTrainingText: {
		Key: "PublicHealthTrainingText", Kind: KindUnofficial, Title: "older US public-health training text on tapeworm",
		Publisher: "copy without its publisher", HowRead: "copy, a warning only",
	},
	GLFCParasiteGuide: {
		Key: "GLFCParasiteGuide", Kind: KindGuidance, Title: "guide to parasites of Great Lakes fish",
		Publisher: "Great Lakes Fishery Commission", HowRead: "copy",
	},
	FederalColdStorageChart: {
		Key: "FederalColdStorageChart", Kind: KindGuidance, Title: "cold storage chart",
		Publisher: "US federal food safety site", HowRead: "as syndicated",
	},
	FederalColdStorageChart2021: {
		Key: "FederalColdStorageChart2021", Kind: KindGuidance, Title: "cold storage chart",
		Publisher: "US federal food safety site", Edition: "since about 2021", HowRead: "two copies of the web page",
	},
	USDAFDAConsumerAdvice: {
		Key: "USDAFDAConsumerAdvice", Kind: KindGuidance, Title: "consumer advice on time and temperature",
		Publisher: "USDA and FDA", HowRead: "several excerpts, primary text from memory",
	},
	USDAAnswerPage: {
		Key: "USDAAnswerPage", Kind: KindGuidance, Title: "answer page on storing fish",
		Publisher: "USDA", HowRead: "as repeated by a news page",
	},
	USDAFoodKeeperData: {
		Key: "USDAFoodKeeperData", Kind: KindData, Title: "data behind consumer storage advice",
		Publisher: "USDA", Edition: "edition not stated", HowRead: "copy of the data, two items",
	},
	FDAStorageChart: {
		Key: "FDAStorageChart", Kind: KindGuidance, Title: "refrigerator and freezer storage chart",
		Publisher: "US FDA", HowRead: "as repeated by a grocery retailer",
	},
	SeafoodTradeChart: {
		Key: "SeafoodTradeChart", Kind: KindUnofficial, Title: "storage chart",
		Publisher: "seafood trade body", HowRead: "excerpt",
	},
	OregonConsumerPage: {
		Key: "OregonConsumerPage", Kind: KindGuidance, Title: "consumer page on salmon",
		Publisher: "Oregon State University Extension", HowRead: "excerpt",
	},
	ApplianceManual: {
		Key: "ApplianceManual", Kind: KindUnofficial, Title: "household appliance manual citing USDA and Washington State EB1205",
		Publisher: "maker not named", HowRead: "excerpt",
	},
	FreezerManuals: {
		Key: "FreezerManuals", Kind: KindUnofficial, Title: "household freezer manuals citing USDA",
		Publisher: "makers not named", HowRead: "excerpts",
	},
	CookbookStorage2012: {
		Key: "CookbookStorage2012", Kind: KindUnofficial, Title: "cookbook storage table",
		Publisher: "unofficial", Year: "2012", HowRead: "excerpt",
	},
	NCStateFAQ: {
		Key: "NCStateFAQ", Kind: KindGuidance, Title: "questions on stored food",
		Publisher: "North Carolina State Extension", HowRead: "excerpt",
	},
	OhioStateFreezing: {
		Key: "OhioStateFreezing", Kind: KindGuidance, Title: "freezing sheet",
		Publisher: "Ohio State University Extension", HowRead: "direct",
	},
	MinnesotaFreezing: {
		Key: "MinnesotaFreezing", Kind: KindGuidance, Title: "freezing page",
		Publisher: "University of Minnesota Extension", HowRead: "direct",
	},
	WestVirginiaFreezing: {
		Key: "WestVirginiaFreezing", Kind: KindGuidance, Title: "freezing page",
		Publisher: "West Virginia University Extension", HowRead: "direct",
	},
	MSUEThawing: {
		Key: "MSUEThawing", Kind: KindGuidance, Title: "thawing of vacuum-packed fish",
		Publisher: "Michigan State University Extension", HowRead: "trade magazine summary",
	},
	ExtensionSmokedKeeping: {
		Key: "ExtensionSmokedKeeping", Kind: KindGuidance, Title: "keeping of smoked fish, sheets not identified",
		Publisher: "extension services", HowRead: FromMemory,
	},
	PowerOutageAdvice: {
		Key: "PowerOutageAdvice", Kind: KindGuidance, Title: "food safety in a power outage",
		Publisher: "USDA and FDA", HowRead: "as quoted on other pages",
	},
	WSUPowerOutage2011: {
		Key: "WSUPowerOutage2011", Kind: KindGuidance, Title: "news page on freezers in a power outage",
		Publisher: "Washington State University Extension", Year: "2011", HowRead: "direct",
	},
	UKTenDayRule: {
		Key: "UKTenDayRule", Kind: KindGuidance, Title: "chilled vacuum-packed food, 3 C and ten days",
		Publisher: "UK Food Standards Agency", HowRead: "read in part, the rest from memory",
	},
	FDACompendium: {
		Key: "FDACompendium", Kind: KindGuidance, Title: "compendium of fish and fishery product methods and limits",
		Publisher: "US FDA", HowRead: "excerpt",
	},
	FAOWHOHistamine2018: {
		Key: "FAOWHOHistamine2018", Kind: KindGuidance, Title: "Histamine in Salmonids",
		Publisher: "FAO and WHO", Year: "2018", HowRead: "excerpt and a news summary",
	},
	HistamineSurvey2021: {
		Key: "HistamineSurvey2021", Kind: KindStudy, Title: "histamine in fish on the Polish market",
		Publisher: "Journal of Veterinary Research 2021-0066", Year: "2021", HowRead: "table",
	},
	FAO444: {
		Key: "FAO444", Kind: KindBook, Title: "Fisheries Technical Paper 444, Assessment and Management of Seafood Safety and Quality",
		Publisher: "FAO", Year: "2003", HowRead: "one page",
	},
	Erikson2018: {
		Key: "Erikson2018", Kind: KindStudy, Author: "Erikson et al.", Title: "gutted and whole rainbow trout on ice",
		Year: "2018", HowRead: "abstract",
	},
	ChilledStorageStudy: {
		Key: "ChilledStorageStudy", Kind: KindStudy, Title: "chilled storage after post-catch holding",
		HowRead: "abstract without figures",
	},
	FAO348: {
		Key: "FAO348", Kind: KindBook, Author: "Huss", Title: "Fisheries Technical Paper 348, Quality and Quality Changes in Fresh Fish",
		Publisher: "FAO", Year: "1995", HowRead: "as quoted in a trade journal and a textbook chapter; tables and equation from memory",
	},
	INFOFISH2024: {
		Key: "INFOFISH2024", Kind: KindUnofficial, Title: "INFOFISH International 3/2024, quoting FAO 348",
		Publisher: "INFOFISH", Year: "2024", HowRead: "direct",
	},
	OlleyRatkowsky1973: {
		Key: "OlleyRatkowsky1973", Kind: KindStudy, Author: "Olley and Ratkowsky", Title: "temperature function of fish spoilage",
		Year: "1973", HowRead: FromMemory,
	},
	Dalgaard2004: {
		Key: "Dalgaard2004", Kind: KindBook, Author: "Dalgaard, Murillo and Jorgensen", Title: "Seafood Quality and Safety, chapter 22, modelling shelf life",
		Year: "2004", HowRead: "summary",
	},
	Koutsoumanis2000: {
		Key: "Koutsoumanis2000", Kind: KindStudy, Author: "Koutsoumanis et al.", Title: "spoilage bacteria of fish in modified atmosphere",
		Publisher: "Applied and Environmental Microbiology 66:3528", Year: "2000", HowRead: "coefficients in a transcription",
	},
	SkinnerLarkin1998: {
		Key: "SkinnerLarkin1998", Kind: KindStudy, Author: "Skinner and Larkin", Title: "conservative prediction of time to botulinum toxin",
		Publisher: "Journal of Food Protection 61:1154", Year: "1998", HowRead: FromMemory,
	},
	BakerGenigeorgis1990: {
		Key: "BakerGenigeorgis1990", Kind: KindStudy, Author: "Baker and Genigeorgis", Title: "time to botulinum toxin in fresh fish under modified atmosphere",
		Publisher: "Journal of Food Protection 53", Year: "1990", HowRead: FromMemory,
	},
	Garcia1987: {
		Key: "Garcia1987", Kind: KindStudy, Author: "Garcia et al.", Title: "botulinum toxin in salmon fillets",
		Publisher: "Journal of Food Protection 50:330", Year: "1987", HowRead: "abstract",
	},
	GarciaGenigeorgis1987: {
		Key: "GarciaGenigeorgis1987", Kind: KindStudy, Author: "Garcia and Genigeorgis", Title: "botulinum toxin in salmon homogenate",
		Publisher: "Journal of Food Protection 50:390", Year: "1987", HowRead: "abstract",
	},
	ListeriaRiskAssessment2003: {
		Key: "ListeriaRiskAssessment2003", Kind: KindGuidance, Title: "quantitative risk assessment of Listeria monocytogenes in ready-to-eat foods",
		Publisher: "FDA and FSIS", Year: "2003", HowRead: "excerpt of appendix 8",
	},
	MejlholmDalgaard2009: {
		Key: "MejlholmDalgaard2009", Kind: KindStudy, Author: "Mejlholm and Dalgaard", Title: "growth of Listeria monocytogenes in ready-to-eat seafood",
		Publisher: "Journal of Food Protection", Year: "2009", HowRead: "equations in a transcription (open R package)",
	},
	Jia2020: {
		Key: "Jia2020", Kind: KindStudy, Author: "Jia et al.", Title: "growth of Listeria monocytogenes in raw salmon",
		Publisher: "Food Control 114", Year: "2020", HowRead: "coefficients in a transcription (open R package)",
	},
	FAOWHOListeriaPackage: {
		Key: "FAOWHOListeriaPackage", Kind: KindSoftware, Title: "R package of the FAO/WHO Listeria risk model",
		Publisher: "open-source library", HowRead: "reference pages",
	},
	GermanRedfishStudy: {
		Key: "GermanRedfishStudy", Kind: KindStudy, Title: "redfish on ice",
		HowRead: "abstract",
	},
	FAO331: {
		Key: "FAO331", Kind: KindBook, Title: "Fisheries Technical Paper 331, ice in small-scale fisheries",
		Publisher: "FAO", HowRead: "excerpt of chapter 3",
	},
	FAO436: {
		Key: "FAO436", Kind: KindBook, Title: "Fisheries Technical Paper 436, ice in small fishing vessels, chapter 7",
		Publisher: "FAO", Year: "2003", HowRead: "text and symbols, equation images missing",
	},
	FAOIceMeltTest: {
		Key: "FAOIceMeltTest", Kind: KindBook, Title: "ice meltage test of an insulated box",
		Publisher: "FAO", HowRead: FromMemory,
	},
	IcelandicFishHandling: {
		Key: "IcelandicFishHandling", Kind: KindGuidance, Title: "guidance on handling fish with ice",
		Publisher: "Iceland", HowRead: "excerpt",
	},
	TradeIceTable: {
		Key: "TradeIceTable", Kind: KindUnofficial, Title: "ice to chill 10 kg of fish, in the manner of Torry and FAO",
		Publisher: "trade page", HowRead: "direct",
	},
	IceHandbooks: {
		Key: "IceHandbooks", Kind: KindBook, Title: "latent heat of ice and heat of dry ice",
		Publisher: "handbooks", HowRead: FromMemory,
	},
	DryIceShippers: {
		Key: "DryIceShippers", Kind: KindUnofficial, Title: "dry ice lost in a cooler",
		Publisher: "shippers' rule", HowRead: FromMemory,
	},
	Davey2012: {
		Key: "Davey2012", Kind: KindStudy, Author: "Davey", Title: "ice for tuna",
		Publisher: "Journal of Food Science", Year: "2012", HowRead: "abstract",
	},
	LiveFishBoxStudy: {
		Key: "LiveFishBoxStudy", Kind: KindStudy, Title: "cooling of a polystyrene box of live fish",
		HowRead: "abstract",
	},
	TorryNote32: {
		Key: "TorryNote32", Kind: KindGuidance, Title: "Advisory Note 32, superchilling fish",
		Publisher: "Torry Research Station", HowRead: "copy",
	},
	SuperchillTradeArticle: {
		Key: "SuperchillTradeArticle", Kind: KindUnofficial, Author: "Flick", Title: "superchilling of fish",
		Publisher: "aquaculture trade magazine", HowRead: "direct",
	},
	IIRFrozenFoods1986: {
		Key: "IIRFrozenFoods1986", Kind: KindBook, Title: "Recommendations for the Processing and Handling of Frozen Foods",
		Publisher: "International Institute of Refrigeration", Edition: "3rd ed.", Year: "1986", HowRead: FromMemory,
	},
	IIRFrozenFoods1972: {
		Key: "IIRFrozenFoods1972", Kind: KindBook, Title: "Recommendations for the Processing and Handling of Frozen Foods",
		Publisher: "International Institute of Refrigeration", Edition: "1972, as carried in FAO texts", Year: "1972", HowRead: FromMemory,
	},
	IIRColdStoreQuote: {
		Key: "IIRColdStoreQuote", Kind: KindUnofficial, Title: "IIR store temperatures",
		Publisher: "cold-store company page", HowRead: "as quoted",
	},
	FAO340: {
		Key: "FAO340", Kind: KindBook, Title: "Fisheries Technical Paper 340, Freezing and Refrigerated Storage in Fisheries",
		Publisher: "FAO", Year: "1994", HowRead: "as taught in an e-course; storage lives from memory",
	},
	Perennia2022: {
		Key: "Perennia2022", Kind: KindGuidance, Title: "fact sheet on frozen seafood",
		Publisher: "Perennia", Year: "2022", HowRead: "direct",
	},
	TorryFrozenStorage: {
		Key: "TorryFrozenStorage", Kind: KindGuidance, Title: "advisory note on frozen fish",
		Publisher: "Torry Research Station", HowRead: "direct",
	},
	EncyclopaediaBritannica: {
		Key: "EncyclopaediaBritannica", Kind: KindBook, Title: "fish processing, freezing",
		Publisher: "Encyclopaedia Britannica", HowRead: "direct",
	},
	UnofficialReaderComment: {
		Key: "UnofficialReaderComment", Kind: KindUnofficial, Title: "reader's comment on a draft hazards table",
		Publisher: "web page", HowRead: "excerpt",
	},

	// Heat.

	AdamsMoss: {
		Key: "AdamsMoss", Kind: KindBook, Author: "Adams and Moss", Title: "Food Microbiology",
		HowRead: "excerpt",
	},
	FloridaTeachingDeck: {
		Key: "FloridaTeachingDeck", Kind: KindGuidance, Title: "thermal processing, teaching deck",
		Publisher: "University of Florida", HowRead: "direct",
	},
	Stumbo1973: {
		Key: "Stumbo1973", Kind: KindBook, Author: "Stumbo", Title: "Thermobacteriology in Food Processing",
		Publisher: "Academic Press", Edition: "2nd ed.", Year: "1973", HowRead: FromMemory,
	},
	BotulinumCookUK: {
		Key: "BotulinumCookUK", Kind: KindGuidance, Title: "botulinum cook of three minutes",
		Publisher: "UK and Codex practice", HowRead: FromMemory,
	},
	FDAAcidifiedDraft: {
		Key: "FDAAcidifiedDraft", Kind: KindGuidance, Title: "draft guidance on acidified foods, table 7",
		Publisher: "US FDA", Edition: "draft", HowRead: "copy",
	},
	SporesIJFST1988: {
		Key: "SporesIJFST1988", Kind: KindStudy, Title: "heat resistance of spores",
		Publisher: "International Journal of Food Science and Technology 23:373", Year: "1988", HowRead: "abstract",
	},
	OdlaugPflug1977: {
		Key: "OdlaugPflug1977", Kind: KindStudy, Author: "Odlaug and Pflug", Title: "heat resistance of botulinum spores",
		Publisher: "Applied and Environmental Microbiology 34:23", Year: "1977", HowRead: "abstract",
	},
	Rhodehamel1991: {
		Key: "Rhodehamel1991", Kind: KindStudy, Author: "Rhodehamel et al.", Title: "type E spores in menhaden surimi",
		Publisher: "Journal of Food Science", Year: "1991", HowRead: "abstract",
	},
	Lindstrom2003: {
		Key: "Lindstrom2003", Kind: KindStudy, Author: "Lindstrom et al.", Title: "non-proteolytic botulinum in vacuum-packed hot-smoked fish",
		Publisher: "Applied and Environmental Microbiology 69:4029", Year: "2003", HowRead: "abstract",
	},
	Wachnicka2016: {
		Key: "Wachnicka2016", Kind: KindStudy, Author: "Wachnicka et al.", Title: "review of D values of non-proteolytic botulinum",
		Publisher: "Applied and Environmental Microbiology", Year: "2016", HowRead: "abstract",
	},
	Pace1972: {
		Key: "Pace1972", Kind: KindStudy, Author: "Pace et al.", Title: "botulinum spores on whitefish chubs in moist heat",
		Year: "1972", HowRead: "abstract",
	},
	UCDavisNote1999: {
		Key: "UCDavisNote1999", Kind: KindGuidance, Title: "note on pasteurising against type E and type B",
		Publisher: "UC Davis seafood specialist", Year: "1999", HowRead: "direct",
	},
	FinnishHotSmoking: {
		Key: "FinnishHotSmoking", Kind: KindStudy, Title: "spore kill in commercial hot smoking",
		Publisher: "Finland", HowRead: "abstract",
	},
	BenEmbarekHuss1993: {
		Key: "BenEmbarekHuss1993", Kind: KindStudy, Author: "Ben Embarek and Huss", Title: "Listeria in cooked fish",
		Publisher: "International Journal of Food Microbiology 20:85", Year: "1993", HowRead: "abstract",
	},
	ColdSmokedPasteurizing: {
		Key: "ColdSmokedPasteurizing", Kind: KindStudy, Title: "pasteurising cold-smoked salmon",
		Publisher: "Journal of Aquatic Food Product Technology", HowRead: "abstract",
	},
	HarrisonHuang1990: {
		Key: "HarrisonHuang1990", Kind: KindStudy, Author: "Harrison and Huang", Title: "Listeria in crab meat",
		Publisher: "Journal of Food Protection 53:878", Year: "1990", HowRead: "abstract",
	},
	BuduAmoako1992: {
		Key: "BuduAmoako1992", Kind: KindStudy, Author: "Budu-Amoako et al.", Title: "Listeria in lobster meat",
		Publisher: "Journal of Food Protection 55:211", Year: "1992", HowRead: "abstract",
	},
	LiHuangHwang2016: {
		Key: "LiHuangHwang2016", Kind: KindStudy, Author: "Li, Huang and Hwang", Title: "Listeria in fish",
		Publisher: "Food Control", Year: "2016", HowRead: "abstract",
	},
	HeatStudyJFP1991: {
		Key: "HeatStudyJFP1991", Kind: KindStudy, Title: "heat resistance study",
		Publisher: "Journal of Food Protection 54:334", Year: "1991", HowRead: "abstract",
	},
	Bradshaw1985: {
		Key: "Bradshaw1985", Kind: KindStudy, Author: "Bradshaw et al.", Title: "Listeria in milk",
		Publisher: "Journal of Food Protection", Year: "1985", HowRead: "abstract",
	},
	FoodMicrobiologyHandbook: {
		Key: "FoodMicrobiologyHandbook", Kind: KindBook, Title: "D and z values, table 10.10",
		Publisher: "food microbiology handbook", HowRead: "table",
	},
	F0ReviewExcerpts: {
		Key: "F0ReviewExcerpts", Kind: KindBook, Title: "F0 targets in practice",
		Publisher: "review texts and an abstract service", HowRead: "excerpts",
	},
	Geankoplis: {
		Key: "Geankoplis", Kind: KindBook, Author: "Geankoplis", Title: "Transport Processes and Unit Operations",
		Edition: "3rd ed. by its title", HowRead: "transcription of worked examples in open notebooks; section 9.6 from memory",
	},
	ToledoSlides: {
		Key: "ToledoSlides", Kind: KindBook, Author: "Toledo", Title: "exercise slides on thermal processing, after his textbook",
		Publisher: "course slides", HowRead: "statements read; answers from memory",
	},
	BerkSlides: {
		Key: "BerkSlides", Kind: KindBook, Author: "Berk", Title: "exercise slides on thermal processing, after his textbook",
		Publisher: "course slides", HowRead: "statements",
	},
	ThermalLectureNotes: {
		Key: "ThermalLectureNotes", Kind: KindBook, Title: "Thermal process calculation, lecture notes",
		Publisher: "university course", HowRead: "direct",
	},
	UnofficialStudentAssignment: {
		Key: "UnofficialStudentAssignment", Kind: KindUnofficial, Title: "student assignment with a slip in its answer",
		Publisher: "unofficial", HowRead: "direct, a warning only",
	},
	FAO285: {
		Key: "FAO285", Kind: KindBook, Title: "Fisheries Technical Paper 285, on fish canning",
		Publisher: "FAO", HowRead: "method and worked example",
	},
	FoodBiochemistryProcessing2: {
		Key: "FoodBiochemistryProcessing2", Kind: KindBook, Title: "Food Biochemistry and Food Processing, chapter 38",
		Publisher: "Wiley-Blackwell", Edition: "2nd ed.", Year: "2012", HowRead: "table 38.6 and text",
	},
	Ball1923: {
		Key: "Ball1923", Kind: KindStudy, Author: "Ball", Title: "thermal process time for canned food",
		Publisher: "National Research Council", Year: "1923", HowRead: FromMemory,
	},
	BallOlson1957: {
		Key: "BallOlson1957", Kind: KindBook, Author: "Ball and Olson", Title: "Sterilization in Food Technology",
		Publisher: "McGraw-Hill", Year: "1957", HowRead: FromMemory,
	},
	OlsonJackson1942: {
		Key: "OlsonJackson1942", Kind: KindStudy, Author: "Olson and Jackson", Title: "heating curves, theory and practice",
		Publisher: "Industrial and Engineering Chemistry 34", Year: "1942", HowRead: FromMemory,
	},
	Simpson2012: {
		Key: "Simpson2012", Kind: KindStudy, Author: "Simpson et al.", Title: "come-up correction of the formula method",
		Year: "2012", HowRead: "abstract",
	},
	Patashnik1953: {
		Key: "Patashnik1953", Kind: KindStudy, Author: "Patashnik", Title: "adding up lethality at equal steps",
		Publisher: "Food Technology 7", Year: "1953", HowRead: FromMemory,
	},
	FSAVacuumTraining: {
		Key: "FSAVacuumTraining", Kind: KindGuidance, Title: "vacuum packing training, module 3 section 2",
		Publisher: "UK Food Standards Agency", HowRead: "direct; data credited there to a chilled-food guide, 4th ed. 2006",
	},
	FSAListeriaShortList: {
		Key: "FSAListeriaShortList", Kind: KindGuidance, Title: "equivalents of 70 C for 2 minutes",
		Publisher: "UK FSA and ACMSF", HowRead: "as quoted in three training pages",
	},
	NZMPI201605: {
		Key: "NZMPI201605", Kind: KindGuidance, Title: "technical paper 2016/05, origin of 70 C for 2 minutes",
		Publisher: "New Zealand MPI", Year: "2016", HowRead: "direct",
	},
	FSISAppendixA1999: {
		Key: "FSISAppendixA1999", Kind: KindGuidance, Title: "Appendix A, compliance guidelines for cooked beef",
		Publisher: "USDA FSIS", Year: "1999", HowRead: "copy, superseded by later revisions",
	},
	Cengel: {
		Key: "Cengel", Kind: KindBook, Author: "Cengel", Title: "Heat and Mass Transfer",
		Publisher: "McGraw-Hill", HowRead: "page scan of table 4-2",
	},
	Incropera: {
		Key: "Incropera", Kind: KindBook, Author: "Incropera et al.", Title: "Fundamentals of Heat and Mass Transfer, table 5.1",
		Publisher: "Wiley", HowRead: FromMemory,
	},
	Yovanovich: {
		Key: "Yovanovich", Kind: KindStudy, Author: "Yovanovich", Title: "starting values and one-term solutions of transient conduction",
		HowRead: "abstract and formulas",
	},
	NellisKlein: {
		Key: "NellisKlein", Kind: KindBook, Author: "Nellis and Klein", Title: "Heat Transfer, as used in the documentation of a general equation solver",
		Publisher: "Cambridge University Press", HowRead: "example line in function documentation",
	},
	ChoiOkos1986: {
		Key: "ChoiOkos1986", Kind: KindStudy, Author: "Choi and Okos", Title: "effects of temperature and composition on the thermal properties of foods",
		Publisher: "Elsevier", Year: "1986", HowRead: "as printed in Ibarz and Barbosa-Canovas, page scan",
	},
	ASHRAERefrigeration2006: {
		Key: "ASHRAERefrigeration2006", Kind: KindBook, Title: "Handbook of Refrigeration, thermal properties of foods",
		Publisher: "ASHRAE", Edition: "2006 ed.", Year: "2006", HowRead: "equations in a transcription inside an open fluid-property library; a table in a reproduction; compositions from memory",
	},
	Earle: {
		Key: "Earle", Kind: KindBook, Author: "Earle", Title: "Unit Operations in Food Processing",
		Publisher: "NZIFST", Edition: "web edition", HowRead: "direct",
	},
	FAOV3630E: {
		Key: "FAOV3630E", Kind: KindBook, Title: "document V3630E, freezing in fisheries, chapter 19",
		Publisher: "FAO", HowRead: "scan with errors",
	},
	Tchigeov1979: {
		Key: "Tchigeov1979", Kind: KindStudy, Author: "Tchigeov", Title: "share of frozen water in foods",
		Year: "1979", HowRead: "the equation as coded after an ASHRAE chapter",
	},
	ClelandEarle1977: {
		Key: "ClelandEarle1977", Kind: KindStudy, Author: "Cleland and Earle", Title: "freezing times of slabs",
		Year: "1977", HowRead: FromMemory,
	},
	Pham1986: {
		Key: "Pham1986", Kind: KindStudy, Author: "Pham", Title: "simplified freezing times of foods",
		Year: "1986", HowRead: "form in a course outline; constants from memory",
	},
	Plank: {
		Key: "Plank", Kind: KindBook, Author: "Plank", Title: "freezing time equation",
		Publisher: "textbooks", HowRead: "as printed in textbooks; brick formula from memory",
	},
	SkipjackProperties: {
		Key: "SkipjackProperties", Kind: KindStudy, Title: "specific heat and conductivity of skipjack",
		Publisher: "North Carolina State University", HowRead: "abstract",
	},
	MeatProteinConductivity1982: {
		Key: "MeatProteinConductivity1982", Kind: KindStudy, Title: "intrinsic conductivity of meat protein",
		Year: "1982", HowRead: "abstract",
	},
	SINTEFUnfreezable2015: {
		Key: "SINTEFUnfreezable2015", Kind: KindStudy, Title: "unfreezable water of fish muscle",
		Publisher: "SINTEF", Year: "2015", HowRead: "abstract",
	},
	ThermalDiffusivityPage: {
		Key: "ThermalDiffusivityPage", Kind: KindUnofficial, Title: "thermal diffusivity of foods",
		Publisher: "engineering web page", HowRead: "direct",
	},
	CatfishUnfreezable: {
		Key: "CatfishUnfreezable", Kind: KindStudy, Title: "unfreezable water of catfish",
		HowRead: "abstract",
	},
}
