package coldchain_test

import (
	"testing"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// Exactly 40, 50 and 70 °F are not above 40, 50 and 70 °F, whichever scale the logger writes, and the smallest step
// more is: in the hours, in the short rules and in the kitchen's, which all say "above".
func TestThresholdsInBothScales(t *testing.T) {
	for i, c := range []struct {
		edge    units.Temperature
		celsius string
		rule    coldchain.Rule
	}{
		{units.Fahrenheit(40), "4.4444444444 °C", coldchain.KitchenTwoHours},
		{units.Fahrenheit(50), "10 °C", coldchain.RawReadyToEat},
		{units.Fahrenheit(70), "21.1111111111 °C", 0},
	} {
		read, err := units.ParseTemperature(c.celsius)
		require.NoError(t, err)
		require.Equal(t, c.edge, read)
		require.Equal(t, c.edge, units.Celsius(c.edge.Celsius()))
		require.Equal(t, c.edge, units.Fahrenheit(c.edge.Fahrenheit()))
		level := func(at units.Temperature, terms coldchain.Terms) coldchain.Report {
			return exposed(t, logged.Record(t, logged.Ramp(6*hour, at, at)), terms)
		}
		on, above := level(read, coldchain.Terms{}), level(read.Add(1), coldchain.Terms{})
		require.Zero(t, on.Hours[i+1].Time)
		require.False(t, on.Hours[i+1].Ever)
		require.Equal(t, 6*hour, above.Hours[i+1].Time)
		if c.rule != 0 {
			require.Equal(t, verdict.Met, level(read, coldchain.Terms{Rules: []coldchain.Rule{c.rule}}).Verdict)
			require.Equal(t, verdict.NotMet, level(read.Add(1), coldchain.Terms{Rules: []coldchain.Rule{c.rule}}).Verdict)
		}
	}
	// Raw fish exactly at 70 °F was never above it and has five hours; a step more leaves two.
	raw := coldchain.Terms{Rules: []coldchain.Rule{coldchain.RawReadyToEat}}
	at := units.Celsius(units.Fahrenheit(70).Celsius())
	require.Equal(t, verdict.Met, exposed(t, logged.Record(t, logged.Ramp(5*hour, at, at)), raw).Verdict)
	require.Equal(t, verdict.Met, exposed(t, logged.Record(t, logged.Ramp(2*hour, at.Add(1), at.Add(1))), raw).Verdict)
	require.Equal(t, verdict.NotMet, exposed(t, logged.Record(t, logged.Ramp(4*hour+1, at.Add(1), at.Add(1))), raw).Verdict)
}

// The order of the stretches changes no time, no share and no verdict, to the nanosecond; and time in the frost adds
// none.
func FuzzOrderChangesNothing(f *testing.F) {
	f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255}, uint8(0))
	f.Add([]byte{221, 0, 222, 0, 223, 1, 224, 2, 225, 3, 226, 4, 5, 5}, uint8(1))
	f.Fuzz(func(t *testing.T, data []byte, reading uint8) {
		readings := logged.Drawn(data)
		if len(readings) < 2 {
			return
		}
		terms := coldchain.Terms{Reading: coldchain.Reading(reading % 3)}
		end := readings[len(readings)-1].At
		var turned []series.Reading[units.Temperature]
		for j := len(readings) - 1; j >= 0; j-- {
			turned = append(turned, series.Reading[units.Temperature]{At: end - readings[j].At, Value: readings[j].Value})
		}
		frozen := append([]series.Reading[units.Temperature](nil), readings...)
		frozen[len(frozen)-1].Value = units.Celsius(-18)
		thawed := exposed(t, logged.Made(t, frozen), terms)
		frozen = append(frozen, series.Reading[units.Temperature]{At: end + 2*chain.Day, Value: units.Celsius(-18)})
		for _, pair := range [][2]coldchain.Report{
			{exposed(t, logged.Made(t, readings), terms), exposed(t, logged.Made(t, turned), terms)},
			{thawed, exposed(t, logged.Made(t, frozen), terms)},
		} {
			require.Equal(t, pair[0].Verdict, pair[1].Verdict)
			for i, h := range pair[0].Hours {
				require.Equal(t, h.Time, pair[1].Hours[i].Time)
			}
			for i, finding := range pair[0].Allowances {
				other := pair[1].Allowances[i]
				require.Equal(t, finding.Verdict, other.Verdict)
				require.Equal(t, finding.Used, other.Used)
				for k := range finding.Lines {
					finding.Lines[k].PassedAt, other.Lines[k].PassedAt = 0, 0
				}
				require.Empty(t, cmp.Diff(finding.Lines, other.Lines))
			}
		}
	})
}
