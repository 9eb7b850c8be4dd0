package yield

import "example.org/lakelarder/units/cite"

var (
	smokedNote   = from(cite.TorrySmokedSalmonNote, "quoted passage", cite.Read)
	impliedNote  = from(cite.TorrySmokedSalmonNote, "difference of the two quoted losses", cite.Computed)
	steamedTrout = from(cite.Dimitriadou2008, "abstract", cite.Read)
	trade        = from(cite.TradeSmokingLosses, "", cite.Recalled)
)

// smokingTable has one row a printed row.
var smokingTable = [...]lossRow{
	{"cold-smoked salmon fillet", "salting and smoking together", pct(16), pct(18), smokedNote, mediumCure},
	{"cold-smoked salmon fillet, dry salted", "smoking", pct(7), pct(9), smokedNote, ofEntering},
	{"cold-smoked salmon fillet, dry salted", "salting", pct(9.7), pct(9.9), impliedNote, impliedLoss},
	{"rainbow trout fillet", "whole process, not dried first", pct(23.7), pct(23.7), steamedTrout, noKiln},
	{"rainbow trout fillet", "whole process, dried for 4 h first", pct(28.8), pct(28.8), steamedTrout, noKiln},
	{"hot-smoked salmon", "whole process", pct(20), pct(30), trade, lowTrust},
	{"hot-smoked salmon", "brining", pct(-2), pct(3), trade, lowTrust},
	{"hot-smoked salmon", "air drying", pct(2), pct(6), trade, lowTrust},
	{"hot-smoked salmon", "smoking and cooking", pct(12), pct(22), trade, lowTrust},
	{"hot-smoked salmon", "cooling", pct(1), pct(2), trade, lowTrust},
}
