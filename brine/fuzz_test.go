package brine

import (
	"encoding/json"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// Whatever is claimed: an error or an assessment, its verdict the worst of its findings, every finding with its rule, and
// claim and assessment come back from JSON.
func FuzzCheck(f *testing.F) {
	f.Add(uint16(0x1fff), uint16(5), int64(units.Kilogram), int64(30*units.Gram), int64(units.Cup), int64(30*units.PerMille),
		int64(24*time.Hour), 3.3, int64(units.Inch), int64(20*units.Percent), int64(35*units.PerMille))
	f.Add(uint16(0x0aaa), uint16(300), int64(-1), int64(1), int64(0), int64(units.One), int64(1), -30.0, int64(1), int64(0), int64(0))
	f.Fuzz(func(t *testing.T, given, words uint16, fish, salt, volume, ratio, long int64, celsius float64, thick, loss, share int64) {
		has := func(bit int) bool { return given>>bit&1 == 1 }
		table, err := FindIngredient("table salt")
		require.NoError(t, err)
		c := Claim{
			Method: Method(words % 3), Faces: Faces(words / 3 % 3), Fatness: Fatness(words / 9 % 3), Smoked: Smoking(words / 27 % 3),
			Pack: Pack(words / 81 % 3), ForJars: has(13), Nitrite: has(14), UsedBrine: has(15),
			Fish: units.Stated[units.Mass]{Value: units.Mass(fish), Given: has(0)}, Salt: units.Stated[units.Mass]{Value: units.Mass(salt), Given: has(1)},
			SaltVolume:     units.Stated[units.Volume]{Value: units.Volume(volume), Given: has(2)},
			SaltToFish:     units.Stated[units.Ratio]{Value: units.Ratio(ratio), Given: has(3)},
			Water:          units.Stated[units.Volume]{Value: units.Volume(volume), Given: has(4)},
			Strength:       units.Stated[units.Ratio]{Value: units.Ratio(ratio), Given: has(5)},
			Time:           units.Stated[time.Duration]{Value: time.Duration(long), Given: has(6)},
			Temperature:    units.Stated[units.Temperature]{Value: units.Celsius(celsius), Given: has(7)},
			Thickness:      units.Stated[units.Length]{Value: units.Length(thick), Given: has(8)},
			Loss:           units.Stated[units.Ratio]{Value: units.Ratio(loss), Given: has(9)},
			WaterPhaseSalt: units.Stated[units.Ratio]{Value: units.Ratio(share), Given: has(10)},
		}
		if has(11) {
			c.SaltAs = table
		}
		a, err := Check(c)
		if err != nil {
			require.Zero(t, a)
			return
		}
		worst := verdict.Met
		for _, found := range a.Findings {
			worst = verdict.Worst(worst, found.Verdict)
			require.NotEmpty(t, found.Rule)
			require.NotEmpty(t, found.Text(units.Metric))
		}
		require.Equal(t, worst, a.Verdict)
		if a.Verdict.Passes() && !c.ForJars {
			require.GreaterOrEqual(t, c.WaterPhaseSalt.Value, DefaultSaltLimit().Least)
			require.False(t, c.UsedBrine && a.Method == WetBrined)
		}
		text, err := json.Marshal(a)
		require.NoError(t, err)
		var back Assessment
		require.NoError(t, json.Unmarshal(text, &back), string(text))
		require.Empty(t, cmp.Diff(a, back))
	})
}
