// Package printed reads the copies of printed tables in testdata/ for tests, and judges computed figures by the digits that were printed.
//
// A cell is text, as it stands on the page: 845.560 has three decimals, and so a figure agrees with it within 0.0005. An
// empty cell was not printed. No tolerance is typed into test code; where a source contradicts itself, the row says so in its
// own columns tolerance (or tolerance_<column>) and note.
//
// Only tests import this package.
package printed
