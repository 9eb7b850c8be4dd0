package units_test

import (
	"encoding/json"
	"fmt"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// One part of salt to four of sugar, for this much salt.
func ExampleParts() {
	p := units.Parts{First: 1, Second: 4}
	sugar, err := units.Prorate(50*units.Gram, units.Ratio(p.Second), units.Ratio(p.First))
	fmt.Println(p, sugar, err)
	// Output: 1:4 200 g <nil>
}

func ExampleParts_IsSet() {
	fmt.Println(units.Parts{First: 1, Second: 4}.IsSet(), units.Parts{First: 1}.IsSet(), units.Parts{})
	// Output: true false not set
}

func ExampleParseParts() {
	for _, text := range []string{"1:4", "2:8", "1:2.5"} {
		p, err := units.ParseParts(text)
		fmt.Println(p, err)
	}
	_, err := units.ParseParts("1/4")
	fmt.Println(err)
	// Output:
	// 1:4 <nil>
	// 2:8 <nil>
	// 2:5 <nil>
	// cannot read "1/4" as a proportion: expected two numbers with a colon between them, as in 1:4
}

// TestParts: parts stay as they were written, and what is no proportion of two whole things is refused.
func TestParts(t *testing.T) {
	for text, want := range map[string]units.Parts{
		"1:4": {First: 1, Second: 4}, " 3 : 1 ": {First: 3, Second: 1}, "2:8": {First: 2, Second: 8},
		"0.5:2": {First: 1, Second: 4}, "1 1/2:4": {First: 3, Second: 8},
		"½:¼": {First: 2, Second: 1}, "1,000:1": {First: 1000, Second: 1},
		"9223372036854775807:9223372036854775807": {First: math.MaxInt64, Second: math.MaxInt64},
		"not set": {},
	} {
		got, err := units.ParseParts(text)
		require.NoError(t, err, text)
		require.Empty(t, cmp.Diff(want, got), text)
		back, err := units.ParseParts(got.String())
		require.NoError(t, err, text)
		require.Equal(t, want, back, text)
	}
	for _, text := range []string{
		"", ":", "1:", ":4", "1", "1:4:2", "1/4", "a:b", "1:4 parts", "-1:4", "1:-4", "1,5:4", "99999999999999999999:1", "1e1:1e",
	} {
		_, err := units.ParseParts(text)
		require.ErrorIs(t, err, units.ErrSyntax, text)
	}
	for _, text := range []string{"0:4", "4:0", "0:0", "9223372036854775808:1", "9223372036854775807:0.0001"} {
		_, err := units.ParseParts(text)
		require.ErrorIs(t, err, units.ErrRange, text)
	}
	kept := units.Parts{First: 1, Second: 4}
	require.Error(t, json.Unmarshal([]byte(`"4"`), &kept))
	data, err := json.Marshal(kept)
	require.NoError(t, err)
	require.Equal(t, `"1:4"`, string(data))
	require.Equal(t, "not set", units.Parts{First: -1, Second: 4}.String())
}
