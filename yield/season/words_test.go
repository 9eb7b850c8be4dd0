package season_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/season"
)

func TestWords(t *testing.T) {
	for s := season.Everything; s <= season.Unpreserved; s++ {
		text, err := s.MarshalText()
		require.NoError(t, err)
		var back season.Shape
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, s, back)
	}
	for _, bad := range []string{"", "not stated", "shape(5)", "possession", "everything,"} {
		_, err := season.ParseShape(bad)
		require.ErrorIs(t, err, units.ErrSyntax, bad)
	}
	s := season.OneDay
	require.ErrorIs(t, s.UnmarshalText([]byte("two days")), units.ErrSyntax)
	require.Equal(t, season.OneDay, s)
	require.NoError(t, s.UnmarshalText(nil))
	require.Zero(t, s)
	text, err := s.MarshalText()
	require.NoError(t, err)
	require.Empty(t, text)
	_, err = season.Shape(5).MarshalText()
	require.ErrorIs(t, err, units.ErrSyntax)
	require.Equal(t, "shape of a possession rule(5)", season.Shape(5).String())
	require.Equal(t, "catch to plan with(3)", season.Fishing(3).String())
	require.Equal(t, "order of eating(4)", season.Order(4).String())
}
