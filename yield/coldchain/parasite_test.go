package coldchain

import (
	"math/rand"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Source: Food Code 3-402.11 and 3-401.11, Regulation (EC) 853/2004, Codex CXC 52, Michigan R 285.569.7 and pages on tapeworm, as each row says.
func TestParasiteRules(t *testing.T) {
	rules := ParasiteRules()
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
		want := ParasiteRule{
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
		require.Equal(t, provenance(r), provenanceOf(rule.Citation), r.String())
		require.NoError(t, rule.Citation.Check())
		printed.Within(t, r, "temp_c", rule.Temperature.In(units.CelsiusScale, 9))
		printed.Within(t, r, "temp_f", rule.Temperature.In(units.FahrenheitScale, 9))
	}
}

func TestParasiteCarriers(t *testing.T) {
	all := Carriers()
	rows := printed.Table(t, "coldchain/parasite-carriers.csv")
	require.Len(t, all, len(rows))
	for i, r := range rows {
		c := all[i]
		require.Equal(t, []string{r.Text("fish"), r.Text("parasite"), r.Text("waters"), r.Text("note")}, []string{c.Fish, c.Parasite, c.Waters, c.Note}, r.String())
		require.Equal(t, provenance(r), provenanceOf(c.Citation), r.String())
		require.NoError(t, c.Citation.Check())
	}
	require.Equal(t, append(all[1:2:2], all[7:]...), CarriersOf(" Walleye "))
	require.Equal(t, all[7:], CarriersOf("a fish nobody named"), "not named is not free of parasites")
}

// Source: the FDA's guide ch. 5 (from memory) and an inspector's page, as each row says.
func TestParasiteLimits(t *testing.T) {
	rows := printed.Table(t, "coldchain/parasite-limits.csv")
	require.Len(t, rows, 2)
	printed.Within(t, rows[0], "value", units.In(thickest, units.Inch, 9))
	require.Equal(t, provenance(rows[0]), provenanceOf(parasiteThick))
	require.Equal(t, provenance(rows[1]), provenanceOf(parasiteAllowed))
	allowed := ParasitePlan{Freezer: units.Fahrenheit(-4 + rows[1].Float("value")), Stored: 168 * time.Hour}
	report, err := allowed.Check()
	require.NoError(t, err)
	require.Equal(t, NotMet, report.Treatment, "an inspector's tolerance is not ours")
}

// byRule finds the finding of a rule.
func byRule(t *testing.T, r ParasiteReport, name string) ParasiteFinding {
	t.Helper()
	for _, f := range r.Findings {
		if f.Rule.Name == name {
			return f
		}
	}
	t.Fatalf("no finding of %q", name)
	return ParasiteFinding{}
}

// The rows are the words of the rules at and beside their limits, one nanosecond or a millionth of a degree away.
func TestParasitePlans(t *testing.T) {
	const week, justUnder = 168 * time.Hour, 168*time.Hour - 1
	c := units.Celsius
	through := units.State(10 * time.Hour)
	for name, tt := range map[string]struct {
		plan  ParasitePlan
		rule  string
		want  Treatment
		whole Treatment
	}{
		"a week at -20":                      {ParasitePlan{Freezer: c(-20), Stored: week}, "Food Code, 7 days", Met, Met},
		"a week at -4 F":                     {ParasitePlan{Freezer: units.Fahrenheit(-4), Stored: week}, "Food Code, 7 days", Met, Met},
		"a nanosecond short":                 {ParasitePlan{Freezer: c(-20), Stored: justUnder}, "Food Code, 7 days", NotMet, NotMet},
		"a millionth too warm":               {ParasitePlan{Freezer: c(-19.999999), Stored: week}, "Food Code, 7 days", NotMet, NotMet},
		"home freezer, a year":               {ParasitePlan{Freezer: units.Fahrenheit(0), Stored: 365 * 24 * time.Hour}, "Food Code, 7 days", NotMet, NotMet},
		"cold, then kept at 0 F":             {ParasitePlan{Freezer: c(-40), Store: units.Fahrenheit(0), Stored: week}, "Food Code, 7 days", NotMet, NotMet},
		"warm freezer, then cold":            {ParasitePlan{Freezer: c(-18), Store: c(-40), Stored: week}, "Food Code, 7 days", NotMet, NotMet},
		"a day at -20 is for the EU":         {ParasitePlan{Freezer: c(-20), Stored: 34 * time.Hour, Through: through, Core: c(-20)}, "EU, 24 hours", Met, NotMet},
		"a day and no probe":                 {ParasitePlan{Freezer: c(-20), Stored: 34 * time.Hour}, "EU, 24 hours", NotTold, NotMet},
		"the day counted from loading":       {ParasitePlan{Freezer: c(-20), Stored: 24 * time.Hour, Through: through}, "EU, 24 hours", NotMet, NotMet},
		"15 h from solid at -35":             {ParasitePlan{Freezer: c(-35), Stored: 25 * time.Hour, Through: through, Core: c(-35)}, "Food Code, 15 hours", Met, Met},
		"15 h from loading at -35":           {ParasitePlan{Freezer: c(-35), Stored: 15 * time.Hour, Through: through}, "Food Code, 15 hours", NotMet, NotMet},
		"25 h at -35, solid when?":           {ParasitePlan{Freezer: c(-35), Stored: 25 * time.Hour}, "Food Code, 15 hours", NotTold, NotTold},
		"solid at -35, a day at -20":         {ParasitePlan{Freezer: c(-35), Store: c(-20), Stored: 34 * time.Hour, Through: through, Core: c(-20)}, "Food Code, 24 hours", Met, Met},
		"solid at -34, a day at -20":         {ParasitePlan{Freezer: c(-34), Store: c(-20), Stored: 34 * time.Hour, Through: through}, "Food Code, 24 hours", NotMet, NotMet},
		"solid at -35, a day at -19":         {ParasitePlan{Freezer: c(-35), Store: c(-19), Stored: 34 * time.Hour, Through: through}, "Food Code, 24 hours", NotMet, NotMet},
		"a day since the core was at -20":    {ParasitePlan{Freezer: c(-20), Stored: 34 * time.Hour, Through: through, Core: c(-20)}, "EU, 24 hours", Met, NotMet},
		"since it was at -19":                {ParasitePlan{Freezer: c(-20), Stored: 34 * time.Hour, Through: through, Core: c(-19)}, "EU, 24 hours", NotTold, NotMet},
		"through, and nobody says at what":   {ParasitePlan{Freezer: c(-35), Stored: 25 * time.Hour, Through: through}, "Food Code, 15 hours", NotTold, NotTold},
		"thick, through at what?":            {ParasitePlan{Freezer: c(-20), Stored: week + 10*time.Hour, Through: through, Thickness: units.State(7 * units.Inch)}, "Food Code, 7 days", NotTold, NotTold},
		"-35 in all parts, core seen at -20": {ParasitePlan{Freezer: c(-40), Stored: 25 * time.Hour, Through: through, Core: c(-20)}, "EU, 15 hours", NotTold, NotTold},
		"six inches":                         {ParasitePlan{Freezer: c(-20), Stored: week, Thickness: units.State(6 * units.Inch)}, "Food Code, 7 days", Met, Met},
		"more than six inches":               {ParasitePlan{Freezer: c(-20), Stored: week, Thickness: units.State(6*units.Inch + 1)}, "Food Code, 7 days", NotTold, NotTold},
		"more than six, week from through":   {ParasitePlan{Freezer: c(-20), Stored: week + 10*time.Hour, Through: through, Core: c(-20), Thickness: units.State(7 * units.Inch)}, "Food Code, 7 days", Met, Met},
		"more than six, week from loading":   {ParasitePlan{Freezer: c(-20), Stored: week, Through: through, Thickness: units.State(7 * units.Inch)}, "Food Code, 7 days", NotMet, NotMet},
		"tolerance of an inspector is ours":  {ParasitePlan{Freezer: units.Fahrenheit(-2), Stored: week}, "Food Code, 7 days", NotMet, NotMet},
	} {
		report, err := tt.plan.Check()
		require.NoError(t, err, name)
		f := byRule(t, report, tt.rule)
		require.Equal(t, tt.want, f.Treatment, name)
		require.Equal(t, tt.whole, report.Treatment, name)
		for _, f := range report.Findings {
			require.Equal(t, f.Treatment == Met, f.Would == "", name)
			require.NotEqual(t, Refused, f.Rule.Standing)
		}
		require.NotEmpty(t, report.Next)
		require.NotEmpty(t, report.Cautions)
	}
}

// A home freezer at 0 °F is told by how much it is too warm, and what would do.
func TestHomeFreezerIsToldWhatWouldDo(t *testing.T) {
	report, err := ParasitePlan{Freezer: units.Fahrenheit(0), Stored: 48 * time.Hour}.Check()
	require.NoError(t, err)
	f := byRule(t, report, "Food Code, 7 days")
	require.Equal(t, 4*units.FahrenheitDegrees, f.Beyond)
	require.Zero(t, f.Held, "time at 0 °F does not count")
	require.Equal(t, 168*time.Hour, f.Short)
	require.Equal(t, "4 °F (2.2 °C) too warm: keep it at -20 °C (-4 °F) or below for 168 h without a break, from loading the freezer", f.Would)
	require.Len(t, report.Next, 3)
}

// Too warm by a hair is not told as too warm by nothing.
func TestHairTooWarm(t *testing.T) {
	report, err := ParasitePlan{Freezer: units.Celsius(-20).Add(1), Stored: 168 * time.Hour}.Check()
	require.NoError(t, err)
	require.Contains(t, byRule(t, report, "Food Code, 7 days").Would, "0.2 °F (0.1 °C) too warm: ")
}

func TestParasitePlanRefuses(t *testing.T) {
	good := ParasitePlan{Freezer: units.Celsius(-20), Stored: 168 * time.Hour}
	for name, spoil := range map[string]func(*ParasitePlan){
		"no freezer":        func(p *ParasitePlan) { p.Freezer = units.Temperature{} },
		"hot freezer":       func(p *ParasitePlan) { p.Freezer = units.Celsius(40.1) },
		"colder than ice":   func(p *ParasitePlan) { p.Freezer = units.Celsius(-90.1) },
		"hot store":         func(p *ParasitePlan) { p.Store = units.Celsius(41) },
		"cold store":        func(p *ParasitePlan) { p.Store = units.Celsius(-200) },
		"before loading":    func(p *ParasitePlan) { p.Stored = -1 },
		"centuries":         func(p *ParasitePlan) { p.Stored = 1 << 62 },
		"through too late":  func(p *ParasitePlan) { p.Through = units.State(169 * time.Hour) },
		"through before":    func(p *ParasitePlan) { p.Through = units.State(-time.Hour) },
		"a warm core":       func(p *ParasitePlan) { p.Core = units.Celsius(41) },
		"no thickness":      func(p *ParasitePlan) { p.Thickness = units.State(units.Length(0)) },
		"thick as a whale":  func(p *ParasitePlan) { p.Thickness = units.State(3 * units.Metre) },
		"negative thicknes": func(p *ParasitePlan) { p.Thickness = units.State(-units.Inch) },
	} {
		p := good
		spoil(&p)
		_, err := p.Check()
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
		want   Treatment
		held   float64 // hours
		beyond units.TemperatureChange
	}{
		"a week":                        {[]float64{0, -20, 168, -20}, 200 * time.Hour, "Food Code, 7 days", Met, 168, 0},
		"cooling takes 10 h of it":      {[]float64{0, 20, 20, -60, 178, -20}, 200 * time.Hour, "Food Code, 7 days", Met, 168, 0},
		"a minute short":                {[]float64{0, -20, 167.9, -20}, 200 * time.Hour, "Food Code, 7 days", NotMet, 167.9, 0},
		"a warm hour restarts":          {[]float64{0, -21, 100, -21, 101, -19, 102, -21, 260, -21}, 200 * time.Hour, "Food Code, 7 days", NotMet, 158.5, 0},
		"touching does not":             {[]float64{0, -21, 100, -20, 168, -21}, 200 * time.Hour, "Food Code, 7 days", Met, 168, 0},
		"home freezer":                  {[]float64{0, -18, 500, -18}, 600 * time.Hour, "Food Code, 7 days", NotMet, 0, 2 * units.Kelvins},
		"a gap hides it":                {[]float64{0, -25, 1, -25, 169, -25, 170, -25}, time.Hour, "Food Code, 7 days", NotTold, 1, 0},
		"a gap too short to hide it":    {[]float64{0, -25, 1, -25, 100, -25, 101, -25}, time.Hour, "Food Code, 7 days", NotMet, 1, 0},
		"a gap beside enough":           {[]float64{0, -25, 168, -25, 400, 4}, 168 * time.Hour, "Food Code, 7 days", Met, 168, 0},
		"15 h from -35":                 {[]float64{0, -15, 4, -35, 19, -35}, 20 * time.Hour, "Food Code, 15 hours", Met, 15, 0},
		"15 h, the first above -35":     {[]float64{0, -34, 1, -35, 15, -35}, 20 * time.Hour, "Food Code, 15 hours", NotMet, 14, 0},
		"solid at -35, a day at -20":    {[]float64{0, -15, 4, -35, 5, -20, 28, -20}, 30 * time.Hour, "Food Code, 24 hours", Met, 24, 0},
		"solid at -34, weeks at -20":    {[]float64{0, -15, 4, -34, 5, -20, 600, -20}, 600 * time.Hour, "Food Code, 24 hours", NotMet, 0, units.Kelvins},
		"warm between, -35 never again": {[]float64{0, -36, 1, -20, 20, -20, 21, -10, 22, -20, 90, -20}, 90 * time.Hour, "Food Code, 24 hours", NotMet, 20, 0},
		"a day at -20 before -35":       {[]float64{0, -20, 24, -20, 25, -35, 26, -20}, 90 * time.Hour, "Food Code, 24 hours", NotMet, 1, 0},
		"cooked":                        {[]float64{0, 4, 1, 70, 1.01, 70}, time.Hour, "Food Code, cooking", Met, 0.01 + 7./66, 0},
		"62.9 is not 63":                {[]float64{0, 62.9, 1, 62.9}, time.Hour, "Food Code, cooking", NotMet, 0, units.Kelvins / 10},
		"smoked half an hour":           {[]float64{0, 4, 4, 65, 4.5, 65, 9, 4}, 9 * time.Hour, "hot smoking, 30 minutes", Met, 0.5, 0},
		"smoked in two parts":           {[]float64{0, 65, .4, 65, .5, 60, .6, 65, .9, 65}, 9 * time.Hour, "hot smoking, 30 minutes", NotMet, .4, 0},
	} {
		report, err := ParasiteHold(coreOf(t, tt.core...), tt.gap)
		require.NoError(t, err, name)
		f := byRule(t, report, tt.rule)
		require.Equal(t, tt.want, f.Treatment, name)
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
	_, err = ParasiteHold(series.Series[units.Temperature]{}, time.Hour)
	require.ErrorIs(t, err, series.ErrEmpty)
	_, err = ParasiteHold(one, time.Hour)
	require.ErrorIs(t, err, units.ErrRange)
	for _, gap := range []time.Duration{0, -1} {
		_, err = ParasiteHold(coreOf(t, 0, -20, 168, -20), gap)
		require.ErrorIs(t, err, units.ErrRange)
	}
	for _, loose := range []float64{-127, -80.001, 100.001} { // a probe that came loose kills no parasite
		_, err = ParasiteHold(coreOf(t, 0, -20, 168, loose), 200*time.Hour)
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

// What is held is what the series says where no gap breaks it; colder or longer never turns met into not met; a warm reading never helps.
func FuzzParasiteHold(f *testing.F) {
	f.Add(int64(1), uint8(20), uint8(3), uint8(4))
	f.Add(int64(7), uint8(60), uint8(9), uint8(30))
	f.Fuzz(func(t *testing.T, seed int64, length, place, gapHours uint8) {
		core := coreFrom(t, seed, int(length)+2)
		gap := time.Duration(gapHours)*time.Hour + 1
		report, err := ParasiteHold(core, gap)
		require.NoError(t, err)
		whole, err := ParasiteHold(core, 1<<60)
		require.NoError(t, err)
		readings := core.Readings()
		last := readings[len(readings)-1]
		more, err := core.Append(series.Reading[units.Temperature]{At: last.At + time.Hour, Value: last.Value})
		require.NoError(t, err)
		longer, err := ParasiteHold(more, gap+time.Hour)
		require.NoError(t, err)
		for i := range readings {
			if !readings[i].Value.Above(units.Celsius(20)) {
				readings[i].Value = readings[i].Value.Add(-units.Kelvins)
			}
		}
		shifted, err := series.New(readings)
		require.NoError(t, err)
		colder, err := ParasiteHold(shifted, gap)
		require.NoError(t, err)
		k := int(place) % len(readings)
		readings = core.Readings()
		readings[k].Value = units.Celsius(15)
		broken, err := series.New(readings)
		require.NoError(t, err)
		warm, err := ParasiteHold(broken, gap)
		require.NoError(t, err)
		for i, f := range report.Findings {
			require.Equal(t, f.Held >= f.Rule.Hold, f.Treatment == Met)
			require.LessOrEqual(t, f.Held, whole.Findings[i].Held)
			require.False(t, f.Treatment == NotMet && whole.Findings[i].Treatment == Met, "a gap bridged by lines holds no more than one that was cold")
			require.GreaterOrEqual(t, longer.Findings[i].Held, f.Held)
			if f.Rule.Heat {
				continue
			}
			require.GreaterOrEqual(t, colder.Findings[i].Held, f.Held)
			require.LessOrEqual(t, warm.Findings[i].Held, f.Held)
			if !f.Rule.Solid.IsSet() || f.Rule.Solid == f.Rule.Temperature {
				stretch, err := core.LongestAtOrBelow(f.Rule.Temperature)
				require.NoError(t, err)
				require.Equal(t, stretch, whole.Findings[i].Stretch)
			}
		}
	})
}

// Colder, longer or measured never turns a plan that meets a rule into one that does not.
func FuzzParasitePlan(f *testing.F) {
	f.Add(int16(-200), int16(-200), uint16(168), uint16(5), int16(10), uint16(1))
	f.Add(int16(-350), int16(-200), uint16(40), uint16(15), int16(0), uint16(0))
	f.Fuzz(func(t *testing.T, freezer, store int16, hours, through uint16, colder int16, longer uint16) {
		p := ParasitePlan{Freezer: tenths(freezer), Store: tenths(store), Stored: time.Duration(hours) * time.Hour}
		if through > 0 {
			p.Through, p.Core = units.State(time.Duration(through)*time.Hour), units.Celsius(-35)
		}
		before, err := p.Check()
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		p.Freezer, p.Stored = tenths(freezer-colder&127), p.Stored+time.Duration(longer)*time.Hour
		after, err := p.Check()
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		for i, f := range before.Findings {
			require.False(t, f.Treatment == Met && after.Findings[i].Treatment != Met, f.Rule.Name)
		}
	})
}

func tenths(n int16) units.Temperature {
	t, err := units.TemperatureOf(decimal.New(int64(n), -1), units.CelsiusScale)
	if err != nil {
		return units.Temperature{}
	}
	return t
}

func BenchmarkParasiteHold(b *testing.B) {
	core := invented(b, -10, 8)
	b.ReportAllocs()
	b.ResetTimer()
	for i := 0; i < b.N; i++ {
		if _, err := ParasiteHold(core, time.Hour); err != nil {
			b.Fatal(err)
		}
	}
}
