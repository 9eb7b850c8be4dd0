package smoke

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// Invented recipes of fish for jars, judged by hand: losses of 10 to 30 % are those of J. Food Prot. 56(7):619, the day before canning is of PNW 450, and 140
// to 160 °F for at most 2 h is recalled from it; raw until canned, USDA Complete Guide, Guide 5, rev. 2015, p. 5-13.
func TestForJars(t *testing.T) {
	warm := func(f float64) units.Stated[units.Temperature] { return units.State(units.Fahrenheit(f)) }
	light := Claim{Method: HotSmoke, Air: warm(150), Time: units.State(2 * time.Hour)}
	for name, c := range map[string]struct {
		change   func(*Claim)
		loss     units.Ratio // below zero: not stated
		verdict  RecipeVerdict
		findings string
	}{
		"light":                     {func(*Claim) {}, 10 * units.Percent, RecipeMeets, ""},
		"the driest tested":         {func(*Claim) {}, 30 * units.Percent, RecipeMeets, ""},
		"a quantum drier":           {func(*Claim) {}, 30*units.Percent + 1, RecipeNotPublished, "loss different"},
		"a quantum less dry":        {func(*Claim) {}, 10*units.Percent - 1, RecipeNotPublished, "loss different"},
		"nobody weighed it":         {func(*Claim) {}, -1, RecipeCannotTell, "loss not stated"},
		"method open":               {func(c *Claim) { c.Method = 0 }, units.Percent * 20, RecipeCannotTell, "method not stated"},
		"cold smoke":                {func(c *Claim) { c.Method = ColdSmoke; c.Air = warm(80) }, 20 * units.Percent, RecipeNotPublished, "air of the smoker different"},
		"cold smoke, air not told":  {func(c *Claim) { *c = Claim{Method: ColdSmoke} }, 20 * units.Percent, RecipeNotPublished, ""},
		"warm, where germs grow":    {func(c *Claim) { c.Air = warm(100) }, 20 * units.Percent, RecipeDiffers, "air of the smoker different"},
		"on the edges of the air":   {func(c *Claim) { c.Air = warm(140) }, 20 * units.Percent, RecipeMeets, ""},
		"a degree below":            {func(c *Claim) { c.Air = warm(139) }, 20 * units.Percent, RecipeDiffers, "air of the smoker different"},
		"a degree above":            {func(c *Claim) { c.Air = warm(161) }, 20 * units.Percent, RecipeDiffers, "air of the smoker different"},
		"a minute longer":           {func(c *Claim) { c.Time.Value += time.Minute }, 20 * units.Percent, RecipeFallsShort, "time in the smoker too long"},
		"cooked":                    {func(c *Claim) { c.Core = warm(145) }, 20 * units.Percent, RecipeDiffers, "core different"},
		"warm inside, not cooked":   {func(c *Claim) { c.Core = warm(110) }, 20 * units.Percent, RecipeMeets, ""},
		"a day in the refrigerator": {func(c *Claim) { c.Days, c.Keep = units.State(1), warm(35) }, 20 * units.Percent, RecipeMeets, ""},
		"two days":                  {func(c *Claim) { c.Days, c.Keep = units.State(2), warm(35) }, 20 * units.Percent, RecipeFallsShort, "days too long"},
		"a day, nobody says where":  {func(c *Claim) { c.Days = units.State(1) }, 20 * units.Percent, RecipeCannotTell, "storage not stated"},
		"a day on the counter":      {func(c *Claim) { c.Days, c.Keep = units.State(1), warm(60) }, 20 * units.Percent, RecipeFallsShort, "storage too warm"},
		"frozen for weeks":          {func(c *Claim) { c.Days, c.Keep = units.State(30), warm(0) }, 20 * units.Percent, RecipeMeets, ""},
		"no air and no time stated": {func(c *Claim) { *c = Claim{Method: HotSmoke} }, 20 * units.Percent, RecipeMeets, ""},
	} {
		claim := light
		c.change(&claim)
		loss := units.Stated[units.Ratio]{}
		if c.loss >= 0 {
			loss = units.State(c.loss)
		}
		a, err := CheckForJars(claim, loss)
		require.NoError(t, err, name)
		var found []string
		for _, f := range a.Findings {
			found = append(found, f.What+" "+f.Kind.String())
			if f.Kind != NotStated || f.Published != "" {
				require.NoError(t, f.Citation.Check(), name)
			}
		}
		require.Equal(t, c.findings, strings.Join(found, "; "), name)
		require.Equal(t, c.verdict, a.Verdict, name)
		require.Equal(t, c.verdict == RecipeNotPublished, a.Refusal != "", name)
		require.Zero(t, a.Governing, name)
		require.Contains(t, a.Cautions(), forJarsOnly, name)
		require.Contains(t, a.Cautions(), jarSoon, name)
	}
}

func TestForJarsRefused(t *testing.T) {
	for name, c := range map[string]struct {
		claim Claim
		loss  units.Ratio
	}{
		"a loss below zero": {Claim{}, -1}, "a loss above all": {Claim{}, units.One + 1}, "an unknown method": {Claim{Method: ColdSmoke + 1}, 0},
		"an unknown pack": {Claim{Pack: VacuumPack + 1}, 0}, "a time below zero": {Claim{Time: units.State(time.Duration(-1))}, 0},
		"a core that boils": {Claim{Core: units.State(units.Celsius(101))}, 0}, "days below zero": {Claim{Days: units.State(-1)}, 0},
	} {
		a, err := CheckForJars(c.claim, units.State(c.loss))
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, a.Verdict, name)
	}
}
