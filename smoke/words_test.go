package smoke

import (
	"encoding"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// FuzzParseWords: what is read is one of the words, in capitals or not, and says itself again; everything else is refused by name.
func FuzzParseWords(f *testing.F) {
	for _, s := range []string{"", "dry", " Cook ", "COOL", "half", "open ", "closed", "air", "Vacuum pack", "smoked", "K", "ſmoke", "not stated", "\x00", "hot-160-pnw"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		again(t, s, ParseStageKind)
		again(t, s, ParseDamper)
		again(t, s, ParsePack)
		again(t, s, ParseFaces)
		again(t, s, ParseSmoking)
		again(t, s, ParseEvent)
		again(t, s, ParseCoreLimitID)
		again(t, s, ParseCoolingRuleID)
		again(t, s, ParseStorageRuleID)
		again(t, s, ParseChamberRuleID)
	})
}

// again reads a text, and holds what comes of it to say itself again, and what is refused to be nothing.
func again[E interface {
	~uint8
	String() string
}](t *testing.T, s string, parse func(string) (E, error)) {
	t.Helper()
	v, err := parse(s)
	require.Equal(t, v == 0, err != nil, "%q", s)
	if err != nil {
		require.ErrorIs(t, err, units.ErrUnknown)
		return
	}
	back, err := parse(strings.ToUpper(v.String()))
	require.NoError(t, err)
	require.Equal(t, v, back)
}

// every walks the values of an enumeration to the first without a word, and holds each to survive as text.
func every[E interface {
	~uint8
	String() string
	encoding.TextMarshaler
}, P interface {
	*E
	encoding.TextUnmarshaler
}](t *testing.T, unknown string) (words []string) {
	t.Helper()
	for v := E(0); ; v++ {
		text, err := v.MarshalText()
		if err != nil {
			require.ErrorIs(t, err, units.ErrUnknown)
			require.Equal(t, unknown, v.String())
			return words
		}
		back := v + 1
		require.NoError(t, P(&back).UnmarshalText(text))
		require.Equal(t, v, back)
		words = append(words, v.String())
	}
}

func TestEveryWord(t *testing.T) {
	require.Equal(t, []string{"not stated", "dry", "smoke", "cook", "glaze", "cool"}, every[StageKind](t, "stage(6)"))
	require.Equal(t, []string{"not stated", "open", "half open", "closed"}, every[Damper](t, "damper(4)"))
	require.Equal(t, []string{"not stated", "air pack", "low-oxygen pack"}, every[Pack](t, "pack(3)"))
	require.Equal(t, []string{"not stated", "one face", "two faces"}, every[Faces](t, "faces(3)"))
	require.Equal(t, []string{"not stated", "hot-smoked", "cold-smoked"}, every[Smoking](t, "smoking(3)"))
	require.Equal(t, []string{"not stated", "begin", "baste", "end"}, every[Event](t, "event(4)"))
	require.Len(t, every[CoreLimitID](t, "core limit(12)"), len(coreLimits)+1)
	require.Len(t, every[CoolingRuleID](t, "cooling rule(7)"), len(coolingRules)+1)
	require.Len(t, every[StorageRuleID](t, "storage rule(12)"), len(storageRules)+1)
	require.Len(t, every[ChamberRuleID](t, "chamber rule(11)"), len(chamberRules)+1)
}

// A rule is found by its place in the table: each stands where its name says.
func TestEveryRuleStandsInItsPlace(t *testing.T) {
	for i, l := range CoreLimits() {
		require.Equal(t, CoreLimitID(i+1), l.ID)
	}
	for i, r := range CoolingRules() {
		require.Equal(t, CoolingRuleID(i+1), r.ID)
	}
	for i, r := range StorageRules() {
		require.Equal(t, StorageRuleID(i+1), r.ID)
	}
	for i, r := range ChamberRules() {
		require.Equal(t, ChamberRuleID(i+1), r.ID)
	}
}
