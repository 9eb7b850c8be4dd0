package word_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/units"
)

type season uint8

var seasons = word.List[season]{What: "season", Words: []string{"spring", "summer", "autumn", "winter"}, Also: map[string]season{"fall": 3}}

func Example() {
	v, err := seasons.Parse("Fall")
	fmt.Println(seasons.Of(v), err)
	_, err = seasons.Parse("monsoon")
	fmt.Println(err)
	// Output:
	// autumn <nil>
	// unknown season "monsoon": expected spring, summer, autumn or winter
}

// Every word comes back as its value; what is not set is the empty text.
func TestWordsComeBack(t *testing.T) {
	for want := season(0); want <= 4; want++ {
		back := season(99)
		text, err := seasons.Marshal(want)
		require.NoError(t, err)
		require.NoError(t, seasons.Unmarshal(text, &back))
		require.Equal(t, want, back)
		require.Equal(t, want > 0, seasons.Known(want))
		require.NoError(t, seasons.CheckIfSet(want))
		require.Equal(t, want > 0, seasons.Check(want) == nil)
	}
	require.Equal(t, "not stated", seasons.Of(0))
	require.ErrorIs(t, seasons.Check(0), units.ErrUnset)
}

func TestWordsRefuse(t *testing.T) {
	for _, text := range []string{"not stated", "spring!", "springs", "season(1)", "1", " "} {
		v := season(2)
		require.ErrorIs(t, seasons.Unmarshal([]byte(text), &v), units.ErrUnknown, text)
		require.Equal(t, season(2), v, "stays as it was")
	}
	for _, v := range []season{5, 99, 255} {
		_, err := seasons.Marshal(v)
		require.ErrorIs(t, err, units.ErrUnknown)
		require.ErrorIs(t, seasons.Check(v), units.ErrUnknown)
		require.False(t, seasons.Known(v))
	}
	require.Equal(t, "season(5)", seasons.Of(5))
}

func TestSeries(t *testing.T) {
	for want, words := range map[string][]string{"": nil, "a": {"a"}, "a or b": {"a", "b"}, "a, b or c": {"a", "b", "c"}} {
		require.Equal(t, want, word.Series(words, "or"))
	}
}
