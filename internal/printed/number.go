package printed

import (
	"errors"
	"regexp"
	"strconv"
	"strings"

	"github.com/shopspring/decimal"
)

// The forms a printed figure may have: 12, -0.5, .91, 1,000, 845.560, 1.4e-7. Nothing else, so that a unit, a range or a
// typographic minus in a cell is a failure and not a guess.
var figure = regexp.MustCompile(`^[+-]?(0|[1-9][0-9]*|[1-9][0-9]{0,2}(?:,[0-9]{3})+)?(?:\.([0-9]+))?(?:[eE]([+-]?[0-9]{1,3}))?$`)

var errNumber = errors.New("is not a printed number (digits, thousands commas, a point, an exponent; no unit, range or typographic minus)")

// number returns the value of a printed figure and half of its last printed digit.
func number(text string) (value, half decimal.Decimal, err error) {
	parts := figure.FindStringSubmatch(text)
	if parts == nil || parts[1] == "" && parts[2] == "" {
		return decimal.Decimal{}, decimal.Decimal{}, errNumber
	}
	value, err = decimal.NewFromString(strings.ReplaceAll(text, ",", ""))
	if err != nil {
		return decimal.Decimal{}, decimal.Decimal{}, errNumber
	}
	exponent := 0
	if parts[3] != "" {
		exponent, err = strconv.Atoi(parts[3])
		if err != nil {
			return decimal.Decimal{}, decimal.Decimal{}, errNumber
		}
	}
	return value, decimal.New(5, int32(exponent-len(parts[2])-1)), nil
}
