package smoke

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

type core = series.Series[units.Temperature]

type reading = series.Reading[units.Temperature]

func record(t testing.TB, readings ...reading) core {
	t.Helper()
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// fahrenheit is a record with a reading every so often from the start.
func fahrenheit(t testing.TB, every time.Duration, degrees ...float64) core {
	t.Helper()
	var readings []reading
	for i, f := range degrees {
		readings = append(readings, reading{At: time.Duration(i) * every, Value: units.Fahrenheit(f)})
	}
	return record(t, readings...)
}

func recorded(maxGap time.Duration, cores ...core) Record {
	return Record{Cores: cores, MaxGap: maxGap}
}

// limit is the limit that a table names.
func limit(t testing.TB, name string) CoreLimit {
	t.Helper()
	id, err := ParseCoreLimitID(name)
	require.NoError(t, err)
	l, err := FindCoreLimit(id)
	require.NoError(t, err)
	return l
}

// inventedCores are the invented records: case by case, probe by probe.
func inventedCores(t *testing.T, rows printed.Rows) map[string][]core {
	readings := map[string][][]reading{}
	for _, r := range rows {
		scale := map[string]units.Scale{"C": units.CelsiusScale, "F": units.FahrenheitScale}[r.Text("scale")]
		v, err := units.TemperatureOf(r.Decimal("core"), scale)
		require.NoError(t, err)
		probes := readings[r.Text("case")]
		if int(r.Int("probe")) == len(probes) {
			probes = append(probes, nil)
		}
		p := r.Int("probe")
		probes[p] = append(probes[p], reading{At: time.Duration(r.Int("minute")) * time.Minute, Value: v})
		readings[r.Text("case")] = probes
	}
	cores := map[string][]core{}
	for name, probes := range readings {
		for _, p := range probes {
			cores[name] = append(cores[name], record(t, p...))
		}
	}
	return cores
}

func minutes(d time.Duration) decimal.Decimal {
	return decimal.NewFromInt(int64(d)).DivRound(decimal.NewFromInt(int64(time.Minute)), 8)
}

func TestHoldsWorkedByHand(t *testing.T) {
	cores := inventedCores(t, printed.Table(t, "smoke/records/cores.csv"))
	rows := printed.Table(t, "smoke/hold-cases.csv")
	require.Len(t, rows, len(cores), "every record has its verdict")
	rows.Each(t, func(t *testing.T, r printed.Row) {
		probes := cores[r.Text("case")]
		require.NotEmpty(t, probes)
		maxGap := time.Duration(r.Int("max_gap_min")) * time.Minute
		h, err := AuditHold(limit(t, r.Text("limit")), recorded(maxGap, probes...))
		require.NoError(t, err)
		require.Equal(t, r.Text("verdict"), h.Verdict.String())
		printed.Within(t, r, "began_min", minutes(h.Began))
		printed.Within(t, r, "held_min", minutes(h.Held))
		printed.Within(t, r, "owed_min", minutes(h.Owed))
		printed.Within(t, r, "bridged_min", minutes(h.Bridged))
		printed.Within(t, r, "largest_gap_min", minutes(h.LargestGap.Length()))
		var kinds []string
		for _, f := range h.Findings {
			kinds = append(kinds, string(f.Rule))
			require.NoError(t, f.Citation.Check())
		}
		require.Equal(t, r.Text("findings"), strings.Join(kinds, " "))

		for i, j := 0, len(probes)-1; i < j; i, j = i+1, j-1 {
			probes[i], probes[j] = probes[j], probes[i]
		}
		turned, err := AuditHold(h.Limit, recorded(maxGap, probes...))
		require.NoError(t, err)
		require.Equal(t, h.LargestGap.Length(), turned.LargestGap.Length())
		turned.Report, turned.LargestGap = h.Report, h.LargestGap
		require.Empty(t, cmp.Diff(h, turned), "the order of the probes does not matter")
	})
}

// found is what a test wants of a finding.
type found struct {
	Rule           verdict.Rule
	What           string
	Kind           verdict.Kind
	When           series.Stretch
	Stated, Wanted units.Figure
	By             units.Amount
	Citation       cite.Citation
}

func TestFindings(t *testing.T) {
	pnw := limit(t, "HOT-160-PNW")
	low := units.Fahrenheit(155)
	at := func(from, to float64) series.Stretch {
		return series.Stretch{From: time.Duration(from * float64(time.Minute)), To: time.Duration(to * float64(time.Minute))}
	}
	cold := func(rule verdict.Rule, what string, kind verdict.Kind, when series.Stretch) found {
		return found{rule, what, kind, when, units.Exactly(low), units.AtLeast(pnw.AtLeast), units.AmountOf(5 * units.FahrenheitDegrees), pnw.Citation}
	}
	dip := func(what string, from, to float64) found { return cold(RuleDip, what, verdict.TooCold, at(from, to)) }
	short := func(held time.Duration, from, to float64) found {
		return found{RuleHold, "hold", verdict.Short, at(from, to), units.Exactly(held), units.AtLeast(pnw.Hold), units.AmountOf(pnw.Hold - held), pnw.Citation}
	}
	gap := func(what string, from, to float64) found {
		return found{RuleGap, what, verdict.Unobserved, at(from, to), units.Exactly(at(from, to).Length()), units.AtMost(15 * time.Minute), units.Amount{}, unobservedCitation}
	}
	for name, c := range map[string]struct {
		probes []core
		want   []found
	}{
		"dip that comes back": {[]core{fahrenheit(t, 10*time.Minute, 165, 165, 155, 155, 165)}, []found{dip("core", 15, 35)}},
		"dip to the end":      {[]core{fahrenheit(t, 10*time.Minute, 165, 165, 165, 155)}, []found{dip("core", 25, 30)}},
		"both dip at once": {[]core{fahrenheit(t, 10*time.Minute, 165, 155), fahrenheit(t, 10*time.Minute, 165, 155)},
			[]found{dip("core, probe 1", 5, 10), dip("core, probe 2", 5, 10)}},
		"one dips before the other": {[]core{fahrenheit(t, 10*time.Minute, 165, 155), fahrenheit(t, 10*time.Minute, 168, 158)},
			[]found{dip("core, probe 1", 5, 10)}},
		"lowest of the dip": {[]core{fahrenheit(t, 10*time.Minute, 165, 165, 159, 155, 158, 162)}, []found{dip("core", 10+50./6, 45)}},
		"never": {[]core{fahrenheit(t, 10*time.Minute, 165, 165), fahrenheit(t, 10*time.Minute, 150, 155, 150)},
			[]found{cold(RuleReached, "core, probe 2", verdict.Short, at(10, 10))}},
		"gap": {[]core{fahrenheit(t, 20*time.Minute, 165, 165, 165)}, []found{gap("readings", 0, 20)}},
		"gap of one of two": {[]core{fahrenheit(t, 20*time.Minute, 165, 165, 165), fahrenheit(t, 10*time.Minute, 165, 165, 165, 165, 165)},
			[]found{gap("readings, probe 1", 0, 20)}},
		"the gap that matters": {[]core{record(t,
			reading{At: 0, Value: low}, reading{At: 40 * time.Minute, Value: low}, reading{At: 50 * time.Minute, Value: units.Fahrenheit(165)},
			reading{At: 70 * time.Minute, Value: units.Fahrenheit(165)}, reading{At: 80 * time.Minute, Value: units.Fahrenheit(165)})},
			[]found{gap("readings", 50, 70), short(10*time.Minute, 80, 80)}},
		"touch":   {[]core{fahrenheit(t, 10*time.Minute, 155, 160, 155)}, []found{short(0, 0, 20)}},
		"stopped": {[]core{fahrenheit(t, 10*time.Minute, 160, 160)}, []found{short(10*time.Minute, 10, 10)}},
	} {
		h, err := AuditHold(pnw, recorded(15*time.Minute, c.probes...))
		require.NoError(t, err)
		require.False(t, h.Verdict.Passes())
		var got []found
		for _, f := range h.Findings {
			require.Equal(t, h.Verdict, f.Verdict)
			got = append(got, found{f.Rule, f.What, f.Kind, f.When.Value, f.Stated, f.Wanted, f.By, f.Citation})
		}
		require.Empty(t, cmp.Diff(c.want, got), name)
	}
}

// A logger's 82.22 °C is 179.996 °F: short, and the sentence shows it.
func TestShortByAHairIsShown(t *testing.T) {
	hair := units.Celsius(82.22)
	h, err := AuditHold(DefaultCoreLimit(), recorded(10*time.Minute, record(t, reading{Value: hair}, reading{At: 10 * time.Minute, Value: hair})))
	require.NoError(t, err)
	require.Equal(t, "core: 179.9 °F (82.2 °C) recorded, at least 180 °F (82.3 °C) published, short by 0.1 F° (0.1 C°), at minute 0", h.Findings[0].String())
	a, err := Check(Claim{Smoking: HotSmoked, Core: units.State(units.Fahrenheit(179.999)), Hold: units.State(30 * time.Minute)})
	require.NoError(t, err)
	require.Equal(t, "core: 179.9 °F (82.2 °C) stated, at least 180 °F (82.2 °C) published, short by 0.1 F° (0.1 C°)", a.Findings[0].String())
	require.Contains(t, CeilingError{Limit: units.Fahrenheit(180), Ceiling: hair, Air: units.Fahrenheit(225)}.Error(), "179.9 °F (82.2 °C); the core must reach at least 180 °F (82.3 °C)")
}

// On the edge: a gap of just maxGap is observed, a hold of just long enough across a longer one cannot be told.
func TestGapsOnTheEdge(t *testing.T) {
	pnw, hot := limit(t, "HOT-160-PNW"), units.Fahrenheit(165)
	at := func(minutes ...time.Duration) core {
		var readings []reading
		for i, m := range minutes {
			readings = append(readings, reading{At: m * time.Minute, Value: hot.Add(units.TemperatureChange(i%2) * units.Kelvins)})
		}
		return record(t, readings...)
	}
	h, err := AuditHold(pnw, recorded(15*time.Minute, at(0, 15, 30, 60)))
	require.NoError(t, err)
	require.Equal(t, verdict.Met, h.Verdict)
	h, err = AuditHold(pnw, recorded(15*time.Minute-1, at(0, 15, 30, 60)))
	require.NoError(t, err)
	require.Equal(t, verdict.CannotTell, h.Verdict)
	h, err = AuditHold(pnw, recorded(15*time.Minute, at(0, 20, 30)))
	require.NoError(t, err)
	require.Equal(t, verdict.CannotTell, h.Verdict)
	require.Equal(t, 30*time.Minute, h.Bridged)
	h, err = AuditHold(pnw, recorded(15*time.Minute, at(0, 20, 29)))
	require.NoError(t, err)
	require.Equal(t, verdict.NotMet, h.Verdict)
}

func TestHoldCautions(t *testing.T) {
	hot := fahrenheit(t, 10*time.Minute, 185, 185, 186, 185)
	const core, cold, stricter, trade, unseen = "smoke.probe-in-core", "smoke.not-by-heat-alone", "smoke.stricter-exists", "smoke.commercial", "smoke.limit-unseen"
	const three, check, warm = "smoke.three-fish", "smoke.check-thermometer", "smoke.begins-warm"
	for id, want := range map[string][]cite.CautionID{
		"HOT-180-MSU":    {core, cold, three, check, warm},
		"HOT-160-PNW":    {core, cold, stricter, three, check, warm},
		"HOT-145-MI":     {core, cold, stricter, trade, three, check, warm},
		"HOT-145-STATES": {core, cold, unseen, stricter, trade, three, check, warm},
	} {
		h, err := AuditHold(limit(t, id), recorded(10*time.Minute, hot))
		require.NoError(t, err)
		require.Equal(t, verdict.Met, h.Verdict, id)
		var got []cite.CautionID
		for _, c := range h.Cautions {
			require.NoError(t, c.Citation.Check())
			got = append(got, c.ID)
		}
		require.Equal(t, want, got, id)
	}
}

func TestHoldsRefused(t *testing.T) {
	good := fahrenheit(t, 10*time.Minute, 185, 185, 185, 185)
	own := func(at units.Temperature, hold time.Duration) CoreLimit {
		return CoreLimit{AtLeast: at, Hold: hold}
	}
	for name, c := range map[string]struct {
		limit  CoreLimit
		maxGap time.Duration
	}{
		"no limit":                    {CoreLimit{}, time.Minute},
		"below every rule":            {own(units.Fahrenheit(144.999), 30*time.Minute), time.Minute},
		"62.7 C":                      {own(units.Celsius(62.7), 30*time.Minute), time.Minute},
		"145 meant as Celsius":        {own(units.Celsius(145), 30*time.Minute), time.Minute},
		"not a number":                {own(units.Celsius(math.NaN()), 30*time.Minute), time.Minute},
		"no hold":                     {own(units.Fahrenheit(160), 0), time.Minute},
		"shorter than every rule":     {own(units.Fahrenheit(160), 30*time.Minute-1), time.Minute},
		"longer than a day":           {own(units.Fahrenheit(160), 24*time.Hour+1), time.Minute},
		"no gap at all":               {DefaultCoreLimit(), 0},
		"negative gap":                {DefaultCoreLimit(), -time.Minute},
		"a gap of most of the hold":   {DefaultCoreLimit(), 15*time.Minute + 1},
		"a gap that forgives it all":  {DefaultCoreLimit(), anyGap},
		"nanoseconds meant as minute": {own(units.Fahrenheit(160), 30), 5},
	} {
		h, err := AuditHold(c.limit, recorded(c.maxGap, good))
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, h, name)
	}
	for _, l := range []CoreLimit{own(units.Fahrenheit(145), 30*time.Minute), own(units.Celsius(100), 24*time.Hour)} {
		_, err := AuditHold(l, recorded(15*time.Minute, good))
		require.NoError(t, err)
	}
	var fault ProbeError
	_, err := AuditHold(DefaultCoreLimit(), recorded(time.Minute))
	require.ErrorAs(t, err, &fault)
	require.ErrorIs(t, err, series.ErrEmpty)
	_, err = AuditHold(DefaultCoreLimit(), recorded(time.Minute, good, core{}))
	require.Equal(t, ProbeError{Probe: 1, Err: series.ErrEmpty}, err)
	_, err = AuditHold(DefaultCoreLimit(), recorded(time.Minute, good, fahrenheit(t, time.Minute, 200, 225, 212.001)))
	require.ErrorAs(t, err, &fault)
	require.ErrorIs(t, err, units.ErrRange)
	require.Equal(t, 1, fault.Probe)
	require.Equal(t, time.Minute, fault.At)
	_, err = AuditHold(DefaultCoreLimit(), recorded(time.Minute, fahrenheit(t, time.Minute, 200, 212, 200)))
	require.NoError(t, err, "boiling itself is a core")
}

// Degrees under the wrong heading, or halved, are not reached, and the answer says what to look at.
func TestWrongHeadingsAreNamed(t *testing.T) {
	for name, c := range map[string]struct {
		highest units.Temperature
		named   bool
	}{
		"Celsius as Fahrenheit": {units.Fahrenheit(84), true}, "halved Celsius": {units.Celsius(42), true}, "halved Fahrenheit": {units.Fahrenheit(92), true},
		"cold smoke": {units.Celsius(25), false}, "nearly": {units.Fahrenheit(175), false},
	} {
		h, err := AuditHold(DefaultCoreLimit(), recorded(10*time.Minute, record(t, reading{Value: units.Celsius(4)}, reading{At: 10 * time.Minute, Value: c.highest})))
		require.NoError(t, err)
		require.Equal(t, verdict.NotMet, h.Verdict, name)
		require.Equal(t, c.named, h.Findings[0].Known == wrongHeading, name)
		require.NotContains(t, h.Cautions, beginsWarm, name)
	}
}
