// Package lethality explains what a temperature record did to spores and germs, and how heat reaches the middle of a
// jar. It is here to learn from: why a published process takes a hundred minutes, and what one degree of steam is
// worth. It explains and never decides; no other package imports it, and nothing in it shortens, replaces or confirms
// a published process.
//
// Lethality is minutes at a reference temperature: F(T, z), with F0 the named case of 121.1 °C and z = 10 K. 250 °F
// is 121.111… °C, another reference with its own name. Between readings the temperature runs straight, as in package
// series, and the integral over each straight line is exact. F, P and D are time.Duration, log reductions Logs, plain
// numbers Number. What could be read as a permission, an F, a time, reductions, carries its cautions with it.
//
// Conduction is the textbook series: slab, infinite cylinder and sphere, and the finite cylinder under any medium
// that runs in straight lines. Real jars hold liquid and head space and do not heat as a solid.
//
// A core temperature says nothing about spores in dry smoke, where dry heat and lysozyme protect them: what would
// count spores refuses such a record.
package lethality
