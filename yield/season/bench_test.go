package season_test

import (
	"testing"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

func planned(b *testing.B, weeks int) {
	y := twoDays()
	y.Weeks, y.Trips = weeks, nil
	for week := 0; week < weeks; week++ {
		if week%4 == 0 {
			y.Trips = append(y.Trips, season.Trip{Week: week, Days: 1, Expected: 5, Possible: 5})
		}
	}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := season.Keep(y); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkKeepOneYear(b *testing.B)  { planned(b, 52) }
func BenchmarkKeepTenYears(b *testing.B) { planned(b, 520) }

func BenchmarkSize(b *testing.B) {
	want := pints()
	h := season.Household{People: 4, Weeks: 52, Fish: 3400 * units.Gram}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := season.Size(h, want); err != nil {
			b.Fatal(err)
		}
	}
}
