package yield

import (
	"errors"
	"testing"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"github.com/stretchr/testify/require"
)

// Where sources differ, a supply is planned with the lower: yellow perch 33.1 % (Wisconsin) against 44.5 % (Minnesota).
func TestFindTakesTheSafeSideAndNamesTheOther(t *testing.T) {
	s, err := Find(YellowPerch, Fillet)
	require.NoError(t, err)
	require.Equal(t, 331*units.PerMille, s.Likely)
	require.Len(t, s.Cautions, 2)
	require.Contains(t, s.Cautions[1].Text, "44.5 %")
	require.Contains(t, s.Cautions[1].String(), "Minnesota")
}

// Of a part taken off, the larger share is the safe side.
func TestFindTakesTheLargerPart(t *testing.T) {
	s, err := Find(Coho, Viscera)
	require.NoError(t, err)
	require.Equal(t, "farmed, male", s.Stock)
}

func TestFindIsTheLowestShareOrTheLargestPart(t *testing.T) {
	found := 0
	for species := Salmon; species <= OtherFish; species++ {
		for stage := Live; stage <= Gonad; stage++ {
			got, err := Find(species, stage)
			if err != nil {
				continue
			}
			found++
			require.Equal(t, Round, got.From)
			for _, s := range Shares(species) {
				if s.From == Round && s.To == stage {
					require.Equal(t, stage.IsPart(), s.Likely < got.Likely || s.Likely == got.Likely && stage.IsPart(), "%v %v", species, stage)
				}
			}
		}
	}
	require.Greater(t, found, 40)
}

func TestFindRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		species Species
		stage   Stage
		missing Missing
	}{
		"species not set":                     {0, Gutted, MissingSpecies},
		"species unknown":                     {200, Gutted, MissingSpecies},
		"stage not set":                       {Coho, 0, MissingStage},
		"stage unknown":                       {Coho, 200, MissingStage},
		"all salmon do not stand in for pink": {Pink, Gutted, MissingStage},
		"pink does not stand in for salmon":   {Salmon, SkinOnFillet, MissingStage},
		"a default is not published":          {Salmon, CanningReady, MissingStage},
		"another default is not published":    {Salmon, Bled, MissingStage},
		"counted from the live fish":          {AtlanticSalmon, Gutted, MissingStage},
		"trout column unclear":                {RainbowTrout, Headed, MissingStage},
		"coho fillet contradicts itself":      {Coho, Fillet, MissingStage},
		"whole fish":                          {Coho, Round, MissingStage},
	} {
		_, err := Find(c.species, c.stage)
		var none NotPublishedError
		require.True(t, errors.As(err, &none), "%s: %v", name, err)
		require.Equal(t, c.missing, none.Missing, name)
		require.NotErrorIs(t, err, units.ErrRange, name)
		if c.missing == MissingSpecies {
			require.Contains(t, none.Stated, "coho", name)
		}
	}
	require.Empty(t, Shares(0))
}

func TestPlanningDefaultRefuses(t *testing.T) {
	for _, stage := range []Stage{0, Live, Round, Dressed, Steaks, Fillet, BonelessFillet, Edible, Salted, Head, Viscera, Gonad, 200} {
		_, err := PlanningDefault(stage)
		var none NotPublishedError
		require.True(t, errors.As(err, &none), stage.String())
		require.Contains(t, none.Stated, "canning-ready")
	}
}

func TestMeanWeightRefuses(t *testing.T) {
	for _, species := range []Species{0, Salmon, Steelhead, RainbowTrout, LakeTrout, AtlanticSalmon, OtherFish, 200} {
		_, err := MeanWeight(species)
		var none NotPublishedError
		require.True(t, errors.As(err, &none), species.String())
		require.Equal(t, MissingWeight, none.Missing)
	}
}

// What a caller does with an answer does not change the next one.
func TestAnswersAreTheCallersOwn(t *testing.T) {
	before := Shares(Coho)
	Shares(Coho)[0].Likely = 0
	Shares(Coho)[0].Cautions = append(Shares(Coho)[0].Cautions, cite.Caution{Text: "x"})
	SmokingLosses()[0].Low = 0
	PlanningDefaults()[0].Likely = 0
	require.Equal(t, before, Shares(Coho))
	require.NotZero(t, SmokingLosses()[0].Low)
	require.NotZero(t, PlanningDefaults()[0].Likely)
}
