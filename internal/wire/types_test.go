package wire_test

import (
	"strings"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// Invented types that use all of the form.

type colour uint8

var colours = []string{"", "red", "green", "blue"}

func (c colour) MarshalText() ([]byte, error) {
	if int(c) >= len(colours) {
		return nil, units.ParseError{Quantity: "colour", Text: "9", Reason: "it is none"}
	}
	return []byte(colours[c]), nil
}

func (c *colour) UnmarshalText(b []byte) error {
	for i, word := range colours {
		if word == strings.ToLower(string(b)) {
			*c = colour(i)
			return nil
		}
	}
	return units.ParseError{Quantity: "colour", Text: string(b), Reason: "expected red, green or blue"}
}

type plain struct {
	ID       string
	MaxGap   time.Duration
	F0       time.Duration
	Colour   colour
	Height   units.Length
	Warm     units.Temperature
	Altitude units.Stated[units.Length]
	Told     units.Stated[colour]
	Often    units.Stated[int]
	Sure     units.Stated[bool]
	Yes      bool
	Count    int
	Small    int8
	Large    uint64
	Tiny     uint8
	List     []units.Mass
	Grid     [2][2]int32
	ByName   map[string]units.Ratio
	ByColour map[colour][]plain
	Next     *plain
	Number   *int
	When     time.Time
	hidden   int
}

type kept struct {
	Zero  int           `wire:"always"`
	Time  time.Duration `wire:"always"`
	Warm  units.Temperature
	Deep  units.Length `wire:"always"`
	Hue   colour       `wire:"always"`
	Skip  float64      `wire:"-"`
	Named []int        `wire:"always"`
}

type asked struct {
	Altitude units.Stated[units.Length] `wire:"required"`
	Colour   colour                     `wire:"required"`
	Depth    units.Length               `wire:"required"`
	Warm     units.Temperature          `wire:"required"`
	Name     string                     `wire:"required"`
	Count    int                        `wire:"required"`
	Note     string
}

type report struct {
	Verdict  colour
	Findings []finding
}

type finding struct {
	Rule   string
	Wanted band
}

type band struct{ Low, High units.Length }

// result embeds a report and has a form of its own.
type result struct {
	Name string
	report
	Limit limit
	Steps []limit
}

func (r result) MarshalJSON() ([]byte, error)  { return wire.Marshal(r) }
func (r *result) UnmarshalJSON(b []byte) error { return wire.Unmarshal(b, r) }

// limit hides its value and writes it in its own form.
type limit struct{ atMost units.Length }

type limitForm struct {
	AtMost units.Length `wire:"required"`
}

func (l limit) MarshalJSON() ([]byte, error) { return wire.Marshal(limitForm{l.atMost}) }
func (l *limit) UnmarshalJSON(b []byte) error {
	var form limitForm
	if err := wire.Unmarshal(b, &form); err != nil {
		return err
	}
	*l = limit{form.AtMost}
	return nil
}

// lender has a form of its own and lends the methods to whatever embeds it.
type lender struct{ Held int }

func (l lender) MarshalJSON() ([]byte, error)  { return wire.Marshal(l) }
func (l *lender) UnmarshalJSON(b []byte) error { return wire.Unmarshal(b, l) }

type borrower struct {
	lender
	Own int
}

type holder struct {
	One  borrower
	Many []borrower
}
