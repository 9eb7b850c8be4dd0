package units

import "strings"

// kitchen is what the door for typed text knows about one type beside its strict text. It turns typed text into strict
// text and computes nothing: the strict Parse function has the last word.
type kitchen struct {
	name    string            // as errors say it
	strict  dimension         // its units are understood in any case; empty where the type has scales or none
	also    []spelling        // other names, in any case
	unclear []unclear         // names that say more than one thing, or nothing of this type
	bare    []string          // the units to choose from where none was typed
	next    map[string]string // the same behind a unit, as in 4 ft 6
	whole   func(*reading) (text string, refused *refusal, done bool)
	apart   bool // a dash may stand apart from its number
}

// spelling lists other names of a strict unit.
type spelling struct {
	unit  string
	names []string
}

// unclear lists names that are refused, and the units that may have been meant.
type unclear struct {
	names  []string
	exact  bool // only in this case: T, while t is a tonne
	first  bool // only in the first part of a text
	reason string
	units  []string
}

// refusal says why a text was not understood. Instead are plain texts that may have been meant.
type refusal struct {
	reason  string
	instead []string
}

func refuse(reason string, instead ...string) *refusal { return &refusal{reason, instead} }

// choices are the strict texts of what may have been meant, where a second doubt may stand in a first.
func (k *kitchen) choices(refused *refusal, depth int) []string {
	if depth == 0 {
		return nil
	}
	var texts []string
	for _, s := range refused.instead {
		text, again := k.understand(s)
		if again == nil {
			texts = append(texts, text)
		} else {
			texts = append(texts, k.choices(again, depth-1)...)
		}
	}
	return texts
}

// reading is a plain text on its way to a strict one.
type reading struct {
	k *kitchen
	s string
	i int    // where the next byte to read is
	u string // the unit read last
}

// understand turns plain text into strict text.
func (k *kitchen) understand(s string) (string, *refusal) {
	r := &reading{k: k, s: s}
	if k.whole != nil {
		if text, refused, done := k.whole(r); done || refused != nil {
			return text, refused
		}
	}
	text, refused := r.sign()
	for refused == nil {
		var count, unit string
		if count, refused = r.count(); refused != nil {
			break
		}
		if unit, refused = r.unit(); refused != nil {
			break
		}
		if r.i == len(r.s) {
			return text + count + " " + unit, nil
		}
		var and bool
		if and, refused = r.between(); refused != nil {
			break
		}
		num, den, end := spokenFraction(r.s, r.i)
		if end == len(r.s) && and && r.u == "" && isWhole(count) { // "an hour and a half"
			return text + count + " " + mixed(int64(num), int64(den)) + " " + unit, nil
		}
		text += count + " " + unit + " "
		r.u = unit
	}
	return "", refused
}

func isWhole(count string) bool {
	_, end := run(count, 0, 0)
	return end == len(count)
}

// sign reads a minus in any form.
func (r *reading) sign() (string, *refusal) {
	switch {
	case r.word("minus"):
		r.space()
		return "-", nil
	case r.take("-"):
		if r.space() && !r.k.apart {
			bare := strings.TrimLeft(r.s, "- ")
			return "", refuse("a dash that stands apart from its number may be a list's and not a minus", bare)
		}
		return "-", nil
	case r.take("+"):
		r.space()
	}
	return "", nil
}

// between reads what stands between two parts: a comma, "and", "&" or nothing. It reports whether a word or "&" joins them.
func (r *reading) between() (joined bool, refused *refusal) {
	r.space()
	comma := r.take(",") || r.take(";")
	r.space()
	joined = r.word("and") || r.word("plus") || r.take("&")
	r.space()
	if r.i == len(r.s) && (comma || joined) {
		return joined, refuse("something is missing at the end")
	}
	return joined, nil
}

// take moves over a text where it stands next.
func (r *reading) take(s string) bool {
	if !strings.HasPrefix(r.s[r.i:], s) {
		return false
	}
	r.i += len(s)
	return true
}

// word moves over a word where it stands next, in any case.
func (r *reading) word(w string) bool {
	word, end := wordAt(r.s, r.i)
	if word != w {
		return false
	}
	r.i = end
	return true
}

// space moves over spaces, and reports whether there were any.
func (r *reading) space() bool {
	start := r.i
	for r.take(" ") {
	}
	return r.i > start
}

// wordAt returns the run of Latin letters that starts at i, in lower case, and where it ends.
func wordAt(s string, i int) (string, int) {
	end := i
	for end < len(s) && letter(s[end]) {
		end++
	}
	return strings.ToLower(s[i:end]), end
}

func letter(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }

func digit(s string, i int) bool { return i < len(s) && s[i]-'0' <= 9 }
