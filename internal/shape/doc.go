// Package shape holds the layout of this module as a test, and nothing else: which package may import which, what stands at the top,
// no float64 in exported signatures outside units, nothing but pure functions in the product packages, sizes, doc comments and
// examples. The rules are Go data in layout_test.go; a new package or a new import is a change there, in the same
// commit and with its reason.
//
// The rules read syntax, not types. They catch what a hurried hand does, not what a determined one hides.
package shape
