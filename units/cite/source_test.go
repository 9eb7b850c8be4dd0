package cite

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func TestSourceRoundTrip(t *testing.T) {
	for _, want := range append(Sources(), 0) {
		text, err := want.MarshalText()
		require.NoError(t, err)
		got := Source(math.MaxUint16)
		require.NoError(t, got.UnmarshalText(text))
		require.Equal(t, want, got)
	}
	for _, want := range Sources() {
		got, err := ParseSource(want.Key())
		require.NoError(t, err)
		require.Equal(t, want, got)
	}
}

func TestSourceRefusesKeysThatAreNotExact(t *testing.T) {
	for _, key := range []string{
		"", " ", "_", "0", "1", "unset", "source not set", "Source(3)",
		"usdaguide5rev1994", "USDAGuide5Rev1994 ", " USDAGuide5Rev1994", "USDAGuide5Rev1994\n",
		"USDAGuide5Rev199", "USDAGuide5Rev19944", "USDA Guide 5", "cite.USDAGuide5Rev1994",
		"USDAGuide5Rev1994,PNW450", "ＵSDAGuide5Rev1994", "USDAGuide5Rev1994\x00", "\xff\xfe", "null",
		USDAGuide5Rev1994.String(), strings.Repeat("PNW450", 100),
	} {
		_, err := ParseSource(key)
		require.ErrorIs(t, err, units.ErrUnknown, "%q", key)
		require.Less(t, len(err.Error()), 4*longestQuoted+100, "errors stay short")

		if key == "" {
			continue // nothing is the text of the zero Source
		}
		kept := PNW450
		require.Error(t, kept.UnmarshalText([]byte(key)), "%q", key)
		require.Equal(t, PNW450, kept, "a refused text changes nothing")
	}
}

func TestSourceOutsideTheBibliography(t *testing.T) {
	for _, s := range []Source{Source(len(documents)), Source(len(documents) + 1), math.MaxUint16} {
		require.Equal(t, Document{}, s.Document())
		require.Empty(t, s.Key())
		require.Contains(t, s.String(), "source(")
		_, err := s.MarshalText()
		require.ErrorIs(t, err, units.ErrUnknown)
	}
	require.Equal(t, Document{}, Source(0).Document())
	require.Empty(t, Source(0).Key())
}

func TestSourcesIsTheCallersOwn(t *testing.T) {
	first := Sources()
	first[0] = 0
	require.NotEqual(t, first, Sources())
	require.Len(t, Sources(), len(documents)-1)
}

func TestSourceAsMapKeyInJSON(t *testing.T) {
	want := map[Source]int{PNW450: 110, USDAGuide5Rev1994: 100}
	text, err := json.Marshal(want)
	require.NoError(t, err)
	require.JSONEq(t, `{"PNW450":110,"USDAGuide5Rev1994":100}`, string(text))
	var got map[Source]int
	require.NoError(t, json.Unmarshal(text, &got))
	require.Equal(t, want, got)
}

func FuzzParseSource(f *testing.F) {
	for _, seed := range []string{"", "PNW450", "pnw450", "USDAGuide5Rev1994", "Source(1)", "\xff"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, key string) {
		s, err := ParseSource(key)
		if err != nil {
			require.Zero(t, s)
			return
		}
		require.Equal(t, key, s.Key())
		require.NotEqual(t, Document{}, s.Document())
	})
}

func BenchmarkParseSource(b *testing.B) {
	last := Sources()[len(Sources())-1].Key()
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if _, err := ParseSource(last); err != nil {
			b.Fatal(err)
		}
	}
}
