package units

import (
	"strings"
	"unicode"
)

// plain writes a typed text with one kind of dash, quotation mark, degree sign, stroke and space, and no space around
// it or two in a row.
func plain(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch r {
		case '‐', '‑', '‒', '–', '—', '―', '−', '﹣', '－':
			b.WriteByte('-')
		case '’', '‘', '‛', '′', 'ʹ', 'ʼ', '´', '`', '＇':
			b.WriteByte('\'')
		case '”', '“', '„', '‟', '″', 'ʺ', '＂':
			b.WriteByte('"')
		case 'º', '˚':
			b.WriteString("°")
		case '℃':
			b.WriteString("°C")
		case '℉':
			b.WriteString("°F")
		case '⁄', '∕', '／':
			b.WriteByte('/')
		case '％':
			b.WriteByte('%')
		case '\u200b', '\u200c', '\u200d', '\ufeff': // no width, no meaning here
		default:
			if unicode.IsSpace(r) {
				r = ' '
			}
			b.WriteRune(r)
		}
	}
	return strings.Join(strings.Fields(strings.ReplaceAll(b.String(), "''", `"`)), " ")
}
