package smoke

import (
	"fmt"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

func coolingRule(t testing.TB, name string) CoolingRule {
	t.Helper()
	id, err := ParseCoolingRuleID(name)
	require.NoError(t, err)
	r, err := FindCoolingRule(id)
	require.NoError(t, err)
	return r
}

func TestInventedCoolings(t *testing.T) {
	records := inventedCores(t, printed.Table(t, "smoke/records/cooling.csv"))
	rows := printed.Table(t, "smoke/cooling-cases.csv")
	require.Len(t, rows, len(records), "every record has its verdict")
	rows.Each(t, func(t *testing.T, r printed.Row) {
		probes := records[r.Text("case")]
		c, err := AuditCooling(coolingRule(t, r.Text("rule")), recorded(time.Duration(r.Int("max_gap_min"))*time.Minute, probes...))
		require.NoError(t, err)
		require.Equal(t, r.Text("verdict"), c.Verdict.String())
		require.Equal(t, r.Has("verdict_2"), len(c.Steps) == 2)
		for i, step := range c.Steps {
			n := fmt.Sprint(i + 1)
			require.Equal(t, r.Text("verdict_"+n), step.Verdict.String(), "step %s", n)
			printed.Within(t, r, "took_"+n+"_min", minutes(step.Took))
			require.Equal(t, int(r.Int("probe_"+n)), step.Probe)
			require.Equal(t, c.Rule.Steps[i], step.Step)
		}
		for _, caution := range c.Cautions {
			require.NoError(t, caution.Citation.Check(), caution.Text)
		}
	})
}

// From 60 to 18 °C in an hour the core is at 21 °C after 39/42 h, 3,342,857,142,857.14 ns: the nanosecond that makes it longer counts.
func TestCoolingTakesTheLongerNanosecond(t *testing.T) {
	c, err := AuditCooling(DefaultCoolingRule(), recorded(time.Hour, record(t, reading{Value: units.Celsius(60)}, reading{At: time.Hour, Value: units.Celsius(18)})))
	require.NoError(t, err)
	require.Equal(t, time.Duration(3_342_857_142_858), c.Steps[0].Took)
}

func TestCoolingsRefused(t *testing.T) {
	good, rule := fahrenheit(t, time.Minute, 180, 170), DefaultCoolingRule()
	for name, c := range map[string]struct {
		rule   CoolingRule
		maxGap time.Duration
	}{
		"no rule":                  {CoolingRule{}, time.Minute},
		"rule without time":        {CoolingRule{Steps: [2]CoolingStep{{To: units.Celsius(4)}}}, time.Minute},
		"second step without time": {CoolingRule{Steps: [2]CoolingStep{rule.Steps[0], {To: units.Celsius(4)}}}, time.Minute},
		"second step without end":  {CoolingRule{Steps: [2]CoolingStep{rule.Steps[0], {Within: time.Hour}}}, time.Minute},
		"upside down":              {CoolingRule{Steps: [2]CoolingStep{{From: units.Celsius(4), To: units.Celsius(21), Within: time.Hour}}}, time.Minute},
		"ends warm":                {CoolingRule{Steps: [2]CoolingStep{{From: units.Celsius(60), To: units.Fahrenheit(70.001), Within: time.Hour}}}, time.Minute},
		"70 meant as Celsius":      {CoolingRule{Steps: [2]CoolingStep{{To: units.Celsius(70), Within: time.Hour}}}, time.Minute},
		"takes all day":            {CoolingRule{Steps: [2]CoolingStep{{From: units.Celsius(60), To: units.Celsius(21), Within: 12*time.Hour + 1}}}, time.Minute},
		"no gap":                   {rule, 0},
		"negative gap":             {rule, -1},
		"gap of a night":           {rule, time.Hour + 1},
	} {
		cooling, err := AuditCooling(c.rule, recorded(c.maxGap, good))
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, cooling, name)
	}
	var fault ProbeError
	for name, probes := range map[string][]core{
		"no probe": {}, "empty record": {good, {}}, "air": {fahrenheit(t, time.Minute, 225, 170)}, "loose": {fahrenheit(t, time.Minute, 180, 150, -196.6)},
	} {
		_, err := AuditCooling(rule, recorded(time.Minute, probes...))
		require.ErrorAs(t, err, &fault, name)
	}
}

// One more probe never helps, the order of the probes does not matter, and what is too slow stays so whatever comes after, but for new heat.
func FuzzAuditCooling(f *testing.F) {
	f.Add([]byte{255, 240, 200, 120, 100, 60, 30, 20, 10, 5}, []byte{250, 200, 150, 60, 20, 20, 10, 3}, uint8(3))
	f.Add([]byte{200, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180, 180}, []byte{180, 20}, uint8(90))
	f.Add([]byte{100, 90, 110, 40}, []byte{10}, uint8(0))
	f.Fuzz(func(t *testing.T, one, two []byte, next uint8) {
		if len(one) == 0 || len(two) == 0 || len(one)+len(two) > 100 {
			return
		}
		a, b := cooled(t, one), cooled(t, two)
		highest, _ := a.Max()
		more := cooled(t, append(append([]byte{}, one...), next))
		last, _ := more.Last()
		for _, rule := range CoolingRules() {
			check := func(probes ...core) Cooling {
				c, err := AuditCooling(rule, recorded(20*time.Minute, probes...))
				require.NoError(t, err)
				return c
			}
			alone, both, longer := check(a), check(a, b), check(more)
			if last.Value.Below(rule.again()) && !last.Value.Above(highest.Value) {
				require.True(t, alone.Verdict != verdict.NotMet || longer.Verdict == verdict.NotMet, "nothing that comes after undoes what was too slow")
			}
			require.Equal(t, both.Verdict, check(b, a).Verdict)
			require.Equal(t, both.Verdict, verdict.Worst(alone.Verdict, both.Verdict), "one more probe never helps")
			for i, step := range alone.Steps {
				require.Equal(t, step.Verdict == verdict.NotMet, step.Took > step.Step.Within)
				require.Equal(t, both.Verdict, verdict.Worst(both.Verdict, both.Steps[i].Verdict))
			}
		}
	})
}

// cooled makes a record from bytes: a reading from -5 to 97 °C every ten minutes.
func cooled(t testing.TB, bytes []byte) core {
	t.Helper()
	var readings []reading
	for i, b := range bytes {
		readings = append(readings, reading{At: time.Duration(i) * 10 * time.Minute, Value: units.Celsius(-5 + 0.4*float64(b))})
	}
	return record(t, readings...)
}
