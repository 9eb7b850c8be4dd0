// Package keeping says how long fish keeps, where, and what has to be thrown away. Start with Check: a food that was
// kept at a temperature for a time, held against every published keeping time; Find returns the times themselves, those
// of safety and those of quality apart.
//
// CheckStore holds a refrigerator, freezer or shelf against its published temperatures, CheckPowerCut a power cut
// against how long they hold their cold, CheckThaw how fish is thawed, CheckJar what a home-canned jar shows.
// FrozenLife.Audit counts what a record used of the storage life of frozen fish.
package keeping
