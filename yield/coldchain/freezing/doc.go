// Package freezing says how long fish takes to freeze and how much a freezer freezes in a day. Start with Flesh, what
// the fish is made of: Flesh.Piece puts a piece of it into the cold, Piece.Between says when its core is there, as a
// range of which High is the safe end.
//
// Flesh.Thermal and Flesh.Heat are the properties behind it, by the equations of Choi and Okos; Fishes are the printed
// figures to hold them against. Plan counts the daily loads of a home freezer by the published rules. All but those
// rules is computed.
package freezing
