package wire_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// inquiry is an input that needs both of its fields, refused a result that says what was asked.
type inquiry struct {
	Jar      string                     `wire:"required"`
	Altitude units.Stated[units.Length] `wire:"required"`
}

func (a *inquiry) UnmarshalJSON(b []byte) error { return wire.Unmarshal(b, a) }

type refused struct {
	Asked  inquiry `wire:"partial"`
	Reason string
}

// What was asked comes back as far as it was asked, and stays strict otherwise; the input itself is still required whole.
func TestPartialInputComesBack(t *testing.T) {
	for _, want := range []refused{
		{}, {Reason: "no altitude"}, {Asked: inquiry{Jar: "pint"}}, {Asked: inquiry{Altitude: units.State(units.Length(0))}},
	} {
		data, err := wire.Marshal(want)
		require.NoError(t, err)
		var back refused
		require.NoError(t, wire.Unmarshal(data, &back), string(data))
		require.Empty(t, cmp.Diff(want, back))
	}
	for _, text := range []string{`{"asked":{"jars":"pint"}}`, `{"asked":{"jar":null}}`, `{"asked":{"altitude":4350}}`} {
		require.Error(t, wire.Unmarshal([]byte(text), &refused{}), text)
	}
	require.Error(t, wire.Unmarshal([]byte(`{"jar":"pint"}`), &inquiry{}))
}
