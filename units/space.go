package units

import (
	"strings"
	"unicode/utf8"
)

// sign reads a leading plus or minus, plain or typographic.
func sign(s string) (neg bool, size int) {
	switch {
	case strings.HasPrefix(s, "-"):
		return true, 1
	case strings.HasPrefix(s, "+"):
		return false, 1
	case strings.HasPrefix(s, "−"):
		return true, len("−")
	}
	return false, 0
}

// skipSpace returns the index of the first byte at or after i that is no space, plain or typographic.
func skipSpace(s string, i int) int {
	for i < len(s) {
		switch {
		case s[i] == ' ' || s[i] == '\t':
			i++
		case s[i] < utf8.RuneSelf:
			return i
		case strings.HasPrefix(s[i:], "\u00a0"):
			i += len("\u00a0")
		case strings.HasPrefix(s[i:], "\u202f") || strings.HasPrefix(s[i:], "\u2009"):
			i += len("\u202f")
		default:
			return i
		}
	}
	return i
}

func trimSpace(s string) string {
	for s != "" && (s[len(s)-1] == ' ' || s[len(s)-1] == '\t') {
		s = s[:len(s)-1]
	}
	if s == "" || s[len(s)-1] < utf8.RuneSelf {
		return s
	}
	for _, space := range []string{"\u00a0", "\u202f", "\u2009"} {
		s = strings.TrimSuffix(s, space)
	}
	return s
}
