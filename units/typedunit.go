package units

import "strings"

// unit reads the name of a unit and returns its strict symbol.
func (r *reading) unit() (string, *refusal) {
	if refused := r.beside(); refused != nil {
		return "", refused
	}
	start := r.i
	r.space()
	if r.i < len(r.s) && r.s[r.i] == '-' && r.i+1 < len(r.s) && letter(r.s[r.i+1]) { // "1-inch"
		r.i++
	}
	begin := r.i
	end := r.unitEnd()
	r.i = end
	name := strings.Join(strings.Fields(strings.ReplaceAll(r.s[begin:end], ".", " ")), " ")
	instead := func(units []string) []string {
		var texts []string
		for _, u := range units {
			texts = append(texts, r.s[:start]+" "+u+" "+r.s[end:])
		}
		return texts
	}
	if name == "" {
		return "", r.missing(instead)
	}
	for _, u := range r.k.unclear {
		if u.has(name) && (r.u == "" || !u.first) {
			return "", refuse(u.reason, instead(u.units)...)
		}
	}
	if symbol, ok := r.k.find(name); ok {
		return symbol, nil
	}
	if !r.k.measured() {
		_, reason := readScale(name)
		return "", refuse(reason)
	}
	return "", refuse(r.k.strict.unknown(name))
}

func (r *reading) missing(instead func([]string) []string) *refusal {
	switch {
	case !r.k.measured():
		return refuse("the scale is missing", instead(r.k.bare)...)
	case r.u != "" && r.k.next[r.u] == "":
		return refuse("the unit is missing")
	case r.u != "":
		return refuse("the unit is missing", instead([]string{r.k.next[r.u]})...)
	case len(r.k.bare) == 0:
		return refuse(r.k.strict.unknown(""))
	}
	return refuse("the unit is missing", instead(r.k.bare)...)
}

// beside refuses what may follow a number and is no unit: another number, the end of a range, digits behind an
// apostrophe.
func (r *reading) beside() *refusal {
	i := skipSpace(r.s, r.i)
	join := func(at int) []string { // the digits as one number, where three follow
		if _, end := run(r.s, at, 0); end == at+3 {
			return []string{r.s[:r.i] + r.s[at:]}
		}
		return nil
	}
	_, _, fraction := vulgar(r.s[i:])
	switch w, _ := wordAt(r.s, i); {
	case fraction > 0 || digit(r.s, i) || strings.HasPrefix(r.s[i:], ".") && digit(r.s, i+1):
		return refuse("two numbers stand beside each other", join(i)...)
	case strings.HasPrefix(r.s[i:], "'") && len(join(skipSpace(r.s, i+1))) > 0:
		return refuse("the apostrophe may group thousands or stand for feet", join(skipSpace(r.s, i+1))...)
	case strings.HasPrefix(r.s[i:], ":"):
		return refuse("expected a unit, and not a colon")
	case w == "to" || w == "or":
		return refuse("one value is read at a time, and not a range")
	case strings.HasPrefix(r.s[i:], "-") && numberAt(r.s, skipSpace(r.s, i+1)):
		return refuse("one value is read at a time, and not a range or a difference")
	}
	return nil
}

// numberAt reports whether a number starts at i.
func numberAt(s string, i int) bool {
	_, _, part := partial(s, i)
	_, whole := spoken(s, i)
	return digit(s, i) || part > 0 || whole > 0
}

// unitEnd returns where the name that starts next ends: before the next number or what stands between two parts, where
// compounds make sense, else at the end of the text.
func (r *reading) unitEnd() int {
	if !r.k.strict.compound {
		return len(r.s)
	}
	for j := r.i; j < len(r.s); j++ {
		switch c := r.s[j]; {
		case c == ',' || c == ';' || c == '&':
			return j
		case digit(r.s, j):
			if _, ok := r.k.find(r.s[r.i : j+1]); ok && !digit(r.s, j+1) && j > r.i { // in3
				continue
			}
			return j
		case c >= 0x80:
			if _, _, size := vulgar(r.s[j:]); size > 0 {
				return j
			}
		case c == ' ':
			w, _ := wordAt(r.s, j+1)
			if _, _, part := partial(r.s, j+1); part > 0 || w == "and" || w == "plus" {
				return j
			}
			if _, end := spoken(r.s, j+1); end > 0 && w != "a" {
				return j
			}
		}
	}
	return len(r.s)
}

// find returns the strict symbol of a name in any case, "per" or a stroke between two names alike.
func (k *kitchen) find(name string) (string, bool) {
	if symbol, ok := k.named(name); ok {
		return symbol, true
	}
	name = strings.ReplaceAll(strings.ReplaceAll(name, " per ", "/"), " / ", "/")
	return k.named(name)
}

func (k *kitchen) named(name string) (string, bool) {
	for _, a := range k.also {
		if foldsTo(a.names, name) {
			return a.unit, true
		}
	}
	for i := range k.strict.units {
		if names := k.strict.units[i].names; foldsTo(names, name) {
			return names[0], true
		}
	}
	return "", false
}

// measured reports whether the type has units, and not scales.
func (k *kitchen) measured() bool { return len(k.strict.units) > 0 }

func (u unclear) has(name string) bool {
	if u.exact {
		return index(u.names, name) >= 0
	}
	return foldsTo(u.names, name)
}

// foldsTo reports whether a name is one of several in any case.
func foldsTo(names []string, name string) bool {
	for _, n := range names {
		if strings.EqualFold(n, name) {
			return true
		}
	}
	return false
}
