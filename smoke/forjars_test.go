package smoke

import (
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// Invented recipes of fish for jars, judged by hand: losses of 10 to 30 % are those of J. Food Prot. 56(7):619, the day before canning is of PNW 450, and 140
// to 160 °F for at most 2 h is recalled from it; raw until canned, USDA Complete Guide, Guide 5, rev. 2015, p. 5-13.
func TestForJars(t *testing.T) {
	warm := func(f float64) units.Stated[units.Temperature] { return units.State(units.Fahrenheit(f)) }
	light := Claim{Smoking: HotSmoked, Air: warm(150), Time: units.State(2 * time.Hour)}
	for name, c := range map[string]struct {
		change   func(*Claim)
		loss     units.Ratio // below zero: not stated
		verdict  verdict.Verdict
		findings string
	}{
		"light":                     {func(*Claim) {}, 10 * units.Percent, verdict.Met, ""},
		"the driest tested":         {func(*Claim) {}, 30 * units.Percent, verdict.Met, ""},
		"a quantum drier":           {func(*Claim) {}, 30*units.Percent + 1, verdict.NotPublished, "loss different"},
		"a quantum less dry":        {func(*Claim) {}, 10*units.Percent - 1, verdict.NotPublished, "loss different"},
		"nobody weighed it":         {func(*Claim) {}, -1, verdict.CannotTell, "loss missing"},
		"method open":               {func(c *Claim) { c.Smoking = 0 }, units.Percent * 20, verdict.CannotTell, "smoking missing"},
		"cold smoke":                {func(c *Claim) { c.Smoking = ColdSmoked; c.Air = warm(80) }, 20 * units.Percent, verdict.NotPublished, "air of the smoker different"},
		"cold smoke, air not told":  {func(c *Claim) { *c = Claim{Smoking: ColdSmoked} }, 20 * units.Percent, verdict.NotPublished, ""},
		"warm, where germs grow":    {func(c *Claim) { c.Air = warm(100) }, 20 * units.Percent, verdict.Differs, "air of the smoker different"},
		"on the edges of the air":   {func(c *Claim) { c.Air = warm(140) }, 20 * units.Percent, verdict.Met, ""},
		"a degree below":            {func(c *Claim) { c.Air = warm(139) }, 20 * units.Percent, verdict.Differs, "air of the smoker different"},
		"a degree above":            {func(c *Claim) { c.Air = warm(161) }, 20 * units.Percent, verdict.Differs, "air of the smoker different"},
		"a minute longer":           {func(c *Claim) { c.Time.Value += time.Minute }, 20 * units.Percent, verdict.NotMet, "time in the smoker too long"},
		"cooked":                    {func(c *Claim) { c.Core = warm(145) }, 20 * units.Percent, verdict.Differs, "core different"},
		"warm inside, not cooked":   {func(c *Claim) { c.Core = warm(110) }, 20 * units.Percent, verdict.Met, ""},
		"a day in the refrigerator": {func(c *Claim) { c.Days, c.Keep = units.State(1), warm(35) }, 20 * units.Percent, verdict.Met, ""},
		"two days":                  {func(c *Claim) { c.Days, c.Keep = units.State(2), warm(35) }, 20 * units.Percent, verdict.NotMet, "days too long"},
		"a day, nobody says where":  {func(c *Claim) { c.Days = units.State(1) }, 20 * units.Percent, verdict.CannotTell, "storage missing"},
		"a day on the counter":      {func(c *Claim) { c.Days, c.Keep = units.State(1), warm(60) }, 20 * units.Percent, verdict.NotMet, "storage too warm"},
		"frozen for weeks":          {func(c *Claim) { c.Days, c.Keep = units.State(30), warm(0) }, 20 * units.Percent, verdict.Met, ""},
		"no air and no time stated": {func(c *Claim) { *c = Claim{Smoking: HotSmoked} }, 20 * units.Percent, verdict.Met, ""},
	} {
		claim := light
		c.change(&claim)
		loss := units.Stated[units.Ratio]{}
		if c.loss >= 0 {
			loss = units.State(c.loss)
		}
		claim.ForJars, claim.Loss = true, loss
		a, err := Check(claim)
		require.NoError(t, err, name)
		var found []string
		for _, f := range a.Findings {
			found = append(found, f.What+" "+f.Kind.String())
			if f.Kind != verdict.Missing || f.Wanted.IsStated() {
				require.NoError(t, f.Citation.Check(), name)
			}
		}
		require.Equal(t, c.findings, strings.Join(found, "; "), name)
		require.Equal(t, c.verdict, a.Verdict, name)
		require.Equal(t, c.verdict == verdict.NotPublished, a.Refusal != (cite.Caution{}), name)
		require.Zero(t, a.Governing, name)
		require.Contains(t, a.Cautions, forJarsOnly, name)
		require.Contains(t, a.Cautions, jarSoon, name)
	}
}

func TestForJarsRefused(t *testing.T) {
	for name, c := range map[string]struct {
		claim Claim
		loss  units.Ratio
	}{
		"a loss below zero": {Claim{}, -1}, "a loss above all": {Claim{}, units.One + 1}, "an unknown method": {Claim{Smoking: ColdSmoked + 1}, 0},
		"an unknown pack": {Claim{Pack: LowOxygenPack + 1}, 0}, "a time below zero": {Claim{Time: units.State(time.Duration(-1))}, 0},
		"a core that boils": {Claim{Core: units.State(units.Celsius(101))}, 0}, "days below zero": {Claim{Days: units.State(-1)}, 0},
	} {
		c.claim.ForJars, c.claim.Loss = true, units.State(c.loss)
		a, err := Check(c.claim)
		require.True(t, errors.Is(err, units.ErrRange) || errors.Is(err, units.ErrUnknown), name)
		require.Zero(t, a.Verdict, name)
	}
}
