// Package solution answers what salt and sugar in water are: the strength of a brine on every scale, its density,
// what a salometer reads, what makes so much of it, water activity and freezing point. It knows no fish.
//
// A strength goes in as a share, salt/(salt + water) by mass: start with StrengthOf, or with the From function of
// the scale at hand. The water of a piece of fish is such a solution too, and its share is called water phase salt
// there.
package solution
