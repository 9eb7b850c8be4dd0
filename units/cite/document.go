package cite

import "strings"

// Kind is the sort of document a source is.
type Kind string

// The kinds of document. A KindUnofficial document carries no authority: it is
// kept as a cross-check, or as a warning of what is in circulation.
const (
	KindStandard   Kind = "standard"
	KindRegulation Kind = "regulation"
	KindGuidance   Kind = "guidance" // of an agency or an extension service
	KindBook       Kind = "book"
	KindStudy      Kind = "study"
	KindData       Kind = "data"
	KindSoftware   Kind = "software"
	KindUnofficial Kind = "unofficial"
)

// FromMemory is the HowRead of a document of which nothing was read: no
// citation of it can claim the basis Read.
const FromMemory = "from memory"

// Document describes one edition of one document. Documents are comparable.
// Empty fields are unknown. Key is the name of the Source constant; Title is
// the printed title or, in lower case, a description where the title was not
// seen; HowRead says in a few words in what form the figures were read.
type Document struct {
	Key       string
	Kind      Kind
	Author    string
	Title     string
	Publisher string
	Edition   string
	Year      string
	HowRead   string
}

// String returns the document in one line: who, what, and in parentheses the
// journal or publisher (where an author is named) and the edition or year.
// The zero Document gives the empty string.
func (d Document) String() string {
	var b strings.Builder
	who := d.Author
	if who == "" {
		who = d.Publisher
	}
	if who != "" {
		b.WriteString(who)
		b.WriteString(", ")
	}
	b.WriteString(d.Title)
	var marks []string
	if d.Author != "" && d.Publisher != "" {
		marks = append(marks, d.Publisher)
	}
	if d.Edition != "" {
		marks = append(marks, d.Edition)
	}
	if d.Year != "" && !strings.Contains(d.Edition, d.Year) {
		marks = append(marks, d.Year)
	}
	if len(marks) > 0 {
		b.WriteString(" (" + strings.Join(marks, ", ") + ")")
	}
	return b.String()
}
