package canner

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// scheduled is a dial's schedule with a pressure of the row, which need not be one of the table: an old target of 10 lb.
func scheduled(t testing.TB, psi units.Pressure) process.Schedule {
	s := fishIn(t, process.Pint)
	s.Pressure = psi
	return s
}

func TestGaugeSettings(t *testing.T) {
	printed.Table(t, "canner/gauge-settings.csv").Each(t, func(t *testing.T, r printed.Row) {
		s := scheduled(t, quantity(t, r, "scheduled_psi", units.PSI))
		set, err := Gauge{ReadsHigh: quantity(t, r, "reads_high_psi", units.PSI)}.Setting(s)
		if r.Has("refused") {
			var e UnsuitableError
			require.ErrorAs(t, err, &e)
			require.Equal(t, gaugeSource, e.Citation)
			require.Zero(t, set, "no setting is given")
			return
		}
		require.NoError(t, err)
		require.Equal(t, quantity(t, r, "at_least_psi", units.PSI), set.AtLeast)
		require.Equal(t, quantity(t, r, "corrected_psi", units.PSI), set.Corrected)
		require.NoError(t, set.Citation.Check())
	})
}

// Whatever the error, a dial kept at or above AtLeast delivers at least the schedule's pressure.
func TestSettingsNeverFallBelowTheSchedule(t *testing.T) {
	s := fishIn(t, process.Pint)
	for e := -gaugeLimit; e <= gaugeLimit; e += units.PSI / 100 {
		set, err := Gauge{ReadsHigh: e}.Setting(s)
		require.NoError(t, err)
		require.GreaterOrEqual(t, set.AtLeast-e, s.Pressure)
		require.Equal(t, s.Pressure, set.Corrected-e)
		require.GreaterOrEqual(t, set.AtLeast, set.Corrected)
	}
}

func TestGaugeCautions(t *testing.T) {
	high := scheduled(t, 14*units.PSI)
	for _, c := range []struct {
		error units.Pressure
		want  []string
	}{
		{0, []string{testYearly.Text}},
		{units.PSI - 1, []string{testYearly.Text}},
		{units.PSI, []string{testYearly.Text, olderLimit.Text}},
		{2 * units.PSI, []string{testYearly.Text, olderLimit.Text}},
		{-units.PSI / 2, []string{testYearly.Text, notSubtracted.Text}},
		{-units.PSI, []string{testYearly.Text, olderLimit.Text, notSubtracted.Text}},
		{-units.PSI - 1, []string{testYearly.Text, olderLimit.Text, notSubtracted.Text, newCanner.Text}},
	} {
		set, err := Gauge{ReadsHigh: c.error}.Setting(high)
		require.NoError(t, err)
		var got []string
		for _, caution := range set.Cautions {
			got = append(got, caution.Text)
		}
		require.Equal(t, c.want, got, "%v", c.error)
	}
}

func TestWeightedGauges(t *testing.T) {
	s := schedule(t, "fish", "raw", "pint", "weighted", 4350*units.Foot)
	set, err := Gauge{}.Setting(s)
	require.NoError(t, err)
	require.Equal(t, 15*units.PSI, set.AtLeast)
	require.Equal(t, set.AtLeast, set.Corrected)
	require.Equal(t, rhythm.Text, set.Cautions[0].Text)
	require.Equal(t, process.Weighted, set.Kind)
	var contradiction ContradictionError
	for _, off := range []units.Pressure{1, -1, units.PSI} {
		_, err = Gauge{ReadsHigh: off}.Setting(s)
		require.ErrorAs(t, err, &contradiction, "a weighted gauge has no dial that could be off")
	}
	_, err = Gauge{}.Setting(process.Schedule{})
	require.ErrorAs(t, err, &contradiction)
}
