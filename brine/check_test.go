package brine

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

func stated[T comparable](t *testing.T, r printed.Row, col string, parse func(string) (T, error)) units.Stated[T] {
	t.Helper()
	if !r.Has(col) {
		return units.Stated[T]{}
	}
	v, err := parse(r.Text(col))
	require.NoError(t, err, col)
	return units.State(v)
}

// claim reads a row of recipe figures; an empty cell is not stated.
func claim(t *testing.T, r printed.Row) Claim {
	t.Helper()
	c := Claim{
		Method:  map[string]Method{"dry salted": DrySalted, "wet brined": WetBrined}[r.Text("method")],
		Faces:   map[string]Faces{"one": OneFace, "two": TwoFaces}[r.Text("faces")],
		Fatness: map[string]Fatness{"fat": FatFish, "lean": LeanFish}[r.Text("fatness")],
		Smoked:  map[string]Smoking{"hot-smoked": HotSmoked, "cold-smoked": ColdSmoked}[r.Text("smoked")],
		Pack:    map[string]Pack{"air pack": AirPack, "low-oxygen pack": LowOxygenPack}[r.Text("pack")],
		Nitrite: r.Text("nitrite") == "yes",
	}
	if r.Has("salt_as") {
		var err error
		c.SaltAs, err = FindIngredient(r.Text("salt_as"))
		require.NoError(t, err)
	}
	c.Fish = stated(t, r, "fish", units.ParseMass)
	c.Salt = stated(t, r, "salt", units.ParseMass)
	c.SaltVolume = stated(t, r, "salt_volume", units.ParseVolume)
	c.SaltToFish = stated(t, r, "salt_to_fish", units.ParseRatio)
	c.Water = stated(t, r, "water", units.ParseVolume)
	c.Strength = stated(t, r, "strength", units.ParseRatio)
	c.Time = stated(t, r, "time", time.ParseDuration)
	c.Temperature = stated(t, r, "temperature", units.ParseTemperature)
	c.Thickness = stated(t, r, "thickness", units.ParseLength)
	c.Loss = stated(t, r, "loss", units.ParseRatio)
	c.WaterPhaseSalt = stated(t, r, "wps", units.ParseRatio)
	return c
}

func TestCheck(t *testing.T) {
	printed.Table(t, "brine/claims.csv").Each(t, func(t *testing.T, r printed.Row) {
		a, err := Check(claim(t, r))
		require.NoError(t, err)
		var found []string
		for _, f := range a.Findings {
			found = append(found, strings.TrimSpace(f.What+" "+f.Kind.String()+" "+f.By.Text(units.US, units.Up)))
			if f.Kind != verdict.Missing {
				require.NoError(t, f.Citation.Check(), f.String())
			}
		}
		require.Equal(t, r.Text("findings"), strings.Join(found, "; "), "%v", a.Findings)
		require.Equal(t, r.Text("verdict"), a.Verdict.String())
		require.NotEmpty(t, a.Cautions)
		for _, c := range a.Cautions {
			require.NoError(t, c.Citation.Check(), c.Text)
		}
	})
}

// A quantum of salt less, a quantum of warmth more, a quantum of water phase salt less: each falls short by itself.
func TestCheckToTheQuantum(t *testing.T) {
	good := Claim{
		SaltToFish: units.State(30 * units.PerMille), Time: units.State(24 * time.Hour), Temperature: units.State(units.Fahrenheit(38)),
		WaterPhaseSalt: units.State(35 * units.PerMille),
	}
	judged := func(change func(*Claim)) verdict.Verdict {
		c := good
		change(&c)
		a, err := Check(c)
		require.NoError(t, err)
		return a.Verdict
	}
	require.Equal(t, verdict.Met, judged(func(*Claim) {}))
	require.Equal(t, verdict.NotMet, judged(func(c *Claim) { c.SaltToFish.Value-- }))
	require.Equal(t, verdict.NotMet, judged(func(c *Claim) { c.WaterPhaseSalt.Value-- }))
	require.Equal(t, verdict.NotMet, judged(func(c *Claim) { c.Temperature.Value = c.Temperature.Value.Add(1) }))
	require.Equal(t, verdict.CannotTell, judged(func(c *Claim) { c.Temperature = units.Stated[units.Temperature]{} }))
	require.Equal(t, verdict.CannotTell, judged(func(c *Claim) { c.Time = units.Stated[time.Duration]{} }))
	require.Equal(t, verdict.CannotTell, judged(func(c *Claim) { c.WaterPhaseSalt = units.Stated[units.Ratio]{} }))
	require.Equal(t, verdict.CannotTell, judged(func(c *Claim) { c.SaltToFish = units.Stated[units.Ratio]{}; c.Method = DrySalted }))
}

// No estimate passes a recipe, however long and thin: the highest that the model can come to is still not a measured share.
func TestNoEstimatePasses(t *testing.T) {
	for _, faces := range []Faces{OneFace, TwoFaces} {
		for _, thickness := range []units.Length{units.Inch / 2, units.Inch, 2 * units.Inch} {
			for hours := 1; hours <= 240; hours *= 3 {
				for _, c := range []Claim{
					{SaltToFish: units.State(30 * units.PerMille), Temperature: units.State(units.Fahrenheit(36))},
					{Strength: units.State(26 * units.Percent), Temperature: units.State(units.Fahrenheit(36))},
				} {
					c.Thickness, c.Faces, c.Time, c.Loss = units.State(thickness), faces, units.State(time.Duration(hours)*time.Hour), units.State(20*units.Percent)
					a, err := Check(c)
					require.NoError(t, err)
					require.GreaterOrEqual(t, a.Verdict, verdict.CannotTell)
					require.False(t, a.Estimate.Citation.IsZero())
				}
			}
		}
	}
}

// No salt is not the same as no figure.
func TestNoSaltStated(t *testing.T) {
	for what, c := range map[string]Claim{
		"salt to fish": {SaltToFish: units.State(units.Ratio(0))}, "brine strength": {Strength: units.State(units.Ratio(0))},
	} {
		a, err := Check(c)
		require.NoError(t, err)
		require.Equal(t, verdict.NotMet, a.Verdict)
		require.Contains(t, a.Findings[0].String(), what+": 0 % stated, ")
	}
}

// In jars the process keeps the fish: little salt, or a salt without a weight, is no fault there, and warmth is.
func TestForJars(t *testing.T) {
	cold := units.State(units.Fahrenheit(38))
	for name, c := range map[string]struct {
		claim   Claim
		verdict verdict.Verdict
	}{
		"little salt":      {Claim{SaltToFish: units.State(units.Percent), Temperature: cold}, verdict.Met},
		"between doses":    {Claim{SaltToFish: units.State(5 * units.Percent), Temperature: cold}, verdict.Met},
		"a nameless salt":  {Claim{Method: WetBrined, SaltVolume: units.State(units.Cup), Temperature: cold}, verdict.Met},
		"a warm brine":     {Claim{Strength: units.State(10 * units.Percent), Time: units.State(time.Hour), Temperature: units.State(units.Fahrenheit(61))}, verdict.NotMet},
		"a warm dry cure":  {Claim{SaltToFish: units.State(3 * units.Percent), Temperature: units.State(units.Fahrenheit(39))}, verdict.NotMet},
		"nitrite":          {Claim{SaltToFish: units.State(3 * units.Percent), Temperature: cold, Nitrite: true}, verdict.Differs},
		"a cold brine":     {Claim{Method: WetBrined, Temperature: units.State(units.Celsius(-2))}, verdict.Met},
		"a vacuum pack":    {Claim{SaltToFish: units.State(3 * units.Percent), Temperature: cold, Pack: LowOxygenPack}, verdict.Differs},
		"an air pack":      {Claim{SaltToFish: units.State(3 * units.Percent), Temperature: cold, Pack: AirPack}, verdict.Met},
		"two methods":      {Claim{SaltToFish: units.State(3 * units.Percent), Method: WetBrined, Temperature: cold}, verdict.Differs},
		"nothing but jars": {Claim{}, verdict.CannotTell},
	} {
		c.claim.ForJars = true
		a, err := Check(c.claim)
		require.NoError(t, err, name)
		require.Equal(t, c.verdict, a.Verdict, name)
		require.Zero(t, a.Limit, name)
		require.Zero(t, a.Estimate, name)
		require.Contains(t, a.Cautions, saltInJars, name)
		require.NotContains(t, a.Cautions, measureIt, name)
		c.claim.ForJars = false
		a, err = Check(c.claim)
		require.NoError(t, err, name)
		require.NotEqual(t, verdict.Met, a.Verdict, name)
		require.NotContains(t, a.Cautions, saltInJars, name)
	}
}

// Fish that was buried in salt is freshened before it is smoked; that from a measured dose is not.
func TestBuriedFishIsFreshened(t *testing.T) {
	for dose, warned := range map[units.Ratio]bool{quarter: true, quarter - 1: false, handSalted: false} {
		a, err := Check(Claim{SaltToFish: units.State(dose)})
		require.NoError(t, err)
		if warned {
			require.Contains(t, a.Cautions, excess)
		} else {
			require.NotContains(t, a.Cautions, excess)
		}
	}
}

func TestUnknownCountsAsNotStated(t *testing.T) {
	require.Equal(t, DefaultSaltLimit(), StrictestSaltLimit(ColdSmoked+1, LowOxygenPack+1))
}

func TestClaimsRefused(t *testing.T) {
	for name, c := range map[string]Claim{
		"no fish": {Fish: units.State(units.Mass(0))}, "too much fish": {Fish: units.State(101 * units.Kilogram)}, "negative salt": {Salt: units.State(units.Mass(-1))},
		"negative sugar": {Sugar: units.State(units.Mass(-1))}, "no water": {Water: units.State(units.Volume(0))}, "negative cups": {SaltVolume: units.State(units.Volume(-1))},
		"negative dose": {SaltToFish: units.State(units.Ratio(-1))}, "dose above all": {SaltToFish: units.State(units.One + 1)}, "strength above all": {Strength: units.State(2 * units.One)},
		"negative loss": {Loss: units.State(units.Ratio(-1))}, "negative share": {WaterPhaseSalt: units.State(units.Ratio(-1))}, "more than dissolves": {WaterPhaseSalt: units.State(27 * units.Percent)}, "no time": {Time: units.State(time.Duration(0))},
		"a season": {Time: units.State(longest + 1)}, "no thickness": {Thickness: units.State(units.Length(0))}, "a temperature not set": {Temperature: units.State(units.Temperature{})},
		"boiling": {Temperature: units.State(units.Celsius(100))}, "all lost": {SaltToFish: units.State(units.Percent), Loss: units.State(70 * units.Percent)},
	} {
		a, err := Check(c)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, a.Verdict, name)
	}
	for name, c := range map[string]Claim{
		"an unknown method": {Method: WetBrined + 1}, "unknown faces": {Faces: TwoFaces + 1}, "an unknown fatness": {Fatness: LeanFish + 1},
		"an unknown smoking": {Smoked: ColdSmoked + 1}, "an unknown pack": {Pack: LowOxygenPack + 1},
	} {
		a, err := Check(c)
		require.ErrorIs(t, err, units.ErrUnknown, name)
		require.Zero(t, a, name)
	}
	sugar, err := FindIngredient("honey")
	require.NoError(t, err)
	_, err = Check(Claim{SaltVolume: units.State(units.Cup), SaltAs: sugar})
	require.ErrorAs(t, err, &SubstanceError{})
}

func BenchmarkCheck(b *testing.B) {
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := Check(Claim{SaltToFish: units.State(30 * units.PerMille), Time: units.State(24 * time.Hour)}); err != nil {
			b.Fatal(err)
		}
	}
}
