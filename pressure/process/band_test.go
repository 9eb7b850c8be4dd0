package process_test

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// loads are the printed rows without their altitude: one for each product, pack, jar and gauge.
func loads() map[process.Request][]process.Schedule {
	rows := map[process.Request][]process.Schedule{}
	for _, s := range process.Schedules() {
		rows[s.Request()] = append(rows[s.Request()], s)
	}
	return rows
}

// The bands of a row start at zero, touch, end where the print ends, and pressure rises from one to the next while the minutes stay.
func TestBandsTouchAndPressureNeverFalls(t *testing.T) {
	for load, rows := range loads() {
		require.Zero(t, rows[0].Band.Over, load.String())
		for i := 1; i < len(rows); i++ {
			require.Equal(t, rows[i-1].Band.UpTo, rows[i].Band.Over, load.String())
			require.Greater(t, rows[i].Pressure, rows[i-1].Pressure, load.String())
			require.Equal(t, rows[i-1].Process, rows[i].Process, load.String())
		}
		end := process.NoLimit
		if load.Gauge == process.Dial {
			end = 8_000 * units.Foot
		}
		require.Equal(t, end, rows[len(rows)-1].Band.UpTo, load.String())
	}
}

// Each edge is in the lower band and one nanometre more is in the next, in feet and in metres: the printed 2,000 ft is 609.6 m.
func TestEveryBandEdge(t *testing.T) {
	dial := []struct {
		feet, metres string
		at, beyond   units.Pressure
	}{
		{"2,000 ft", "609.6 m", 11 * units.PSI, 12 * units.PSI},
		{"4,000 ft", "1219.2 m", 12 * units.PSI, 13 * units.PSI},
		{"6,000 ft", "1828.8 m", 13 * units.PSI, 14 * units.PSI},
		{"8,000 ft", "2438.4 m", 14 * units.PSI, 0},
	}
	weighted := dial[:0:0]
	weighted = append(weighted, dial[0], dial[1])
	weighted[0].feet, weighted[0].metres, weighted[0].at, weighted[0].beyond = "1,000 ft", "304.8 m", 10*units.PSI, 15*units.PSI
	weighted[1].feet, weighted[1].metres, weighted[1].at, weighted[1].beyond = "10,000 ft", "3048 m", 15*units.PSI, 0
	for load := range loads() {
		edges := dial
		if load.Gauge == process.Weighted {
			edges = weighted
		}
		for _, edge := range edges {
			for _, text := range []string{edge.feet, edge.metres} {
				altitude, err := units.ParseLength(text)
				require.NoError(t, err)
				for _, height := range []units.Length{altitude - units.Foot, altitude - units.Nanometre, altitude} {
					requirePressure(t, load, height, edge.at)
				}
				for _, height := range []units.Length{altitude + units.Nanometre, altitude + units.Foot/2, altitude + units.Foot, altitude + units.Metre} {
					requirePressure(t, load, height, edge.beyond)
				}
			}
		}
	}
}

// requirePressure looks the load up; a pressure of zero stands for a refusal of the altitude.
func requirePressure(t *testing.T, load process.Request, altitude units.Length, want units.Pressure) {
	t.Helper()
	load.Altitude = units.State(altitude)
	s, err := process.Find(load)
	if want == 0 {
		var refusal process.NotPublishedError
		require.ErrorAs(t, err, &refusal)
		require.Equal(t, process.MissingAltitude, refusal.Missing)
		require.Equal(t, process.Schedule{}, s)
		return
	}
	require.NoError(t, err)
	require.Equal(t, want, s.Pressure, load.String())
}

// Whatever the altitude, Find refuses or returns a row whose band holds it and is the only one of its load that does.
func FuzzFind(f *testing.F) {
	for _, altitude := range []int64{0, -1, 1, int64(2_000 * units.Foot), int64(2_000*units.Foot) + 1, int64(10_000*units.Foot) + 1, math.MaxInt64, math.MinInt64} {
		f.Add(uint8(1), uint8(1), uint8(3), uint8(1), altitude)
		f.Add(uint8(3), uint8(2), uint8(1), uint8(2), altitude)
	}
	f.Fuzz(func(t *testing.T, product, pack, jar, gauge uint8, altitude int64) {
		request := process.Request{
			Product: process.Product(product % 5), Pack: process.Pack(pack % 5), Jar: process.Jar(jar % 8), Gauge: process.Gauge(gauge % 4),
			Altitude: units.State(units.Length(altitude)),
		}
		s, err := process.Find(request)
		holding := 0
		for _, row := range process.Schedules() {
			row.Altitude = request.Altitude
			if row.Request() == request && row.Band.Contains(request.Altitude.Value) && request.Altitude.Value <= process.Ceiling {
				holding++
			}
		}
		if altitude > 0 && altitude < int64(units.Millimetre) && !errors.Is(err, process.ErrNotPublished) {
			require.ErrorAs(t, err, new(units.UnitError), "a bare number")
			require.Equal(t, process.Schedule{}, s)
			return
		}
		if err != nil {
			require.ErrorAs(t, err, new(process.NotPublishedError))
			require.NotErrorIs(t, err, units.ErrRange)
			require.Equal(t, process.Schedule{}, s)
			require.Zero(t, holding)
			return
		}
		require.Equal(t, 1, holding)
		require.True(t, s.Band.Contains(request.Altitude.Value))
		require.Equal(t, request, s.Request())
	})
}

func TestBandOfNothing(t *testing.T) {
	for _, altitude := range []units.Length{math.MinInt64, -1, 0, 1, math.MaxInt64} {
		require.False(t, process.Band{}.Contains(altitude))
		require.False(t, process.Band{Over: 10, UpTo: 5}.Contains(altitude))
	}
	require.Equal(t, "no altitude", process.Band{}.String())
}
