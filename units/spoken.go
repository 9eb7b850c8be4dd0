package units

import "strconv"

// ones are the numbers that have a word of their own below twenty, in order; tens follow by ten.
var (
	ones = []string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
		"ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"}
	tens = []string{"twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"}
)

// spoken reads a number in words, "two", "twenty-five", "one and a half", "a", and returns it in figures and where it
// ends, or 0.
func spoken(s string, i int) (string, int) {
	n, end := spokenWhole(s, i)
	if end == 0 {
		w, end := wordAt(s, i)
		if next, _ := wordAt(s, skipSpace(s, end)); (w == "a" || w == "an") && next != "" && next != "and" {
			return "1", end
		}
		return "", 0
	}
	text := strconv.Itoa(n)
	if w, after := wordAt(s, skipSpace(s, end)); w == "and" {
		if num, den, after := spokenFraction(s, skipSpace(s, after)); after > 0 {
			return text + " " + mixed(int64(num), int64(den)), after
		}
	}
	return text, end
}

// spokenWhole reads a whole number below a hundred, and returns 0 for the end where there is none.
func spokenWhole(s string, i int) (n, end int) {
	w, end := wordAt(s, i)
	if n := index(ones, w); n >= 0 {
		return n, end
	}
	ten := index(tens, w)
	if ten < 0 {
		return 0, 0
	}
	n = 20 + 10*ten
	if end < len(s) && (s[end] == '-' || s[end] == ' ') {
		w, after := wordAt(s, end+1)
		if one := index(ones[:10], w); one > 0 {
			return n + one, after
		}
	}
	return n, end
}

// spokenFraction reads "half", "a third", "three quarters", and returns 0 for the end where there is none.
func spokenFraction(s string, i int) (num, den uint64, end int) {
	n, after := spokenWhole(s, i)
	if after == 0 {
		n = 1
		if w, end := wordAt(s, i); w == "a" || w == "an" {
			after = end
		}
	}
	switch {
	case after > 0 && after < len(s) && s[after] == '-': // one-half
		i = after + 1
	case after > 0:
		i = skipSpace(s, after)
	}
	w, end := wordAt(s, i)
	if den = nth(w); den == 0 || n == 0 || uint64(n) >= den {
		return 0, 0, 0
	}
	return uint64(n), den, end
}

// nth is how many of a part make a whole, or 0.
func nth(word string) uint64 {
	switch word {
	case "half", "halves":
		return 2
	case "third", "thirds":
		return 3
	case "quarter", "quarters", "fourth", "fourths":
		return 4
	case "fifth", "fifths":
		return 5
	case "sixth", "sixths":
		return 6
	case "eighth", "eighths":
		return 8
	case "sixteenth", "sixteenths":
		return 16
	}
	return 0
}

func index(words []string, w string) int {
	for i := range words {
		if words[i] == w {
			return i
		}
	}
	return -1
}
