package units

import "strings"

// clock reads 1:40:00 as hours, minutes and seconds, and refuses 1:40, which may be either two of them.
func clock(r *reading) (string, *refusal, bool) {
	fields := strings.Split(r.s, ":")
	if len(fields) < 2 || len(fields) > 3 || len(fields[0]) == 0 || len(fields[0]) > 4 {
		return "", nil, false
	}
	for i, f := range fields {
		if _, end := run(f, 0, 0); end != len(f) || i > 0 && (len(f) != 2 || f[0] > '5') {
			return "", nil, false
		}
	}
	if len(fields) == 3 {
		return trimZeros(fields[0]) + " h " + trimZeros(fields[1]) + " min " + trimZeros(fields[2]) + " s", nil, true
	}
	a, b := trimZeros(fields[0]), trimZeros(fields[1])
	return "", refuse("it may be hours and minutes or minutes and seconds", a+" h "+b+" min", a+" min "+b+" s"), true
}

// share refuses a proportion of parts, which is not yet a share.
func share(r *reading) (string, *refusal, bool) {
	if strings.Contains(r.s, ":") {
		reason := "one part to four is 20 % of both together, and 25 % of the four: expected a percentage"
		return "", refuse(reason), true
	}
	return "", nil, false
}

// acidity reads a bare number with pH before or behind it.
func acidity(r *reading) (string, *refusal, bool) {
	if r.word("ph") {
		r.space()
		for _, between := range []string{"of ", "=", ":", "is "} {
			if len(r.s)-r.i >= len(between) && strings.EqualFold(r.s[r.i:r.i+len(between)], between) {
				r.i += len(between)
				break
			}
		}
		r.space()
	}
	minus, refused := r.sign()
	if refused != nil {
		return "", refused, true
	}
	count, refused := r.count()
	if refused != nil {
		return "", refused, true
	}
	r.space()
	r.word("ph")
	if r.i < len(r.s) {
		return "", refuse("unexpected " + echo(r.s[r.i:]) + " behind the number"), true
	}
	return minus + count, nil, true
}

// proportion reads two numbers around a colon or "to", each with "part" or "parts" behind it or not.
func proportion(r *reading) (string, *refusal, bool) {
	if num, den, size := fraction(r.s); size == len(r.s) && size > 0 {
		instead := []string{utoa(num) + ":" + utoa(den)}
		if num > 0 && num < den {
			instead = append(instead, utoa(num)+":"+utoa(den-num))
		}
		return "", refuse("it may be part to part or part of the whole", instead...), true
	}
	first, refused := r.parts()
	if refused != nil {
		return "", refused, true
	}
	if !r.take(":") && !r.word("to") {
		return "", refuse("expected two numbers with a colon or \"to\" between them, as in 1:4"), true
	}
	r.space()
	second, refused := r.parts()
	if refused != nil {
		return "", refused, true
	}
	if r.i < len(r.s) {
		return "", refuse("unexpected " + echo(r.s[r.i:]) + " behind two parts"), true
	}
	return first + ":" + second, nil, true
}

// parts reads one number of parts.
func (r *reading) parts() (string, *refusal) {
	count, refused := r.count()
	if refused != nil {
		return "", refused
	}
	r.space()
	if r.word("part") || r.word("parts") {
		r.space()
	}
	return count, nil
}
