package process_test

import (
	"testing"
	"time"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

func BenchmarkFind(b *testing.B) {
	request := process.Request{Product: process.Tuna, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Weighted, Altitude: units.State(4_350 * units.Foot)}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := process.Find(request); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFindRefusing(b *testing.B) {
	request := process.Request{Product: process.Tuna, Pack: process.RawPack, Jar: process.Quart, Gauge: process.Weighted, Altitude: units.State(4_350 * units.Foot)}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := process.Find(request); err == nil {
			b.Fatal("found")
		}
	}
}

func BenchmarkCheck(b *testing.B) {
	claim := process.Claim{
		Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(4_350 * units.Foot),
		Pressure: units.State(11 * units.PSI), Process: units.State(90 * time.Minute),
	}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := process.Check(claim); err != nil {
			b.Fatal(err)
		}
	}
}
