package yield

import (
	"fmt"

	"example.org/lakelarder/units/cite"
)

// Shares returns every published share of a species, in the order of the table: shares of the round fish
// by stage and part, and shares of a later stage where a source prints those. Nil for a species without
// any. The slice is the caller's own.
func Shares(species Species) []Share {
	var all []Share
	for i := range shareTable {
		if shareTable[i].species == species {
			all = append(all, shareTable[i].share())
		}
	}
	return all
}

// Find returns the published share of the round fish that is left at a stage, or that a part is. Where
// several are published it is the one with the lowest likely figure, the safe side for a supply (for a part, the
// highest), and the others are named among its cautions. Nothing published is a NotPublishedError that
// says whether the species or the stage ran out: no other species and no planning default stands in.
func Find(species Species, stage Stage) (Share, error) {
	var found Share
	var others []Share
	var stated []string
	known := false
	for _, s := range Shares(species) {
		known = true
		if s.From != Round {
			continue
		}
		if s.To != stage {
			stated = appendNew(stated, s.To.String())
			continue
		}
		switch {
		case found.To == 0:
			found = s
		case (s.Likely < found.Likely) != stage.IsPart():
			others = append(others, found)
			found = s
		default:
			others = append(others, s)
		}
	}
	switch {
	case !known:
		return Share{}, NotPublishedError{Species: species, Stage: stage, Missing: MissingSpecies, Stated: publishedSpecies()}
	case found.To == 0:
		return Share{}, NotPublishedError{Species: species, Stage: stage, Missing: MissingStage, Stated: stated}
	}
	for _, o := range others {
		found.Cautions = append(found.Cautions, cite.Caution{
			ID: "yield.another-share", Text: fmt.Sprintf("Another figure is published: %v, %s.", o.Likely, o.which()),
			Citation: o.Citation,
		})
	}
	return found, nil
}

// which is the fish that a share is of, in words.
func (s Share) which() string {
	if s.Stock == "" {
		return s.Species.String()
	}
	return s.Species.String() + " (" + s.Stock + ")"
}

func publishedSpecies() []string {
	var all []string
	for i := range shareTable {
		all = appendNew(all, shareTable[i].species.String())
	}
	return all
}

func appendNew(words []string, word string) []string {
	for _, w := range words {
		if w == word {
			return words
		}
	}
	return append(words, word)
}

// share is the row as a caller sees it.
func (r row) share() Share {
	s := Share{
		Species: r.species, Stock: r.stock, From: r.from, To: r.to,
		Likely: r.likely, Low: r.low, High: r.high, Spread: r.spread, Factor: r.factor, Citation: r.citation,
	}
	s.Cautions = rowCautions(r.note, r.citation)
	return s
}

// rowCautions are those of a row with this note: a recalled figure says so.
func rowCautions(note cite.Caution, from cite.Citation) []cite.Caution {
	var all []cite.Caution
	if note != noNote {
		all = append(all, note)
	}
	if from.Basis == cite.Recalled {
		all = append(all, recalled)
	}
	return all
}
