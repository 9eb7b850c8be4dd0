package smoke

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

const wholeDay = "0 40; 180 182; 240 186; 260 186; 320 140; 420 69; 600 36; 700 35"

// One reading of a probe that drops out changes no verdict of the day outside the hold, and hides no warm fish.
func TestADropoutIsAGapInTheDay(t *testing.T) {
	whole := drawnRecord(t, wholeDay, "F", 5*time.Minute).Readings()
	clean, err := Audit(Rules{}, withPack(recorded(15*time.Minute, record(t, whole...))))
	require.NoError(t, err)
	require.Equal(t, verdict.Met, clean.Verdict, "%v", clean.Findings)
	for _, minute := range []int{20, 100, 250, 260, 300, 400, 500} {
		for _, shown := range []float64{-40, -20} {
			readings := append([]reading{}, whole...)
			readings[minute/5].Value = units.Fahrenheit(shown)
			got, err := Audit(Rules{}, withPack(recorded(15*time.Minute, record(t, readings...))))
			require.NoError(t, err)
			require.Equal(t, verdict.Met, got.Verdict, "minute %d: %v", minute, got.Findings)
			require.Equal(t, clean.Cold, got.Cold)

			readings[118].Value = units.Fahrenheit(60) // minute 590: nobody saw it colder before
			readings[125].Value = units.Fahrenheit(60) // minute 625: warm again
			got, err = Audit(Rules{}, withPack(recorded(15*time.Minute, record(t, readings...))))
			require.NoError(t, err)
			require.Equal(t, verdict.NotMet, got.Verdict)
		}
	}
}

// The time that a cooling took lies in the stretch that the finding names, and is all of it unless the finding says "in all".
func TestTheTimeOfACoolingFitsItsStretch(t *testing.T) {
	for name, text := range map[string]string{
		"a spike while it warms": "0 40; 95 97; 100 185; 105 103; 180 182; 240 186; 260 186; 320 140; 421 69; 600 36; 700 35",
		"only slow":              "0 40; 180 182; 240 186; 260 186; 320 140; 450 69; 600 36; 700 35",
		"heated again":           "0 40; 180 182; 240 186; 300 80; 330 37; 420 180; 440 140; 600 69; 700 35",
	} {
		c, err := AuditCooling(coolingRule(t, "COOL-2-4"), recorded(15*time.Minute, drawnRecord(t, text, "F", 5*time.Minute)))
		require.NoError(t, err)
		require.Equal(t, verdict.NotMet, c.Verdict, name)
		for _, f := range c.Findings {
			took, ok := units.As[time.Duration](f.Stated.Low)
			require.True(t, ok)
			length := f.When.Value.Length()
			require.LessOrEqual(t, took, length, name)
			if f.Stated == units.Exactly(took) {
				require.Equal(t, length, took, name)
			} else {
				require.Equal(t, units.Exactly(took).With("in all"), f.Stated, name)
			}
		}
	}
}
