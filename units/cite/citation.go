package cite

import (
	"errors"
	"fmt"
	"strings"
	"unicode"
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

// Unverified reports whether nobody saw the figure in print and nobody worked
// it out: true for Recalled, Practice and Unstated, false for Read and
// Computed. A Computed figure is still only as good as its equations and
// inputs.
func (c Citation) Unverified() bool {
	return c.Basis != Read && c.Basis != Computed
}

// Check returns an error unless c is complete: the basis is stated, a source
// of the bibliography is named (it may be left out for Practice and Computed),
// a Read citation has a place and a document that was read, the others a place
// or a source, and the place is one line of text.
func (c Citation) Check() error {
	switch {
	case c.IsZero():
		return errors.New("cite: the citation is empty")
	case c.Basis == Unstated || c.Basis > Computed:
		return fmt.Errorf("cite: basis %v of a citation of %q", c.Basis, c.Source.Key())
	case c.Source != 0 && !c.Source.known():
		return fmt.Errorf("cite: %v is not in the bibliography", c.Source)
	case !oneLine(c.Where):
		return fmt.Errorf("cite: place %q is not one trimmed line of text", shortened(c.Where))
	case c.Source == 0 && (c.Basis == Read || c.Basis == Recalled):
		return fmt.Errorf("cite: a %v figure needs a source", c.Basis)
	case c.Source == 0 && c.Where == "":
		return fmt.Errorf("cite: a %v figure needs a source or a place", c.Basis)
	case c.Basis == Read && c.Where == "":
		return fmt.Errorf("cite: a read figure of %s needs a place", c.Source.Key())
	case c.Basis == Read && c.Source.Document().HowRead == FromMemory:
		return fmt.Errorf("cite: nothing of %s was read", c.Source.Key())
	}
	return nil
}

// String returns the citation in one line that a person can follow: document,
// place and, in parentheses, the basis. Recalled and practice figures carry
// their warning.
func (c Citation) String() string {
	if c.IsZero() {
		return "no citation"
	}
	var parts []string
	if c.Source != 0 {
		parts = append(parts, c.Source.String())
	}
	if c.Where != "" {
		parts = append(parts, c.Where)
	}
	parts = append(parts, "("+c.warning()+")")
	if len(parts) > 2 {
		parts[0] += ","
	}
	return strings.Join(parts, " ")
}

// warning is the basis in the words that a reader of the citation needs.
func (c Citation) warning() string {
	switch c.Basis {
	case Recalled:
		return "recalled: check the print before relying on it"
	case Practice:
		return "common practice of the trade, no published source"
	case Unstated:
		return "basis unstated: do not rely on it"
	}
	return c.Basis.String()
}

// oneLine reports whether s has no line breaks or other control characters and
// no space around it.
func oneLine(s string) bool {
	return strings.TrimSpace(s) == s && strings.IndexFunc(s, unicode.IsControl) < 0
}
