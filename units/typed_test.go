package units_test

import (
	"errors"
	"math/big"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

// door ties the strict and the kitchen door of one type together, values as quanta.
type door struct {
	typed  func(string) (quanta *big.Rat, text string, err error)
	strict func(string) (quanta *big.Rat, err error)
	base   int64 // quanta in the base unit of the tables
}

func doorOf[T units.Typable](strict func(string) (T, error), quanta func(T) *big.Rat, base int64) door {
	return door{
		typed: func(s string) (*big.Rat, string, error) {
			t, err := units.ReadTyped[T](s)
			if err != nil {
				return nil, t.Text, err
			}
			return quanta(t.Value), t.Text, nil
		},
		strict: func(s string) (*big.Rat, error) {
			v, err := strict(s)
			if err != nil {
				return nil, err
			}
			return quanta(v), nil
		},
		base: base,
	}
}

func whole[T ~int64](v T) *big.Rat { return new(big.Rat).SetInt64(int64(v)) }

var doors = map[string]door{
	"mass":     doorOf(units.ParseMass, whole[units.Mass], int64(units.Kilogram)),
	"length":   doorOf(units.ParseLength, whole[units.Length], int64(units.Metre)),
	"volume":   doorOf(units.ParseVolume, whole[units.Volume], int64(units.Litre)),
	"area":     doorOf(units.ParseArea, whole[units.Area], int64(units.SquareMetre)),
	"pressure": doorOf(units.ParsePressure, whole[units.Pressure], int64(units.Pascal)),
	"ratio":    doorOf(units.ParseRatio, whole[units.Ratio], int64(units.One)),
	"energy":   doorOf(units.ParseEnergy, whole[units.Energy], int64(units.Joule)),
	"speed":    doorOf(units.ParseSpeed, whole[units.Speed], int64(units.MetrePerSecond)),
	"density":  doorOf(units.ParseDensity, whole[units.Density], int64(units.KilogramPerCubicMetre)),
	"pH":       doorOf(units.ParsePH, whole[units.PH], int64(units.PHUnit)),
	"time":     doorOf(units.ParseLasting, whole[time.Duration], int64(time.Second)),
	"temperature change": doorOf(units.ParseTemperatureChange, whole[units.TemperatureChange],
		int64(units.Kelvins)),
	"temperature": doorOf(units.ParseTemperature, func(t units.Temperature) *big.Rat { return whole(t.AboveAbsoluteZero()) },
		int64(units.Kelvins)),
	"parts": doorOf(units.ParseParts, func(p units.Parts) *big.Rat { return big.NewRat(p.First, p.Second) }, 1),
}

// exactly works out a sum of fractions such as "350+459.67".
func exactly(t *testing.T, sum string) *big.Rat {
	t.Helper()
	total := new(big.Rat)
	for _, term := range strings.Split(sum, "+") {
		r, ok := new(big.Rat).SetString(term)
		require.True(t, ok, "%q", term)
		total.Add(total, r)
	}
	return total
}

// nearest rounds to a whole number, ties away from zero.
func nearest(r *big.Rat) *big.Rat {
	half := big.NewRat(int64(r.Sign()), 2)
	sum := new(big.Rat).Add(r, half)
	return new(big.Rat).SetInt(new(big.Int).Quo(sum.Num(), sum.Denom()))
}

// TestTyped reads what people type: count times each, in the base unit, worked out in fractions and rounded once.
func TestTyped(t *testing.T) {
	rows := printed.Table(t, "units/kitchen.csv")
	distinct(t, rows)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		d, ok := doors[r.Text("quantity")]
		require.True(t, ok, "%s", r)
		want := exactly(t, r.Text("count"))
		want.Mul(want, exactly(t, r.Text("each")))
		want.Mul(want, new(big.Rat).SetInt64(d.base))
		if r.Text("quantity") != "parts" {
			want = nearest(want)
		}
		got, text, err := d.typed(r.Text("text"))
		require.NoError(t, err, "%s", r)
		require.Equal(t, r.Text("confirm"), text, "%s", r)
		require.Zero(t, want.Cmp(got), "%s: want %s quanta, got %s", r, want, got)
		again, err := d.strict(text)
		require.NoError(t, err, "%s: %s", r, text)
		require.Zero(t, want.Cmp(again), "%s: %s reads as %s quanta", r, text, again)
		strictly, err := d.strict(r.Text("text"))
		switch r.Text("strict") {
		case "same":
			require.NoError(t, err, "%s", r)
			require.Zero(t, want.Cmp(strictly), "%s: strictly %s quanta", r, strictly)
		default:
			require.Equal(t, "refused", r.Text("strict"), "%s", r)
			require.ErrorIs(t, err, units.ErrSyntax, "%s", r)
		}
	})
}

// TestTypedRefused holds what may mean two things, or nothing: the reason, and choices that the strict door reads. The
// column strict has what the strict door, which knows one meaning, reads there.
func TestTypedRefused(t *testing.T) {
	rows := printed.Table(t, "units/kitchen-refused.csv")
	distinct(t, rows)
	require.GreaterOrEqual(t, len(rows), len(printed.Table(t, "units/kitchen.csv")))
	rows.Each(t, func(t *testing.T, r printed.Row) {
		d, ok := doors[r.Text("quantity")]
		require.True(t, ok, "%s", r)
		_, text, err := d.typed(r.Text("text"))
		require.Error(t, err, "%s: confirmed as %s", r, text)
		require.Empty(t, text)
		require.ErrorContains(t, err, r.Text("says"), "%s", r)
		var fault units.ParseError
		if !errors.As(err, &fault) {
			require.ErrorIs(t, err, units.ErrRange, "%s", r)
		} else {
			require.Equal(t, r.Text("text"), fault.Text, "%s", r)
		}
		require.Empty(t, cmp.Diff(r.Text("choices"), strings.Join(fault.Choices, " | ")), "%s", r)
		for _, choice := range fault.Choices {
			_, err := d.strict(choice)
			require.NoError(t, err, "%s: choice %s", r, choice)
			require.ErrorContains(t, fault, choice)
		}
		strictly, err := d.strict(r.Text("text"))
		if r.Text("strict") == "refused" {
			require.Error(t, err, "%s: strictly %s quanta", r, strictly)
			return
		}
		require.NoError(t, err, "%s", r)
		if r.Text("text") != "not set" {
			want, err := d.strict(r.Text("strict"))
			require.NoError(t, err, "%s", r)
			require.Zero(t, want.Cmp(strictly), "%s: strictly %s quanta", r, strictly)
		}
	})
}

// distinct holds a table to name every row once, and to have no text of a quantity twice.
func distinct(t *testing.T, rows printed.Rows) {
	t.Helper()
	seen := map[string]bool{}
	for _, r := range rows {
		text := r.Text("quantity") + ": " + r.Text("text")
		require.False(t, seen[r.Text("row")], "%s: row %s twice", r, r.Text("row"))
		require.False(t, seen[text], "%s: %s twice", r, text)
		seen[r.Text("row")], seen[text] = true, true
	}
}
