package coldchain

import (
	"encoding"
	"testing"

	"example.org/lakelarder/units"
	"github.com/stretchr/testify/require"
)

func TestWordsComeBack(t *testing.T) {
	for h := Hazard(0); int(h) <= len(hazardNames.Words); h++ {
		back := Hazard(99)
		text, err := h.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, h, back)
	}
	for r := Rule(0); int(r) <= len(ruleNames.Words); r++ {
		back := Rule(99)
		text, err := r.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, r, back)
	}
	require.Equal(t, int(Yersinia), len(hazardNames.Words))
	require.Equal(t, int(KitchenTwoHours), len(ruleNames.Words))
	listeria, err := ParseHazard(" LISTERIA Monocytogenes ")
	require.NoError(t, err)
	require.Equal(t, Listeria, listeria)
}

func TestWordsRefuse(t *testing.T) {
	for _, text := range []string{"", " ", "no hazard", "no rule", "botulinum", "A-2", "hazard(3)", "raw", "1"} {
		_, err := ParseHazard(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
		_, err = ParseRule(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
	hazard, rule := Salmonella, TableA2
	require.Error(t, hazard.UnmarshalText([]byte("mould")))
	require.Error(t, rule.UnmarshalText([]byte("thumb")))
	require.Equal(t, Salmonella, hazard)
	require.Equal(t, TableA2, rule)
	for _, unknown := range []encoding.TextMarshaler{Hazard(99), Rule(99)} {
		_, err := unknown.MarshalText()
		require.ErrorIs(t, err, units.ErrSyntax)
	}
	require.Equal(t, "hazard(99)", Hazard(99).String())
	require.Equal(t, "unknown product", Product(9).String())
	require.Equal(t, "unknown reading", Reading(9).String())
	require.Equal(t, "unknown verdict", Verdict(9).String())
}
