// Package logged makes the temperature records that the tests of the cold chain hold its packages against: Histories
// reads the invented ones of testdata, Record joins straight lines, Drawn and Weather turn the bytes of a fuzz run into
// readings. Its cells.go reads the cells of a printed table as quantities.
package logged
