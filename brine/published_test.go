package brine

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// from is a citation as the columns of a row have it.
func requireFrom(t *testing.T, r printed.Row, c cite.Citation) {
	t.Helper()
	require.Equal(t, []string{r.Text("source"), r.Text("place"), r.Text("basis")}, []string{c.Source.Key(), c.Where, c.Basis.String()})
	require.NoError(t, c.Check())
}

func TestSaltingTimes(t *testing.T) {
	rows := printed.Table(t, "brine/salting-times.csv")
	require.Len(t, saltingTimes, len(rows))
	rows.Each(t, func(t *testing.T, r printed.Row) {
		thickness, err := units.Of(r.Decimal("thickness_in"), units.Inch)
		require.NoError(t, err)
		for col, fat := range map[string]Fatness{"fat_fish_h": FatFish, "lean_fish_h": LeanFish} {
			s, err := FindSaltingTime(thickness, fat)
			require.NoError(t, err)
			printed.WithinFloat(t, r, col, s.Time.Hours())
			requireFrom(t, r, s.Citation)
			require.Equal(t, afterSalting(), s.Cautions)
		}
	})
	// The column of fat fish is linear, 12 h to the inch, between its rows as on them.
	for step := units.Length(75); step <= 300; step++ {
		s, err := FindSaltingTime(step*units.Inch/100, FatFish)
		require.NoError(t, err)
		want := time.Duration(step) * 12 * time.Hour / 100
		require.GreaterOrEqual(t, s.Time, want)
		require.Less(t, s.Time-want, time.Minute)
		lean, err := FindSaltingTime(step*units.Inch/100, LeanFish)
		require.NoError(t, err)
		require.Less(t, lean.Time, s.Time)
	}
	_, err := FindSaltingTime(units.Inch, LeanFish+1)
	require.ErrorIs(t, err, units.ErrUnknown)
	for _, c := range []struct {
		thickness units.Length
		fat       Fatness
	}{{75*units.Inch/100 - 1, FatFish}, {3*units.Inch + 1, FatFish}, {0, LeanFish}, {units.Inch, 0}} {
		_, err := FindSaltingTime(c.thickness, c.fat)
		require.ErrorIs(t, err, units.ErrRange)
	}
}

func TestGrowthLimits(t *testing.T) {
	all := GrowthLimits()
	first, second := printed.Table(t, "brine/growth-limits.csv"), printed.Table(t, "brine/growth-factors.csv")
	require.Len(t, all, len(first)+len(second))
	for i, r := range append(append(printed.Rows{}, first...), second...) {
		l := all[i]
		require.Equal(t, r.Text("organism"), l.Organism)
		requireFrom(t, r, l.Citation)
		same := func(col string, got string) {
			if !r.Has(col) {
				require.Equal(t, "0", got, "%s of %s", col, l.Organism)
				return
			}
			require.Equal(t, r.Decimal(col).String(), got, "%s of %s", col, l.Organism)
		}
		same("least_activity", units.In(l.LeastActivity, units.One, 4).String())
		same("least_ph", units.In(l.LeastPH, units.PHUnit, 3).String())
		same("most_ph", units.In(l.MostPH, units.PHUnit, 3).String())
		same("coldest_c", l.Coldest.In(units.CelsiusScale, 3).String())
		same("warmest_c", l.Warmest.In(units.CelsiusScale, 3).String())
		if i < len(first) {
			same("most_salt_pct", units.In(l.MostSalt, units.Percent, 4).String())
			require.Equal(t, r.Text("oxygen"), l.Oxygen)
			require.InDelta(t, r.Float("coldest_f"), l.Coldest.Fahrenheit(), 0.1, "the two scales are rounded apart")
			require.InDelta(t, r.Float("warmest_f"), l.Warmest.Fahrenheit(), 0.6, "the two scales are rounded apart")
		}
	}
}

// What 3.5 % of salt and a refrigerator hold back, and what they do not.
func TestHolds(t *testing.T) {
	of := func(c Conditions) map[string][]Barrier {
		all, err := c.Holds()
		require.NoError(t, err)
		by := map[string][]Barrier{}
		for _, g := range all {
			by[g.Limit.Organism] = g.By
		}
		return by
	}
	typeE, listeria := "Clostridium botulinum type E, nonproteolytic B and F", "Listeria monocytogenes"
	cold := of(Conditions{WaterPhaseSalt: 35 * units.PerMille, Temperature: units.Celsius(3)})
	require.Equal(t, []Barrier{ByCold}, cold[typeE])
	require.Empty(t, cold[listeria], "it grows in the cold")
	require.Empty(t, of(Conditions{WaterPhaseSalt: 35 * units.PerMille, Temperature: units.Celsius(3.3)})[typeE], "at the limit it may grow")
	require.Empty(t, of(Conditions{WaterPhaseSalt: 5 * units.Percent})[typeE])
	require.Equal(t, []Barrier{BySalt}, of(Conditions{WaterPhaseSalt: 5*units.Percent + 1})[typeE])
	require.Equal(t, []Barrier{ByActivity, ByPH}, of(Conditions{Activity: 969 * units.PerMille, PH: 4_999})[typeE])
	require.Equal(t, []Barrier{ByPH}, of(Conditions{PH: 9_001})[typeE])
	require.Equal(t, []Barrier{ByHeat}, of(Conditions{Temperature: units.Celsius(45.1)})[typeE])
	for organism, by := range of(Conditions{}) {
		require.Empty(t, by, organism)
	}
	for _, c := range []Conditions{{WaterPhaseSalt: -1}, {WaterPhaseSalt: units.One + 1}, {Activity: -1}, {Activity: units.One + 1}, {PH: -1}, {PH: 14_001}} {
		_, err := c.Holds()
		require.ErrorIs(t, err, units.ErrRange)
	}
	require.Equal(t, "Listeria monocytogenes: can grow", Growth{Limit: GrowthLimit{Organism: listeria}}.String())
	require.Equal(t, "barrier(9)", Barrier(9).String())
}

func TestOtherLimits(t *testing.T) {
	nitrite := printed.Table(t, "brine/nitrite-limits.csv")
	require.Len(t, NitriteLimits(), len(nitrite))
	for i, r := range nitrite {
		l := NitriteLimits()[i]
		require.Equal(t, []string{r.Text("id"), r.Text("salt"), r.Text("fish")}, []string{l.ID, l.Salt, l.Fish})
		require.Equal(t, r.Int("least_ppm"), int64(l.Least/units.PartsPerMillion))
		require.Equal(t, r.Int("most_ppm"), int64(l.Most/units.PartsPerMillion))
		requireFrom(t, r, l.Citation)
	}
	keep := printed.Table(t, "brine/keep-limits.csv")
	require.Len(t, KeepLimits(), len(keep))
	for i, r := range keep {
		l := KeepLimits()[i]
		require.Equal(t, r.Text("id"), l.ID)
		requireFrom(t, r, l.Citation)
		if r.Has("salt_pct") {
			require.Equal(t, share(t, r, "salt_pct"), l.Salt)
			require.Greater(t, l.Salt, DefaultSaltLimit().Least)
			continue
		}
		require.Equal(t, r.Text("activity"), units.In(l.Activity, units.One, 2).String())
		require.Equal(t, r.Text("bound") == "below", l.Below)
		require.Contains(t, []string{"below", "at most"}, r.Text("bound"))
	}
	rules := printed.Table(t, "brine/salting-rules.csv")
	require.Len(t, SaltingRules(), len(rules))
	for i, r := range rules {
		l := SaltingRules()[i]
		require.Equal(t, r.Text("id"), string(l.ID))
		require.Equal(t, "at most "+r.Text("most_f")+" °F ("+r.Text("most_c")+" °C)", l.Limit.Text(units.Both))
		for col, scale := range map[string]units.Scale{"most_f": units.FahrenheitScale, "most_c": units.CelsiusScale} {
			printedAt, err := units.TemperatureOf(r.Decimal(col), scale)
			require.NoError(t, err)
			require.True(t, l.Limit.Admits(units.AmountOf(printedAt)), "as printed in either scale")
		}
		require.False(t, l.Limit.Admits(units.AmountOf(units.Fahrenheit(r.Float("most_f")+0.1))))
		requireFrom(t, r, l.Citation)
	}
}

func TestStrictestSaltLimit(t *testing.T) {
	for _, c := range []struct {
		smoked Smoking
		pack   Pack
		want   units.Ratio
	}{
		{0, 0, 35}, {HotSmoked, LowOxygenPack, 35}, {ColdSmoked, LowOxygenPack, 35},
		{HotSmoked, AirPack, 35}, {ColdSmoked, AirPack, 35}, {0, AirPack, 35},
	} {
		l := StrictestSaltLimit(c.smoked, c.pack)
		require.Equal(t, c.want*units.PerMille, l.Least, "%s, %s", c.smoked, c.pack)
		require.False(t, l.Nitrite)
	}
	require.Equal(t, DefaultSaltLimit(), StrictestSaltLimit(0, 0))
}

func TestBatches(t *testing.T) {
	fillets := []units.Mass{units.Kilogram, 3 * units.Pound, 700 * units.Gram, 3 * units.Pound}
	b, err := CureEach(fillets, 36*units.PerMille, Mix{Salt: 1, Sugar: 2, Others: []Part{{"pepper", 1}}})
	require.NoError(t, err)
	var salt, sugar, total, fish units.Mass
	for i, c := range b.Cures {
		require.Equal(t, fillets[i], c.Fillet)
		require.Equal(t, c.Total, c.Salt+c.Sugar+c.Others[0].Mass)
		require.Equal(t, c.Salt, c.Others[0].Mass)
		salt, sugar, total, fish = salt+c.Salt, sugar+c.Sugar, total+c.Total, fish+c.Fillet
	}
	require.Equal(t, []units.Mass{fish, salt, sugar, total}, []units.Mass{b.Fish, b.Salt, b.Sugar, b.Total})
	layers, err := b.Layers(3)
	require.NoError(t, err)
	require.Len(t, layers, 2)
	require.Equal(t, []int{2, 4, 1}, layers[0].Fillets)
	require.Equal(t, []int{3}, layers[1].Fillets)
	require.Equal(t, b.Total, layers[0].Cure+layers[1].Cure)
	_, err = b.Layers(0)
	require.ErrorIs(t, err, units.ErrRange)

	_, err = CureEach([]units.Mass{units.Kilogram, 0}, units.Percent, Mix{Salt: 1})
	require.ErrorAs(t, err, &FilletError{})
	require.ErrorIs(t, err, units.ErrRange)
	require.ErrorContains(t, err, "fillet 2: ")
	for _, n := range []int{0, 1001} {
		_, err = CureEach(make([]units.Mass, n), units.Percent, Mix{Salt: 1})
		require.ErrorIs(t, err, units.ErrRange)
	}
}

func TestOthersRefused(t *testing.T) {
	for _, name := range []string{"sodium nitrite", "Potassium NITRATE", "saltpetre", "pink salt", "Curing salt No. 1", "E250"} {
		_, err := DryCure(units.Kilogram, 30*units.PerMille, Mix{Salt: 1, Others: []Part{{name, 1}}})
		require.Equal(t, NitriteError{Name: name}, err)
	}
	for _, others := range [][]Part{{{"", 1}}, {{"pepper", -1}}, {{"pepper", 21}}, make([]Part, 17)} {
		_, err := DryCure(units.Kilogram, 30*units.PerMille, Mix{Salt: 1, Others: others})
		require.ErrorIs(t, err, units.ErrRange)
	}
	for _, c := range [][2]units.Ratio{{49 * units.Percent, 0}, {86 * units.Percent, 0}, {70 * units.Percent, -1}, {70 * units.Percent, 2*units.One + 1}} {
		_, err := BuryCure(units.Kilogram, c[0], c[1], Mix{Salt: 1})
		require.ErrorIs(t, err, units.ErrRange)
	}
}

// The same cups by weight, against the printed mixes.
func TestVolumeMixes(t *testing.T) {
	printed.Table(t, "brine/volume-mixes.csv").Each(t, func(t *testing.T, r printed.Row) {
		salt, err := WeighedSalt("salt", units.Cup, grams(t, r, "salt_g_per_cup"))
		require.NoError(t, err)
		sugar, err := FindIngredient(r.Text("sugar"))
		require.NoError(t, err)
		v, err := MixOfVolumes(units.Volume(r.Int("salt_cups"))*units.Cup, salt, units.Volume(r.Int("sugar_cups"))*units.Cup, sugar)
		require.NoError(t, err)
		printed.Within(t, r, "salt_share_pct", units.In(v.Salt, units.Percent, 10))
		printed.WithinFloat(t, r, "sugar_to_salt", float64(v.Mix.Sugar)/float64(v.Mix.Salt))
		require.Less(t, v.Lightest, v.Salt)
		require.Less(t, v.Lightest, v.Heaviest)
		require.InDelta(t, float64(v.Salt)/float64(v.AsWeights)-1, units.Float(v.Off, units.One), 1e-11)
	})
	salt, _ := FindIngredient("table salt")
	_, err := MixOfVolumes(units.Cup, salt, units.Cup, Ingredient{})
	require.ErrorAs(t, err, &SubstanceError{})
	_, err = MixOfVolumes(units.Cup, Ingredient{}, 0, Ingredient{})
	require.ErrorAs(t, err, &SubstanceError{})
	for _, v := range [][2]units.Volume{{0, units.Cup}, {-1, 0}, {units.Cup, -1}, {largestBrine + 1, 0}} {
		_, err := MixOfVolumes(v[0], salt, v[1], salt)
		require.ErrorIs(t, err, units.ErrRange)
	}
}
