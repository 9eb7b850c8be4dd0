package brine

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// growthLimits are the printed rows: activity in thousandths, pH in hundredths, salt in hundredths of a percent,
// temperatures in °C. In the second table a 0 is a cell that is not printed, or not as this figure.
var growthLimits = [...]GrowthLimit{
	growth("Bacillus cereus", 920, 430, 930, 1000, 4, 55, "facultative anaerobe").from(tableA1),
	growth("Campylobacter jejuni", 987, 490, 950, 170, 30, 45, "micro-aerophile").from(tableA1),
	growth("Clostridium botulinum type A, proteolytic B and F", 935, 460, 900, 1000, 10, 48, "anaerobe").from(tableA1),
	growth("Clostridium botulinum type E, nonproteolytic B and F", 970, 500, 900, 500, 3.3, 45, "anaerobe").from(tableA1),
	growth("Clostridium perfringens", 930, 500, 900, 700, 10, 52, "anaerobe").from(tableA1),
	growth("pathogenic Escherichia coli", 950, 400, 1000, 650, 6.5, 49.4, "facultative anaerobe").from(tableA1),
	growth("Listeria monocytogenes", 920, 440, 940, 1000, -0.4, 45, "facultative anaerobe").from(tableA1),
	growth("Salmonella spp.", 940, 370, 950, 800, 5.2, 46.2, "facultative anaerobe").from(tableA1),
	growth("Shigella spp.", 960, 480, 930, 520, 6.1, 47.1, "facultative anaerobe").from(tableA1),
	growth("Staphylococcus aureus growth", 830, 400, 1000, 2000, 7, 50, "facultative anaerobe").from(tableA1),
	growth("Staphylococcus aureus toxin", 850, 400, 980, 1000, 10, 48, "facultative anaerobe").from(tableA1),
	growth("Vibrio cholerae", 970, 500, 1000, 600, 10, 43, "facultative anaerobe").from(tableA1),
	growth("Vibrio parahaemolyticus", 940, 480, 1100, 1000, 5, 45.3, "facultative anaerobe").from(tableA1),
	growth("Vibrio vulnificus", 960, 500, 1000, 500, 8, 43, "facultative anaerobe").from(tableA1),
	growth("Yersinia enterocolitica", 945, 420, 1000, 700, -1.3, 42, "facultative anaerobe").from(tableA1),
	growth("Salmonella spp.", 940, 380, 950, 0, 5.2, 46.2, "").from(arsFactors),
	growth("Clostridium botulinum A and B", 930, 470, 900, 0, 10, 50, "").from(arsFactors),
	growth("Clostridium botulinum, nonproteolytic B", 0, 0, 0, 0, 5, notPrinted, "").from(arsFactors),
	growth("Clostridium botulinum E", 965, 0, 0, 0, 3.3, notPrinted, "").from(arsFactors),
	growth("Staphylococcus aureus", 830, 400, 1000, 0, 7, 48, "").from(arsFactors),
	growth("Campylobacter jejuni", 987, 490, 900, 0, 32, 45, "").from(arsFactors),
	growth("Yersinia enterocolitica", 0, 420, 960, 0, -1.3, 42, "").from(arsFactors),
	growth("Listeria monocytogenes", 920, 439, 940, 0, -0.4, 45, "").from(arsFactors),
	growth("Vibrio cholerae O1", 970, 500, 960, 0, 10, 43, "").from(arsFactors),
	growth("Vibrio parahaemolyticus", 940, 480, 1100, 0, 5, 43, "").from(arsFactors),
	growth("Clostridium perfringens", 930, 550, 900, 0, 4, 50, "").from(arsFactors),
	growth("Bacillus cereus", 930, 500, 880, 0, 4, 55, "").from(arsFactors),
	growth("Escherichia coli", 950, 440, 900, 0, 7, 46, "").from(arsFactors),
	growth("Shigella sonnei", 0, 490, 934, 0, 6.1, 47.1, "").from(arsFactors),
}

// notPrinted marks a temperature that is not printed.
const notPrinted = -400.0

var (
	tableA1    = guide("Appendix 4, table A-1, p. 420")
	arsFactors = cite.Citation{Source: cite.USDAARSGrowthFactors, Where: "table", Basis: cite.Read}
)

func growth(organism string, activity, leastPH, mostPH, salt int, coldest, warmest float64, oxygen string) GrowthLimit {
	return GrowthLimit{
		Organism: organism, LeastActivity: units.Ratio(activity) * units.PerMille,
		LeastPH: units.PH(leastPH) * units.PHUnit / 100, MostPH: units.PH(mostPH) * units.PHUnit / 100,
		MostSalt: units.Ratio(salt) * units.Percent / 100,
		Coldest:  units.Celsius(coldest), Warmest: units.Celsius(warmest), Oxygen: oxygen,
	}
}

func (g GrowthLimit) from(c cite.Citation) GrowthLimit {
	g.Citation = c
	return g
}
