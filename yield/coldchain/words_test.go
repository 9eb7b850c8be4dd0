package coldchain_test

import (
	"encoding"
	"testing"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain"
	"github.com/stretchr/testify/require"
)

func TestWordsComeBack(t *testing.T) {
	for h := coldchain.Hazard(0); h <= coldchain.Yersinia; h++ {
		back := coldchain.Hazard(99)
		text, err := h.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, h, back)
	}
	for r := coldchain.Rule(0); r <= coldchain.KitchenTwoHours; r++ {
		back := coldchain.Rule(99)
		text, err := r.MarshalText()
		require.NoError(t, err)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, r, back)
	}
	require.Len(t, coldchain.Hazards(), int(coldchain.Yersinia))
	listeria, err := coldchain.ParseHazard(" LISTERIA Monocytogenes ")
	require.NoError(t, err)
	require.Equal(t, coldchain.Listeria, listeria)
}

func TestWordsRefuse(t *testing.T) {
	for _, text := range []string{"", " ", "no hazard", "no rule", "botulinum", "A-2", "hazard(3)", "raw", "1"} {
		_, err := coldchain.ParseHazard(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
		_, err = coldchain.ParseRule(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
	hazard, rule := coldchain.Salmonella, coldchain.TableA2
	require.Error(t, hazard.UnmarshalText([]byte("mould")))
	require.Error(t, rule.UnmarshalText([]byte("thumb")))
	require.Equal(t, coldchain.Salmonella, hazard)
	require.Equal(t, coldchain.TableA2, rule)
	for _, unknown := range []encoding.TextMarshaler{coldchain.Yersinia + 1, coldchain.Hazard(99), coldchain.KitchenTwoHours + 1, coldchain.Rule(99)} {
		_, err := unknown.MarshalText()
		require.ErrorIs(t, err, units.ErrSyntax)
	}
	require.Equal(t, "hazard(99)", coldchain.Hazard(99).String())
	require.Equal(t, "unknown product", coldchain.Product(9).String())
	require.Equal(t, "unknown reading", coldchain.Reading(9).String())
	require.Equal(t, "unknown verdict", coldchain.Verdict(9).String())
}
