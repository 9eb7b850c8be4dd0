package cite

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func TestBasisRoundTrip(t *testing.T) {
	for want, word := range map[Basis]string{
		Unstated: "", Read: "read", Quoted: "quoted", Recalled: "recalled", Practice: "practice", Computed: "computed",
	} {
		text, err := want.MarshalText()
		require.NoError(t, err)
		require.Equal(t, word, string(text))
		got := Basis(200)
		require.NoError(t, got.UnmarshalText(text))
		require.Equal(t, want, got)
		if want == Unstated {
			continue
		}
		parsed, err := ParseBasis(want.String())
		require.NoError(t, err)
		require.Equal(t, want, parsed)
	}
}

func TestBasisRefuses(t *testing.T) {
	for _, text := range []string{
		"", "unstated", "not stated", "Read", "READ", " read", "read ", "read\n", "rea", "readd", "verified", "published",
		"memory", "true", "1", "Basis(1)", "read,recalled", "\xff", "ｒead",
	} {
		got, err := ParseBasis(text)
		require.ErrorIs(t, err, units.ErrUnknown, "%q", text)
		require.Equal(t, Unstated, got, "a refused word is no basis")

		if text == "" {
			continue // nothing is the text of Unstated
		}
		kept := Recalled
		require.Error(t, kept.UnmarshalText([]byte(text)), "%q", text)
		require.Equal(t, Recalled, kept, "a refused text changes nothing")
	}
	for _, b := range []Basis{Computed + 1, 255} {
		_, err := b.MarshalText()
		require.ErrorIs(t, err, units.ErrUnknown)
		require.Contains(t, b.String(), "basis(")
	}
}

func FuzzParseBasis(f *testing.F) {
	for _, seed := range []string{"", "read", "recalled", "practice", "computed", "unstated", "Read"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		b, err := ParseBasis(text)
		if err != nil {
			require.Equal(t, Unstated, b)
			return
		}
		require.Equal(t, text, b.String())
		require.True(t, Unstated < b && b <= Computed)
	})
}
