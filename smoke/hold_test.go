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
	"example.org/lakelarder/units/series"
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

func limit(t testing.TB, id string) CoreLimit {
	t.Helper()
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
		h, err := CheckHold(limit(t, r.Text("limit")), maxGap, probes...)
		require.NoError(t, err)
		require.Equal(t, r.Text("verdict"), h.Verdict.String())
		printed.Within(t, r, "began_min", minutes(h.Began))
		printed.Within(t, r, "held_min", minutes(h.Held))
		printed.Within(t, r, "owed_min", minutes(h.Owed))
		printed.Within(t, r, "bridged_min", minutes(h.Bridged))
		printed.Within(t, r, "largest_gap_min", minutes(h.LargestGap.Length()))
		var kinds []string
		for _, f := range h.Findings {
			kinds = append(kinds, f.Kind.String())
			require.NoError(t, f.Citation.Check())
		}
		require.Equal(t, r.Text("findings"), strings.Join(kinds, " "))

		for i, j := 0, len(probes)-1; i < j; i, j = i+1, j-1 {
			probes[i], probes[j] = probes[j], probes[i]
		}
		turned, err := CheckHold(h.Limit, maxGap, probes...)
		require.NoError(t, err)
		require.Equal(t, h.LargestGap.Length(), turned.LargestGap.Length())
		turned.Findings, turned.LargestGap = h.Findings, h.LargestGap
		require.Empty(t, cmp.Diff(h, turned), "the order of the probes does not matter")
	})
}

func TestFindings(t *testing.T) {
	pnw := limit(t, "HOT-160-PNW")
	low, lim := units.Fahrenheit(155), units.Fahrenheit(160)
	at := func(from, to float64) series.Stretch {
		return series.Stretch{From: time.Duration(from * float64(time.Minute)), To: time.Duration(to * float64(time.Minute))}
	}
	for name, c := range map[string]struct {
		probes []core
		want   []Finding
	}{
		"dip that comes back": {[]core{fahrenheit(t, 10*time.Minute, 165, 165, 155, 155, 165)},
			[]Finding{{Dipped, 0, at(15, 35), lim, low, pnw.Citation}}},
		"dip to the end": {[]core{fahrenheit(t, 10*time.Minute, 165, 165, 165, 155)},
			[]Finding{{Dipped, 0, at(25, 30), lim, low, pnw.Citation}}},
		"both dip at once": {[]core{fahrenheit(t, 10*time.Minute, 165, 155), fahrenheit(t, 10*time.Minute, 165, 155)},
			[]Finding{{Dipped, 0, at(5, 10), lim, low, pnw.Citation}, {Dipped, 1, at(5, 10), lim, low, pnw.Citation}}},
		"one dips before the other": {[]core{fahrenheit(t, 10*time.Minute, 165, 155), fahrenheit(t, 10*time.Minute, 168, 158)},
			[]Finding{{Dipped, 0, at(5, 10), lim, low, pnw.Citation}}},
		"lowest of the dip": {[]core{fahrenheit(t, 10*time.Minute, 165, 165, 159, 155, 158, 162)},
			[]Finding{{Dipped, 0, at(10+50./6, 45), lim, low, pnw.Citation}}},
		"never": {[]core{fahrenheit(t, 10*time.Minute, 165, 165), fahrenheit(t, 10*time.Minute, 150, 155, 150)},
			[]Finding{{NeverReached, 1, at(10, 10), lim, low, pnw.Citation}}},
		"gap": {[]core{fahrenheit(t, 20*time.Minute, 165, 165, 165)},
			[]Finding{{Kind: Unobserved, When: at(0, 20), Citation: unobservedCitation}}},
		"gap of one of two": {[]core{fahrenheit(t, 20*time.Minute, 165, 165, 165), fahrenheit(t, 10*time.Minute, 165, 165, 165, 165, 165)},
			[]Finding{{Kind: Unobserved, When: at(0, 20), Citation: unobservedCitation}}},
		"the gap that matters": {[]core{record(t,
			reading{At: 0, Value: low}, reading{At: 40 * time.Minute, Value: low}, reading{At: 50 * time.Minute, Value: units.Fahrenheit(165)},
			reading{At: 70 * time.Minute, Value: units.Fahrenheit(165)}, reading{At: 80 * time.Minute, Value: units.Fahrenheit(165)})},
			[]Finding{{Kind: Stopped, When: at(80, 80), Citation: pnw.Citation}, {Kind: Unobserved, When: at(50, 70), Citation: unobservedCitation}}},
		"touch": {[]core{fahrenheit(t, 10*time.Minute, 155, 160, 155)},
			[]Finding{{Kind: Momentary, When: at(0, 20), Citation: pnw.Citation}}},
		"stopped": {[]core{fahrenheit(t, 10*time.Minute, 160, 160)},
			[]Finding{{Kind: Stopped, When: at(10, 10), Citation: pnw.Citation}}},
	} {
		h, err := CheckHold(pnw, 15*time.Minute, c.probes...)
		require.NoError(t, err)
		require.NotEqual(t, Met, h.Verdict)
		require.Empty(t, cmp.Diff(c.want, h.Findings), name)
	}
}

// A logger's 82.22 °C is 179.996 °F: short, and the sentence shows it.
func TestShortByAHairIsShown(t *testing.T) {
	hair := units.Celsius(82.22)
	h, err := CheckHold(DefaultCoreLimit(), 10*time.Minute, record(t, reading{Value: hair}, reading{At: 10 * time.Minute, Value: hair}))
	require.NoError(t, err)
	require.Equal(t, "probe 0 never reached at 0s: 179.996 °F (82.220 °C), expected at least 180.000 °F (82.222 °C)", h.Findings[0].String())
	a, err := Check(Claim{Method: HotSmoke, Core: units.State(units.Fahrenheit(179.999)), Hold: units.State(30 * time.Minute)})
	require.NoError(t, err)
	require.Equal(t, "core: 179.999 °F (82.222 °C) stated, 180.000 °F (82.222 °C) published, short by 0.001000 °F (0.000556 K)", a.Findings[0].String())
	// The rule's own Celsius print, 82.2: short by the hair that its rounding is, and told why.
	for core, known := range map[units.Temperature]bool{units.Celsius(82.2): true, units.Celsius(82.1): false} {
		a, err = Check(Claim{Method: HotSmoke, Core: units.State(core), Hold: units.State(30 * time.Minute)})
		require.NoError(t, err)
		require.Equal(t, Short, a.Findings[0].Kind)
		require.Equal(t, known, strings.Contains(a.Findings[0].Known.Text, "the same rule in tenths of a degree, 82.2 °C"))
	}
	require.Contains(t, CeilingError{Limit: units.Fahrenheit(180), Ceiling: hair, Air: units.Fahrenheit(225)}.Error(), "179.996 °F (82.220 °C); the core must reach 180.000 °F (82.222 °C)")
}

// On the edge: a gap of just maxGap is observed, a hold of just long enough across a longer one cannot be told.
func TestGapsOnTheEdge(t *testing.T) {
	pnw, hot := limit(t, "HOT-160-PNW"), units.Fahrenheit(165)
	at := func(minutes ...time.Duration) core {
		var readings []reading
		for _, m := range minutes {
			readings = append(readings, reading{At: m * time.Minute, Value: hot})
		}
		return record(t, readings...)
	}
	h, err := CheckHold(pnw, 15*time.Minute, at(0, 15, 30, 60))
	require.NoError(t, err)
	require.Equal(t, Met, h.Verdict)
	h, err = CheckHold(pnw, 15*time.Minute-1, at(0, 15, 30, 60))
	require.NoError(t, err)
	require.Equal(t, CannotTell, h.Verdict)
	h, err = CheckHold(pnw, 15*time.Minute, at(0, 20, 30))
	require.NoError(t, err)
	require.Equal(t, CannotTell, h.Verdict)
	require.Equal(t, 30*time.Minute, h.Bridged)
	h, err = CheckHold(pnw, 15*time.Minute, at(0, 20, 29))
	require.NoError(t, err)
	require.Equal(t, NotMet, h.Verdict)
}

func TestHoldCautions(t *testing.T) {
	hot := fahrenheit(t, 10*time.Minute, 185, 185, 185, 185)
	for id, want := range map[string][]string{
		"HOT-180-MSU":    {probeInCore.Text, notByHeatAlone.Text},
		"HOT-160-PNW":    {probeInCore.Text, notByHeatAlone.Text, stricterExists.Text},
		"HOT-150-PNW":    {probeInCore.Text, notByHeatAlone.Text, stricterExists.Text, "this limit was not seen in print"},
		"HOT-145-MI":     {probeInCore.Text, notByHeatAlone.Text, stricterExists.Text, commercial.Text},
		"HOT-145-STATES": {probeInCore.Text, notByHeatAlone.Text, stricterExists.Text, commercial.Text, "this limit was not seen in print"},
	} {
		h, err := CheckHold(limit(t, id), 10*time.Minute, hot)
		require.NoError(t, err)
		require.Equal(t, Met, h.Verdict, id)
		var got []string
		for _, c := range h.Cautions() {
			require.NoError(t, c.Citation.Check())
			got = append(got, c.Text)
		}
		require.Equal(t, want, got, id)
	}
}

func TestHoldsRefused(t *testing.T) {
	good := fahrenheit(t, 10*time.Minute, 185, 185, 185, 185)
	own := func(at units.Temperature, hold time.Duration) CoreLimit {
		return CoreLimit{ID: "own", AtLeast: at, Hold: hold}
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
		h, err := CheckHold(c.limit, c.maxGap, good)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, h, name)
	}
	for _, l := range []CoreLimit{own(units.Fahrenheit(145), 30*time.Minute), own(units.Celsius(100), 24*time.Hour)} {
		_, err := CheckHold(l, 15*time.Minute, good)
		require.NoError(t, err)
	}
	var fault ProbeError
	_, err := CheckHold(DefaultCoreLimit(), time.Minute)
	require.ErrorAs(t, err, &fault)
	require.ErrorIs(t, err, series.ErrEmpty)
	_, err = CheckHold(DefaultCoreLimit(), time.Minute, good, core{})
	require.Equal(t, ProbeError{Probe: 1, Err: series.ErrEmpty}, err)
	_, err = CheckHold(DefaultCoreLimit(), time.Minute, good, fahrenheit(t, time.Minute, 200, 225, 212.001))
	require.ErrorAs(t, err, &fault)
	require.ErrorIs(t, err, units.ErrRange)
	require.Equal(t, 1, fault.Probe)
	require.Equal(t, time.Minute, fault.At)
	_, err = CheckHold(DefaultCoreLimit(), time.Minute, fahrenheit(t, time.Minute, 200, 212, 200))
	require.NoError(t, err, "boiling itself is a core")
}

func TestWords(t *testing.T) {
	require.Equal(t, []string{"cannot tell", "not met", "met", "Verdict(3)"},
		[]string{Verdict(0).String(), NotMet.String(), Met.String(), Verdict(3).String()})
	var kinds []string
	for k := FindingKind(0); k <= Momentary+1; k++ {
		kinds = append(kinds, k.String())
	}
	require.Equal(t, []string{"nothing found", "never reached", "dipped", "unobserved", "stopped", "momentary", "FindingKind(6)"}, kinds)
	require.Equal(t, CannotTell, Hold{}.Verdict, "an empty answer is no pass")
}
