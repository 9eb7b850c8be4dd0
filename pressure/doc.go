// Package pressure knows altitude, air and saturated steam: the standard atmosphere, the boiling point, gauge
// pressure to absolute and back, and the temperature of the steam under a gauge reading. It knows no foods and no
// jars.
//
// Everything here is computed: the US Standard Atmosphere 1976 for the air, IAPWS-IF97 region 4 for the steam. It
// explains what a published pressure setting does and never replaces one. Published settings do not give 240 °F
// everywhere: 11 psi at 2,000 ft is 239.29 °F, 10 psi at 1,000 ft is 238.18 °F, and neither is a mistake to be
// corrected. A process rests on how fast its jars heat and cool, which no steam temperature carries. The published
// table decides.
//
// Results are rounded once, to the nearest: temperatures to a quantum (1/9,000,000 K), computed pressures to a
// micropascal, computed altitudes to a micrometre. That is fine enough for a round trip to come back exactly: a
// temperature by way of its pressure, an altitude in whole micrometres, as whole feet are, by way of its air. Every
// machine gives the same answer to the last digit.
package pressure
