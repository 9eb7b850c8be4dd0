// Package icstest holds the calendar against a parser that others keep. It is a module of its own, so that whoever
// imports the library does not get the parser into the bargain: run its test in this directory.
package icstest
