package brine

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// sound is a claim that passes: each test takes one thing from it.
func sound() Claim {
	return Claim{
		Fish: units.State(units.Kilogram), Salt: units.State(30 * units.Gram), SaltToFish: units.State(handSalted),
		Time: units.State(24 * time.Hour), Temperature: units.State(units.Fahrenheit(38)), Thickness: units.State(units.Inch),
		Faces: OneFace, Smoked: HotSmoked, Pack: LowOxygenPack, Loss: units.State(20 * units.Percent),
		WaterPhaseSalt: units.State(35 * units.PerMille),
	}
}

// A figure that lost its unit is refused by its size, and says so; the least that is accepted is accepted.
func TestBareNumbers(t *testing.T) {
	for name, c := range map[string]struct {
		bare, least func(*Claim)
	}{
		"fish":        {func(c *Claim) { c.Fish.Value = 450 }, func(c *Claim) { c.Fish.Value = units.Gram }},
		"salt":        {func(c *Claim) { c.Salt.Value = 30 }, func(c *Claim) { c.Salt.Value = units.Gram / 10 }},
		"sugar":       {func(c *Claim) { c.Sugar = units.State[units.Mass](60) }, func(c *Claim) { c.Sugar = units.State(units.Gram / 10) }},
		"salt volume": {func(c *Claim) { c.SaltVolume = units.State[units.Volume](2) }, func(c *Claim) { c.SaltVolume = units.State(units.Millilitre / 10) }},
		"water":       {func(c *Claim) { c.Water = units.State[units.Volume](4) }, func(c *Claim) { c.Water = units.State(units.Millilitre / 10) }},
		"dose":        {func(c *Claim) { c.SaltToFish.Value = 3 }, func(c *Claim) { c.SaltToFish.Value = units.Percent / 100 }},
		"strength":    {func(c *Claim) { c.Strength = units.State[units.Ratio](8) }, func(c *Claim) { c.Strength = units.State(units.Percent / 100) }},
		"loss":        {func(c *Claim) { c.Loss.Value = 20 }, func(c *Claim) { c.Loss.Value = units.Percent / 100 }},
		"share":       {func(c *Claim) { c.WaterPhaseSalt.Value = 4 }, func(c *Claim) { c.WaterPhaseSalt.Value = units.Percent / 100 }},
		"time":        {func(c *Claim) { c.Time.Value = 24 }, func(c *Claim) { c.Time.Value = time.Second }},
		"thickness":   {func(c *Claim) { c.Thickness.Value = 25 }, func(c *Claim) { c.Thickness.Value = units.Millimetre }},
	} {
		bare, least := sound(), sound()
		c.bare(&bare)
		_, err := Check(bare)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.ErrorContains(t, err, "(was the unit left out?)", name)
		c.least(&least)
		_, err = Check(least)
		require.NoError(t, err, name)
	}
}

// Doubt only makes a verdict worse: whatever is wrong with a recipe, a contradiction in it never makes it milder.
func TestDoubtNeverImproves(t *testing.T) {
	for name, wrong := range map[string]func(*Claim){
		"nothing": func(*Claim) {}, "warm": func(c *Claim) { c.Temperature.Value = units.Fahrenheit(45) },
		"no time": func(c *Claim) { c.Time.Given = false }, "nitrite": func(c *Claim) { c.Nitrite = true },
		"guts": func(c *Claim) { c.Ungutted = true }, "5 %": func(c *Claim) { c.Salt.Value, c.SaltToFish.Value = 50*units.Gram, 5*units.Percent },
		"short": func(c *Claim) { c.Salt.Value, c.SaltToFish.Value = 20*units.Gram, 2*units.Percent },
		"mixed": func(c *Claim) { c.MixedLoad = true }, "nothing measured": func(c *Claim) { c.WaterPhaseSalt.Given = false },
	} {
		c := sound()
		wrong(&c)
		clean, err := Check(c)
		require.NoError(t, err, name)
		for what, contradict := range map[string]func(*Claim){
			"dose":      func(c *Claim) { c.SaltToFish.Value = c.SaltToFish.Value * 11 / 10 },
			"thickness": func(c *Claim) { c.Thickness.Value = 300 * units.Millimetre },
			"measured":  func(c *Claim) { c.WaterPhaseSalt = units.State(20 * units.Percent) },
			"frozen":    func(c *Claim) { c.Temperature = units.State(units.Celsius(-29)) },
		} {
			d := c
			contradict(&d)
			a, err := Check(d)
			require.NoError(t, err, what)
			require.False(t, a.Verdict.Passes(), "%s, %s", name, what)
			if what == "dose" || what == "thickness" { // the others change a figure that was wrong itself
				require.GreaterOrEqual(t, a.Verdict, clean.Verdict, "%s, %s", name, what)
			}
		}
	}
}

// Warmer, or a lower measured share, never improves a verdict that was believed; and no measured share passes below the limit.
func TestWarmerAndWeakerNeverImprove(t *testing.T) {
	c := sound()
	before := verdict.Met
	for f := 30.0; f <= 70; f += 0.1 {
		c.Temperature.Value = units.Fahrenheit(f)
		a, err := Check(c)
		require.NoError(t, err)
		require.GreaterOrEqual(t, a.Verdict, before)
		before = a.Verdict
	}
	c = sound()
	for share := units.Ratio(0); share < 7*units.Percent; share += units.PerMille / 4 {
		c.WaterPhaseSalt.Value = share
		a, err := Check(c)
		require.NoError(t, err)
		require.Equal(t, share >= 35*units.PerMille, a.Verdict.Passes(), share.String())
	}
}

// No plan and no estimate has more salt than there is: the share is never above what all the salt gives.
func TestMassBalanceHolds(t *testing.T) {
	for _, dose := range []units.Ratio{units.Percent, handSalted, 10 * units.Percent, third} {
		for _, loss := range []units.Ratio{0, 10 * units.Percent, 30 * units.Percent} {
			for _, hours := range []time.Duration{1, 24, 240, 1_440} {
				for _, water := range []units.Volume{0, units.Litre / 5, units.Litre, 20 * units.Litre} {
					c := Claim{
						Fish: units.State(2 * units.Kilogram), SaltToFish: units.State(dose), Thickness: units.State(units.Inch / 2),
						Faces: TwoFaces, Time: units.State(hours * time.Hour), Loss: units.State(loss),
					}
					salt, err := dose.Of(c.Fish.Value)
					require.NoError(t, err)
					if water > 0 {
						c.SaltToFish, c.Salt, c.Water = units.Stated[units.Ratio]{}, units.State(salt), units.State(water)
					}
					a, err := Check(c)
					require.NoError(t, err)
					require.False(t, a.Estimate.Citation.IsZero())
					left, err := (driest - loss).Of(c.Fish.Value)
					require.NoError(t, err)
					all, err := units.RatioOf(salt, salt+left)
					require.NoError(t, err)
					require.LessOrEqual(t, a.Estimate.High, min(all+1, 263_950_000_000), "%+v", c)
					require.LessOrEqual(t, a.Estimate.Low, a.Estimate.Likely)
					require.LessOrEqual(t, a.Estimate.Likely, a.Estimate.High)
				}
			}
		}
	}
}

// A limit that is chosen by name never lets pass what it is not for.
func TestChosenLimits(t *testing.T) {
	for _, l := range SaltLimits() {
		for n := 0; n < 3*3*2; n++ {
			c := sound()
			c.Smoked, c.Pack, c.Nitrite = Smoking(n%3), Pack(n/3%3), n >= 9
			c.WaterPhaseSalt.Value = l.Least
			a, err := CheckAgainst(c, l.ID)
			require.NoError(t, err)
			strict := StrictestSaltLimit(c.Smoked, c.Pack)
			fits := (l.Pack == 0 || l.Pack == c.Pack) && (l.Smoked == 0 || l.Smoked == c.Smoked) && !l.Nitrite
			require.Equal(t, !c.Nitrite && !l.Nitrite && (fits || l.Least >= strict.Least), a.Verdict.Passes(), "%s: %+v", l.ID, c)
			c.WaterPhaseSalt.Value--
			a, err = CheckAgainst(c, l.ID)
			require.NoError(t, err)
			require.False(t, a.Verdict.Passes(), "a quantum less")
		}
	}
	c := sound()
	c.ForJars = true
	a, err := CheckAgainst(c, MichiganAir)
	require.NoError(t, err)
	require.Zero(t, a.Limit)
	_, err = CheckAgainst(c, "WPS-MI")
	require.ErrorIs(t, err, units.ErrUnknown)
}
