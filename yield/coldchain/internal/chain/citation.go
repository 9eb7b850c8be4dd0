package chain

import "example.org/lakelarder/units/cite"

// ReadIn cites a place of a document that was read.
func ReadIn(source cite.Source, where string) cite.Citation {
	return cite.Citation{Source: source, Where: where, Basis: cite.Read}
}
