package smoke

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

func TestListeriaRatesAreThePrintedOnes(t *testing.T) {
	printed.Table(t, "smoke/listeria-6d.csv").Each(t, func(t *testing.T, r printed.Row) {
		printed.WithinFloat(t, r, "lethal_rate", rate(r.Float("temp_c")))
		printed.WithinFloat(t, r, "minutes_for_6d", sixLog.Minutes()/rate(r.Float("temp_c")))
		require.Equal(t, []string{listeriaCitation.Source.Key(), listeriaCitation.Where, listeriaCitation.Basis.String()},
			[]string{r.Text("source"), r.Text("place"), r.Text("basis")})
	})
}

func TestListeriaReferenceAsPrinted(t *testing.T) {
	inPrint := map[string]float64{}
	for _, r := range printed.Table(t, "smoke/listeria-reference.csv") {
		inPrint[r.Text("term")] = r.Float("value")
	}
	require.Equal(t, map[string]float64{"reference_c": referenceC, "minutes_for_6d": sixLog.Minutes(), "z_k": decimalKelvins}, inPrint)
}

// Two minutes at 70 °C are two minutes, and so is the printed time of any other row; a ramp is the integral of its line.
func TestPasteuriseAddsUp(t *testing.T) {
	steady := func(celsius float64, d time.Duration) core {
		return record(t, reading{At: 0, Value: units.Celsius(celsius)}, reading{At: d, Value: units.Celsius(celsius)})
	}
	for _, c := range []struct {
		probes []core
		want   time.Duration
	}{
		{[]core{steady(70, 2*time.Minute)}, 2 * time.Minute},
		{[]core{steady(62.5, 20*time.Minute)}, 2 * time.Minute},
		{[]core{steady(77.5, 12*time.Second)}, 2 * time.Minute},
		{[]core{steady(80, 2*time.Minute), steady(70, 2*time.Minute)}, 2 * time.Minute}, // the colder probe
		// 62.5 to 77.5 °C in 10 min: 10 min (10 - 0.1)/ln 100.
		{[]core{record(t, reading{At: 0, Value: units.Celsius(62.5)}, reading{At: 10 * time.Minute, Value: units.Celsius(77.5)})},
			time.Duration(600 * 9.9 / math.Log(100) * float64(time.Second)).Truncate(time.Millisecond)},
		{[]core{steady(0, 24*time.Hour)}, 0},
	} {
		p, err := Pasteurise(c.probes...)
		require.NoError(t, err)
		require.LessOrEqual(t, p.Equivalent, c.want, "never rounded up")
		require.InDelta(t, float64(c.want), float64(p.Equivalent), float64(2*time.Millisecond))
		require.Equal(t, 2*time.Minute, p.SixLog)
		require.Equal(t, cite.Read, p.Citation.Basis)
	}
}

// It explains beside the verdict: a core that kills in the book may still not meet the hold, and the surface is warned of each time.
func TestPasteuriseDecidesNothing(t *testing.T) {
	short := fahrenheit(t, 10*time.Minute, 179, 179, 179, 179)
	p, err := Pasteurise(short)
	require.NoError(t, err)
	require.Greater(t, p.Equivalent, 100*p.SixLog)
	h, err := AuditHold(DefaultCoreLimit(), recorded(10*time.Minute, short))
	require.NoError(t, err)
	require.Equal(t, verdict.NotMet, h.Verdict)
	require.Equal(t, cite.Poysky1997, p.Cautions[0].Citation.Source)
	require.Contains(t, p.Cautions[0].Text, "dry surface")
	for _, c := range p.Cautions {
		require.NoError(t, c.Citation.Check(), c.Text)
	}
}

func TestPasteuriseRefuses(t *testing.T) {
	good := fahrenheit(t, time.Minute, 160, 160)
	for name, probes := range map[string][]core{
		"no probe":     {},
		"empty record": {good, {}},
		"air":          {good, fahrenheit(t, time.Minute, 180, 225)},
		"thirty years": {record(t, reading{At: 0, Value: units.Celsius(100)}, reading{At: 2400 * time.Hour, Value: units.Celsius(100)})},
	} {
		p, err := Pasteurise(probes...)
		var fault ProbeError
		require.ErrorAs(t, err, &fault, name)
		require.Zero(t, p, name)
	}
}
