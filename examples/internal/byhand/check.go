package byhand

import (
	"fmt"
	"math"
	"regexp"
	"strings"
)

var (
	given   = regexp.MustCompile(`^    ([^\s:]+): ([^\s,]+)`)
	working = regexp.MustCompile(`^    \S+ = `)
)

// Check works a printed page out once more from its printed digits, and returns how many lines came out. Every line
// "symbol = formula = filled in = result unit" must come to its result to half of the last printed digit, and the
// result must be what later lines fill in for the symbol.
func Check(page string) (lines int, err error) {
	digits := map[string]string{}
	for _, line := range joined(page) {
		if m := given.FindStringSubmatch(line); m != nil {
			digits[m[1]] = m[2]
			continue
		}
		if !working.MatchString(line) {
			continue
		}
		lines++
		if err := checkLine(strings.TrimSpace(line), digits); err != nil {
			return lines, err
		}
	}
	return lines, nil
}

// joined is the lines of a page with what was wrapped put together again.
func joined(page string) []string {
	var lines []string
	for _, line := range strings.Split(page, "\n") {
		if strings.HasPrefix(line, "        ") && len(lines) > 0 {
			lines[len(lines)-1] += " " + strings.TrimSpace(line)
			continue
		}
		lines = append(lines, line)
	}
	return lines
}

func checkLine(line string, digits map[string]string) error {
	parts := strings.Split(line, " = ")
	if len(parts) < 3 {
		return fmt.Errorf("%s: expected symbol = formula = result", line)
	}
	symbol, filled := parts[0], parts[len(parts)-2]
	result, _, _ := strings.Cut(parts[len(parts)-1], " ")
	again := &Page{printed: digits}
	if want, _ := again.fill(parts[1]); want != filled {
		return fmt.Errorf("%s: the formula filled in is %s", line, want)
	}
	v, err := Evaluate(filled)
	if err != nil {
		return fmt.Errorf("%s: %w", line, err)
	}
	printed, err := Evaluate(result)
	if err != nil {
		return fmt.Errorf("%s: %w", line, err)
	}
	if math.Abs(v-printed) > halfLast(result)*(1+1e-6)+1e-12*math.Abs(v) {
		return fmt.Errorf("%s: comes to %v", line, v)
	}
	digits[symbol] = result
	return nil
}
