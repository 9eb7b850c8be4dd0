package printed

import (
	"math"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
)

// Within fails the test, and lets it go on, unless got is within the row's Tolerance of the printed number, the limit
// included. The comparison is exact.
func Within(t testing.TB, r Row, col string, got decimal.Decimal) {
	t.Helper()
	r = r.In(t)
	want, tolerance := r.Decimal(col), r.Tolerance(col)
	off := got.Sub(want).Abs()
	if off.LessThanOrEqual(tolerance) {
		return
	}
	t.Errorf("%s: column %s: printed %s, got %s, off by %s, tolerance %s%s", r, col, r.Text(col), got, off, tolerance, r.provenance())
}

// WithinFloat is Within for a float64, taken as the shortest decimal that reads back as the same float64. NaN and the infinities fail.
func WithinFloat(t testing.TB, r Row, col string, got float64) {
	t.Helper()
	if math.IsNaN(got) || math.IsInf(got, 0) {
		r = r.In(t)
		t.Errorf("%s: column %s: printed %s, got %v%s", r, col, r.Text(col), got, r.provenance())
		return
	}
	Within(t, r, col, decimal.NewFromFloat(got))
}

// provenance is the source key, the place in it and the basis, as far as the table has them: "\n\tUSDAGuide5Rev1994, page 14, read".
func (r Row) provenance() string {
	var parts []string
	for _, col := range []string{"source", "place", "basis"} {
		if text := r.optional(col); text != "" {
			parts = append(parts, text)
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return "\n\t" + strings.Join(parts, ", ")
}
