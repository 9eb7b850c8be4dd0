package keeping_test

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"example.org/lakelarder/yield/coldchain/keeping"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// A food has its own rows and those of what it belongs to, each list from the strictest.
func TestFindKeeping(t *testing.T) {
	for name, c := range map[string]struct {
		food            keeping.Food
		storage         keeping.Storage
		safety, quality []string
	}{
		"raw":                {keeping.Raw, keeping.InRefrigerator, []string{"1-2 days", "1-2 days", "1-2 days", "1-3 days", "1-3 days", "36 hours"}, nil},
		"trout, both ways":   {keeping.RawTrout, keeping.InFreezer, []string{"indefinitely"}, []string{"2-3 months", "2-3 months", "2-3 months", "3-8 months", "4-6 months", "6 months", "6-8 months", "6-9 months"}},
		"salmon":             {keeping.RawSalmon, keeping.InFreezer, []string{"indefinitely"}, []string{"2-3 months", "2-3 months", "3-8 months", "best within 6 months", "7-9 months"}},
		"lean":               {keeping.RawLean, keeping.InRefrigerator, []string{"1-2 days", "1-2 days", "1-3 days", "36 hours"}, nil},
		"brined as raw":      {keeping.Brined, keeping.InRefrigerator, []string{"1-2 days", "1-2 days", "1-2 days", "1-3 days", "1-3 days", "36 hours"}, nil},
		"smoked":             {keeping.Smoked, keeping.InRefrigerator, []string{"10 days", "14 days", "14 days", "2 weeks", "2-3 weeks", "4 weeks"}, nil},
		"smoked, frozen":     {keeping.Smoked, keeping.InFreezer, []string{"indefinitely"}, []string{"2-3 months", "up to 4 months"}},
		"vacuum, chilled":    {keeping.SmokedVacuum, keeping.InRefrigerator, nil, nil},
		"vacuum, frozen":     {keeping.SmokedVacuum, keeping.InFreezer, []string{"indefinitely"}, []string{"2 months", "2-3 months", "up to 4 months"}},
		"lightly smoked":     {keeping.LightlySmoked, keeping.InRefrigerator, []string{"no more than 1 day"}, nil},
		"jar":                {keeping.HomeCanned, keeping.InCupboard, nil, []string{"1 year", "1 year", "1 year"}},
		"jar in the freezer": {keeping.HomeCanned, keeping.InFreezer, nil, nil},
		"opened":             {keeping.Opened, keeping.InRefrigerator, []string{"up to 3 days", "3-4 days"}, nil},
		"opened, left out":   {keeping.Opened, keeping.InCupboard, nil, nil},
		"raw in a cupboard":  {keeping.Raw, keeping.InCupboard, nil, nil},
		"smoked in cupboard": {keeping.Smoked, keeping.InCupboard, nil, nil},
	} {
		t.Run(name, func(t *testing.T) {
			k, err := keeping.Find(c.food, c.storage)
			require.NoError(t, err)
			var safety, quality []string
			for _, r := range k.Safety {
				safety = append(safety, r.Printed)
			}
			for _, r := range k.Quality {
				quality = append(quality, r.Printed)
			}
			require.Empty(t, cmp.Diff(c.safety, safety))
			require.Empty(t, cmp.Diff(c.quality, quality))
			require.NotEmpty(t, k.Cautions)
		})
	}
}

// One nanosecond or one quantum past an edge, in both scales.
func TestCheckKeepingEdges(t *testing.T) {
	forty, thirtySix, zero := units.Fahrenheit(40), units.Fahrenheit(36), units.Fahrenheit(0)
	for name, c := range map[string]struct {
		food            keeping.Food
		storage         keeping.Storage
		at              units.Temperature
		held            time.Duration
		safety, quality standing
	}{
		"raw, a day":                    {keeping.Raw, keeping.InRefrigerator, forty, chain.Day, keptWithin, notPublished},
		"raw, over a day":               {keeping.Raw, keeping.InRefrigerator, forty, chain.Day + 1, keptToTheEnd, notPublished},
		"raw, over 36 hours":            {keeping.Raw, keeping.InRefrigerator, forty, 36*time.Hour + 1, keptBeyond, notPublished},
		"raw, 43 degrees":               {keeping.Raw, keeping.InRefrigerator, units.Fahrenheit(43), time.Hour, keptTooWarm, notPublished},
		"raw, a quantum over 40":        {keeping.Raw, keeping.InRefrigerator, forty.Add(1), 0, keptTooWarm, notPublished},
		"raw, a long time at 43":        {keeping.Raw, keeping.InRefrigerator, units.Fahrenheit(43), 4 * chain.Day, keptBeyond, notPublished},
		"cooked, 3 days":                {keeping.Cooked, keeping.InRefrigerator, units.Celsius(4), 3 * chain.Day, keptWithin, notPublished},
		"cooked, 4 days":                {keeping.Cooked, keeping.InRefrigerator, units.Celsius(4), 4 * chain.Day, keptToTheEnd, notPublished},
		"cooked, over 4 days":           {keeping.Cooked, keeping.InRefrigerator, units.Celsius(4), 4*chain.Day + 1, keptBeyond, notPublished},
		"smoked, just under 36":         {keeping.Smoked, keeping.InRefrigerator, thirtySix.Add(-1), 10 * chain.Day, keptWithin, notPublished},
		"smoked, at 36":                 {keeping.Smoked, keeping.InRefrigerator, thirtySix, 10 * chain.Day, keptTooWarm, notPublished},
		"smoked, 10 days and more":      {keeping.Smoked, keeping.InRefrigerator, units.Fahrenheit(34), 10*chain.Day + 1, keptBeyond, notPublished},
		"frozen at 0 °F":                {keeping.RawFatty, keeping.InFreezer, zero, 2 * chain.Month, keptWithin, keptWithin},
		"frozen at 0 °F, 3 months":      {keeping.RawFatty, keeping.InFreezer, zero, 3 * chain.Month, keptWithin, keptToTheEnd},
		"frozen at 0 °F, long":          {keeping.RawFatty, keeping.InFreezer, zero, 2 * chain.Year, keptWithin, keptBeyond},
		"frozen at 5 °F":                {keeping.RawFatty, keeping.InFreezer, units.Fahrenheit(5), chain.Month, keptTooWarm, keptTooWarm},
		"jar, a year":                   {keeping.HomeCanned, keeping.InCupboard, units.Fahrenheit(70), chain.Year, notPublished, keptWithin},
		"jar, over a year":              {keeping.HomeCanned, keeping.InCupboard, units.Fahrenheit(60), chain.Year + 1, notPublished, keptBeyond},
		"jar in an attic":               {keeping.HomeCanned, keeping.InCupboard, units.Fahrenheit(96), chain.Day, notPublished, keptTooWarm},
		"raw in a cupboard":             {keeping.Raw, keeping.InCupboard, units.Celsius(2), time.Hour, notPublished, notPublished},
		"smoked in vacuum, in a fridge": {keeping.SmokedVacuum, keeping.InRefrigerator, units.Celsius(1), time.Hour, notPublished, notPublished},
	} {
		t.Run(name, func(t *testing.T) {
			check, err := keeping.Check(c.food, c.storage, c.at, c.held)
			require.NoError(t, err)
			require.Equal(t, c.safety, standingIn(check.Report))
			require.Equal(t, c.quality, standingIn(check.Quality))
			times, err := keeping.Find(c.food, c.storage)
			require.NoError(t, err)
			require.Len(t, check.Lines, len(times.Safety)+len(times.Quality))
			logged.Back(t, check)
			logged.Back(t, times)
			for _, l := range check.Lines {
				require.True(t, l.Left >= 0 && (l.Left == 0 || l.Left+c.held == l.Rule.Low))
			}
		})
	}
}

// Warmer or longer never stands better, for any food anywhere.
func TestWarmerNeverKeepsLonger(t *testing.T) {
	temperatures := []units.Temperature{
		units.Celsius(-40), units.Fahrenheit(0), units.Fahrenheit(0).Add(1), units.Celsius(-5), units.Celsius(1), units.Fahrenheit(36), units.Celsius(3.3),
		units.Fahrenheit(40), units.Fahrenheit(40).Add(1), units.Celsius(10), units.Fahrenheit(70), units.Celsius(30), units.Celsius(60),
	}
	times := []time.Duration{0, time.Hour, chain.Day, chain.Day + 1, 36 * time.Hour, 2 * chain.Day, 3 * chain.Day, 4 * chain.Day, 10 * chain.Day, 14 * chain.Day, 28 * chain.Day, 2 * chain.Month, 3 * chain.Month, 6 * chain.Month, 9 * chain.Month, chain.Year, chain.Year + 1, 20 * chain.Year}
	for food := keeping.Raw; food <= keeping.Opened; food++ {
		for storage := keeping.InRefrigerator; storage <= keeping.InCupboard; storage++ {
			worst := func(i, j int) [2]verdict.Verdict {
				c, err := keeping.Check(food, storage, temperatures[i], times[j])
				require.NoError(t, err)
				return [2]verdict.Verdict{c.Verdict, c.Quality.Verdict}
			}
			for i := range temperatures {
				for j := range times {
					here := worst(i, j)
					for k := range here {
						require.True(t, i == 0 || here[k] >= worst(i-1, j)[k], "%v in %v at %v for %v", food, storage, temperatures[i], times[j])
						require.True(t, j == 0 || here[k] >= worst(i, j-1)[k], "%v in %v at %v for %v", food, storage, temperatures[i], times[j])
					}
				}
			}
		}
	}
}

func TestKeepingRefuses(t *testing.T) {
	cold := units.Celsius(1)
	of := func(_ any, err error) error { return err }
	for name, err := range map[string]error{
		"no food":            of(keeping.Find(0, keeping.InFreezer)),
		"unknown food":       of(keeping.Find(keeping.Opened+1, keeping.InFreezer)),
		"a food too many":    of(keeping.Find(99, keeping.InFreezer)),
		"no storage":         of(keeping.Find(keeping.Raw, 0)),
		"unknown storage":    of(keeping.Find(keeping.Raw, 4)),
		"check no food":      of(keeping.Check(0, keeping.InFreezer, cold, chain.Day)),
		"no temperature":     of(keeping.Check(keeping.Raw, keeping.InFreezer, units.Temperature{}, chain.Day)),
		"too cold":           of(keeping.Check(keeping.Raw, keeping.InFreezer, units.Celsius(-61), chain.Day)),
		"an oven":            of(keeping.Check(keeping.Raw, keeping.InCupboard, units.Celsius(61), chain.Day)),
		"a negative time":    of(keeping.Check(keeping.Raw, keeping.InFreezer, cold, -1)),
		"longer than a life": of(keeping.Check(keeping.Raw, keeping.InFreezer, cold, 21*chain.Year)),
	} {
		logged.Refused(t, err, name)
	}
}

func TestWords(t *testing.T) {
	logged.Words(t, keeping.Opened, keeping.ParseFood)
	logged.Words(t, keeping.InCupboard, keeping.ParseStorage)
	logged.Words(t, keeping.Quality, keeping.ParseConcern)
	logged.Words(t, keeping.ThawOnCounter, keeping.ParseThawMethod)
	logged.Words(t, keeping.Crystals, keeping.ParseJarSign)
	logged.Words(t, keeping.BoilThenDiscard, keeping.ParseJarAction)
	food, storage := keeping.Raw, keeping.InFreezer
	require.Error(t, food.UnmarshalText([]byte("meat")))
	require.Error(t, storage.UnmarshalText([]byte("cellar")))
	require.Equal(t, keeping.Raw, food)
	require.Equal(t, keeping.InFreezer, storage)
}

// standing is how food stands in a keeping time, and why.
type standing struct {
	verdict verdict.Verdict
	kind    verdict.Kind
}

var (
	notPublished = standing{verdict.NotPublished, 0}
	keptWithin   = standing{verdict.Met, 0}
	keptToTheEnd = standing{verdict.Differs, verdict.TooLong}
	keptTooWarm  = standing{verdict.NotMet, verdict.TooWarm}
	keptBeyond   = standing{verdict.NotMet, verdict.TooLong}
)

func standingIn(r verdict.Report) standing {
	if len(r.Findings) == 0 {
		return standing{r.Verdict, 0}
	}
	return standing{r.Verdict, r.Findings[0].Kind}
}
