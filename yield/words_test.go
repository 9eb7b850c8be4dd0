package yield

import (
	"encoding"
	"testing"

	"example.org/lakelarder/units"
	"github.com/stretchr/testify/require"
)

func TestWordsComeBack(t *testing.T) {
	for s := Species(0); int(s) <= len(speciesNames.Words); s++ {
		back := Species(99)
		text, err := s.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, s, back)
	}
	for s := Stage(0); int(s) <= len(stageNames.Words); s++ {
		back := Stage(99)
		text, err := s.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, s, back)
	}
	require.Equal(t, int(OtherFish), len(speciesNames.Words))
	require.Equal(t, int(Gonad), len(stageNames.Words))
	coho, err := ParseSpecies(" COHO ")
	require.NoError(t, err)
	require.Equal(t, Coho, coho)
}

func TestWordsRefuse(t *testing.T) {
	for _, text := range []string{"", " ", "no species", "no stage", "cohoe", "gutted coho", "species(3)", "1"} {
		_, err := ParseSpecies(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
		_, err = ParseStage(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
	species, stage := Coho, Gutted
	require.Error(t, species.UnmarshalText([]byte("fish of the day")))
	require.Error(t, stage.UnmarshalText([]byte("eaten")))
	require.Equal(t, Coho, species)
	require.Equal(t, Gutted, stage)
	for _, unknown := range []encoding.TextMarshaler{Species(99), Stage(99)} {
		_, err := unknown.MarshalText()
		require.ErrorIs(t, err, units.ErrSyntax)
	}
	require.Equal(t, "species(99)", Species(99).String())
}
