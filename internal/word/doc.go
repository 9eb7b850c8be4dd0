// Package word gives the small enumerations of the library their words, written and read alike everywhere.
package word
