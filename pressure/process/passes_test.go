package process_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// least are the figures of the USDA Complete Guide, Guide 5, rev. 2015, in a form of their own: pounds by feet of altitude, and minutes.
func least(product process.Product, jar process.Jar, gauge process.Gauge, feet int) (pounds, minutes int) {
	minutes = 100 // pp. 5-10 and 5-14
	switch {
	case product == process.SmokedFish:
		minutes = 110 // p. 5-13
	case jar == process.Quart:
		minutes = 160 // p. 5-11
	}
	switch {
	case gauge == process.Weighted && feet > 1000:
		return 15, minutes
	case gauge == process.Weighted:
		return 10, minutes
	}
	return 11 + (feet-1)/2000, minutes
}

// allowed judges a claim by hand from the same pages: all stated, a row that is printed, and no figure below it.
func allowed(c process.Claim, feet int) bool {
	quart, smoked := c.Jar == process.Quart, c.Product == process.SmokedFish
	pounds, minutes := least(c.Product, c.Jar, c.Gauge, feet)
	water, pack := units.Volume(0), c.Pack == process.RawPack
	switch {
	case smoked:
		water, pack = 4*units.Quart, c.Pack == process.AsSmoked
	case c.Product == process.Tuna:
		pack = pack || c.Pack == process.Precooked
	case quart:
		water = 3 * units.Quart
	}
	printed := c.Product != 0 && pack && (c.Jar == process.HalfPint || c.Jar == process.Pint || quart || c.Jar == process.TwelveOunce) &&
		(!quart || c.Product == process.Fish) && feet >= 0 && (c.Gauge == process.Weighted && feet <= 10000 || c.Gauge == process.Dial && feet <= 8000)
	return printed && c.Pressure.Value >= units.Pressure(pounds)*units.PSI && c.Process.Value >= time.Duration(minutes)*time.Minute && c.Vent.Value >= 10*time.Minute &&
		(!quart || c.ComeUp.Value >= 30*time.Minute && c.Water.Value == water) && c.Water.Value >= water
}

// Whatever a recipe states: if it passes, everything that decides is stated and none of it is below the print.
func TestNothingBelowThePrintPasses(t *testing.T) {
	const jars = uint8(process.HalfGallon) + 2 // not set, and one unknown
	passed := 0
	try := func(c process.Claim, feet int) {
		a, err := process.Check(c)
		require.NoError(t, err)
		if a.Verdict.Passes() {
			passed++
			if !allowed(c, feet) {
				require.Fail(t, "passes", "%+v: %v", c, a)
			}
		}
	}
	for n := 0; n < 4*4*3*int(jars); n++ {
		c := process.Claim{Product: process.Product(n % 4), Pack: process.Pack(n / 4 % 4), Gauge: process.Gauge(n / 16 % 3), Jar: process.Jar(n / 48)}
		for _, feet := range []int{-1, 0, 1000, 1001, 2000, 2001, 4001, 6001, 8000, 8001, 10000, 10001} {
			for _, minutes := range []int{99, 100, 109, 110, 159, 160} {
				c.Altitude, c.Process = units.State(units.Length(feet)*units.Foot), units.State(time.Duration(minutes)*time.Minute)
				for pounds := units.Pressure(10); pounds <= 15; pounds++ {
					for _, rest := range [][3]int{{10, 30, 3}, {10, 30, 4}, {10, 29, 3}, {9, 30, 4}, {10, 30, 2}} {
						c.Pressure, c.Vent = units.State(pounds*units.PSI), units.State(time.Duration(rest[0])*time.Minute)
						c.ComeUp, c.Water = units.State(time.Duration(rest[1])*time.Minute), units.State(units.Volume(rest[2])*units.Quart)
						try(c, feet)
					}
				}
			}
		}
	}
	require.Greater(t, passed, 1000)
}
