// Package brine answers how much salt goes into fish and what salt ends up in its water: the dry cure by weight of
// fillet, kitchen volumes through a named and weighed ingredient, uptake over time, water phase salt, the limits
// that publications set for them, and whether a recipe's salting agrees with what is published.
//
// To salt fish start with DryCure; to judge a recipe with Check. What brine is by itself, its strength on every
// scale and its water activity, is in package solution below it.
//
// Salt is the barrier against Clostridium botulinum in smoked fish, and water phase salt, salt/(salt + water) in
// the flesh, is how it is judged. A dose is not a result: thickness, fat, time and rinsing decide what a fillet
// takes up, so every plan made here is checked by measurement before anybody relies on it. Whatever the number,
// smoked fish stays cold or frozen. Sodium nitrite is never dosed here.
package brine
