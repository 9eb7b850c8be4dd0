package yield

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

var (
	statistics  = from(cite.FAOCWPHandbook, "indicative conversion factors", cite.Read)
	greatLakes  = from(cite.GLFCWeightConventions, "note on weight conventions", cite.Read)
	farmedTrout = from(cite.AbdollahiRezaei2014, "abstract", cite.Read)
	farmedCoho  = from(cite.CohoCarcassStudy2004, "abstract", cite.Read)
	cohoGrams   = from(cite.CohoCarcassStudy2004, "abstract, from its grams", cite.Computed)
	sizeDecline = from(cite.SalmonSizeDecline2020, "recovery constants of the analysis code", cite.Read)
	market      = from(cite.CommercialFisheriesReview, "market forms of fish", cite.Read)
	marketChain = from(cite.CommercialFisheriesReview, "market forms of fish, edible share of round by that of the form", cite.Computed)
	brookTrout  = from(cite.USDASR28, "NDB 15274, portion weights and refuse", cite.Read)
	wisconsin   = from(cite.PanfishFilletYield2017, "abstract", cite.Read)
	minnesota   = from(cite.BemidjiYieldStudy2024, "abstract", cite.Read)
	industry    = from(cite.SalmonIndustryHandbook, "as quoted on a fish-count data sheet", cite.Read)
	bleeding    = from(cite.NOAATechMemoAFSC173, "abstract", cite.Read)
	fattyItems  = from(cite.FAOFoodComposition1953, "items 220-221", cite.Read)
	otherItems  = from(cite.FAOFoodComposition1953, "items 222-225", cite.Read)
	alaska      = from(cite.AlaskaSeaGrantMAB37, "", cite.Recalled)
	extension   = from(cite.ExtensionYieldRule, "", cite.Recalled)
)

// shareTable has one row a printed row. Not in it: rows whose stage or denominator the source leaves open, upper bounds,
// and figures that their own source contradicts.
var shareTable = [...]row{
	{Salmon, "", Round, Gutted, conversion(1.13), statistics, whichRow},
	{Salmon, "", Round, Headed, conversion(1.3), statistics, noNote},
	{Salmon, "", Round, Fillet, conversion(2.00), statistics, bothSkins},
	{Salmon, "", Round, Steaks, conversion(1.60), statistics, noNote},
	{Salmon, "", Round, Salted, conversion(1.5), statistics, assumed},
	{Pike, "", Round, Gutted, conversion(1.04), statistics, twoPikes},

	{LakeWhitefish, "", Round, Dressed, conversion(1.17), greatLakes, notDefined},
	{LakeTrout, "", Round, Dressed, conversion(1.25), greatLakes, notDefined},
	{Cisco, "", Round, Dressed, conversion(1.20), greatLakes, notDefined},

	{RainbowTrout, "farmed", Round, Gutted, meanAndSD(87.56, 3.43), farmedTrout, noNote},
	{RainbowTrout, "farmed", Round, SkinOnFillet, meanAndSD(56.69, 3.26), farmedTrout, noNote},
	{RainbowTrout, "farmed", Round, SkinlessFillet, meanAndSD(45.36, 2.37), farmedTrout, muchSkin},
	{RainbowTrout, "farmed", Round, Head, meanAndSD(15.52, 2.00), farmedTrout, headFalls},
	{RainbowTrout, "farmed", Round, Viscera, meanAndSD(12.62, 2.61), farmedTrout, independent},

	{Coho, "farmed, male", Round, Gutted, percent(86.9), farmedCoho, noNote},
	{Coho, "farmed, female", Round, Gutted, percent(88.8), farmedCoho, noNote},
	{Coho, "farmed, male", Round, Viscera, weighed(448*units.Gram, 3487*units.Gram), cohoGrams, noNote},
	{Coho, "farmed, female", Round, Viscera, weighed(397*units.Gram, 3354*units.Gram), cohoGrams, noNote},
	{Coho, "farmed, male", Round, Gonad, weighed(239*units.Gram, 3487*units.Gram), cohoGrams, immature},
	{Coho, "farmed, female", Round, Gonad, weighed(166*units.Gram, 3354*units.Gram), cohoGrams, immature},

	{Chinook, "", Round, Edible, percent(55), sizeDecline, uncited},
	{Chum, "", Round, Edible, percent(60), sizeDecline, uncited},
	{Coho, "", Round, Edible, percent(57), sizeDecline, uncited},
	{Sockeye, "", Round, Edible, percent(53), sizeDecline, uncited},

	{Fish, "", Round, Edible, percent(45), market, noNote},
	{Fish, "", Gutted, Edible, percent(48), market, noNote},
	{Fish, "", Dressed, Edible, percent(67), market, dressedHere},
	{Fish, "", Steaks, Edible, percent(84), market, noNote},
	{Fish, "", Fillet, Edible, percent(100), market, noNote},
	{Fish, "", Round, Gutted, weighed(45, 48), marketChain, implied},
	{Fish, "", Round, Dressed, weighed(45, 67), marketChain, implied},
	{Fish, "", Round, Steaks, weighed(45, 84), marketChain, implied},

	{BrookTrout, "", Round, Fillet, weighed(149*units.Gram, 332*units.Gram), brookTrout, fewTrout},
	{BrookTrout, "", Round, Edible, percent(47), brookTrout, refuse},

	{YellowPerch, "Wisconsin", Round, Fillet, percent(33.1), wisconsin, skinState},
	{Bluegill, "Wisconsin", Round, Fillet, percent(29.5), wisconsin, skinState},
	{BlackCrappie, "Wisconsin", Round, Fillet, percent(28.6), wisconsin, skinState},
	{YellowPerch, "Minnesota", Round, Fillet, percent(44.5), minnesota, twoStates},
	{Bluegill, "Minnesota", Round, Fillet, percent(36.5), minnesota, twoStates},
	{BlackCrappie, "Minnesota", Round, Fillet, percent(42.3), minnesota, twoStates},

	{AtlanticSalmon, "farmed", Live, Gutted, percent(83), industry, fromLive},
	{Sablefish, "gaffed and bled", Round, Bled, percent(98.3), bleeding, noSalmonid},
	{Sablefish, "manager's rate", Round, Bled, percent(98.0), bleeding, noSalmonid},

	{FattyFish, "", Round, Edible, percent(50), fattyItems, noNote},
	{OtherFish, "", Round, Edible, percent(45), otherItems, noNote},

	{Chinook, "", Round, Headed, percent(72), alaska, lowTrust},
	{Chinook, "", Round, SkinOnFillet, percent(55), alaska, lowTrust},
	{Chinook, "", Round, BonelessFillet, between(45, 50), alaska, lowTrust},
	{Coho, "", Round, Headed, percent(75), alaska, lowTrust},
	{Coho, "", Round, SkinOnFillet, percent(57), alaska, lowTrust},
	{Coho, "", Round, BonelessFillet, between(45, 50), alaska, lowTrust},
	{Sockeye, "", Round, Headed, percent(74), alaska, lowTrust},
	{Sockeye, "", Round, SkinOnFillet, percent(53), alaska, lowTrust},
	{Sockeye, "", Round, BonelessFillet, between(45, 48), alaska, lowTrust},
	{Pink, "", Round, Headed, between(72, 74), alaska, lowTrust},
	{Pink, "", Round, SkinOnFillet, percent(52), alaska, lowTrust},
	{Pink, "", Round, BonelessFillet, percent(43), alaska, lowTrust},
	{Chum, "", Round, Headed, percent(74), alaska, lowTrust},
	{Chum, "", Round, SkinOnFillet, percent(60), alaska, lowTrust},
	{Chum, "", Round, BonelessFillet, percent(50), alaska, lowTrust},

	{Walleye, "", Round, SkinlessFillet, between(38, 45), extension, lowTrust},
	{LakeWhitefish, "", Round, SkinOnFillet, between(47, 52), extension, lowTrust},
	{LakeTrout, "", Round, SkinOnFillet, between(48, 52), extension, lowTrust},
	{Steelhead, "lake-run", Round, SkinOnFillet, between(50, 57), extension, lowTrust},
	{BrownTrout, "", Round, SkinOnFillet, between(48, 52), extension, lowTrust},
	{RainbowSmelt, "", Round, Headed, between(55, 65), extension, lowTrust},
	{Bass, "", Round, SkinlessFillet, between(33, 40), extension, lowTrust},
}
