// Package conformance holds results of every computing function over a grid of arguments, and compares them on the
// machine it runs on: one answer on every machine, to the last digit. It is a test and has no code.
//
// Each package has a file of lines in testdata/conformance, headed by its hash, and a file of Go here that works them
// out; all.txt has the hash of each and of all. A line is a function, its arguments and its result in full: integers
// as they are, floats as their bits. With LAKELARDER_WRITE=1 the test writes the files:
//
//	LAKELARDER_WRITE=1 go test ./internal/conformance
//
// A changed hash is a changed answer and needs a line in CHANGELOG.md that says why.
package conformance
