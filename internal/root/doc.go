// Package root finds where a rising function is zero. Several packages solve for a temperature or a length of which they
// know only what follows from it; each hands in the function and its slope.
package root
