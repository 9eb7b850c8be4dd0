package coldchain_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

func TestWords(t *testing.T) {
	logged.Words(t, coldchain.Yersinia, coldchain.ParseHazard)
	logged.Words(t, coldchain.KitchenTwoHours, coldchain.ParseRule)
	logged.Words(t, coldchain.CookedFish, coldchain.ParseProduct)
	logged.Words(t, coldchain.EachBand, coldchain.ParseReading)
	logged.Words(t, coldchain.MeetLaterStep, coldchain.ParseStep)
	logged.Words(t, coldchain.IntoIce, coldchain.ParseLandingDemand)
	logged.Words(t, coldchain.Canned, coldchain.ParseUse)
	logged.Words(t, coldchain.Marine, coldchain.ParseWater)
	logged.Words(t, coldchain.Out, coldchain.ParsePlace)
	logged.Words(t, coldchain.WarmestPart, coldchain.ParseProbe)
	logged.Words(t, coldchain.NotInFreshwater, coldchain.ParseSpared)
	hazard, rule := coldchain.Salmonella, coldchain.TableA2
	require.Error(t, hazard.UnmarshalText([]byte("mould")))
	require.Error(t, rule.UnmarshalText([]byte("thumb")))
	require.Equal(t, coldchain.Salmonella, hazard)
	require.Equal(t, coldchain.TableA2, rule)
	require.Len(t, coldchain.Hazards(), int(coldchain.Yersinia))
	require.Equal(t, "hazard(99)", coldchain.Hazard(99).String())
}

// Every hazard of table A-2 has a rule of its own.
func TestHazardRules(t *testing.T) {
	seen := map[verdict.Rule]bool{"": true}
	for _, h := range coldchain.Hazards() {
		require.False(t, seen[h.Rule()], h.String())
		seen[h.Rule()] = true
	}
	require.Empty(t, coldchain.Hazard(99).Rule())
}

// Every step has a sentence.
func TestSteps(t *testing.T) {
	for s := coldchain.KeepCold; s <= coldchain.MeetLaterStep; s++ {
		require.NotEmpty(t, s.Text(0), s.String())
	}
	require.Empty(t, coldchain.Step(99).Text(0))
}
