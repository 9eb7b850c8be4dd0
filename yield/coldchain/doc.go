// Package coldchain follows fish from the water to the shelf: how long it was how warm, held against the
// limits that have been published for that.
//
// Exposure counts the hours that a temperature record spent in each band of the FDA's table A-2, of its
// short rules for ready-to-eat fish and of the kitchen's two-hour rule, and says of each what was used,
// what is left and when it was passed. Where sources disagree the stricter is the default and the other
// is named; where the record has a gap, the answer is that one cannot tell. Limits and LimitAt show the
// limits themselves. WatchExposure is the same for a live probe, with the time each rule has left.
//
// IceDays says how many days on ice a record is worth, and Spoilage.Left what is left of the life published for
// a fish: when it stops being good, never that it is safe. TimeToToxin and ToxinShare are the envelopes of
// botulinum, ListeriaInSeafood and its kin how fast Listeria grows: beside the limits of Exposure, never instead.
//
// IceFor counts the ice of a trip, ChillIce that for the fish and MeltRate that for the box; ChillTime says how
// long the middle of a fish takes. Ice is rounded up and times are ranges.
//
// FindKeeping returns the published keeping times, those of safety and those of quality apart, and
// CheckKeeping holds a food against them. JudgeStore judges the refrigerator, the freezer and the shelf,
// StorageLife counts what a record used of frozen fish, CheckThaw looks at how it is thawed.
// CheckLanding looks at what came before the ice, JudgeJar at what a jar shows.
//
// ParasitePlan and ParasiteHold hold fish that is to be eaten raw against the published rules of freezing: the strictest decide,
// the others are named, and figures too weak for raw fish are refused. Flesh has the thermal properties of fish from its
// composition, Freezing the time until it is frozen through, FreezerPlan how much of a catch a freezer takes in a day.
//
// The print says nothing of 41.5 °F, between a band that ends at 41 °F and one that begins at 42 °F. Here the stricter
// band begins where the milder one ends: 41 °F is the last temperature of the milder, and 41.5 °F has the stricter limit. Most
// rows of table A-2 are from memory, and say so: check the print before relying on them, and follow local codes and the
// advice of the extension service.
package coldchain
