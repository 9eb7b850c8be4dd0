package verdict_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

var all = []verdict.Verdict{
	verdict.Met, verdict.More, verdict.CannotTell, verdict.Differs, verdict.NotMet, verdict.NotPublished,
}

func ExampleWorst() {
	fmt.Println(verdict.Worst(verdict.Met, verdict.CannotTell, verdict.More))
	// Output: cannot tell
}

func ExampleVerdict_Passes() {
	var forgotten verdict.Verdict
	fmt.Println(verdict.Met.Passes(), verdict.More.Passes(), forgotten.Passes())
	// Output: true true false
}

func ExampleParse() {
	v, err := verdict.Parse("not met")
	fmt.Println(v, err)
	// Output: not met <nil>
}

func ExampleParseKind() {
	k, err := verdict.ParseKind("too warm")
	fmt.Println(k, k.Verdict(), err)
	// Output: too warm not met <nil>
}

func ExampleKind_Verdict() {
	fmt.Println(verdict.Missing.Verdict(), verdict.Over.Verdict(), verdict.Kind(99).Verdict())
	// Output: cannot tell more not met
}

// Severity is the order, the zero value is no pass, and the worst of any is among them.
func TestVerdictsAreOrdered(t *testing.T) {
	for i, v := range all {
		require.Equal(t, i < 2, v.Passes(), v.String())
		for j, w := range all {
			require.Equal(t, i < j, v < w)
			require.Equal(t, all[max(i, j)], verdict.Worst(v, w))
		}
		require.Equal(t, v, verdict.Worst(v))
	}
	require.Equal(t, verdict.CannotTell, *new(verdict.Verdict))
	require.Equal(t, verdict.NotPublished, verdict.Worst(verdict.Met, verdict.NotPublished, verdict.Met))
}

func TestVerdictsComeBack(t *testing.T) {
	for _, v := range all {
		text, err := v.MarshalText()
		require.NoError(t, err)
		back := verdict.Verdict(99)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, v, back)
	}
	for _, text := range []string{"", "Met", "met ", "pass", "verdict(1)", "exceeds", "0"} {
		v := verdict.NotMet
		require.ErrorIs(t, v.UnmarshalText([]byte(text)), units.ErrUnknown, text)
		require.Equal(t, verdict.NotMet, v, "stays as it was")
	}
	for _, v := range []verdict.Verdict{-3, 4, math.MinInt8, math.MaxInt8} {
		_, err := v.MarshalText()
		require.ErrorIs(t, err, units.ErrUnknown)
		require.Equal(t, fmt.Sprintf("verdict(%d)", int(v)), v.String())
		require.False(t, v.Passes(), "no verdict that is unknown passes")
	}
}

func TestKinds(t *testing.T) {
	for k := verdict.Kind(0); k <= verdict.Impossible; k++ {
		text, err := k.MarshalText()
		require.NoError(t, err)
		back := verdict.Kind(99)
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, k, back)
		require.Equal(t, k == verdict.Over, k.Verdict().Passes(), "%v", k)
	}
	for _, text := range []string{"too hot", "kind of finding(3)", "not stated"} {
		_, err := verdict.ParseKind(text)
		require.ErrorIs(t, err, units.ErrUnknown)
	}
	for kind, want := range map[verdict.Kind]verdict.Verdict{
		0: verdict.CannotTell, verdict.Missing: verdict.CannotTell, verdict.Unobserved: verdict.CannotTell, verdict.Impossible: verdict.CannotTell,
		verdict.Short: verdict.NotMet, verdict.TooWarm: verdict.NotMet, verdict.TooCold: verdict.NotMet, verdict.TooLong: verdict.NotMet,
		verdict.TooSoon: verdict.NotMet, verdict.Different: verdict.Differs, verdict.Over: verdict.More,
	} {
		require.Equal(t, want, kind.Verdict(), "%v", kind)
	}
}
