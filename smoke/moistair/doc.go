// Package moistair answers for the air of a smoker, a room or a refrigerator: what water it holds, how warm a wet surface
// gets in it and how fast that surface dries. Start with ByRelativeHumidity, then ask the Air for its WetBulb, which is
// the ceiling of a wet surface however hot the air is. It knows no fish: a surface is a water activity and a film.
//
// The equations are those of an ideal gas; FilmAlong and SmokerFilm say how well the air gives its heat, as a range;
// Evaporate is the drying of a surface that stays wet.
package moistair
