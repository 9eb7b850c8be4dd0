// Package cite says where a figure comes from: a Source is one edition of one
// document, a Citation a place in it and the Basis on which the figure is
// given. The package holds the whole bibliography, so that a reviewer reads
// one file.
//
// A Basis is honest about how far a figure may be trusted. Read means that the
// printed value was seen, in the document or in a copy or quotation of it (the
// document's HowRead tells which). Recalled and Practice figures are marked in
// every text form and by Citation.Unverified, so that a caller can hold them
// back or show the warning.
//
// Sources travel as their key, which is the name of the Go constant; the
// number behind it never leaves the process.
package cite
