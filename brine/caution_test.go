package brine

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units/cite"
)

// Every caution has an ID of its own and is whole sentences for whoever stands at the table, none longer than a breath.
func TestCautions(t *testing.T) {
	seen := map[cite.CautionID]bool{}
	for _, c := range []cite.Caution{
		measureIt, keepCold, rinseOff, letRest, lowDose, untested, excess, overThird, sugarNote, weighIt, figuresOnly, gutFirst,
		oneKind, freshBrine, filmBreathes, chosenLimit, variance, saltInJars, anEstimate, eatSoon,
	} {
		require.False(t, seen[c.ID], c.ID)
		seen[c.ID] = true
		require.True(t, strings.HasPrefix(string(c.ID), "brine."), c.ID)
		require.NoError(t, c.Citation.Check(), c.ID)
		require.True(t, strings.HasSuffix(c.Text, "."), c.Text)
		for _, sentence := range strings.SplitAfter(c.Text, ". ") {
			require.Regexp(t, `^[A-Z]`, sentence)
			require.LessOrEqual(t, len(strings.Fields(sentence)), 25, sentence)
		}
	}
}

// What must be shown beside a verdict depends on what was judged.
func TestCautionsOfAVerdict(t *testing.T) {
	of := func(change func(*Claim), id SaltLimitID) []cite.Caution {
		c := sound()
		change(&c)
		var a Assessment
		var err error
		if id == "" {
			a, err = Check(c)
		} else {
			a, err = CheckAgainst(c, id)
		}
		require.NoError(t, err)
		return a.Cautions
	}
	vacuum := of(func(*Claim) {}, "")
	require.Contains(t, vacuum, gutFirst)
	require.Contains(t, vacuum, oneKind)
	for _, not := range []cite.Caution{filmBreathes, freshBrine, chosenLimit, variance} {
		require.NotContains(t, vacuum, not)
	}
	air := func(c *Claim) { c.Pack = AirPack }
	require.Contains(t, of(air, ""), filmBreathes)
	require.Contains(t, of(air, MichiganAir), chosenLimit)
	require.NotContains(t, of(air, MichiganAir), variance)
	require.Contains(t, of(func(c *Claim) { c.Pack, c.Smoked = AirPack, ColdSmoked }, MichiganAir), variance)
	require.Contains(t, of(func(c *Claim) { c.Method = WetBrined }, ""), freshBrine)
	deciding := true
	for _, c := range vacuum {
		require.True(t, deciding || !c.Deciding, "deciding first")
		deciding = c.Deciding
	}
}
