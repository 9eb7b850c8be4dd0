package keeping

import (
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

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
		"beyond":                      {Raw, InRefrigerator, units.Celsius(1), chain.Month, []cite.Caution{pastKeeping}},
		"warm":                        {Raw, InRefrigerator, units.Fahrenheit(41), time.Hour, []cite.Caution{tooWarmToKeep}},
		"a freezer of 2 °F":           {RawTrout, InFreezer, units.Fahrenheit(2), chain.Day, []cite.Caution{warmFreezerKept}},
		"a freezer of 28 °F":          {Smoked, InFreezer, units.Fahrenheit(28), chain.Day, []cite.Caution{warmFreezerKept}},
		"thawed":                      {RawTrout, InFreezer, units.Fahrenheit(28).Add(1), chain.Day, []cite.Caution{tooWarmToKeep}},
		"smoked, by the strictest":    {Smoked, InRefrigerator, units.Fahrenheit(38), chain.Day, []cite.Caution{strictestColder}},
		"smoked, by all":              {Smoked, InRefrigerator, units.Fahrenheit(41), chain.Day, []cite.Caution{tooWarmToKeep}},
		"smoked, beyond the shortest": {Smoked, InRefrigerator, units.Fahrenheit(38), 11 * chain.Day, []cite.Caution{pastKeeping, keptFromMemory}},
		"smoked, beyond what is read": {Smoked, InRefrigerator, units.Fahrenheit(34), 15 * chain.Day, []cite.Caution{pastKeeping}},
		"a jar":                       {HomeCanned, InCupboard, units.Fahrenheit(95), chain.Day, nil},
		"a jar in the sun":            {HomeCanned, InCupboard, units.Fahrenheit(95).Add(1), chain.Day, []cite.Caution{hotShelf}},
		"a jar in a barn":             {HomeCanned, InCupboard, units.Celsius(-4), chain.Day, []cite.Caution{jarFrozen}},
		"a jar in the freezer":        {HomeCanned, InFreezer, units.Celsius(-18), chain.Day, []cite.Caution{jarFrozen}},
		"no jar in a barn":            {Raw, InCupboard, units.Celsius(-4), chain.Day, nil},
	} {
		check, err := Check(c.food, c.storage, c.at, c.held)
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

// Both ways: every printed row is in the code and every row of the code is printed. Sources: see the rows.
func TestKeepingTimes(t *testing.T) {
	var want []timeRow
	for _, r := range printed.Table(t, "coldchain/keeping.csv") {
		row := timeRow{concern: Safety, food: anyFood, printed: r.Text("printed"), at: logged.Fahrenheit(t, r, "at_f"), under: r.Text("at") == "below"}
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
	got := append([]timeRow(nil), timeRows[:]...)
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

func TestStoreEdges(t *testing.T) {
	met := func(storage Storage, at units.Temperature, line int) bool {
		j, err := CheckStore(storage, at)
		require.NoError(t, err)
		return j.Lines[line].Verdict == verdict.Met
	}
	for name, c := range map[string]struct {
		storage Storage
		at      units.Temperature
		line    int
		want    bool
	}{
		"below 36 means below":      {InRefrigerator, units.Fahrenheit(36), 0, false},
		"a quantum below 36":        {InRefrigerator, units.Fahrenheit(36).Add(-1), 0, true},
		"38 is still 38":            {InRefrigerator, units.Fahrenheit(38), 1, true},
		"a quantum above 38":        {InRefrigerator, units.Fahrenheit(38).Add(1), 1, false},
		"40 °F said as 4.4 °C":      {InRefrigerator, units.Celsius(4.4), 2, true},
		"a quantum above 40":        {InRefrigerator, units.Fahrenheit(40).Add(1), 2, false},
		"jars at 50":                {InCupboard, units.Fahrenheit(50), 0, true},
		"jars below 50":             {InCupboard, units.Fahrenheit(50).Add(-1), 0, false},
		"jars at 70":                {InCupboard, units.Celsius(21.1), 0, true},
		"jars above 70":             {InCupboard, units.Fahrenheit(70).Add(1), 0, false},
		"jars at 95 °F, or 35 °C":   {InCupboard, units.Celsius(35), 1, true},
		"a quantum above 95":        {InCupboard, units.Fahrenheit(95).Add(1), 1, false},
		"a freezer of -18 °C":       {InFreezer, units.Celsius(-18), 3, true},
		"the same for fatty fish":   {InFreezer, units.Celsius(-18), 1, false},
		"a freezer of -30 for long": {InFreezer, units.Celsius(-30), 0, true},
	} {
		require.Equal(t, c.want, met(c.storage, c.at, c.line), name)
	}
	for at, caution := range map[float64]any{36: hotShelf, -1: jarFrozen} {
		j, err := CheckStore(InCupboard, units.Celsius(at))
		require.NoError(t, err)
		require.Contains(t, j.Cautions, caution)
	}
	j, err := CheckStore(InRefrigerator, units.Fahrenheit(39))
	require.NoError(t, err)
	require.Contains(t, j.Cautions, vacuumAt38)
}

func TestWarmFreezer(t *testing.T) {
	j, err := CheckStore(InFreezer, units.Fahrenheit(5))
	require.NoError(t, err)
	require.NotEmpty(t, j.Costs)
	for _, c := range j.Costs {
		require.Equal(t, Quality, c.Concern)
		require.True(t, c.Here > 0 && c.Here < c.AtLimit, c.What)
		require.True(t, c.Citation.Unverified())
	}
	// Warmer than the tables, and thawed.
	j, err = CheckStore(InFreezer, units.Celsius(2))
	require.NoError(t, err)
	for _, c := range j.Costs {
		require.Zero(t, c.Here)
	}
	require.Contains(t, j.Cautions, thawedStore)
	// Fish freezes below 0 °C: ASHRAE, table 3, 28 °F for every fish in it.
	for at, thaws := range map[units.Temperature]bool{units.Fahrenheit(28): false, units.Fahrenheit(28).Add(1): true, units.Celsius(-0.5): true} {
		j, err = CheckStore(InFreezer, at)
		require.NoError(t, err)
		if thaws {
			require.Contains(t, j.Cautions, thawedStore)
		} else {
			require.NotContains(t, j.Cautions, thawedStore)
		}
	}
	j, err = CheckStore(InFreezer, units.Fahrenheit(0))
	require.NoError(t, err)
	require.Empty(t, j.Costs)
	require.True(t, j.Lines[len(j.Lines)-1].Verdict.Passes())
	// 0 °F is a little warmer than the -18 °C that is quoted for lean fish.
	require.Equal(t, "lean fish", j.Lines[3].Limit.For)
	require.Equal(t, verdict.Differs, j.Lines[3].Verdict)
	require.Equal(t, verdict.Differs, j.Verdict, "off a limit for certain food only")
	require.Equal(t, 2*units.CelsiusDegrees/9, j.Lines[3].TooWarm)
}

// Both ways. Sources: see the rows.
func TestStoreTemperatures(t *testing.T) {
	rows := printed.Table(t, "coldchain/store-temperatures.csv")
	require.Len(t, storeTable, len(rows))
	for _, r := range rows {
		storage, err := ParseStorage(r.Text("storage"))
		require.NoError(t, err)
		want := StoreLimit{Storage: storage, For: r.Text("for"), AtLeast: logged.Fahrenheit(t, r, "at_least_f"), AtMost: logged.Fahrenheit(t, r, "at_most_f"), Under: r.Text("at") == "below"}
		if r.Has("at_most_c") {
			want.AtMost = logged.Celsius(t, r, "at_most_c")
		}
		found := false
		for _, l := range StoreLimits(storage) {
			if l.For == want.For {
				found = true
				require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(l.Citation))
				require.NoError(t, l.Citation.Check())
				want.Citation, want.ID, want.General = l.Citation, l.ID, l.General
				require.Empty(t, cmp.Diff(want, l))
			}
		}
		require.True(t, found, r.String())
	}
	for storage := InRefrigerator; storage <= InCupboard; storage++ {
		all := StoreLimits(storage)
		require.NotEmpty(t, all)
		for i, l := range all {
			require.True(t, i == 0 || !l.AtMost.Below(all[i-1].AtMost), "coldest first: %v", l)
		}
	}
	require.Empty(t, StoreLimits(0))
	general, seen := map[Storage]int{}, map[verdict.Rule]bool{"": true}
	for _, l := range storeTable {
		require.False(t, seen[l.ID], string(l.ID))
		seen[l.ID] = true
		if l.General {
			general[l.Storage]++
		}
	}
	require.Equal(t, map[Storage]int{InRefrigerator: 1, InFreezer: 1, InCupboard: 1}, general, "each storage has one limit for all")
}

func TestCheckThaw(t *testing.T) {
	above := func(d time.Duration) units.Stated[time.Duration] { return units.State(d) }
	f := units.Fahrenheit
	for name, c := range map[string]struct {
		plan ThawPlan
		want verdict.Verdict
	}{
		"refrigerator at 41":              {ThawPlan{Method: ThawInRefrigerator, Medium: f(41)}, verdict.Met},
		"refrigerator a quantum over":     {ThawPlan{Method: ThawInRefrigerator, Medium: f(41).Add(1)}, verdict.NotMet},
		"refrigerator at 5 °C, or 41 °F":  {ThawPlan{Method: ThawInRefrigerator, Medium: units.Celsius(5)}, verdict.Met},
		"refrigerator, fish at 41":        {ThawPlan{Method: ThawInRefrigerator, Medium: f(40), FishAbove41: above(0)}, verdict.Met},
		"refrigerator, fish warmer":       {ThawPlan{Method: ThawInRefrigerator, Medium: f(40), FishAbove41: above(1)}, verdict.NotMet},
		"sealed and opened":               {ThawPlan{Method: ThawInRefrigerator, Medium: f(38), SealedPack: true, Opened: true}, verdict.Met},
		"sealed and shut":                 {ThawPlan{Method: ThawInRefrigerator, Medium: f(34), SealedPack: true}, verdict.NotMet},
		"water at 70, 4 h":                {ThawPlan{Method: ThawInRunningWater, Medium: f(70), FishAbove41: above(4 * time.Hour)}, verdict.Met},
		"water at 70, over 4 h":           {ThawPlan{Method: ThawInRunningWater, Medium: f(70), FishAbove41: above(4*time.Hour + 1)}, verdict.NotMet},
		"water over 70":                   {ThawPlan{Method: ThawInRunningWater, Medium: f(70).Add(1), FishAbove41: above(time.Hour)}, verdict.NotMet},
		"water, time not stated":          {ThawPlan{Method: ThawInRunningWater, Medium: f(60)}, verdict.CannotTell},
		"smoked in water, not warmed":     {ThawPlan{Method: ThawInRunningWater, Medium: f(60), FishAbove41: above(0), ReadyToEat: true}, verdict.Met},
		"smoked in water, warmed":         {ThawPlan{Method: ThawInRunningWater, Medium: f(60), FishAbove41: above(1), ReadyToEat: true}, verdict.NotMet},
		"smoked in water, not stated":     {ThawPlan{Method: ThawInRunningWater, Medium: f(60), ReadyToEat: true}, verdict.CannotTell},
		"shut and not stated":             {ThawPlan{Method: ThawInRunningWater, Medium: f(60), SealedPack: true}, verdict.NotMet},
		"still water":                     {ThawPlan{Method: ThawInStillWater, Medium: f(35), FishAbove41: above(0)}, verdict.NotMet},
		"counter":                         {ThawPlan{Method: ThawOnCounter, Medium: f(68), FishAbove41: above(time.Hour)}, verdict.NotMet},
		"for smoking at 38":               {ThawPlan{Method: ThawInRefrigerator, Medium: f(38), ForSmoking: true}, verdict.Met},
		"for smoking at 39":               {ThawPlan{Method: ThawInRefrigerator, Medium: f(39), ForSmoking: true}, verdict.CannotTell},
		"for smoking, warmed":             {ThawPlan{Method: ThawInRunningWater, Medium: f(60), FishAbove41: above(time.Minute), ForSmoking: true}, verdict.NotMet},
		"for smoking, water, not stated":  {ThawPlan{Method: ThawInRunningWater, Medium: f(60), ForSmoking: true}, verdict.CannotTell},
		"for smoking, warmed afterwards":  {ThawPlan{Method: ThawInRunningWater, Medium: f(36), FishAbove41: above(3 * time.Hour), ForSmoking: true}, verdict.NotMet},
		"for smoking, cold running water": {ThawPlan{Method: ThawInRunningWater, Medium: f(37), FishAbove41: above(0), ForSmoking: true}, verdict.Met},
	} {
		r, err := CheckThaw(c.plan)
		require.NoError(t, err, name)
		require.Equal(t, c.want, r.Verdict, "%s: %+v", name, r.Lines)
		require.NotEmpty(t, r.Cautions)
		logged.Back(t, r)
		logged.Back(t, c.plan)
		if c.plan.SealedPack {
			require.Contains(t, r.Cautions, vacuumAt38)
		}
	}
}

// Both ways. Sources: see the rows.
func TestThawRows(t *testing.T) {
	rows := printed.Table(t, "coldchain/thawing.csv")
	require.Len(t, thawRows, len(rows))
	for i, r := range rows {
		row := thawRows[i]
		require.Equal(t, r.Text("what"), row.what)
		require.Equal(t, logged.Fahrenheit(t, r, "at_most_f"), row.atMost)
		if r.Has("hours_above_41f") {
			require.Equal(t, logged.Hours(t, r, "hours_above_41f"), row.allowed)
		}
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(row.citation))
		require.NoError(t, row.citation.Check())
	}
}

// A stretch split anywhere uses what it used whole, and a warmer end never less.
func FuzzFrozenStretch(f *testing.F) {
	f.Add(uint8(0), -30.0, -10.0, 0.3, 1.0)
	f.Add(uint8(4), -18.0, -18.0, 0.5, 0.0)
	f.Fuzz(func(t *testing.T, which uint8, a, b, at, warmer float64) {
		if !(a > -100 && a < 30 && b > -100 && b < 30 && at > 0 && at < 1 && warmer >= 0 && warmer < 50) {
			return
		}
		knots := frozenLives[int(which)%len(frozenLives)].knots()
		var whole, split, more frozenSum
		whole.add(knots, 1e6, a, b)
		middle := a + float64((b-a)*at)
		split.add(knots, 1e6*at, a, middle)
		split.add(knots, 1e6*(1-at), middle, b)
		require.InDelta(t, whole.share, split.share, 1e-9)
		require.InDelta(t, whole.warm+whole.cold, split.warm+split.cold, 1e-3)
		more.add(knots, 1e6, a, b+warmer)
		require.GreaterOrEqual(t, more.share, whole.share-1e-12)
	})
}

func TestCheckJar(t *testing.T) {
	at := func(d time.Duration) units.Stated[time.Duration] { return units.State(d) }
	for name, c := range map[string]struct {
		since units.Stated[time.Duration]
		signs []JarSign
		want  JarAction
	}{
		"nothing to see":            {at(chain.Year), nil, NoAction},
		"harmless":                  {at(chain.Year), []JarSign{LowLiquid, Crystals}, NoAction},
		"unsealed the same day":     {at(24 * time.Hour), []JarSign{LidUnsealed}, ProcessOrChill},
		"unsealed a day later":      {at(24*time.Hour + 1), []JarSign{LidUnsealed}, BoilThenDiscard},
		"unsealed, nobody knows":    {units.Stated[time.Duration]{}, []JarSign{LidUnsealed}, BoilThenDiscard},
		"bulging":                   {at(chain.Month), []JarSign{LidBulging}, DiscardShut},
		"bulging and leaking":       {at(chain.Month), []JarSign{LidBulging, Leaking}, BoilThenDiscard},
		"unsealed at once, bubbles": {at(time.Hour), []JarSign{LidUnsealed, RisingBubbles}, DiscardShut},
		"spurts":                    {at(chain.Month), []JarSign{SpurtingLiquid}, BoilThenDiscard},
		"smells":                    {at(chain.Month), []JarSign{Crystals, OffOdour}, BoilThenDiscard},
	} {
		j, err := CheckJar(c.since, c.signs...)
		require.NoError(t, err, name)
		require.Equal(t, c.want, j.Action, name)
		require.Len(t, j.Signs, len(c.signs))
		require.Contains(t, j.Cautions, noSign)
		require.Contains(t, j.Cautions, boilBefore)
		want := verdict.CannotTell
		if c.want > NoAction {
			want = verdict.NotMet
		}
		require.Equal(t, want, j.Verdict, name)
		logged.Back(t, j)
	}
}

func TestCheckPowerCut(t *testing.T) {
	for name, c := range map[string]struct {
		storage Storage
		full    bool
		cut     time.Duration
		want    verdict.Verdict
	}{
		"refrigerator, 4 h":             {InRefrigerator, false, 4 * time.Hour, verdict.Met},
		"refrigerator, over 4 h":        {InRefrigerator, false, 4*time.Hour + 1, verdict.CannotTell},
		"a full refrigerator the same":  {InRefrigerator, true, 4*time.Hour + 1, verdict.CannotTell},
		"freezer, 24 h":                 {InFreezer, false, 24 * time.Hour, verdict.Met},
		"freezer, over 24 h":            {InFreezer, false, 24*time.Hour + 1, verdict.CannotTell},
		"full freezer, 48 h":            {InFreezer, true, 48 * time.Hour, verdict.Met},
		"full freezer, more than 48 h":  {InFreezer, true, 48*time.Hour + 1, verdict.CannotTell},
		"no cut":                        {InFreezer, false, 0, verdict.Met},
		"a full freezer, a day and one": {InFreezer, true, 25 * time.Hour, verdict.Met},
	} {
		p, err := CheckPowerCut(c.storage, c.full, c.cut)
		require.NoError(t, err, name)
		require.Equal(t, c.want, p.Verdict, name)
		require.Equal(t, max(p.Rule.For-c.cut, 0), p.Left, name)
		require.Contains(t, p.Cautions, doorShut)
		logged.Back(t, p)
	}
}

var keepingUnits = map[string]time.Duration{"hours": time.Hour, "days": chain.Day, "months": chain.Month, "years": chain.Year}
