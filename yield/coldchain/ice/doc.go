// Package ice counts the ice of a catch. Start with Plan: the ice of a whole trip, what chilling the fish melts, what
// keeping it melts and what is to be left over. ToChill and MeltRate.Hold are its two parts; MeltTest measures a box by
// weighing, Wall and MeltRateOf work it out.
//
// ChillTime says how long the middle of a fish takes to be cold in ice, as a range. Ice is rounded up, and times are
// planned with their High. All of it is computed: how warm the fish really is, only a thermometer in the thickest one
// tells.
package ice
