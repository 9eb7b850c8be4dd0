// Package brine answers how much salt goes into fish and what salt ends up in its water: the dry cure by weight of
// fillet, kitchen volumes through a named and weighed ingredient, water phase salt and its inverse, and the
// water phase salt that publications ask for.
//
// Salt is the barrier against Clostridium botulinum in smoked fish, and water phase salt, salt/(salt + water) in
// the flesh, is how it is judged. A dose is not a result: thickness, fat, time and rinsing decide what a fillet
// takes up, so every plan made here is checked by measurement before anybody relies on it. Whatever the number,
// smoked fish stays cold or frozen. Sodium nitrite is never dosed here.
package brine
