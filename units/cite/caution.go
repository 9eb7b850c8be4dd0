package cite

// Caution is a warning that belongs to a result: something to show beside its figures, in words, and where it is from.
// Results carry cautions as data so that an app can show them in its own way. ID is stable and unique in the library,
// "canner.air-left-in": an app translates a caution, or shows it once, by its ID. A Deciding caution changes what the
// reader does next and is shown first, never folded away.
type Caution struct {
	ID       CautionID
	Text     string
	Deciding bool
	Citation Citation
}

// CautionID names a Caution: the package that speaks, a point, and a few words.
type CautionID string

// String is the text and, in parentheses, its citation where it has one.
func (c Caution) String() string {
	if c.Citation.IsZero() {
		return c.Text
	}
	return c.Text + " (" + c.Citation.String() + ")"
}
