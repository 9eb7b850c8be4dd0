package series

import (
	"strings"
	"unicode"
)

// What a heading says beside its unit: a second scale, a factor, or that the column holds no readings.

// otherScale is a second scale in a heading, "" without: "Temp C/F", "Temp (°C) (°F)". A lone letter counts only beside
// another: "Probe F (°C)" has one scale.
func otherScale(heading, unit string) string {
	words := strings.FieldsFunc(heading, func(r rune) bool { return unicode.IsSpace(r) || strings.ContainsRune("_-/.:,()[]", r) })
	before, lone := "", false
	for _, word := range words {
		if word == "or" || word == "and" {
			continue
		}
		scale, ok := spelt(temperature, word)
		letter := len([]rune(word)) == 1
		if ok && before != "" && scale != before && letter == lone {
			if scale == unit {
				return before
			}
			return scale
		}
		if before, lone = "", letter; ok {
			before = scale
		}
	}
	return ""
}

// allScales reports cells that hold nothing but a scale with its degree sign, whatever stands above them.
func (s *sniffer) allScales(values []string) bool {
	for _, v := range values {
		if _, ok := spelt(s.kind, v); !ok || s.kind != temperature || !strings.ContainsAny(v, "°º℃℉") {
			return false
		}
	}
	return true
}

// saysFactor reports a heading that multiplies or divides: "Temp x10 (°C)", "T*100", "1/10 °C".
func saysFactor(heading string) bool {
	lower := strings.ToLower(heading)
	for i, r := range lower {
		before := i == 0 || strings.ContainsRune(" _-([,0123456789", rune(lower[i-1]))
		if r != '×' && r != '*' && r != '/' && (r != 'x' || !before) {
			continue
		}
		rest := strings.TrimLeft(lower[i+len(string(r)):], " ")
		if n := leadingDigits(rest); n > 1 && rest[0] == '1' && strings.Trim(rest[1:n], "0") == "" {
			return true
		}
	}
	return false
}

// askFactor asks what one count of a column is whose heading has a unit and a factor.
func (s *sniffer) askFactor(i int) {
	c := s.cols[i]
	var choices []Choice
	for _, part := range []string{"", "0.1 ", "0.01 ", "0.001 "} {
		if part == "0.001 " && s.kind == pressure { // of a psi it is no whole number of quanta
			continue
		}
		choices = append(choices, Choice{part + c.unit, short(c.values[0] + " × " + part + c.unit)})
	}
	s.ask(AskUnit, choices, "Column %d %q names a unit and a factor. What is one count of it?", i+1, short(c.name))
}

// saysSetting reports the heading of something in the unit of a reading that is none: what a controller is set to, a
// limit, a difference.
func saysSetting(name string) bool {
	lower := strings.ToLower(name)
	for _, word := range []string{"setpoint", "set point", "set-point", "set_point", "set temp", "set_temp", "target", "alarm", "limit",
		"threshold", "delta", "δ", "∆", "differ", "offset", "correction"} {
		if strings.Contains(lower, word) {
			return true
		}
	}
	return lower == "set" || lower == "sp" || strings.HasPrefix(lower, "set ") || strings.HasPrefix(lower, "sp ")
}
