package coldchain

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

var keepingUnits = map[string]time.Duration{"hours": time.Hour, "days": day, "months": month, "years": year}

// Both ways: every printed row is in the code and every row of the code is printed. Sources: see the rows.
func TestKeepingTimes(t *testing.T) {
	var want []keepingRow
	for _, r := range printed.Table(t, "coldchain/keeping.csv") {
		row := keepingRow{concern: Safety, food: anyFood, printed: r.Text("printed"), at: fahrenheit(t, r, "at_f"), under: r.Text("at") == "below"}
		if r.Text("concern") == "quality" {
			row.concern = Quality
		}
		require.Equal(t, row.concern.String(), r.Text("concern"))
		if r.Text("food") != "any" {
			require.NoError(t, row.food.UnmarshalText([]byte(r.Text("food"))))
		}
		require.NoError(t, row.storage.UnmarshalText([]byte(r.Text("storage"))))
		if r.Has("low") {
			unit, ok := keepingUnits[r.Text("unit")]
			require.True(t, ok, r.String())
			row.low, row.high = time.Duration(r.Int("low"))*unit, time.Duration(r.Int("high"))*unit
		}
		row.citation.Where, row.note = r.Text("place"), r.Text("source")+" "+r.Text("basis")
		want = append(want, row)
	}
	got := append([]keepingRow(nil), keepingRows[:]...)
	for i := range got {
		require.NoError(t, got[i].citation.Check())
		c := got[i].citation
		got[i].citation, got[i].note = cite.Citation{Where: c.Where}, c.Source.Key()+" "+c.Basis.String()
	}
	require.Len(t, got, len(want))
	for _, row := range want {
		require.Contains(t, got, row)
	}
	for _, row := range got {
		require.Contains(t, want, row)
	}
}

// A food has its own rows and those of what it belongs to, each list from the strictest.
func TestFindKeeping(t *testing.T) {
	for name, c := range map[string]struct {
		food            Food
		storage         Storage
		safety, quality []string
	}{
		"raw":                {Raw, InRefrigerator, []string{"1-2 days", "1-2 days", "1-2 days", "1-3 days", "1-3 days", "36 hours"}, nil},
		"trout, both ways":   {RawTrout, InFreezer, []string{"indefinitely"}, []string{"2-3 months", "2-3 months", "2-3 months", "3-8 months", "4-6 months", "6 months", "6-8 months", "6-9 months"}},
		"salmon":             {RawSalmon, InFreezer, []string{"indefinitely"}, []string{"2-3 months", "2-3 months", "3-8 months", "best within 6 months", "7-9 months"}},
		"lean":               {RawLean, InRefrigerator, []string{"1-2 days", "1-2 days", "1-3 days", "36 hours"}, nil},
		"brined as raw":      {Brined, InRefrigerator, []string{"1-2 days", "1-2 days", "1-2 days", "1-3 days", "1-3 days", "36 hours"}, nil},
		"smoked":             {Smoked, InRefrigerator, []string{"10 days", "14 days", "14 days", "2 weeks", "2-3 weeks", "4 weeks"}, nil},
		"smoked, frozen":     {Smoked, InFreezer, []string{"indefinitely"}, []string{"2-3 months", "up to 4 months"}},
		"vacuum, chilled":    {SmokedVacuum, InRefrigerator, nil, nil},
		"vacuum, frozen":     {SmokedVacuum, InFreezer, []string{"indefinitely"}, []string{"2 months", "2-3 months", "up to 4 months"}},
		"lightly smoked":     {LightlySmoked, InRefrigerator, []string{"no more than 1 day"}, nil},
		"jar":                {HomeCanned, InCupboard, nil, []string{"1 year", "1 year", "1 year"}},
		"jar in the freezer": {HomeCanned, InFreezer, nil, nil},
		"opened":             {Opened, InRefrigerator, []string{"up to 3 days", "3-4 days"}, nil},
		"opened, left out":   {Opened, InCupboard, nil, nil},
		"raw in a cupboard":  {Raw, InCupboard, nil, nil},
		"smoked in cupboard": {Smoked, InCupboard, nil, nil},
	} {
		t.Run(name, func(t *testing.T) {
			k, err := FindKeeping(c.food, c.storage)
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
		food            Food
		storage         Storage
		at              units.Temperature
		held            time.Duration
		safety, quality Standing
	}{
		"raw, a day":                    {Raw, InRefrigerator, forty, day, KeptWithin, NotPublished},
		"raw, over a day":               {Raw, InRefrigerator, forty, day + 1, KeptToTheEnd, NotPublished},
		"raw, over 36 hours":            {Raw, InRefrigerator, forty, 36*time.Hour + 1, KeptBeyond, NotPublished},
		"raw, 43 degrees":               {Raw, InRefrigerator, units.Fahrenheit(43), time.Hour, KeptTooWarm, NotPublished},
		"raw, a quantum over 40":        {Raw, InRefrigerator, forty.Add(1), 0, KeptTooWarm, NotPublished},
		"raw, a long time at 43":        {Raw, InRefrigerator, units.Fahrenheit(43), 4 * day, KeptBeyond, NotPublished},
		"cooked, 3 days":                {Cooked, InRefrigerator, units.Celsius(4), 3 * day, KeptWithin, NotPublished},
		"cooked, 4 days":                {Cooked, InRefrigerator, units.Celsius(4), 4 * day, KeptToTheEnd, NotPublished},
		"cooked, over 4 days":           {Cooked, InRefrigerator, units.Celsius(4), 4*day + 1, KeptBeyond, NotPublished},
		"smoked, just under 36":         {Smoked, InRefrigerator, thirtySix.Add(-1), 10 * day, KeptWithin, NotPublished},
		"smoked, at 36":                 {Smoked, InRefrigerator, thirtySix, 10 * day, KeptTooWarm, NotPublished},
		"smoked, 10 days and more":      {Smoked, InRefrigerator, units.Fahrenheit(34), 10*day + 1, KeptBeyond, NotPublished},
		"frozen at 0 °F":                {RawFatty, InFreezer, zero, 2 * month, KeptWithin, KeptWithin},
		"frozen at 0 °F, 3 months":      {RawFatty, InFreezer, zero, 3 * month, KeptWithin, KeptToTheEnd},
		"frozen at 0 °F, long":          {RawFatty, InFreezer, zero, 2 * year, KeptWithin, KeptBeyond},
		"frozen at 5 °F":                {RawFatty, InFreezer, units.Fahrenheit(5), month, KeptTooWarm, KeptTooWarm},
		"jar, a year":                   {HomeCanned, InCupboard, units.Fahrenheit(70), year, NotPublished, KeptWithin},
		"jar, over a year":              {HomeCanned, InCupboard, units.Fahrenheit(60), year + 1, NotPublished, KeptBeyond},
		"jar in an attic":               {HomeCanned, InCupboard, units.Fahrenheit(96), day, NotPublished, KeptTooWarm},
		"raw in a cupboard":             {Raw, InCupboard, units.Celsius(2), time.Hour, NotPublished, NotPublished},
		"smoked in vacuum, in a fridge": {SmokedVacuum, InRefrigerator, units.Celsius(1), time.Hour, NotPublished, NotPublished},
	} {
		t.Run(name, func(t *testing.T) {
			check, err := CheckKeeping(c.food, c.storage, c.at, c.held)
			require.NoError(t, err)
			require.Equal(t, c.safety, check.Safety)
			require.Equal(t, c.quality, check.Quality)
			require.Len(t, check.Lines, len(check.Keeping.Safety)+len(check.Keeping.Quality))
			for _, l := range check.Lines {
				require.True(t, l.Left >= 0 && (l.Left == 0 || l.Left+c.held == l.Rule.Low))
			}
		})
	}
}

// Each standing has the caution that is of use there, and no jar is spoken of where there is none.
func TestKeepingCautions(t *testing.T) {
	of := []cite.Caution{pastKeeping, keptFromMemory, tooWarmToKeep, warmFreezerKept, strictestColder, jarFrozen, hotShelf}
	for name, c := range map[string]struct {
		food    Food
		storage Storage
		at      units.Temperature
		held    time.Duration
		want    []cite.Caution
	}{
		"fine":                        {Raw, InRefrigerator, units.Celsius(1), time.Hour, nil},
		"beyond":                      {Raw, InRefrigerator, units.Celsius(1), month, []cite.Caution{pastKeeping}},
		"warm":                        {Raw, InRefrigerator, units.Fahrenheit(41), time.Hour, []cite.Caution{tooWarmToKeep}},
		"a freezer of 2 °F":           {RawTrout, InFreezer, units.Fahrenheit(2), day, []cite.Caution{warmFreezerKept}},
		"a freezer of 28 °F":          {Smoked, InFreezer, units.Fahrenheit(28), day, []cite.Caution{warmFreezerKept}},
		"thawed":                      {RawTrout, InFreezer, units.Fahrenheit(28).Add(1), day, []cite.Caution{tooWarmToKeep}},
		"smoked, by the strictest":    {Smoked, InRefrigerator, units.Fahrenheit(38), day, []cite.Caution{strictestColder}},
		"smoked, by all":              {Smoked, InRefrigerator, units.Fahrenheit(41), day, []cite.Caution{tooWarmToKeep}},
		"smoked, beyond the shortest": {Smoked, InRefrigerator, units.Fahrenheit(38), 11 * day, []cite.Caution{pastKeeping, keptFromMemory}},
		"smoked, beyond what is read": {Smoked, InRefrigerator, units.Fahrenheit(34), 15 * day, []cite.Caution{pastKeeping}},
		"a jar":                       {HomeCanned, InCupboard, units.Fahrenheit(95), day, nil},
		"a jar in the sun":            {HomeCanned, InCupboard, units.Fahrenheit(95).Add(1), day, []cite.Caution{hotShelf}},
		"a jar in a barn":             {HomeCanned, InCupboard, units.Celsius(-4), day, []cite.Caution{jarFrozen}},
		"a jar in the freezer":        {HomeCanned, InFreezer, units.Celsius(-18), day, []cite.Caution{jarFrozen}},
		"no jar in a barn":            {Raw, InCupboard, units.Celsius(-4), day, nil},
	} {
		check, err := CheckKeeping(c.food, c.storage, c.at, c.held)
		require.NoError(t, err, name)
		var got []cite.Caution
		for _, caution := range of {
			for _, have := range check.Cautions {
				if have == caution {
					got = append(got, caution)
				}
			}
		}
		require.Equal(t, c.want, got, name)
	}
}

// Warmer or longer never stands better, for any food anywhere.
func TestWarmerNeverKeepsLonger(t *testing.T) {
	temperatures := []units.Temperature{
		units.Celsius(-40), units.Fahrenheit(0), units.Fahrenheit(0).Add(1), units.Celsius(-5), units.Celsius(1), units.Fahrenheit(36), units.Celsius(3.3),
		units.Fahrenheit(40), units.Fahrenheit(40).Add(1), units.Celsius(10), units.Fahrenheit(70), units.Celsius(30), units.Celsius(60),
	}
	times := []time.Duration{0, time.Hour, day, day + 1, 36 * time.Hour, 2 * day, 3 * day, 4 * day, 10 * day, 14 * day, 28 * day, 2 * month, 3 * month, 6 * month, 9 * month, year, year + 1, 20 * year}
	for food := Raw; food < anyFood; food++ {
		for storage := InRefrigerator; storage <= InCupboard; storage++ {
			worst := func(i, j int) [2]Standing {
				c, err := CheckKeeping(food, storage, temperatures[i], times[j])
				require.NoError(t, err)
				return [2]Standing{c.Safety, c.Quality}
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
		"no food":            of(FindKeeping(0, InFreezer)),
		"unknown food":       of(FindKeeping(anyFood, InFreezer)),
		"a food too many":    of(FindKeeping(99, InFreezer)),
		"no storage":         of(FindKeeping(Raw, 0)),
		"unknown storage":    of(FindKeeping(Raw, 4)),
		"check no food":      of(CheckKeeping(0, InFreezer, cold, day)),
		"no temperature":     of(CheckKeeping(Raw, InFreezer, units.Temperature{}, day)),
		"too cold":           of(CheckKeeping(Raw, InFreezer, units.Celsius(-61), day)),
		"an oven":            of(CheckKeeping(Raw, InCupboard, units.Celsius(61), day)),
		"a negative time":    of(CheckKeeping(Raw, InFreezer, cold, -1)),
		"longer than a life": of(CheckKeeping(Raw, InFreezer, cold, 21*year)),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

func TestFoodAndStorageWords(t *testing.T) {
	for f := Raw; f < anyFood; f++ {
		back, err := ParseFood(f.String())
		require.NoError(t, err)
		require.Equal(t, f, back)
	}
	for s := InRefrigerator; s <= InCupboard; s++ {
		back, err := ParseStorage(s.String())
		require.NoError(t, err)
		require.Equal(t, s, back)
	}
	for _, text := range []string{"", "fish", "raw", "no food", "no storage", "canned", "food(13)", "fridge", "0"} {
		_, err := ParseFood(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
		_, err = ParseStorage(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
	food, storage := Raw, InFreezer
	require.Error(t, food.UnmarshalText([]byte("meat")))
	require.Error(t, storage.UnmarshalText([]byte("cellar")))
	require.Equal(t, Raw, food)
	require.Equal(t, InFreezer, storage)
	require.Equal(t, "unknown standing", Standing(9).String())
	require.Equal(t, "unknown concern", Concern(9).String())
	require.Equal(t, "no concern", Concern(0).String())
	require.Equal(t, "unknown shape", ChillShape(9).String())
	require.Equal(t, "no shape", ChillShape(0).String())
}
