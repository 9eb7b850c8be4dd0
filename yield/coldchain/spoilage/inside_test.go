package spoilage

import (
	"math/big"
	"testing"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/stretchr/testify/require"
)

// Source: FAO Fisheries Technical Paper 348 and Dalgaard et al. 2004; all but the slope of smoked salmon recalled.
func TestSpoilageConstants(t *testing.T) {
	code := map[string]float64{
		"temperature of no spoilage": spoilageMinimum, "reference temperature": spoilageReference,
		"slope of the tropical law": tropicalSlope, "slope of the law of cold-smoked salmon": smokedSlope,
	}
	laws := map[string]Law{
		"temperature of no spoilage": FreshFish, "reference temperature": FreshFish,
		"slope of the tropical law": TropicalFish, "slope of the law of cold-smoked salmon": ColdSmokedSalmon,
	}
	rows := printed.Table(t, "coldchain/spoilage-constants.csv")
	require.Len(t, rows, len(code))
	rows.Each(t, func(t *testing.T, r printed.Row) {
		require.Equal(t, r.Float("value"), code[r.Text("name")])
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(laws[r.Text("name")].Citation()))
	})
}

// The 128-bit sums against whole numbers of any size.
func FuzzWide(f *testing.F) {
	f.Add(uint64(1<<63-1), uint64(1<<60), uint64(5), uint64(7))
	f.Add(uint64(1), uint64(0), uint64(1), uint64(1))
	f.Fuzz(func(t *testing.T, a, b, num, den uint64) {
		if den == 0 || num > den {
			return
		}
		whole := func(w wide) *big.Int {
			n := new(big.Int).SetUint64(w.high)
			return n.Lsh(n, 64).Add(n, new(big.Int).SetUint64(w.low))
		}
		up := func(n, d *big.Int) *big.Int {
			q, rest := new(big.Int).QuoRem(n, d, new(big.Int))
			if rest.Sign() > 0 {
				q.Add(q, big.NewInt(1))
			}
			return q
		}
		divisor, factor := new(big.Int).SetUint64(den), new(big.Int).SetUint64(num)
		p := product(a, b)
		require.Zero(t, new(big.Int).Mul(new(big.Int).SetUint64(a), new(big.Int).SetUint64(b)).Cmp(whole(p)))
		require.Zero(t, up(new(big.Int).Mul(whole(p), factor), divisor).Cmp(whole(p.prorated(num, den))))
		q, ok := p.over(den)
		want := up(whole(p), divisor)
		require.Equal(t, want.IsInt64(), ok)
		if ok {
			require.Equal(t, want.Int64(), q)
		}
	})
}
