// Package process holds what has been published about pressure canning fish at home: product, pack,
// jar, kind of gauge and altitude to pressure and minutes, each with its Citation. It looks up. It
// never takes the nearest row, never interpolates and never computes a process; where nobody has
// published one, it says so with a NotPublishedError.
//
// The table is that of the USDA Complete Guide to Home Canning (AIB 539), Guide 5, rev. 2015. Find
// reads it; FindExtension reads the one row that an extension service's rule adds beyond it; Check
// holds a recipe against it.
//
// A published setting does not give 240 °F everywhere in its band. Margin says what it gives; it
// never changes the setting. Follow the printed guide, a tested recipe and the advice of the local
// extension service: this package repeats them and replaces none of them.
package process
