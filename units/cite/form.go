package cite

import "example.org/lakelarder/internal/wire"

// form is a Citation as it leaves the process.
type form struct {
	Document string
	Source   Source
	Place    string
	Basis    Basis
}

func (c Citation) form() form {
	return form{Document: c.Source.Document().String(), Source: c.Source, Place: c.Where, Basis: c.Basis}
}

// MarshalJSON writes the citation with its document resolved: an object of document, source, place and basis. The
// document is the line that Document.String prints, the source its key. What is not set is left out. A number that is
// no source or no basis is a units.FieldError.
func (c Citation) MarshalJSON() ([]byte, error) { return wire.Marshal(c.form()) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError. The document may be
// left out; one that is not the document of the source is a ContradictionError, for then one of the two is wrong. On
// an error c keeps its value.
func (c *Citation) UnmarshalJSON(data []byte) error {
	var read form
	if err := wire.Unmarshal(data, &read); err != nil {
		return err
	}
	cited := Citation{Source: read.Source, Where: read.Place, Basis: read.Basis}
	if read.Document != "" && read.Document != cited.form().Document {
		return ContradictionError{Source: read.Source, Document: read.Document}
	}
	*c = cited
	return nil
}
