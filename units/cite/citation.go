package cite

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Citation says where a figure comes from. It is small and comparable; copy it
// freely. Source is the document, Where the place in it (a page, a table, a
// section, or a short name of the computation), Basis how the figure was had.
// The zero Citation is no citation.
type Citation struct {
	Source Source
	Where  string
	Basis  Basis
}

// IsZero reports whether c is the zero Citation.
func (c Citation) IsZero() bool {
	return c == Citation{}
}

// Unverified reports whether the figure was neither seen in its document nor
// worked out: true for Quoted, Recalled, Practice and Unstated, false for Read
// and Computed. A Computed figure is still only as good as its equations and
// inputs.
func (c Citation) Unverified() bool {
	return c.Basis != Read && c.Basis != Computed
}

// Check returns an IncompleteError unless c is complete: the basis is stated;
// the source is in the bibliography, and may be left out for Practice and
// Computed alone; a Read citation has a place, and a document of which
// something was read; every other has a source or a place; and the place is
// one line of text.
func (c Citation) Check() error {
	reason := c.lack()
	if reason == "" {
		return nil
	}
	return IncompleteError{Citation: c, Reason: reason}
}

// lack is the first thing that Check misses, or empty.
func (c Citation) lack() string {
	sourced := c.Source != 0
	switch {
	case c.Basis == Unstated || c.Basis > Computed:
		return "expected a basis: read, quoted, recalled, practice or computed"
	case sourced && !c.Source.known():
		return "expected a source in the bibliography"
	case !sourced && (c.Basis == Read || c.Basis == Quoted || c.Basis == Recalled):
		return "a " + c.Basis.String() + " figure needs a source"
	case !oneLine(c.Where):
		return "the place must be one line of text with no space around it"
	case c.Where == "" && (!sourced || c.Basis == Read || c.Basis == Quoted):
		return "a " + c.Basis.String() + " figure needs a place"
	case c.Basis == Read && c.Source.Document().HowRead == FromMemory:
		return "nothing of this document was read"
	}
	return ""
}

// String returns the citation in one line that a person can follow: document,
// place and, in parentheses, the basis. Recalled and practice figures and
// unofficial documents carry their warning.
func (c Citation) String() string {
	if c.IsZero() {
		return "no citation"
	}
	var parts []string
	if c.Source != 0 {
		parts = append(parts, c.Source.String())
	}
	switch {
	case !oneLine(c.Where):
		parts = append(parts, strconv.Quote(c.Where))
	case c.Where != "":
		parts = append(parts, c.Where)
	}
	return strings.TrimSpace(strings.Join(parts, ", ") + " (" + c.warning() + ")")
}

// warning is the basis in the words that a reader of the citation needs.
func (c Citation) warning() string {
	switch {
	case c.Basis == Read && c.Source.Document().Kind == KindUnofficial:
		return "read in an unofficial source"
	case c.Basis == Quoted:
		return "as quoted in another document: check this one before relying on it"
	case c.Basis == Recalled:
		return "recalled: check the document before relying on it"
	case c.Basis == Practice:
		return "common practice of the trade, no published source"
	case c.Basis == Unstated:
		return "basis not stated: do not rely on it"
	}
	return c.Basis.String()
}

// oneLine reports whether s is valid text that can be printed in one line, with
// no space around it.
func oneLine(s string) bool {
	unprintable := func(r rune) bool { return !unicode.IsPrint(r) }
	return utf8.ValidString(s) && strings.TrimSpace(s) == s && strings.IndexFunc(s, unprintable) < 0
}
