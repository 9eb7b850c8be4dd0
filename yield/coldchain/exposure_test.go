package coldchain_test

import (
	"fmt"
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

const hour = time.Hour

// The rules' own sentences, one case for each clause and both of its sides; see quick-limits.csv for the sources.
func TestQuickRules(t *testing.T) {
	short := time.Minute
	for name, c := range map[string]struct {
		rule coldchain.Rule
		kept bool
		segs []logged.Segment
	}{
		"raw, 5 h at 60":                     {coldchain.RawReadyToEat, true, []logged.Segment{logged.Flat(5*hour, 60)}},
		"raw, over 5 h at 60":                {coldchain.RawReadyToEat, false, []logged.Segment{logged.Flat(5*hour+1, 60)}},
		"raw, over 5 h at exactly 70":        {coldchain.RawReadyToEat, false, []logged.Segment{logged.Flat(5*hour+short, 70)}},
		"raw, days at exactly 50":            {coldchain.RawReadyToEat, true, []logged.Segment{logged.Flat(90*hour, 50)}},
		"older, 6 h at 60":                   {coldchain.RawReadyToEatOlder, true, []logged.Segment{logged.Flat(6*hour, 60)}},
		"older, over 6 h at 60":              {coldchain.RawReadyToEatOlder, false, []logged.Segment{logged.Flat(6*hour+1, 60)}},
		"raw, 2 h at 75":                     {coldchain.RawReadyToEat, true, []logged.Segment{logged.Flat(2*hour, 75)}},
		"raw, over 2 h at 75":                {coldchain.RawReadyToEat, false, []logged.Segment{logged.Flat(2*hour+1, 75)}},
		"raw, 4 h of which 2 above 70":       {coldchain.RawReadyToEat, true, []logged.Segment{logged.Flat(2*hour, 60), logged.Flat(2*hour, 75)}},
		"raw, 4 h of which over 2 above 70":  {coldchain.RawReadyToEat, false, []logged.Segment{logged.Flat(2*hour-short, 60), logged.Flat(2*hour+short, 75)}},
		"raw, over 4 h of which 1 above 70":  {coldchain.RawReadyToEat, false, []logged.Segment{logged.Flat(3*hour+short, 60), logged.Flat(1*hour, 75)}},
		"raw, 4.5 h and a minute above 70":   {coldchain.RawReadyToEat, false, []logged.Segment{logged.Flat(4*hour+30*short, 60), logged.Flat(short, 71)}},
		"older too, 5 h and a minute hot":    {coldchain.RawReadyToEatOlder, false, []logged.Segment{logged.Flat(5*hour, 60), logged.Flat(short, 71)}},
		"raw, 2 h at exactly 135":            {coldchain.RawReadyToEat, true, []logged.Segment{logged.Flat(2*hour, 135)}},
		"raw, over 2 h at exactly 135":       {coldchain.RawReadyToEat, false, []logged.Segment{logged.Flat(2*hour+short, 135)}},
		"cooked, above 135 is not counted":   {coldchain.CookedReadyToEat, true, []logged.Segment{logged.Flat(9*hour, 136)}},
		"cooked, 1 h at 85":                  {coldchain.CookedReadyToEat, true, []logged.Segment{logged.Flat(1*hour, 85)}},
		"cooked, over 1 h at 85":             {coldchain.CookedReadyToEat, false, []logged.Segment{logged.Flat(1*hour+1, 85)}},
		"cooked, 4 h of which 1 above 70":    {coldchain.CookedReadyToEat, true, []logged.Segment{logged.Flat(3*hour, 60), logged.Flat(1*hour, 85)}},
		"cooked, 4 h, more than 1 above 70":  {coldchain.CookedReadyToEat, false, []logged.Segment{logged.Flat(2*hour, 60), logged.Flat(1*hour, 75), logged.Flat(short, 85)}},
		"cooked, exactly 80 is not above 80": {coldchain.CookedReadyToEat, true, []logged.Segment{logged.Flat(2*hour, 80)}},
		"cooked, over 2 h at 80":             {coldchain.CookedReadyToEat, false, []logged.Segment{logged.Flat(2*hour+short, 80)}},
		"cooked, 4 h of which 2 above 70":    {coldchain.CookedReadyToEat, true, []logged.Segment{logged.Flat(2*hour, 60), logged.Flat(2*hour, 75)}},
		"cooked, over 4 h, some above 70":    {coldchain.CookedReadyToEat, false, []logged.Segment{logged.Flat(4*hour, 60), logged.Flat(short, 75)}},
		"cooked, 5 h at 60":                  {coldchain.CookedReadyToEat, true, []logged.Segment{logged.Flat(5*hour, 60)}},
		"cooked, over 5 h at 60":             {coldchain.CookedReadyToEat, false, []logged.Segment{logged.Flat(5*hour+short, 60)}},
		"kitchen, 2 h at 41":                 {coldchain.KitchenTwoHours, true, []logged.Segment{logged.Flat(2*hour, 41)}},
		"kitchen, over 2 h at 41":            {coldchain.KitchenTwoHours, false, []logged.Segment{logged.Flat(2*hour+1, 41)}},
		"kitchen, days at exactly 40":        {coldchain.KitchenTwoHours, true, []logged.Segment{logged.Flat(90*hour, 40)}},
		"kitchen, over 2 h at exactly 140":   {coldchain.KitchenTwoHours, false, []logged.Segment{logged.Flat(2*hour+short, 140)}},
		"kitchen, fish itself above 90":      {coldchain.KitchenTwoHours, false, []logged.Segment{logged.Flat(hour, 80), logged.Flat(short, 91)}},
	} {
		t.Run(name, func(t *testing.T) {
			terms := coldchain.Terms{Rules: []coldchain.Rule{c.rule}}
			if c.rule == coldchain.CookedReadyToEat {
				terms.Product = coldchain.CookedFish
			}
			r := exposed(t, logged.Record(t, c.segs...), terms)
			require.Equal(t, c.kept, r.Verdict == verdict.Met, "%+v", r.Allowances)
		})
	}
}

func TestHotAir(t *testing.T) {
	cool := logged.Record(t, logged.Flat(hour+time.Minute, 60))
	hot := logged.Record(t, logged.Flat(hour+time.Minute, 120))
	kitchenOnly := coldchain.Terms{Rules: []coldchain.Rule{coldchain.KitchenTwoHours}}
	require.Equal(t, verdict.Met, exposed(t, cool, kitchenOnly).Verdict)
	kitchenOnly.HotAir = true
	require.Equal(t, verdict.NotMet, exposed(t, cool, kitchenOnly).Verdict)
	// Warm cooked fish says nothing of the air; warm raw fish does.
	require.Equal(t, verdict.Met, exposed(t, hot, coldchain.Terms{Rules: []coldchain.Rule{coldchain.KitchenTwoHours}, Product: coldchain.CookedFish}).Verdict)
	require.Equal(t, verdict.NotMet, exposed(t, hot, coldchain.Terms{Rules: []coldchain.Rule{coldchain.KitchenTwoHours}, Product: coldchain.RawFish}).Verdict)
}

func TestReadingsOfTableA2(t *testing.T) {
	for name, c := range map[string]struct {
		segs             []logged.Segment
		each, nested, of verdict.Verdict
	}{
		"well within":               {[]logged.Segment{logged.Flat(hour, 60)}, verdict.Met, verdict.Met, verdict.Met},
		"exactly all of one band":   {[]logged.Segment{logged.Flat(7*hour, 60)}, verdict.Met, verdict.Met, verdict.Met},
		"more than one band":        {[]logged.Segment{logged.Flat(7*hour+1, 60)}, verdict.NotMet, verdict.NotMet, verdict.NotMet},
		"two bands over the lower":  {[]logged.Segment{logged.Flat(6*hour, 60), logged.Flat(2*hour, 80)}, verdict.Met, verdict.NotMet, verdict.NotMet},
		"nested and yet over a sum": {[]logged.Segment{logged.Flat(4*hour, 60), logged.Flat(2*hour, 80)}, verdict.Met, verdict.Met, verdict.NotMet},
		"exactly a sum of one":      {[]logged.Segment{logged.Flat(84*hour, 40), logged.Flat(12*hour, 45)}, verdict.Met, verdict.Met, verdict.Met},
		"a second more":             {[]logged.Segment{logged.Flat(84*hour, 40), logged.Flat(12*hour+time.Second, 45)}, verdict.Met, verdict.Met, verdict.NotMet},
	} {
		for reading, want := range map[coldchain.Reading]verdict.Verdict{coldchain.EachBand: c.each, coldchain.Nested: c.nested, coldchain.SumOfFractions: c.of} {
			r := exposed(t, logged.Record(t, c.segs...), coldchain.Terms{Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{coldchain.Listeria}, Reading: reading})
			require.Equal(t, want, r.Verdict, "%s, %v", name, reading)
		}
	}
}

// Why each band by itself is no default: warming two hours of this record makes it pass.
func TestEachBandMayImproveByWarming(t *testing.T) {
	terms := coldchain.Terms{Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{coldchain.Listeria}, Reading: coldchain.EachBand, MaxGap: 200 * hour}
	require.Equal(t, verdict.NotMet, exposed(t, logged.Record(t, logged.Flat(169*hour, 40)), terms).Verdict)
	warmed := logged.Record(t, logged.Flat(167*hour, 40), logged.Flat(2*hour, 45))
	require.Equal(t, verdict.Met, exposed(t, warmed, terms).Verdict)
	terms.Reading = coldchain.SumOfFractions
	require.Equal(t, verdict.NotMet, exposed(t, warmed, terms).Verdict)
}

func TestMoments(t *testing.T) {
	// Up from 40 to 60 °F in 2 h: above 50 °F from 1 h on; 5 h above it are over at 6 h.
	r := exposed(t, logged.Record(t, logged.Ramp(2*hour, units.Fahrenheit(40), units.Fahrenheit(60)), logged.Flat(6*hour, 60)), coldchain.Terms{Rules: []coldchain.Rule{coldchain.RawReadyToEat}})
	require.Equal(t, verdict.NotMet, r.Verdict)
	require.Equal(t, 6*hour, r.Allowances[0].ExceededAt)
	require.Equal(t, hour, r.Hours[2].First)
	require.False(t, r.Hours[3].Ever)
	line := r.Allowances[0].Lines[0]
	require.Equal(t, []any{7 * hour, time.Duration(0), true, 6 * hour}, []any{line.Used, line.Remaining, line.Passed, line.PassedAt})

	// The moment lies in a record of many readings, on the way down.
	var segs []logged.Segment
	for i := 0; i < 300; i++ {
		segs = append(segs, logged.Flat(time.Minute, 60))
	}
	segs = append(segs, logged.Ramp(hour, units.Fahrenheit(70), units.Fahrenheit(30)), logged.Flat(40*hour, 30))
	r = exposed(t, logged.Record(t, segs...), coldchain.Terms{Rules: []coldchain.Rule{coldchain.RawReadyToEat}})
	require.Equal(t, 5*hour, r.Allowances[0].ExceededAt)
	require.Equal(t, 5*hour+30*time.Minute, r.Hours[2].Time.Round(time.Microsecond))

	// What is left is what the sum of fractions leaves.
	r = exposed(t, logged.Record(t, logged.Flat(84*hour, 40)), coldchain.Terms{Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{coldchain.Listeria}})
	require.Equal(t, 50*units.Percent, r.Allowances[0].Used)
	require.Equal(t, 84*hour, r.Allowances[0].Lines[0].Remaining)
	require.Equal(t, 12*hour, r.Allowances[0].Lines[1].Remaining)
	require.Equal(t, 30*time.Minute, r.Allowances[0].Lines[4].Remaining)
}

func TestGaps(t *testing.T) {
	cold := logged.Record(t, logged.Flat(30*time.Minute, 34), logged.Flat(3*hour, 34))
	r := exposed(t, cold, coldchain.Terms{MaxGap: hour})
	require.Equal(t, verdict.CannotTell, r.Verdict)
	require.Equal(t, 3*hour, r.LongestGap.Length().Round(time.Microsecond))
	require.Equal(t, r.LongestGap.Length(), r.Unknown)
	require.Equal(t, verdict.Met, exposed(t, cold, coldchain.Terms{MaxGap: 3 * hour}).Verdict)
	for _, f := range r.Allowances {
		require.Equal(t, verdict.CannotTell, f.Verdict)
	}
	// What is exceeded without the gap is exceeded.
	warm := logged.Record(t, logged.Flat(20*hour, 60), logged.Flat(30*hour, 34))
	r = exposed(t, warm, coldchain.Terms{MaxGap: 21 * hour})
	require.Equal(t, verdict.NotMet, r.Verdict)
	// The moment is found behind a gap as well: 3 h at 60 °F, 9 h unknown, and the fifth hour two hours later.
	r = exposed(t, logged.Record(t, logged.Flat(3*hour, 60), logged.Flat(9*hour, 60), logged.Flat(3*hour, 60)), coldchain.Terms{MaxGap: 3 * hour, Rules: []coldchain.Rule{coldchain.RawReadyToEat}})
	require.Equal(t, []time.Duration{14 * hour, 9 * hour}, []time.Duration{r.Allowances[0].ExceededAt, r.Unknown})
	// A peak between two gaps is not made into time.
	r = exposed(t, logged.Record(t, logged.Ramp(9*hour, units.Fahrenheit(34), units.Fahrenheit(90)), logged.Ramp(9*hour, units.Fahrenheit(90), units.Fahrenheit(34))), coldchain.Terms{MaxGap: hour})
	require.Equal(t, verdict.CannotTell, r.Verdict)
	require.Equal(t, units.Fahrenheit(90), r.Highest.Value)
	require.False(t, r.Hours[0].Ever)
}

func TestDefaultsAreTheStrictest(t *testing.T) {
	s := logged.Record(t, logged.Flat(hour, 60))
	rules := func(terms coldchain.Terms) (all []coldchain.Rule) {
		for _, f := range exposed(t, s, terms).Allowances {
			if len(all) == 0 || all[len(all)-1] != f.Rule {
				all = append(all, f.Rule)
			}
		}
		return all
	}
	require.Equal(t, []coldchain.Rule{coldchain.TableA2, coldchain.RawReadyToEat, coldchain.CookedReadyToEat, coldchain.KitchenTwoHours}, rules(coldchain.Terms{}))
	require.Equal(t, []coldchain.Rule{coldchain.TableA2, coldchain.RawReadyToEat, coldchain.KitchenTwoHours}, rules(coldchain.Terms{Product: coldchain.RawFish}))
	require.Equal(t, []coldchain.Rule{coldchain.TableA2, coldchain.CookedReadyToEat, coldchain.KitchenTwoHours}, rules(coldchain.Terms{Product: coldchain.CookedFish}))
	require.Len(t, exposed(t, s, coldchain.Terms{}).Allowances, 14+3)
	require.Equal(t, coldchain.SumOfFractions, exposed(t, s, coldchain.Terms{}).Terms.Reading)
	require.Equal(t, verdict.CannotTell, verdict.Verdict(0))
}

func TestEveryReportSaysWhatToDo(t *testing.T) {
	for _, s := range logged.Histories(t, "coldchain/records/histories.csv") {
		for _, terms := range []coldchain.Terms{{}, {MaxGap: time.Second}, {Reading: coldchain.Nested}, {Rules: []coldchain.Rule{coldchain.RawReadyToEatOlder}}} {
			r := exposed(t, s, terms)
			require.NotEmpty(t, r.Next)
			require.NotEmpty(t, r.Cautions)
			for _, f := range r.Allowances {
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
	text := fmt.Sprint(exposed(t, logged.Record(t, logged.Flat(hour, 60)), coldchain.Terms{}).Cautions)
	require.NotContains(t, text, "from memory")
	require.Contains(t, text, "remembered with 6 h")
	text = fmt.Sprint(exposed(t, logged.Record(t, logged.Flat(hour, 60)), coldchain.Terms{Rules: []coldchain.Rule{coldchain.RawReadyToEatOlder}}).Cautions)
	require.Contains(t, text, "from memory")
	late, err := series.New([]series.Reading[units.Temperature]{{At: hour, Value: units.Fahrenheit(140.5)}, {At: 2 * hour, Value: units.Fahrenheit(34)}})
	require.NoError(t, err)
	text = fmt.Sprint(exposed(t, late, coldchain.Terms{Reading: coldchain.EachBand}).Cautions)
	require.Contains(t, text, "does not start at zero")
	require.Contains(t, text, "above 135 °F")
	require.Contains(t, text, "stricter reading")
}

func TestExposureRefuses(t *testing.T) {
	good, ends := logged.Record(t, logged.Flat(hour, 60)), func(c float64) series.Series[units.Temperature] {
		return logged.Record(t, logged.Ramp(hour, units.Celsius(20), units.Celsius(c)))
	}
	single, err := series.New([]series.Reading[units.Temperature]{{Value: units.Fahrenheit(34)}})
	require.NoError(t, err)
	for name, c := range map[string]struct {
		record series.Series[units.Temperature]
		terms  coldchain.Terms
	}{
		"one reading":          {single, coldchain.Terms{MaxGap: hour}},
		"no gap stated":        {good, coldchain.Terms{}},
		"negative gap":         {good, coldchain.Terms{MaxGap: -1}},
		"unknown product":      {good, coldchain.Terms{MaxGap: hour, Product: 9}},
		"unknown reading":      {good, coldchain.Terms{MaxGap: hour, Reading: 9}},
		"rule not set":         {good, coldchain.Terms{MaxGap: hour, Rules: []coldchain.Rule{0}}},
		"unknown rule":         {good, coldchain.Terms{MaxGap: hour, Rules: []coldchain.Rule{coldchain.TableA2, 99}}},
		"hazard not set":       {good, coldchain.Terms{MaxGap: hour, Hazards: []coldchain.Hazard{0}}},
		"unknown hazard":       {good, coldchain.Terms{MaxGap: hour, Hazards: []coldchain.Hazard{coldchain.Listeria, 99}}},
		"probe came loose":     {ends(-127), coldchain.Terms{MaxGap: hour}},
		"just too cold":        {ends(-80.1), coldchain.Terms{MaxGap: hour}},
		"past boiling":         {ends(100.1), coldchain.Terms{MaxGap: hour}},
		"hazard after the end": {good, coldchain.Terms{MaxGap: hour, Hazards: []coldchain.Hazard{coldchain.Yersinia + 1}}},
	} {
		_, err := coldchain.Audit(c.record, c.terms)
		logged.Refused(t, err, name)
	}
	for _, c := range []float64{-80, 100} {
		_, err := coldchain.Audit(ends(c), coldchain.Terms{MaxGap: hour})
		require.NoError(t, err, c)
	}
	_, err = coldchain.Audit(series.Series[units.Temperature]{}, coldchain.Terms{MaxGap: hour})
	require.ErrorIs(t, err, series.ErrEmpty)
}

func TestTermsAndTablesStayAsTheyWere(t *testing.T) {
	terms := coldchain.Terms{MaxGap: hour, Rules: []coldchain.Rule{coldchain.KitchenTwoHours}}
	first := exposed(t, logged.Record(t, logged.Flat(hour, 60)), terms)
	coldchain.Limits(coldchain.KitchenTwoHours)[0].Allowed = 0
	first.Allowances[0].Lines[0].Limit.Allowed = 0
	again := exposed(t, logged.Record(t, logged.Flat(hour, 60)), terms)
	require.Equal(t, 2*hour, again.Allowances[0].Lines[0].Limit.Allowed)
	require.Empty(t, cmp.Diff(coldchain.Terms{MaxGap: hour, Rules: []coldchain.Rule{coldchain.KitchenTwoHours}}, terms))
}

// A verdict says when it rests on figures that nobody here saw in print, and what to do then. Only the older edition is
// from memory.
func TestVerdictFromMemory(t *testing.T) {
	older, newer := []coldchain.Rule{coldchain.RawReadyToEatOlder}, []coldchain.Rule{coldchain.RawReadyToEat}
	warm := logged.Record(t, logged.Flat(6*hour+time.Minute, 60))
	r := exposed(t, warm, coldchain.Terms{Product: coldchain.RawFish, Rules: older})
	require.Equal(t, verdict.NotMet, r.Verdict)
	require.True(t, r.FromMemory)
	require.Equal(t, coldchain.LookUp, r.Next[0])

	for _, rules := range [][]coldchain.Rule{newer, {coldchain.RawReadyToEatOlder, coldchain.RawReadyToEat}} {
		r = exposed(t, warm, coldchain.Terms{Product: coldchain.RawFish, Rules: rules})
		require.Equal(t, verdict.NotMet, r.Verdict)
		require.False(t, r.FromMemory)
	}
	// The limits above 70 °F were read, of the older edition too.
	r = exposed(t, logged.Record(t, logged.Flat(4*hour+time.Minute, 75)), coldchain.Terms{Product: coldchain.RawFish, Rules: older})
	require.Equal(t, verdict.NotMet, r.Verdict)
	require.False(t, r.FromMemory)

	iced := exposed(t, logged.Record(t, logged.Flat(30*hour, 33)), coldchain.Terms{Product: coldchain.RawFish})
	require.Equal(t, verdict.NotMet, iced.Verdict, "Yersinia, a day at 29.7 to 50 °F")
	require.False(t, iced.FromMemory)
}
