package wire_test

import (
	"encoding/json"
	"testing"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

func many() report {
	r := report{Verdict: 2}
	for i := 0; i < 100; i++ {
		r.Findings = append(r.Findings, finding{Rule: "a rule", Wanted: band{Low: units.Metre, High: 2000 * units.Foot}})
	}
	return r
}

func BenchmarkMarshal(b *testing.B) {
	r := many()
	for name, call := range map[string]func(any) ([]byte, error){"wire": wire.Marshal, "json": json.Marshal} {
		call := call
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				if _, err := call(r); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkUnmarshal(b *testing.B) {
	data, err := wire.Marshal(many())
	if err != nil {
		b.Fatal(err)
	}
	for name, call := range map[string]func([]byte, any) error{"wire": wire.Unmarshal, "json": json.Unmarshal} {
		call := call
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; i < b.N; i++ {
				var r report
				if err := call(data, &r); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
