package process_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// psi and minutes are printed whole or decimal figures of a row as quantities.
func psi(t *testing.T, r printed.Row, col string) units.Pressure {
	t.Helper()
	p, err := units.Of(r.Decimal(col), units.PSI)
	require.NoError(t, err)
	return p
}

func feet(t *testing.T, r printed.Row, col string) units.Length {
	t.Helper()
	return units.Length(r.Int(col)) * units.Foot
}

func minutes(r printed.Row, col string) time.Duration {
	return time.Duration(r.Int(col)) * time.Minute
}

// citation is what the last columns of a row cite.
func citation(t *testing.T, r printed.Row) cite.Citation {
	t.Helper()
	var c cite.Citation
	require.NoError(t, c.Source.UnmarshalText([]byte(r.Text("source"))))
	require.NoError(t, c.Basis.UnmarshalText([]byte(r.Text("basis"))))
	c.Where = r.Text("place")
	return c
}

// request reads product, pack, jar and gauge of a row; an empty cell is not set.
func request(t *testing.T, r printed.Row) process.Request {
	t.Helper()
	var q process.Request
	require.NoError(t, q.Product.UnmarshalText([]byte(r.Text("product"))))
	require.NoError(t, q.Pack.UnmarshalText([]byte(r.Text("pack"))))
	require.NoError(t, q.Jar.UnmarshalText([]byte(r.Text("jar"))))
	require.NoError(t, q.Gauge.UnmarshalText([]byte(r.Text("gauge"))))
	return q
}

// packs are the packs of a printed row: tuna prints one row for two.
func packs(t *testing.T, r printed.Row) []process.Pack {
	t.Helper()
	if r.Text("pack") == "precooked or raw" {
		return []process.Pack{process.Precooked, process.RawPack}
	}
	p, err := process.ParsePack(r.Text("pack"))
	require.NoError(t, err)
	return []process.Pack{p}
}

// usualPack is the pack of a product for rows that do not name one.
func usualPack(p process.Product) process.Pack {
	if p == process.SmokedFish {
		return process.AsSmoked
	}
	return process.RawPack
}
