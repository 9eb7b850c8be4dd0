package word_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

var seasons = word.List{What: "season", Words: []string{"no season", "spring", "summer", "autumn", "winter"}, Also: map[string]uint8{"fall": 3}}

func Example() {
	v, err := seasons.Parse("Fall")
	fmt.Println(seasons.Of(v), err)
	_, err = seasons.Parse("monsoon")
	fmt.Println(err)
	// Output:
	// autumn <nil>
	// cannot read "monsoon" as a season: expected spring, summer, autumn or winter
}

// Every word comes back as its value; what is not set is the empty text.
func TestWordsComeBack(t *testing.T) {
	for v := range seasons.Words {
		want, back := uint8(v), uint8(99)
		text, err := seasons.Marshal(want)
		require.NoError(t, err)
		require.NoError(t, seasons.Unmarshal(text, &back))
		require.Equal(t, want, back)
		require.Equal(t, v > 0, seasons.Known(want))
	}
}

func TestWordsRefuse(t *testing.T) {
	for _, text := range []string{"no season", "spring!", "springs", "season(1)", "1", " "} {
		v := uint8(2)
		require.ErrorIs(t, seasons.Unmarshal([]byte(text), &v), units.ErrSyntax, text)
		require.Equal(t, uint8(2), v, "stays as it was")
	}
	for _, v := range []uint8{5, 99, 255} {
		_, err := seasons.Marshal(v)
		require.ErrorIs(t, err, units.ErrSyntax)
		require.False(t, seasons.Known(v))
	}
	require.Equal(t, "season(5)", seasons.Of(5))
}

func TestSeries(t *testing.T) {
	for want, words := range map[string][]string{"": nil, "a": {"a"}, "a or b": {"a", "b"}, "a, b or c": {"a", "b", "c"}} {
		require.Equal(t, want, word.Series(words, "or"))
	}
}
