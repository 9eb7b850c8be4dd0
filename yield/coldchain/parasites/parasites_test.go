package parasites_test

import (
	"math/rand"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/parasites"
)

// Source: Food Code 3-402.11 and 3-401.11, Regulation (EC) 853/2004, Codex CXC 52, Michigan R 285.569.7 and pages on
// tapeworm, as each row says.
func TestParasiteRules(t *testing.T) {
	rules := parasites.Rules()
	rows := printed.Table(t, "coldchain/parasite-rules.csv")
	require.Len(t, rules, len(rows))
	lengths := map[string]time.Duration{"h": time.Hour, "min": time.Minute, "s": time.Second}
	for i, r := range rows {
		rule := rules[i]
		col, scale := "temp_c", units.CelsiusScale
		if r.Text("scale") == "f" {
			col, scale = "temp_f", units.FahrenheitScale
		}
		at, err := units.TemperatureOf(r.Decimal(col), scale)
		require.NoError(t, err)
		want := parasites.Rule{
			ID:   rule.ID,
			Name: r.Text("name"), Heat: r.Text("kind") == "heat", Temperature: at, Hold: time.Duration(r.Int("time_value")) * lengths[r.Text("time_unit")],
			Clock: rule.Clock, Standing: rule.Standing, Fish: r.Text("applies_to"), Note: rule.Note, Citation: rule.Citation,
		}
		if r.Has("solid_c") {
			want.Solid, err = units.TemperatureOf(r.Decimal("solid_c"), units.CelsiusScale)
			require.NoError(t, err)
		}
		require.Empty(t, cmp.Diff(want, rule), r.String())
		require.Equal(t, r.Text("clock"), rule.Clock.String(), r.String())
		require.Equal(t, r.Text("standing"), rule.Standing.String(), r.String())
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(rule.Citation), r.String())
		require.NoError(t, rule.Citation.Check())
		printed.Within(t, r, "temp_c", rule.Temperature.In(units.CelsiusScale, 9))
		printed.Within(t, r, "temp_f", rule.Temperature.In(units.FahrenheitScale, 9))
	}
}

func TestParasiteCarriers(t *testing.T) {
	all := parasites.Carriers()
	rows := printed.Table(t, "coldchain/parasite-carriers.csv")
	require.Len(t, all, len(rows))
	for i, r := range rows {
		c := all[i]
		require.Equal(t, []string{r.Text("fish"), r.Text("parasite"), r.Text("waters"), r.Text("note")}, []string{c.Fish, c.Parasite, c.Waters, c.Note}, r.String())
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(c.Citation), r.String())
		require.NoError(t, c.Citation.Check())
	}
	require.Equal(t, append(all[1:2:2], all[7:]...), parasites.FindCarriers(" Walleye "))
	require.Equal(t, all[7:], parasites.FindCarriers("a fish nobody named"), "not named is not free of parasites")
}

// byRule finds the finding of a rule.
func byRule(t *testing.T, r parasites.Report, name string) parasites.Line {
	t.Helper()
	for _, f := range r.Lines {
		if f.Rule.Name == name {
			return f
		}
	}
	t.Fatalf("no finding of %q", name)
	return parasites.Line{}
}

// The rows are the words of the rules at and beside their limits, one nanosecond or a millionth of a degree away.
func TestParasitePlans(t *testing.T) {
	const week, justUnder = 168 * time.Hour, 168*time.Hour - 1
	c := units.Celsius
	through := units.State(10 * time.Hour)
	for name, tt := range map[string]struct {
		plan  parasites.Plan
		rule  string
		want  verdict.Verdict
		whole verdict.Verdict
	}{
		"a week at -20":                      {parasites.Plan{Freezer: c(-20), Stored: week}, "Food Code, 7 days", verdict.Met, verdict.Met},
		"a week at -4 F":                     {parasites.Plan{Freezer: units.Fahrenheit(-4), Stored: week}, "Food Code, 7 days", verdict.Met, verdict.Met},
		"a nanosecond short":                 {parasites.Plan{Freezer: c(-20), Stored: justUnder}, "Food Code, 7 days", verdict.NotMet, verdict.NotMet},
		"a millionth too warm":               {parasites.Plan{Freezer: c(-19.999999), Stored: week}, "Food Code, 7 days", verdict.NotMet, verdict.NotMet},
		"home freezer, a year":               {parasites.Plan{Freezer: units.Fahrenheit(0), Stored: 365 * 24 * time.Hour}, "Food Code, 7 days", verdict.NotMet, verdict.NotMet},
		"cold, then kept at 0 F":             {parasites.Plan{Freezer: c(-40), Store: units.Fahrenheit(0), Stored: week}, "Food Code, 7 days", verdict.NotMet, verdict.NotMet},
		"warm freezer, then cold":            {parasites.Plan{Freezer: c(-18), Store: c(-40), Stored: week}, "Food Code, 7 days", verdict.NotMet, verdict.NotMet},
		"a day at -20 is for the EU":         {parasites.Plan{Freezer: c(-20), Stored: 34 * time.Hour, Through: through, Core: c(-20)}, "EU, 24 hours", verdict.Met, verdict.NotMet},
		"a day and no probe":                 {parasites.Plan{Freezer: c(-20), Stored: 34 * time.Hour}, "EU, 24 hours", verdict.CannotTell, verdict.NotMet},
		"the day counted from loading":       {parasites.Plan{Freezer: c(-20), Stored: 24 * time.Hour, Through: through}, "EU, 24 hours", verdict.NotMet, verdict.NotMet},
		"15 h from solid at -35":             {parasites.Plan{Freezer: c(-35), Stored: 25 * time.Hour, Through: through, Core: c(-35)}, "Food Code, 15 hours", verdict.Met, verdict.Met},
		"15 h from loading at -35":           {parasites.Plan{Freezer: c(-35), Stored: 15 * time.Hour, Through: through}, "Food Code, 15 hours", verdict.NotMet, verdict.NotMet},
		"25 h at -35, solid when?":           {parasites.Plan{Freezer: c(-35), Stored: 25 * time.Hour}, "Food Code, 15 hours", verdict.CannotTell, verdict.CannotTell},
		"solid at -35, a day at -20":         {parasites.Plan{Freezer: c(-35), Store: c(-20), Stored: 34 * time.Hour, Through: through, Core: c(-20)}, "Food Code, 24 hours", verdict.Met, verdict.Met},
		"solid at -34, a day at -20":         {parasites.Plan{Freezer: c(-34), Store: c(-20), Stored: 34 * time.Hour, Through: through}, "Food Code, 24 hours", verdict.NotMet, verdict.NotMet},
		"solid at -35, a day at -19":         {parasites.Plan{Freezer: c(-35), Store: c(-19), Stored: 34 * time.Hour, Through: through}, "Food Code, 24 hours", verdict.NotMet, verdict.NotMet},
		"a day since the core was at -20":    {parasites.Plan{Freezer: c(-20), Stored: 34 * time.Hour, Through: through, Core: c(-20)}, "EU, 24 hours", verdict.Met, verdict.NotMet},
		"since it was at -19":                {parasites.Plan{Freezer: c(-20), Stored: 34 * time.Hour, Through: through, Core: c(-19)}, "EU, 24 hours", verdict.CannotTell, verdict.NotMet},
		"through, and nobody says at what":   {parasites.Plan{Freezer: c(-35), Stored: 25 * time.Hour, Through: through}, "Food Code, 15 hours", verdict.CannotTell, verdict.CannotTell},
		"thick, through at what?":            {parasites.Plan{Freezer: c(-20), Stored: week + 10*time.Hour, Through: through, Thickness: units.State(7 * units.Inch)}, "Food Code, 7 days", verdict.CannotTell, verdict.CannotTell},
		"-35 in all parts, core seen at -20": {parasites.Plan{Freezer: c(-40), Stored: 25 * time.Hour, Through: through, Core: c(-20)}, "EU, 15 hours", verdict.CannotTell, verdict.CannotTell},
		"six inches":                         {parasites.Plan{Freezer: c(-20), Stored: week, Thickness: units.State(6 * units.Inch)}, "Food Code, 7 days", verdict.Met, verdict.Met},
		"more than six inches":               {parasites.Plan{Freezer: c(-20), Stored: week, Thickness: units.State(6*units.Inch + 1)}, "Food Code, 7 days", verdict.CannotTell, verdict.CannotTell},
		"more than six, week from through":   {parasites.Plan{Freezer: c(-20), Stored: week + 10*time.Hour, Through: through, Core: c(-20), Thickness: units.State(7 * units.Inch)}, "Food Code, 7 days", verdict.Met, verdict.Met},
		"more than six, week from loading":   {parasites.Plan{Freezer: c(-20), Stored: week, Through: through, Thickness: units.State(7 * units.Inch)}, "Food Code, 7 days", verdict.NotMet, verdict.NotMet},
		"tolerance of an inspector is ours":  {parasites.Plan{Freezer: units.Fahrenheit(-2), Stored: week}, "Food Code, 7 days", verdict.NotMet, verdict.NotMet},
	} {
		report, err := parasites.Check(tt.plan)
		require.NoError(t, err, name)
		f := byRule(t, report, tt.rule)
		require.Equal(t, tt.want, f.Verdict, name)
		require.Equal(t, tt.whole, report.Verdict, name)
		for _, f := range report.Lines {
			require.Equal(t, f.Verdict == verdict.Met, f.Would(units.Both) == "", name)
			require.NotEqual(t, parasites.Refused, f.Rule.Standing)
		}
		require.NotEmpty(t, report.Next)
		require.NotEmpty(t, report.Cautions)
	}
}

// A home freezer at 0 °F is told by how much it is too warm, and what would do.
func TestHomeFreezerIsToldWhatWouldDo(t *testing.T) {
	report, err := parasites.Check(parasites.Plan{Freezer: units.Fahrenheit(0), Stored: 48 * time.Hour})
	require.NoError(t, err)
	f := byRule(t, report, "Food Code, 7 days")
	require.Equal(t, 4*units.FahrenheitDegrees, f.Beyond)
	require.Zero(t, f.Held, "time at 0 °F does not count")
	require.Equal(t, 168*time.Hour, f.Short)
	require.Equal(t, "4 F° (2.3 C°) too warm: keep it at -4 °F (-20 °C) or below for 7 days without a break, from loading the freezer", f.Would(units.Both))
	require.Len(t, report.Next, 3)
}

// Too warm by a hair is not told as too warm by nothing.
func TestHairTooWarm(t *testing.T) {
	report, err := parasites.Check(parasites.Plan{Freezer: units.Celsius(-20).Add(1), Stored: 168 * time.Hour})
	require.NoError(t, err)
	require.Contains(t, byRule(t, report, "Food Code, 7 days").Would(units.Both), "0.1 F° (0.1 C°) too warm: ")
}

func TestParasitePlanRefuses(t *testing.T) {
	good := parasites.Plan{Freezer: units.Celsius(-20), Stored: 168 * time.Hour}
	for name, spoil := range map[string]func(*parasites.Plan){
		"no freezer":        func(p *parasites.Plan) { p.Freezer = units.Temperature{} },
		"hot freezer":       func(p *parasites.Plan) { p.Freezer = units.Celsius(40.1) },
		"colder than ice":   func(p *parasites.Plan) { p.Freezer = units.Celsius(-90.1) },
		"hot store":         func(p *parasites.Plan) { p.Store = units.Celsius(41) },
		"cold store":        func(p *parasites.Plan) { p.Store = units.Celsius(-200) },
		"before loading":    func(p *parasites.Plan) { p.Stored = -1 },
		"centuries":         func(p *parasites.Plan) { p.Stored = 1 << 62 },
		"through too late":  func(p *parasites.Plan) { p.Through = units.State(169 * time.Hour) },
		"through before":    func(p *parasites.Plan) { p.Through = units.State(-time.Hour) },
		"a warm core":       func(p *parasites.Plan) { p.Core = units.Celsius(41) },
		"no thickness":      func(p *parasites.Plan) { p.Thickness = units.State(units.Length(0)) },
		"thick as a whale":  func(p *parasites.Plan) { p.Thickness = units.State(3 * units.Metre) },
		"negative thicknes": func(p *parasites.Plan) { p.Thickness = units.State(-units.Inch) },
	} {
		p := good
		spoil(&p)
		_, err := parasites.Check(p)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

// line makes a record of pairs of hours and degrees Celsius.
func coreOf(t testing.TB, pairs ...float64) series.Series[units.Temperature] {
	t.Helper()
	var readings []series.Reading[units.Temperature]
	for i := 0; i+1 < len(pairs); i += 2 {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(pairs[i] * float64(time.Hour)), Value: units.Celsius(pairs[i+1])})
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

func TestParasiteRecords(t *testing.T) {
	for name, tt := range map[string]struct {
		core   []float64
		gap    time.Duration
		rule   string
		want   verdict.Verdict
		held   float64 // hours
		beyond units.TemperatureChange
	}{
		"a week":                        {[]float64{0, -20, 168, -20}, 200 * time.Hour, "Food Code, 7 days", verdict.Met, 168, 0},
		"cooling takes 10 h of it":      {[]float64{0, 20, 20, -60, 178, -20}, 200 * time.Hour, "Food Code, 7 days", verdict.Met, 168, 0},
		"a minute short":                {[]float64{0, -20, 167.9, -20}, 200 * time.Hour, "Food Code, 7 days", verdict.NotMet, 167.9, 0},
		"a warm hour restarts":          {[]float64{0, -21, 100, -21, 101, -19, 102, -21, 260, -21}, 200 * time.Hour, "Food Code, 7 days", verdict.NotMet, 158.5, 0},
		"touching does not":             {[]float64{0, -21, 100, -20, 168, -21}, 200 * time.Hour, "Food Code, 7 days", verdict.Met, 168, 0},
		"home freezer":                  {[]float64{0, -18, 500, -18}, 600 * time.Hour, "Food Code, 7 days", verdict.NotMet, 0, 2 * units.Kelvins},
		"a gap hides it":                {[]float64{0, -25, 1, -25, 169, -25, 170, -25}, time.Hour, "Food Code, 7 days", verdict.CannotTell, 1, 0},
		"a gap too short to hide it":    {[]float64{0, -25, 1, -25, 100, -25, 101, -25}, time.Hour, "Food Code, 7 days", verdict.NotMet, 1, 0},
		"a gap beside enough":           {[]float64{0, -25, 168, -25, 400, 4}, 168 * time.Hour, "Food Code, 7 days", verdict.Met, 168, 0},
		"15 h from -35":                 {[]float64{0, -15, 4, -35, 19, -35}, 20 * time.Hour, "Food Code, 15 hours", verdict.Met, 15, 0},
		"15 h, the first above -35":     {[]float64{0, -34, 1, -35, 15, -35}, 20 * time.Hour, "Food Code, 15 hours", verdict.NotMet, 14, 0},
		"solid at -35, a day at -20":    {[]float64{0, -15, 4, -35, 5, -20, 28, -20}, 30 * time.Hour, "Food Code, 24 hours", verdict.Met, 24, 0},
		"solid at -34, weeks at -20":    {[]float64{0, -15, 4, -34, 5, -20, 600, -20}, 600 * time.Hour, "Food Code, 24 hours", verdict.NotMet, 0, units.Kelvins},
		"warm between, -35 never again": {[]float64{0, -36, 1, -20, 20, -20, 21, -10, 22, -20, 90, -20}, 90 * time.Hour, "Food Code, 24 hours", verdict.NotMet, 20, 0},
		"a day at -20 before -35":       {[]float64{0, -20, 24, -20, 25, -35, 26, -20}, 90 * time.Hour, "Food Code, 24 hours", verdict.NotMet, 1, 0},
		"cooked":                        {[]float64{0, 4, 1, 70, 1.01, 70}, time.Hour, "Food Code, cooking", verdict.Met, 0.01 + 7./66, 0},
		"62.9 is not 63":                {[]float64{0, 62.9, 1, 62.9}, time.Hour, "Food Code, cooking", verdict.NotMet, 0, units.Kelvins / 10},
		"smoked half an hour":           {[]float64{0, 4, 4, 65, 4.5, 65, 9, 4}, 9 * time.Hour, "hot smoking, 30 minutes", verdict.Met, 0.5, 0},
		"smoked in two parts":           {[]float64{0, 65, .4, 65, .5, 60, .6, 65, .9, 65}, 9 * time.Hour, "hot smoking, 30 minutes", verdict.NotMet, .4, 0},
	} {
		report, err := parasites.Audit(coreOf(t, tt.core...), tt.gap)
		require.NoError(t, err, name)
		f := byRule(t, report, tt.rule)
		require.Equal(t, tt.want, f.Verdict, name)
		require.Equal(t, tt.beyond, f.Beyond, name)
		if name == "smoked half an hour" || name == "smoked in two parts" { // the ramp above 145 °F counts as well
			require.Greater(t, f.Held.Hours(), tt.held, name)
		} else {
			require.InDelta(t, tt.held, f.Held.Hours(), 1e-9, name)
		}
		require.Equal(t, f.Held, f.Stretch.Length())
	}
}

func TestParasiteHoldRefuses(t *testing.T) {
	one, err := series.New([]series.Reading[units.Temperature]{{At: 0, Value: units.Celsius(-20)}})
	require.NoError(t, err)
	_, err = parasites.Audit(series.Series[units.Temperature]{}, time.Hour)
	require.ErrorIs(t, err, series.ErrEmpty)
	_, err = parasites.Audit(one, time.Hour)
	require.ErrorIs(t, err, units.ErrRange)
	for _, gap := range []time.Duration{0, -1} {
		_, err = parasites.Audit(coreOf(t, 0, -20, 168, -20), gap)
		require.ErrorIs(t, err, units.ErrRange)
	}
	for _, loose := range []float64{-127, -80.001, 100.001} { // a probe that came loose kills no parasite
		_, err = parasites.Audit(coreOf(t, 0, -20, 168, loose), 200*time.Hour)
		require.ErrorIs(t, err, units.ErrRange)
	}
}

// A record made of whole quarter hours, from a seed.
func coreFrom(t testing.TB, seed int64, n int) series.Series[units.Temperature] {
	rng := rand.New(rand.NewSource(seed))
	var readings []series.Reading[units.Temperature]
	at, c := time.Duration(0), -15.0
	for i := 0; i < n; i++ {
		readings = append(readings, series.Reading[units.Temperature]{At: at, Value: units.Celsius(c)})
		at += time.Duration(1+rng.Intn(40)) * 15 * time.Minute
		if rng.Intn(3) > 0 {
			c = min(max(c+rng.NormFloat64()*8, -45), 70)
		}
	}
	s, err := series.New(readings)
	require.NoError(t, err)
	return s
}

// What is held is what the series says where no gap breaks it; colder or longer never turns met into not met; a warm
// reading never helps.
func FuzzParasiteHold(f *testing.F) {
	f.Add(int64(1), uint8(20), uint8(3), uint8(4))
	f.Add(int64(7), uint8(60), uint8(9), uint8(30))
	f.Fuzz(func(t *testing.T, seed int64, length, place, gapHours uint8) {
		core := coreFrom(t, seed, int(length)+2)
		gap := time.Duration(gapHours)*time.Hour + 1
		report, err := parasites.Audit(core, gap)
		require.NoError(t, err)
		whole, err := parasites.Audit(core, 1<<60)
		require.NoError(t, err)
		readings := core.Readings()
		last := readings[len(readings)-1]
		more, err := core.Append(series.Reading[units.Temperature]{At: last.At + time.Hour, Value: last.Value})
		require.NoError(t, err)
		longer, err := parasites.Audit(more, gap+time.Hour)
		require.NoError(t, err)
		for i := range readings {
			if !readings[i].Value.Above(units.Celsius(20)) {
				readings[i].Value = readings[i].Value.Add(-units.Kelvins)
			}
		}
		shifted, err := series.New(readings)
		require.NoError(t, err)
		colder, err := parasites.Audit(shifted, gap)
		require.NoError(t, err)
		k := int(place) % len(readings)
		readings = core.Readings()
		readings[k].Value = units.Celsius(15)
		broken, err := series.New(readings)
		require.NoError(t, err)
		warm, err := parasites.Audit(broken, gap)
		require.NoError(t, err)
		for i, f := range report.Lines {
			require.Equal(t, f.Held >= f.Rule.Hold, f.Verdict == verdict.Met)
			require.LessOrEqual(t, f.Held, whole.Lines[i].Held)
			require.False(t, f.Verdict == verdict.NotMet && whole.Lines[i].Verdict == verdict.Met, "a gap bridged by lines holds no more than one that was cold")
			require.GreaterOrEqual(t, longer.Lines[i].Held, f.Held)
			if f.Rule.Heat {
				continue
			}
			require.GreaterOrEqual(t, colder.Lines[i].Held, f.Held)
			require.LessOrEqual(t, warm.Lines[i].Held, f.Held)
			if !f.Rule.Solid.IsSet() || f.Rule.Solid == f.Rule.Temperature {
				stretch, err := core.LongestAtOrBelow(f.Rule.Temperature)
				require.NoError(t, err)
				require.Equal(t, stretch, whole.Lines[i].Stretch)
			}
		}
	})
}

// Colder, longer or measured never turns a plan that meets a rule into one that does not.
func FuzzParasitePlan(f *testing.F) {
	f.Add(int16(-200), int16(-200), uint16(168), uint16(5), int16(10), uint16(1))
	f.Add(int16(-350), int16(-200), uint16(40), uint16(15), int16(0), uint16(0))
	f.Fuzz(func(t *testing.T, freezer, store int16, hours, through uint16, colder int16, longer uint16) {
		p := parasites.Plan{Freezer: logged.Tenths(freezer), Store: logged.Tenths(store), Stored: time.Duration(hours) * time.Hour}
		if through > 0 {
			p.Through, p.Core = units.State(time.Duration(through)*time.Hour), units.Celsius(-35)
		}
		before, err := parasites.Check(p)
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		p.Freezer, p.Stored = logged.Tenths(freezer-colder&127), p.Stored+time.Duration(longer)*time.Hour
		after, err := parasites.Check(p)
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		for i, f := range before.Lines {
			require.False(t, f.Verdict == verdict.Met && after.Lines[i].Verdict != verdict.Met, f.Rule.Name)
		}
	})
}

func BenchmarkParasiteHold(b *testing.B) {
	core := logged.Invented(b, -10, 8)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := parasites.Audit(core, time.Hour); err != nil {
			b.Fatal(err)
		}
	}
}
