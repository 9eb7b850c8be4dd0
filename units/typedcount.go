package units

import "strings"

// count reads a number in figures or in words, and returns it in figures.
func (r *reading) count() (string, *refusal) {
	if digit(r.s, r.i) || r.i < len(r.s) && r.s[r.i] == '.' && digit(r.s, r.i+1) {
		return r.figures()
	}
	if num, den, end := partial(r.s, r.i); end > 0 {
		r.i = end
		r.ofA()
		return mixed(int64(num), int64(den)), nil
	}
	if text, end := spoken(r.s, r.i); end > 0 {
		r.i = end
		return text, nil
	}
	if r.i == 0 || r.i == len(r.s) {
		return "", refuse("expected a number first")
	}
	return "", refuse("expected a number before " + echo(r.s[r.i:]))
}

// figures reads digits, and a fraction or an exponent behind them.
func (r *reading) figures() (string, *refusal) {
	start := r.i
	if num, den, size := fraction(r.s[r.i:]); size > 0 {
		return r.fraction(num, den, size)
	}
	end := start
	for digit(r.s, end) || digit(r.s, end+1) && (r.s[end] == '.' || r.s[end] == ',' && end > start) {
		end++
	}
	r.i = end
	text, refused := decimalOf(r.s[start:end], func(write string) string { return r.s[:start] + write + r.s[end:] })
	if refused != nil {
		return "", refused
	}
	if end < len(r.s) && r.s[end] == '.' { // "5. lb"
		r.i++
	} else if _, size, _ := scanExponent(r.s[end:]); size > 0 {
		r.i += size
		return text + strings.ToLower(r.s[end:r.i]), nil
	}
	if num, den, at := r.behind(); at > 0 && !strings.Contains(text, ".") {
		r.i = at
		return text + " " + mixed(int64(num), int64(den)), nil
	}
	return text, nil
}

// fraction takes a fraction in figures. One with a number above that may be a whole number run together with it is
// refused.
func (r *reading) fraction(num, den uint64, size int) (string, *refusal) {
	top := utoa(num)
	text := mixed(int64(num), int64(den))
	if n := len(top) - 1; num > den && n > 0 && top[n] != '0' && uint64(top[n]-'0') < den {
		rest := r.s[r.i+size:]
		apart := top[:n] + " " + top[n:] + "/" + utoa(den)
		before := r.s[:r.i]
		return "", refuse("a whole number and a fraction may have run together", before+apart+rest, before+text+rest)
	}
	r.i += size
	if num < den {
		r.ofA()
	}
	return text, nil
}

// behind looks for a proper fraction behind a whole number: 3 1/2, 3-1/2, 3½, 3 and 1/2, 3 and a half.
func (r *reading) behind() (num, den uint64, end int) {
	i := skipSpace(r.s, r.i)
	if w, after := wordAt(r.s, i); w == "and" {
		return partial(r.s, skipSpace(r.s, after))
	}
	switch {
	case strings.HasPrefix(r.s[i:], "& "):
		return partial(r.s, i+2)
	case i == r.i && i < len(r.s) && r.s[i] == '-':
		i++
	case i == r.i && digit(r.s, i):
		return 0, 0, 0
	}
	if w, _ := wordAt(r.s, i); w != "" { // "3 quarters" is not 3 1/4
		return 0, 0, 0
	}
	return partial(r.s, i)
}

// partial reads a number between zero and one: 1/2, ½, half, a quarter, two thirds.
func partial(s string, i int) (num, den uint64, end int) {
	if num, den, size := vulgar(s[i:]); size > 0 {
		return num, den, i + size
	}
	if num, den, size := fraction(s[i:]); size > 0 && num < den {
		return num, den, i + size
	}
	return spokenFraction(s, i)
}

// ofA moves over "a", "of a" and the like behind a fraction: half a cup, ¼ of an hour.
func (r *reading) ofA() {
	i := r.i
	r.space()
	of := r.word("of")
	r.space()
	if !r.word("a") && !r.word("an") && !of {
		r.i = i
	}
}

// decimalOf turns digits with points and commas into plain ones. Instead gives the whole text with other digits.
func decimalOf(s string, instead func(string) string) (string, *refusal) {
	comma, point := strings.IndexByte(s, ','), strings.IndexByte(s, '.')
	if point >= 0 && strings.IndexByte(s[point+1:], '.') >= 0 || point >= 0 && strings.LastIndexByte(s, ',') > point {
		return "", refuse("a number has one point, and no comma behind it")
	}
	if comma < 0 {
		return trimZeros(s), nil
	}
	_, end := groups(s, comma, 0)
	grouped := end > 0 && (end == len(s) || s[end] == '.')
	alone := strings.Count(s, ",") == 1 && point < 0
	whole, behind := s[:comma], s[comma+1:]
	switch {
	case alone && len(behind) == 3 && comma <= 3:
		return "", refuse("the comma may group thousands or mark decimals",
			instead(trimZeros(whole+behind)), instead(whole+"."+behind))
	case grouped:
		return trimZeros(strings.ReplaceAll(s, ",", "")), nil
	case alone:
		return trimZeros(whole + "." + behind), nil
	}
	return "", refuse("the commas neither group thousands nor mark decimals")
}

// trimZeros leaves out the zeros that a decimal does not need.
func trimZeros(s string) string {
	if strings.Contains(s, ".") {
		s = strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
	}
	s = strings.TrimLeft(s, "0")
	if s == "" || s[0] == '.' {
		return "0" + s
	}
	return s
}
