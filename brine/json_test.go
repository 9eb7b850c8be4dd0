package brine_test

import (
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/units"
)

func requireBack[T any](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	require.NotEqual(t, "{}", string(text))
	var back T
	require.NoError(t, json.Unmarshal(text, &back), string(text))
	require.Empty(t, cmp.Diff(v, back), string(text))
}

// requireGolden holds a value against its file in testdata/golden, and shows what it is now where the two differ.
func requireGolden[T any](t *testing.T, name string, v T) {
	t.Helper()
	got, err := json.MarshalIndent(v, "", "  ")
	require.NoError(t, err)
	want, err := os.ReadFile(filepath.Join("..", "testdata", "golden", name+".json"))
	if err != nil || string(want) != string(got)+"\n" {
		t.Fatalf("testdata/golden/%s.json is not as it is now (%v):\n%s", name, err, got)
	}
	var back T
	require.NoError(t, json.Unmarshal(want, &back))
	require.True(t, reflect.DeepEqual(v, back), "%+v\n%+v", v, back)
}

// recipe is a cure on a card: too warm, between the published doses, and nobody measured the salt.
func recipe(t *testing.T) brine.Claim {
	t.Helper()
	salt, err := brine.FindIngredient("table salt")
	require.NoError(t, err)
	return brine.Claim{
		Fish: units.State(2 * units.Kilogram), SaltVolume: units.State(units.Cup / 2), SaltAs: salt,
		Sugar: units.State(288 * units.Gram), Time: units.State(24 * time.Hour), Temperature: units.State(units.Fahrenheit(41)),
		Thickness: units.State(units.Inch), Faces: brine.OneFace, Fatness: brine.FatFish, Smoked: brine.HotSmoked,
		Pack: brine.LowOxygenPack, Loss: units.State(20 * units.Percent), Nitrite: true,
	}
}

func TestJSONComesBack(t *testing.T) {
	c := recipe(t)
	requireBack(t, c)
	requireBack(t, c.SaltAs)
	c.Ungutted, c.UsedBrine, c.MixedLoad = true, true, true
	requireBack(t, c)
	c = recipe(t)
	a, err := brine.Check(c)
	require.NoError(t, err)
	requireBack(t, a)
	requireGolden(t, "brine-assessment", a)

	mix := brine.Mix{Salt: 1, Sugar: 2, Others: []brine.Part{{Name: "pepper", Parts: 1}}}
	requireBack(t, mix)
	batch, err := brine.CureEach([]units.Mass{800 * units.Gram, 1_200 * units.Gram}, 36*units.PerMille, mix)
	require.NoError(t, err)
	requireBack(t, batch)
	requireBack(t, batch.Cures[0])
	requireGolden(t, "brine-cure", batch.Cures[0])
	volumes, err := batch.Cures[0].Volumes(c.SaltAs, mustFind(t, "white sugar"))
	require.NoError(t, err)
	requireBack(t, volumes)
	cups, err := brine.MixOfVolumes(units.Cup, c.SaltAs, 2*units.Cup, mustFind(t, "white sugar"))
	require.NoError(t, err)
	requireBack(t, cups)

	curing := brine.Curing{Raw: units.Kilogram, Water: 716_400 * units.Milligram, Salt: 30 * units.Gram, Drip: 80 * units.Gram}
	requireBack(t, curing)
	end, err := curing.Equilibrium()
	require.NoError(t, err)
	requireBack(t, end)
	requireGolden(t, "brine-equilibrium", end)
	slab := brine.Slab{Thickness: units.Inch, Faces: brine.OneFace}
	requireBack(t, slab)
	saturated, _ := solution.Saturation()
	estimate, err := slab.WaterPhaseSaltRange(saturated, end.Cured, brine.FleshDiffusivity(), 24*time.Hour)
	require.NoError(t, err)
	requireBack(t, estimate)
	requireGolden(t, "brine-estimate", estimate)

	conditions := brine.Conditions{WaterPhaseSalt: 35 * units.PerMille, Temperature: units.Celsius(3)}
	requireBack(t, conditions)
	growths, err := conditions.Holds()
	require.NoError(t, err)
	for _, g := range growths {
		requireBack(t, g)
	}
	long, err := brine.FindSaltingTime(units.Inch, brine.FatFish)
	require.NoError(t, err)
	requireBack(t, long)
}

func mustFind(t *testing.T, name string) brine.Ingredient {
	t.Helper()
	i, err := brine.FindIngredient(name)
	require.NoError(t, err)
	return i
}

// A recipe that loses a unit or names a field that is none is refused, and the value stays as it was.
func TestJSONRefuses(t *testing.T) {
	for text, field := range map[string]string{
		`{"fish": 2}`:                              "fish",
		`{"fish": "2"}`:                            "fish",
		`{"fish": null}`:                           "fish",
		`{"fish": "2 kg", "fish": "3 kg"}`:         "fish",
		`{"saltToFish": 3}`:                        "saltToFish",
		`{"saltToFish": "3"}`:                      "saltToFish",
		`{"dose": "3 %"}`:                          "dose",
		`{"temperature": "38"}`:                    "temperature",
		`{"temperature": "5 F°"}`:                  "temperature",
		`{"time": "24"}`:                           "time",
		`{"pack": "jar"}`:                          "pack",
		`{"pack": 1}`:                              "pack",
		`{"faces": "three faces"}`:                 "faces",
		`{"nitrite": "no"}`:                        "nitrite",
		`{"saltAs": {"name": "x"}}`:                "saltAs.substance",
		`{"method": "dry salted"} {"method": "1"}`: "",
	} {
		c := brine.Claim{Method: brine.WetBrined}
		err := json.Unmarshal([]byte(text), &c)
		require.Error(t, err, text)
		var fault units.FieldError
		if field != "" {
			require.True(t, errors.As(err, &fault), "%s: %v", text, err)
			require.Equal(t, field, fault.Field, text)
		}
		require.Equal(t, brine.Claim{Method: brine.WetBrined}, c, "stays as it was")
	}
	for _, text := range []string{
		`{}`, `{"sugar": 1}`, `{"salt": "1"}`, `{"salt": 1.5}`, `{"salt": "1 kg"}`, `{"salt": 1, "pepper": 1}`, `[1, 4]`, `"1:4"`,
		`{"salt": 1, "others": [{"name": "pepper"}]}`, `{"salt": 9223372036854775808}`,
	} {
		m := brine.Mix{Salt: 7}
		require.Error(t, json.Unmarshal([]byte(text), &m), text)
		require.Equal(t, brine.Mix{Salt: 7}, m)
	}
	var c brine.Claim
	require.ErrorContains(t, json.Unmarshal([]byte(`{"saltAs": "coarse salt"}`), &c), "coarse salt")
}
