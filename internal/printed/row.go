package printed

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
)

// A Row is one printed row. It knows where it stands, and fails its test with that place when a cell is not what was asked for.
// An unknown column always fails; an empty cell was not printed, and fails only where a number is asked for.
type Row struct {
	t       testing.TB
	file    string
	line    int
	columns map[string]int
	cells   []string
}

// In returns the row for a subtest, so that a bad cell fails that one. Rows.Each does it by itself.
func (r Row) In(t testing.TB) Row {
	r.t = t
	return r
}

// String says where the row stands, with its path from the module root: testdata/process/schedules.csv:12.
func (r Row) String() string { return fmt.Sprintf("%s:%d", r.file, r.line) }

// Text returns the cell exactly as printed; an empty cell is "".
func (r Row) Text(col string) string {
	r.t.Helper()
	i, ok := r.columns[col]
	if !ok {
		r.t.Fatalf("%s: the table has no column %q", r, col)
	}
	return r.cells[i]
}

// Has reports whether the cell was printed at all.
func (r Row) Has(col string) bool {
	r.t.Helper()
	return r.Text(col) != ""
}

// Decimal returns the printed number, exactly.
func (r Row) Decimal(col string) decimal.Decimal {
	r.t.Helper()
	value, _ := r.number(col)
	return value
}

// Int returns the printed whole number; thousands commas are allowed, a point or an exponent is not.
func (r Row) Int(col string) int64 {
	r.t.Helper()
	r.number(col)
	n, err := strconv.ParseInt(strings.ReplaceAll(r.Text(col), ",", ""), 10, 64)
	if err != nil {
		r.t.Fatalf("%s: column %s: %q is not a whole number", r, col, r.Text(col))
	}
	return n
}

// Float returns the float64 nearest to the printed number.
func (r Row) Float(col string) float64 {
	r.t.Helper()
	r.number(col)
	x, err := strconv.ParseFloat(strings.ReplaceAll(r.Text(col), ",", ""), 64)
	if err != nil {
		r.t.Fatalf("%s: column %s: %q: %v", r, col, r.Text(col), err)
	}
	return x
}

// Tolerance returns how far a figure may be from the printed one: half of the last printed digit ("113.2743" gives 0.00005,
// "1.4e-7" gives 0.05e-7, "1,000" gives 0.5). The row's own tolerance in the column tolerance_<col>, or else
// in the column tolerance, goes before it, and then the column note must give the reason.
func (r Row) Tolerance(col string) decimal.Decimal {
	r.t.Helper()
	_, half := r.number(col)
	own := r.own(col)
	if own == "" {
		return half
	}
	tolerance, _, err := number(own)
	if err != nil || tolerance.Sign() <= 0 {
		r.t.Fatalf("%s: column %s: its own tolerance %q is not a number above zero", r, col, own)
	}
	if r.optional("note") == "" {
		r.t.Fatalf("%s: column %s: its own tolerance %s has no reason in the column note", r, col, own)
	}
	return tolerance
}

// own is the text of the row's own tolerance for a column, "" where it has none.
func (r Row) own(col string) string {
	if own := r.optional("tolerance_" + col); own != "" {
		return own
	}
	return r.optional("tolerance")
}

func (r Row) optional(col string) string {
	if i, ok := r.columns[col]; ok {
		return r.cells[i]
	}
	return ""
}

func (r Row) number(col string) (value, half decimal.Decimal) {
	r.t.Helper()
	text := r.Text(col)
	if text == "" {
		r.t.Fatalf("%s: column %s: not printed (the cell is empty)", r, col)
	}
	value, half, err := number(text)
	if err != nil {
		r.t.Fatalf("%s: column %s: %q %v", r, col, text, err)
	}
	return value, half
}
