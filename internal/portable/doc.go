// Package portable has the functions of package math that differ in the last digit from one kind of processor to the
// next: exponentials, logarithms, powers, sines, Bessel functions and the error function. Here they are plain Go and
// give the same bits everywhere, so that a record that is judged on a phone, in a browser and on a server gets the
// same last digit.
//
// They have the names, arguments and special values of package math. Every product is rounded on its own,
// float64(x*y) + z, which no compiler may fuse; what is used of math is exact by definition: the square root, the
// bits of a number, whole numbers.
//
// Each doc comment states the largest error in units in the last place (ulp) that the tests found against arbitrary
// precision, rounded up; half an ulp cannot be beaten. The tables are worked out with math/big by the tests, which
// also compare them.
package portable
