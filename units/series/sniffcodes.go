package series

import (
	"sort"
	"strings"
)

// noReadings collects what stands in the column for no reading; a word or a number that may be a code is asked.
func (s *sniffer) noReadings(i int) error {
	texts, doubtful := map[string]bool{}, map[string]bool{}
	for _, v := range s.cols[i].values {
		switch c := classify(v); {
		case c == classNone || s.impossible(v):
			texts[v] = true
		case c == classText && len(v) < longestNumber && strings.Trim(v, "0123456789.,+-'eE") != "" || s.suspicious(v):
			doubtful[v] = true
		}
	}
	for _, known := range append(s.stated.Missing[:len(s.stated.Missing):len(s.stated.Missing)], s.stated.Kept...) {
		delete(doubtful, known)
		delete(texts, known)
	}
	for _, v := range sortedNames(texts) {
		s.format.Missing = append(s.format.Missing[:len(s.format.Missing):len(s.format.Missing)], v)
		s.because("Missing", "%q stands for no reading", short(v))
	}
	if len(doubtful) > 20 {
		return LineError{Line: s.format.Preamble + 1, Column: short(s.cols[i].name), Err: wrap(ErrNotANumber,
			"the column holds words")}
	}
	for _, v := range sortedNames(doubtful) {
		choices := []Choice{{v, "no reading"}}
		if classify(v) != classText {
			choices = append(choices, Choice{keep + v, "a reading"})
		}
		s.ask(AskMissing, choices, "In column %d %q, does %q mean that there is no reading?", i+1,
			short(s.cols[i].name), short(v))
	}
	return nil
}

// keep stands before the number in an answer that takes it for a reading.
const keep = "reading "

func sortedNames(set map[string]bool) []string {
	var names []string
	for name := range set {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}

// impossible reports a code below absolute zero, whatever the scale.
func (s *sniffer) impossible(v string) bool {
	if s.kind != temperature || classify(v) == classText {
		return false
	}
	switch bare(v) {
	case "-999", "-999.9", "-999.99", "-9999", "-9999.9", "-6999", "-7999", "-99999", "-32768", "-3276.8",
		"-300", "-500", "-1000":
		return true
	}
	return false
}

// suspicious reports a number that programs write for no reading and that might be one.
func (s *sniffer) suspicious(v string) bool {
	switch bare(v) {
	case "-99", "-99.9", "-99.99", "-200", "-242", "-250", "999", "999.9", "999.99", "9999", "9999.9", "65535",
		"6553.5", "7999", "850":
		return s.kind == temperature
	}
	return false
}
