package units

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// ParseError says which text could not be read as a quantity, and why. A text that can be read in several ways comes
// with its choices: texts that say one thing each, to be shown to whoever typed it.
type ParseError struct {
	Quantity string   // "length", "temperature" …
	Text     string   // the text as given
	Reason   string   // what was wrong and what was expected
	Choices  []string // what may have been meant, each a text that is understood; often none
}

// Error quotes the text, or the start of a long one, says why it was refused, and names the choices.
func (e ParseError) Error() string {
	s := "cannot read " + echo(e.Text) + " as " + withArticle(e.Quantity) + ": " + e.Reason
	if len(e.Choices) > 0 {
		s += "; write " + series(e.Choices)
	}
	return s
}

// Is reports whether target is ErrSyntax.
func (e ParseError) Is(target error) bool { return target == ErrSyntax }

// UnknownError says that a name is none of those that are known.
type UnknownError struct {
	What  string   // what was named: "jar size"
	Got   string   // the name as given
	Known []string // the names to choose from
}

// Error quotes the name, or the start of a long one, and lists the known ones; a known name with a comma in it is
// quoted.
func (e UnknownError) Error() string {
	s := "unknown " + e.What + " " + echo(e.Got)
	if len(e.Known) == 0 {
		return s
	}
	known := make([]string, len(e.Known))
	for i, name := range e.Known {
		if known[i] = name; strings.Contains(name, ",") {
			known[i] = strconv.Quote(name)
		}
	}
	return s + ": expected " + series(known)
}

// Is reports whether target is ErrUnknown or ErrSyntax.
func (e UnknownError) Is(target error) bool { return target == ErrUnknown || target == ErrSyntax }

// series joins words as a sentence does: "a, b or c".
func series(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	end := len(words) - 1
	return strings.Join(words[:end], ", ") + " or " + words[end]
}

// withArticle puts "a" or "an" before a noun.
func withArticle(noun string) string {
	you := strings.HasPrefix(noun, "uni") || strings.HasPrefix(noun, "use") // as in "you"
	if noun == "" || you || !strings.ContainsRune("aeiou", rune(noun[0])) {
		return "a " + noun
	}
	return "an " + noun
}

// echoed is how much of a text an error repeats, in characters.
const echoed = 60

// echo quotes a text, or the start of a long one.
func echo(s string) string {
	for n := echoed; ; n-- {
		if q := strconv.Quote(cut(s, n)); n == 0 || utf8.RuneCountInString(q) <= echoed+2 {
			return q
		}
	}
}

// clip is a text, or the start of a long one.
func clip(s string) string { return cut(s, echoed) }

// cut keeps at most n characters, the last of which says that more was cut off.
func cut(s string, n int) string {
	count := 0
	for i := range s {
		if count == n {
			_, last := utf8.DecodeLastRuneInString(s[:i])
			return s[:i-last] + "…"
		}
		count++
	}
	return s
}

func tooLong(quantity, s string, most int) error {
	size, limit := itoa(int64(len(s))), itoa(int64(most))
	reason := "it has " + size + " bytes, and " + withArticle(quantity) + " is written in at most " + limit
	return ParseError{Quantity: quantity, Text: s, Reason: reason}
}
