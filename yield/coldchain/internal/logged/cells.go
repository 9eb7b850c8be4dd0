package logged

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"github.com/shopspring/decimal"
)

var nanosecondsInHour = decimal.NewFromInt(int64(time.Hour))

// Fahrenheit is a cell in degrees Fahrenheit, not set where it is empty.
func Fahrenheit(t *testing.T, r printed.Row, col string) units.Temperature {
	t.Helper()
	if !r.Has(col) {
		return units.Temperature{}
	}
	f, err := units.TemperatureOf(r.Decimal(col), units.FahrenheitScale)
	if err != nil {
		t.Fatal(r, col, err)
	}
	return f
}

// Hours is a cell in hours, a whole number of nanoseconds.
func Hours(t *testing.T, r printed.Row, col string) time.Duration {
	t.Helper()
	h := r.Decimal(col).Mul(nanosecondsInHour)
	if !h.IsInteger() {
		t.Fatalf("%s %s: %s is no whole number of nanoseconds", r, col, r.Text(col))
	}
	return time.Duration(h.IntPart())
}

// Provenance is where a row says that its figures are from.
func Provenance(r printed.Row) []string {
	return []string{r.Text("source"), r.Text("place"), r.Text("basis")}
}

// ProvenanceOf is the same of a citation.
func ProvenanceOf(c cite.Citation) []string {
	return []string{c.Source.Key(), c.Where, c.Basis.String()}
}

// Celsius is a cell in degrees Celsius.
func Celsius(t *testing.T, r printed.Row, col string) units.Temperature {
	t.Helper()
	c, err := units.TemperatureOf(r.Decimal(col), units.CelsiusScale)
	if err != nil {
		t.Fatal(r, col, err)
	}
	return c
}

// Quantity is a cell in a unit.
func Quantity[Q units.Quantity](t *testing.T, r printed.Row, col string, unit Q) Q {
	t.Helper()
	q, err := units.Of(r.Decimal(col), unit)
	if err != nil {
		t.Fatal(r, col, err)
	}
	return q
}

// InDays is a time in days, to more digits than any of the tables has.
func InDays(d time.Duration) decimal.Decimal {
	return decimal.NewFromInt(int64(d)).DivRound(decimal.NewFromInt(int64(chain.Day)), 14)
}

// OfDays is a cell in days, a whole number of nanoseconds.
func OfDays(t *testing.T, r printed.Row, col string) time.Duration {
	t.Helper()
	d := r.Decimal(col).Mul(decimal.NewFromInt(int64(chain.Day)))
	if !d.IsInteger() {
		t.Fatalf("%s %s: %s is no whole number of nanoseconds", r, col, r.Text(col))
	}
	return time.Duration(d.IntPart())
}

// Tenths is a temperature of so many tenths of a degree Celsius, not set where there is none so cold.
func Tenths(n int16) units.Temperature {
	t, err := units.TemperatureOf(decimal.New(int64(n), -1), units.CelsiusScale)
	if err != nil {
		return units.Temperature{}
	}
	return t
}
