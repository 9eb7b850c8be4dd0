package process_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// Requests that nobody has published a process for are refused by the part that is missing, with no number of another row in the message but those
// that say where the tables end.
func TestRefusals(t *testing.T) {
	printed.Table(t, "process/refused.csv").Each(t, func(t *testing.T, r printed.Row) {
		q := request(t, r)
		altitude, err := units.ParseLength(r.Text("altitude"))
		require.NoError(t, err)
		q.Altitude = units.State(altitude)
		s, err := process.Find(q)
		var refusal process.NotPublishedError
		require.ErrorAs(t, err, &refusal)
		require.Equal(t, r.Text("missing"), refusal.Missing.String())
		require.Equal(t, q, refusal.Request)
		require.Equal(t, process.Schedule{}, s)
		require.NotErrorIs(t, err, units.ErrRange)
		require.ErrorIs(t, err, process.ErrNotPublished)
		require.True(t, strings.HasPrefix(err.Error(), "no process is published for "), err.Error())
		require.NotContains(t, err.Error(), "psi")
		require.NotContains(t, err.Error(), "min")

		// The extension does not open a door for them either.
		_, err = process.FindExtension(q)
		if refusal.Missing != process.MissingAltitude {
			require.Equal(t, refusal, err)
		} else if q.Gauge == process.Weighted || altitude < 0 || altitude > process.Ceiling {
			require.ErrorAs(t, err, new(process.NotPublishedError))
		}
	})
}

// The message names what ran out and what the tables have there, without offering it as an answer.
func TestRefusalMessages(t *testing.T) {
	whole := process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial, Altitude: units.State(units.Length(0))}
	for message, change := range map[string]func(*process.Request){
		"a product that is not stated; there are tables for fish, smoked fish and tuna":                            func(q *process.Request) { q.Product = 0 },
		"an unknown product(77); there are tables for fish, smoked fish and tuna":                                  func(q *process.Request) { q.Product = 77 },
		"fish in the pack precooked; its tables are for packs: raw":                                                func(q *process.Request) { q.Pack = process.Precooked },
		"raw fish in half-gallon jars; its tables are for jars: half-pint, 12 oz, pint and quart":                  func(q *process.Request) { q.Jar = process.HalfGallon },
		"raw fish in jars of a size that is not stated; its tables are for jars: half-pint, 12 oz, pint and quart": func(q *process.Request) { q.Jar = 0 },
		"raw fish in pint jars with a gauge that is not stated; its tables are for gauges: dial and weighted":      func(q *process.Request) { q.Gauge = 0 },
		"raw fish in pint jars with gauge(7); its tables are for gauges: dial and weighted":                        func(q *process.Request) { q.Gauge = 7 },
		"raw fish in pint jars, dial gauge, at -1 ft; the tables start at 0 ft":                                    func(q *process.Request) { q.Altitude = units.State(-units.Foot) },
		"raw fish in pint jars, dial gauge, at 8,001 ft; the dial-gauge tables end at 8,000 ft":                    func(q *process.Request) { q.Altitude = units.State(8_001 * units.Foot) },
		"raw fish in pint jars, weighted gauge, at 10,001 ft; nothing is looked up above 10,000 ft": func(q *process.Request) {
			q.Gauge, q.Altitude = process.Weighted, units.State(10_001*units.Foot)
		},
	} {
		q := whole
		change(&q)
		_, err := process.Find(q)
		require.EqualError(t, err, "no process is published for "+message)
	}
}

// There are more requests to refuse than rows to give: the negative half is not an afterthought.
func TestRefusalsOutnumberRows(t *testing.T) {
	require.GreaterOrEqual(t, len(printed.Table(t, "process/refused.csv")), len(process.Schedules()))
}

// Of every product, pack, jar and gauge there are, known and unknown, only the printed ones are found.
func TestNothingElseIsFound(t *testing.T) {
	found, refused := 0, 0
	for product := process.Product(0); product < 6; product++ {
		for pack := process.Pack(0); pack < 6; pack++ {
			for jar := process.Jar(0); jar < 9; jar++ {
				for gauge := process.Gauge(0); gauge < 5; gauge++ {
					s, err := process.Find(process.Request{Product: product, Pack: pack, Jar: jar, Gauge: gauge, Altitude: units.State(500 * units.Foot)})
					if err != nil {
						require.ErrorAs(t, err, new(process.NotPublishedError))
						refused++
						continue
					}
					require.NotZero(t, s.Process)
					found++
				}
			}
		}
	}
	require.Equal(t, len(loads()), found)
	require.Greater(t, refused, 10*found)
}

// Above 8,000 ft the extension answers when it is asked by name, and nowhere else.
func TestExtension(t *testing.T) {
	for load, rows := range loads() {
		for _, at := range []struct {
			altitude units.Length
			in       bool
		}{
			{-1, false}, {0, false}, {4_350 * units.Foot, false}, {8_000 * units.Foot, false}, {8_000*units.Foot + 1, true}, {8_001 * units.Foot, true},
			{9_000 * units.Foot, true}, {10_000 * units.Foot, true}, {3_048 * units.Metre, true}, {10_000*units.Foot + 1, false}, {12_000 * units.Foot, false},
		} {
			load.Altitude = units.State(at.altitude)
			s, err := process.FindExtension(load)
			if load.Gauge == process.Dial && at.in {
				require.NoError(t, err)
				require.True(t, s.Extension && s.Unverified())
				require.Equal(t, 15*units.PSI, s.Pressure)
				require.Equal(t, rows[0].Process, s.Process)
				require.Equal(t, s.Citation, s.Cautions()[0].Citation)
				_, err = process.Find(load)
			}
			require.ErrorAs(t, err, new(process.NotPublishedError), load.String())
		}
	}
	for _, s := range process.Schedules() {
		require.False(t, s.Extension)
	}
	_, err := process.FindExtension(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.PintAndHalf, Gauge: process.Dial, Altitude: units.State(9_000 * units.Foot)})
	var refusal process.NotPublishedError
	require.ErrorAs(t, err, &refusal)
	require.Equal(t, process.MissingJar, refusal.Missing)
}
