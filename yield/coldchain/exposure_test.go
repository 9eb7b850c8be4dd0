package coldchain

import (
	"fmt"
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

const hour = time.Hour

func flat(d time.Duration, fahrenheit float64) segment {
	return segment{d, units.Fahrenheit(fahrenheit), units.Fahrenheit(fahrenheit)}
}

// The rules' own sentences, one case for each clause and both of its sides; see quick-limits.csv for the sources.
func TestQuickRules(t *testing.T) {
	short := time.Minute
	for name, c := range map[string]struct {
		rule Rule
		kept bool
		segs []segment
	}{
		"raw, 5 h at 60":                     {RawReadyToEat, true, []segment{flat(5*hour, 60)}},
		"raw, over 5 h at 60":                {RawReadyToEat, false, []segment{flat(5*hour+1, 60)}},
		"raw, over 5 h at exactly 70":        {RawReadyToEat, false, []segment{flat(5*hour+short, 70)}},
		"raw, days at exactly 50":            {RawReadyToEat, true, []segment{flat(90*hour, 50)}},
		"older, 6 h at 60":                   {RawReadyToEatOlder, true, []segment{flat(6*hour, 60)}},
		"older, over 6 h at 60":              {RawReadyToEatOlder, false, []segment{flat(6*hour+1, 60)}},
		"raw, 2 h at 75":                     {RawReadyToEat, true, []segment{flat(2*hour, 75)}},
		"raw, over 2 h at 75":                {RawReadyToEat, false, []segment{flat(2*hour+1, 75)}},
		"raw, 4 h of which 2 above 70":       {RawReadyToEat, true, []segment{flat(2*hour, 60), flat(2*hour, 75)}},
		"raw, 4 h of which over 2 above 70":  {RawReadyToEat, false, []segment{flat(2*hour-short, 60), flat(2*hour+short, 75)}},
		"raw, over 4 h of which 1 above 70":  {RawReadyToEat, false, []segment{flat(3*hour+short, 60), flat(1*hour, 75)}},
		"raw, 4.5 h and a minute above 70":   {RawReadyToEat, false, []segment{flat(4*hour+30*short, 60), flat(short, 71)}},
		"older too, 5 h and a minute hot":    {RawReadyToEatOlder, false, []segment{flat(5*hour, 60), flat(short, 71)}},
		"raw, 2 h at exactly 135":            {RawReadyToEat, true, []segment{flat(2*hour, 135)}},
		"raw, over 2 h at exactly 135":       {RawReadyToEat, false, []segment{flat(2*hour+short, 135)}},
		"raw, above 135 is not counted":      {RawReadyToEat, true, []segment{flat(9*hour, 136)}},
		"cooked, 1 h at 85":                  {CookedReadyToEat, true, []segment{flat(1*hour, 85)}},
		"cooked, over 1 h at 85":             {CookedReadyToEat, false, []segment{flat(1*hour+1, 85)}},
		"cooked, 4 h of which 1 above 70":    {CookedReadyToEat, true, []segment{flat(3*hour, 60), flat(1*hour, 85)}},
		"cooked, 4 h, more than 1 above 70":  {CookedReadyToEat, false, []segment{flat(2*hour, 60), flat(1*hour, 75), flat(short, 85)}},
		"cooked, exactly 80 is not above 80": {CookedReadyToEat, true, []segment{flat(2*hour, 80)}},
		"cooked, over 2 h at 80":             {CookedReadyToEat, false, []segment{flat(2*hour+short, 80)}},
		"cooked, 4 h of which 2 above 70":    {CookedReadyToEat, true, []segment{flat(2*hour, 60), flat(2*hour, 75)}},
		"cooked, over 4 h, some above 70":    {CookedReadyToEat, false, []segment{flat(4*hour, 60), flat(short, 75)}},
		"cooked, 5 h at 60":                  {CookedReadyToEat, true, []segment{flat(5*hour, 60)}},
		"cooked, over 5 h at 60":             {CookedReadyToEat, false, []segment{flat(5*hour+short, 60)}},
		"kitchen, 2 h at 41":                 {KitchenTwoHours, true, []segment{flat(2*hour, 41)}},
		"kitchen, over 2 h at 41":            {KitchenTwoHours, false, []segment{flat(2*hour+1, 41)}},
		"kitchen, days at exactly 40":        {KitchenTwoHours, true, []segment{flat(90*hour, 40)}},
		"kitchen, over 2 h at exactly 140":   {KitchenTwoHours, false, []segment{flat(2*hour+short, 140)}},
		"kitchen, fish itself above 90":      {KitchenTwoHours, false, []segment{flat(hour, 80), flat(short, 91)}},
	} {
		t.Run(name, func(t *testing.T) {
			r := exposed(t, record(t, c.segs...), Terms{Rules: []Rule{c.rule}})
			require.Equal(t, c.kept, r.Verdict == Within, "%+v", r.Findings)
		})
	}
}

func TestHotAir(t *testing.T) {
	cool := record(t, flat(hour+time.Minute, 60))
	hot := record(t, flat(hour+time.Minute, 120))
	kitchenOnly := Terms{Rules: []Rule{KitchenTwoHours}}
	require.Equal(t, Within, exposed(t, cool, kitchenOnly).Verdict)
	kitchenOnly.HotAir = true
	require.Equal(t, Exceeded, exposed(t, cool, kitchenOnly).Verdict)
	// Warm cooked fish says nothing of the air; warm raw fish does.
	require.Equal(t, Within, exposed(t, hot, Terms{Rules: []Rule{KitchenTwoHours}, Product: CookedFish}).Verdict)
	require.Equal(t, Exceeded, exposed(t, hot, Terms{Rules: []Rule{KitchenTwoHours}, Product: RawFish}).Verdict)
}

func TestReadingsOfTableA2(t *testing.T) {
	for name, c := range map[string]struct {
		segs             []segment
		each, nested, of Verdict
	}{
		"well within":               {[]segment{flat(hour, 60)}, Within, Within, Within},
		"exactly all of one band":   {[]segment{flat(7*hour, 60)}, Within, Within, Within},
		"more than one band":        {[]segment{flat(7*hour+1, 60)}, Exceeded, Exceeded, Exceeded},
		"two bands over the lower":  {[]segment{flat(6*hour, 60), flat(2*hour, 80)}, Within, Exceeded, Exceeded},
		"nested and yet over a sum": {[]segment{flat(4*hour, 60), flat(2*hour, 80)}, Within, Within, Exceeded},
		"exactly a sum of one":      {[]segment{flat(84*hour, 40), flat(12*hour, 45)}, Within, Within, Within},
		"a second more":             {[]segment{flat(84*hour, 40), flat(12*hour+time.Second, 45)}, Within, Within, Exceeded},
	} {
		for reading, want := range map[Reading]Verdict{EachBand: c.each, Nested: c.nested, SumOfFractions: c.of} {
			r := exposed(t, record(t, c.segs...), Terms{Rules: []Rule{TableA2}, Hazards: []Hazard{Listeria}, Reading: reading})
			require.Equal(t, want, r.Verdict, "%s, %v", name, reading)
		}
	}
}

// Why each band by itself is no default: warming two hours of this record makes it pass.
func TestEachBandMayImproveByWarming(t *testing.T) {
	terms := Terms{Rules: []Rule{TableA2}, Hazards: []Hazard{Listeria}, Reading: EachBand, MaxGap: 200 * hour}
	require.Equal(t, Exceeded, exposed(t, record(t, flat(169*hour, 40)), terms).Verdict)
	warmed := record(t, flat(167*hour, 40), flat(2*hour, 45))
	require.Equal(t, Within, exposed(t, warmed, terms).Verdict)
	terms.Reading = SumOfFractions
	require.Equal(t, Exceeded, exposed(t, warmed, terms).Verdict)
}

func TestMoments(t *testing.T) {
	// Up from 40 to 60 °F in 2 h: above 50 °F from 1 h on; 5 h above it are over at 6 h.
	r := exposed(t, record(t, segment{2 * hour, units.Fahrenheit(40), units.Fahrenheit(60)}, flat(6*hour, 60)), Terms{Rules: []Rule{RawReadyToEat}})
	require.Equal(t, Exceeded, r.Verdict)
	require.Equal(t, 6*hour, r.Findings[0].ExceededAt)
	require.Equal(t, hour, r.Hours[2].First)
	require.False(t, r.Hours[3].Ever)
	line := r.Findings[0].Lines[0]
	require.Equal(t, []any{7 * hour, time.Duration(0), true, 6 * hour}, []any{line.Used, line.Remaining, line.Passed, line.PassedAt})

	// The moment lies in a record of many readings, on the way down.
	var segs []segment
	for i := 0; i < 300; i++ {
		segs = append(segs, flat(time.Minute, 60))
	}
	segs = append(segs, segment{hour, units.Fahrenheit(70), units.Fahrenheit(30)}, flat(40*hour, 30))
	r = exposed(t, record(t, segs...), Terms{Rules: []Rule{RawReadyToEat}})
	require.Equal(t, 5*hour, r.Findings[0].ExceededAt)
	require.Equal(t, 5*hour+30*time.Minute, r.Hours[2].Time.Round(time.Microsecond))

	// What is left is what the sum of fractions leaves.
	r = exposed(t, record(t, flat(84*hour, 40)), Terms{Rules: []Rule{TableA2}, Hazards: []Hazard{Listeria}})
	require.Equal(t, 50*units.Percent, r.Findings[0].Used)
	require.Equal(t, 84*hour, r.Findings[0].Lines[0].Remaining)
	require.Equal(t, 12*hour, r.Findings[0].Lines[1].Remaining)
	require.Equal(t, 30*time.Minute, r.Findings[0].Lines[4].Remaining)
}

func TestGaps(t *testing.T) {
	cold := record(t, flat(30*time.Minute, 34), flat(3*hour, 34))
	r := exposed(t, cold, Terms{MaxGap: hour})
	require.Equal(t, CannotTell, r.Verdict)
	require.Equal(t, 3*hour, r.LongestGap.Length().Round(time.Microsecond))
	require.Equal(t, r.LongestGap.Length(), r.Unknown)
	require.Equal(t, Within, exposed(t, cold, Terms{MaxGap: 3 * hour}).Verdict)
	for _, f := range r.Findings {
		require.Equal(t, CannotTell, f.Verdict)
	}
	// What is exceeded without the gap is exceeded.
	warm := record(t, flat(20*hour, 60), flat(30*hour, 34))
	r = exposed(t, warm, Terms{MaxGap: 21 * hour})
	require.Equal(t, Exceeded, r.Verdict)
	// The moment is found behind a gap as well: 3 h at 60 °F, 9 h unknown, and the fifth hour two hours later.
	r = exposed(t, record(t, flat(3*hour, 60), flat(9*hour, 60), flat(3*hour, 60)), Terms{MaxGap: 3 * hour, Rules: []Rule{RawReadyToEat}})
	require.Equal(t, []time.Duration{14 * hour, 9 * hour}, []time.Duration{r.Findings[0].ExceededAt, r.Unknown})
	// A peak between two gaps is not made into time.
	r = exposed(t, record(t, segment{9 * hour, units.Fahrenheit(34), units.Fahrenheit(90)}, segment{9 * hour, units.Fahrenheit(90), units.Fahrenheit(34)}), Terms{MaxGap: hour})
	require.Equal(t, CannotTell, r.Verdict)
	require.Equal(t, units.Fahrenheit(90), r.Highest.Value)
	require.False(t, r.Hours[0].Ever)
}

func TestDefaultsAreTheStrictest(t *testing.T) {
	s := record(t, flat(hour, 60))
	rules := func(terms Terms) (all []Rule) {
		for _, f := range exposed(t, s, terms).Findings {
			if len(all) == 0 || all[len(all)-1] != f.Rule {
				all = append(all, f.Rule)
			}
		}
		return all
	}
	require.Equal(t, []Rule{TableA2, RawReadyToEat, CookedReadyToEat, KitchenTwoHours}, rules(Terms{}))
	require.Equal(t, []Rule{TableA2, RawReadyToEat, KitchenTwoHours}, rules(Terms{Product: RawFish}))
	require.Equal(t, []Rule{TableA2, CookedReadyToEat, KitchenTwoHours}, rules(Terms{Product: CookedFish}))
	require.Len(t, exposed(t, s, Terms{}).Findings, 14+3)
	require.Equal(t, SumOfFractions, Reading(0))
	require.Equal(t, CannotTell, Verdict(0))
}

func TestEveryReportSaysWhatToDo(t *testing.T) {
	for _, s := range histories(t, "coldchain/records/histories.csv") {
		for _, terms := range []Terms{{}, {MaxGap: time.Second}, {Reading: Nested}, {Rules: []Rule{RawReadyToEatOlder}}} {
			r := exposed(t, s, terms)
			require.NotEmpty(t, r.Next)
			require.NotEmpty(t, r.Cautions)
			for _, f := range r.Findings {
				for _, line := range f.Lines {
					require.NoError(t, line.Limit.Citation.Check())
					require.True(t, line.Passed || line.Remaining >= 0)
				}
			}
			for _, h := range r.Hours {
				require.NoError(t, h.Citation.Check())
			}
		}
	}
	text := fmt.Sprint(exposed(t, record(t, flat(hour, 60)), Terms{}).Cautions)
	require.Contains(t, text, "from memory")
	require.Contains(t, text, "remembered with 6 h")
	late, err := series.New([]series.Reading[units.Temperature]{{At: hour, Value: units.Fahrenheit(140.5)}, {At: 2 * hour, Value: units.Fahrenheit(34)}})
	require.NoError(t, err)
	text = fmt.Sprint(exposed(t, late, Terms{Reading: EachBand}).Cautions)
	require.Contains(t, text, "begins at 1 h:")
	require.Contains(t, text, "above 135 °F")
	require.Contains(t, text, "stricter reading")
}

func TestExposureRefuses(t *testing.T) {
	good, ends := record(t, flat(hour, 60)), func(c float64) series.Series[units.Temperature] {
		return record(t, segment{hour, units.Celsius(20), units.Celsius(c)})
	}
	single, err := series.New([]series.Reading[units.Temperature]{{Value: units.Fahrenheit(34)}})
	require.NoError(t, err)
	for name, c := range map[string]struct {
		record series.Series[units.Temperature]
		terms  Terms
	}{
		"one reading":          {single, Terms{MaxGap: hour}},
		"no gap stated":        {good, Terms{}},
		"negative gap":         {good, Terms{MaxGap: -1}},
		"unknown product":      {good, Terms{MaxGap: hour, Product: 9}},
		"unknown reading":      {good, Terms{MaxGap: hour, Reading: 9}},
		"rule not set":         {good, Terms{MaxGap: hour, Rules: []Rule{0}}},
		"unknown rule":         {good, Terms{MaxGap: hour, Rules: []Rule{TableA2, 99}}},
		"hazard not set":       {good, Terms{MaxGap: hour, Hazards: []Hazard{0}}},
		"unknown hazard":       {good, Terms{MaxGap: hour, Hazards: []Hazard{Listeria, 99}}},
		"probe came loose":     {ends(-127), Terms{MaxGap: hour}},
		"just too cold":        {ends(-80.1), Terms{MaxGap: hour}},
		"past boiling":         {ends(100.1), Terms{MaxGap: hour}},
		"hazard after the end": {good, Terms{MaxGap: hour, Hazards: []Hazard{Yersinia + 1}}},
	} {
		_, err := Exposure(c.record, c.terms)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for _, c := range []float64{-80, 100} {
		_, err := Exposure(ends(c), Terms{MaxGap: hour})
		require.NoError(t, err, c)
	}
	_, err = Exposure(series.Series[units.Temperature]{}, Terms{MaxGap: hour})
	require.ErrorIs(t, err, series.ErrEmpty)
}

func TestTermsAndTablesStayAsTheyWere(t *testing.T) {
	terms := Terms{MaxGap: hour, Rules: []Rule{KitchenTwoHours}}
	first := exposed(t, record(t, flat(hour, 60)), terms)
	Limits(KitchenTwoHours)[0].Allowed = 0
	first.Findings[0].Lines[0].Limit.Allowed = 0
	again := exposed(t, record(t, flat(hour, 60)), terms)
	require.Equal(t, 2*hour, again.Findings[0].Lines[0].Limit.Allowed)
	require.Empty(t, cmp.Diff(Terms{MaxGap: hour, Rules: []Rule{KitchenTwoHours}}, terms))
}

// A verdict says when it rests on figures that nobody here saw in print, and what to do then.
func TestVerdictFromMemory(t *testing.T) {
	iced := record(t, flat(30*hour, 33))
	r := exposed(t, iced, Terms{Product: RawFish})
	require.Equal(t, Exceeded, r.Verdict, "Yersinia, a day at 29.7 to 50 °F")
	require.True(t, r.FromMemory)
	require.Contains(t, r.Next[0], "from memory")

	r = exposed(t, iced, Terms{Hazards: []Hazard{Listeria}, Rules: []Rule{TableA2}, MaxGap: 200 * hour})
	require.Equal(t, Within, r.Verdict)
	require.False(t, r.FromMemory)

	week := record(t, flat(7*24*hour+1, 40)) // the first two bands of Listeria were read
	r = exposed(t, week, Terms{Hazards: []Hazard{Listeria, Yersinia}, Rules: []Rule{TableA2}, MaxGap: 200 * hour})
	require.Equal(t, Exceeded, r.Verdict)
	require.False(t, r.FromMemory)
	require.Equal(t, []bool{false, true}, []bool{r.Findings[0].FromMemory, r.Findings[1].FromMemory})

	// More than half of each of two bands that were read: over by what was read.
	r = exposed(t, record(t, flat(90*hour, 40), flat(12*hour, 45)), Terms{Hazards: []Hazard{Listeria}, Rules: []Rule{TableA2}, MaxGap: 200 * hour})
	require.Equal(t, Exceeded, r.Verdict)
	require.False(t, r.FromMemory)

	// Half of the read bands and more than half of a recalled one: over together, not by what was read.
	mixed := record(t, flat(84*hour, 40), flat(4*hour, 60))
	for reading, verdict := range map[Reading]Verdict{SumOfFractions: Exceeded, EachBand: Within} {
		r = exposed(t, mixed, Terms{Hazards: []Hazard{Listeria}, Rules: []Rule{TableA2}, MaxGap: 200 * hour, Reading: reading})
		require.Equal(t, verdict, r.Verdict)
		require.Equal(t, verdict == Exceeded, r.FromMemory)
	}
}
