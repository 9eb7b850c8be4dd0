// Package yield follows mass from the whole fish to the jar and the rack: what share of a fish is
// left after each step, what a given loss of water leaves, and where everything else went. Nothing is
// created and nothing vanishes: every quantum of the whole fish ends in exactly one place.
//
// Published shares are looked up (Shares, Find) and carry their Citation; nobody's figure is filled in
// for another species or stage. What people plan with where nothing is published is offered under its
// own name (PlanningDefault). Splitting and chaining are arithmetic on the shares that the caller chose.
//
// A Makeup is the mass balance of one piece: water, salt, protein, fat and ash that only move. It starts from a row
// of the open composition data (Composition) or an analysis (Proximate), goes through weighed steps (Exchange) and
// ends as portions. What it says of salt is worked out and not measured: it explains, and decides nothing about
// safety.
//
// Shares multiply; losses of steps never add. Masses kept round down, the safe side for a supply: a
// plan never counts on fish that is not there.
package yield
