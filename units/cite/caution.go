package cite

// Caution is a warning that belongs to a result: something to show beside its figures, in words, and
// where it is from. Results carry cautions as data so that an app can show them in its own way.
type Caution struct {
	Text     string
	Citation Citation
}

// String is the text and, in parentheses, its citation where it has one.
func (c Caution) String() string {
	if c.Citation.IsZero() {
		return c.Text
	}
	return c.Text + " (" + c.Citation.String() + ")"
}
