package series

import (
	"strings"
	"unicode"
)

// A conventional metre of water is 9.80665 kPa exactly (NIST SP 811, B.9).
const (
	waterMetre   = "mH2O"
	metreOfWater = "9.80665"
)

// spellings are the ways loggers write a unit beside those that package units reads, in small letters without
// blanks, points, degree signs and what a wrong encoding makes of them.
var spellings = map[kind]map[string]string{
	temperature: {
		"c": "°C", "degc": "°C", "oc": "°C", "celsius": "°C", "degcelsius": "°C", "degreecelsius": "°C",
		"degreescelsius": "°C",
		"degreec":        "°C", "degreesc": "°C", "gradc": "°C", "centigrade": "°C", "℃": "°C",
		"f": "°F", "degf": "°F", "of": "°F", "fahrenheit": "°F", "degfahrenheit": "°F", "degreefahrenheit": "°F",
		"degreesfahrenheit": "°F", "degreef": "°F", "degreesf": "°F", "℉": "°F",
		"k": "K", "kelvin": "K", "degk": "K",
	},
	pressure: {
		"psi": "psi", "kpa": "kPa", "pa": "Pa", "hpa": "hPa", "bar": "bar", "mbar": "mbar", "millibar": "mbar",
		"mb": "mbar", "mpa": "MPa",
		"atm": "atm", "inhg": "inHg", "mmhg": "mmHg", "torr": "torr", "mws": waterMetre, "mh2o": waterMetre, "mwc": waterMetre,
		"kilopascal": "kPa", "hectopascal": "hPa", "pascal": "Pa",
	},
	mass:  {"g": "g", "kg": "kg", "lb": "lb", "lbs": "lb", "oz": "oz", "grams": "g", "gram": "g"},
	ratio: {"%": "%", "percent": "%", "%rh": "%", "rh%": "%", "ppm": "ppm"},
}

// others are units of what a record holds beside the wanted column.
const others = " " +
	"v mv volt volts a ma ah w kw wh kwh va ohm kohm ohm*cm hz lux lx klux db dbm ph ntu fnu fnu " +
	"ms/cm us/cm µs/cm mg/l ug/l µg/l ppb ppt psu m cm mm ft feet in inch inches km m/s km/h mph kn " +
	"kt l ml l/s l/min m3 m3/h w/m2 w/m² umol/m2/s uv µg/m3 ug/m3 deg degrees rpm g/m3 mol/l counts " +
	"count raw adc bits c/h f/h c/min f/min c/s f/s k/h k/min "

// plain strips a unit of letters' case, blanks, points, and the signs that stand for or replace a degree sign.
func plain(unit string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r) || strings.ContainsRune("°º˚*.?'^~_Â\ufffd\u00a0", r):
			return -1
		}
		return unicode.ToLower(r)
	}, unit)
}

// spelt returns a unit of a quantity as its parser reads it.
func spelt(k kind, unit string) (string, bool) {
	name, ok := spellings[k][plain(unit)]
	if ok && (k == temperature || k == ratio) {
		return name, true
	}
	if ok && plain(unit) == "mpa" && strings.Contains(unit, "mP") { // a thousandth of a pascal is no megapascal
		return "", false
	}
	return name, ok
}

// kindOfWord is what a unit measures, with its spelling; unknown for a word that is no unit.
func kindOfWord(unit string) (k kind, name string) {
	for _, k := range []kind{temperature, pressure, mass, ratio} {
		if name, ok := spelt(k, unit); ok {
			return k, name
		}
	}
	if word := plain(unit); word != "" && strings.Contains(others, " "+word+" ") {
		return otherUnit, unit
	}
	return unknown, ""
}

// otherUnit marks a column of a unit that no Value has.
const otherUnit kind = "another quantity"

// partsOf splits "0.001 °C" into the part of a unit that one count is, "1" where none is stated, and the unit.
func partsOf(stated string) (parts, unit string) {
	stated = strings.TrimSpace(stated)
	if first, rest, ok := strings.Cut(stated, " "); ok {
		switch first {
		case "0.1", "0.01", "0.001":
			return first, strings.TrimSpace(rest)
		}
	}
	return "1", stated
}

// unitIn looks for a unit in a heading: in brackets, after its last comma, as its last word. It returns what the
// unit measures, how it is spelt, and the heading without it.
func unitIn(heading string) (k kind, unit, name string) {
	bare := heading
	for from := 0; ; {
		open := strings.IndexAny(heading[from:], "([{")
		if open < 0 {
			break
		}
		open += from
		end := strings.IndexAny(heading[open+1:], ")]}")
		if end < 0 {
			break
		}
		end += open + 1
		if k, unit := kindOfWord(heading[open+1 : end]); k != unknown {
			return k, unit, strings.TrimSpace(heading[:open])
		}
		bare = strings.Replace(bare, heading[open:end+1], "", 1)
		from = end + 1
	}
	if i := strings.LastIndexByte(bare, ','); i >= 0 {
		if k, unit := kindOfWord(bare[i+1:]); k != unknown {
			return k, unit, strings.TrimSpace(bare[:i])
		}
	}
	return lastWord(bare)
}

// lastWord finds a unit at the end of a heading, or within it where it cannot be anything else. A lone letter
// counts only after a word for temperature: "Water Temp C", not "Probe C".
func lastWord(heading string) (k kind, unit, name string) {
	words := strings.FieldsFunc(heading, func(r rune) bool {
		return unicode.IsSpace(r) || r == '_' || r == '-' || r == '/' || r == '.' || r == ':'
	})
	for i := len(words) - 1; i >= 0; i-- {
		word := words[i]
		k, unit := kindOfWord(word)
		if n := len(word) - 1; k == unknown && n > 3 && saysTemperature(word) && word[n-1] >= 'a' &&
			word[n-1] <= 'z' && (word[n] == 'C' || word[n] == 'F') {
			return temperature, "°" + word[n:], strings.Join(words, " ") // tempC
		}
		if k == unknown || k == otherUnit && i < len(words)-1 {
			continue
		}
		sure := len([]rune(plain(word))) > 2 || strings.ContainsAny(word, "°%℃℉") || k == pressure && i > 0
		if sure || i > 0 && saysQuantity(k, strings.Join(words[:i], " ")) || k == otherUnit && i > 0 {
			return k, unit, strings.TrimSpace(strings.TrimRight(strings.Join(words[:i], " "), " "))
		}
	}
	return unknown, "", strings.TrimSpace(heading)
}

// saysTemperature reports a word for temperature.
func saysTemperature(heading string) bool {
	lower := strings.ToLower(heading)
	return strings.Contains(lower, "temp") || strings.Contains(lower, "tmp") || strings.HasPrefix(lower, "t_") ||
		strings.Contains(lower, "°")
}

func saysPressure(heading string) bool {
	lower := strings.ToLower(heading)
	return strings.Contains(lower, "press") || strings.Contains(lower, "gauge") || strings.Contains(lower, "pres ")
}

// saysQuantity reports a heading that names the quantity.
func saysQuantity(k kind, heading string) bool {
	lower := strings.ToLower(heading)
	switch k {
	case temperature:
		return saysTemperature(heading)
	case pressure:
		return saysPressure(heading)
	case mass:
		return strings.Contains(lower, "mass") || strings.Contains(lower, "weight")
	}
	return strings.Contains(lower, "humid") || strings.Contains(lower, "rh") || strings.Contains(lower, "ratio")
}
