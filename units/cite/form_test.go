package cite_test

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

func ExampleCitation_MarshalJSON() {
	out, err := json.Marshal(cite.Citation{Source: cite.USDAGuide5Rev1994, Where: "page 5-10", Basis: cite.Recalled})
	fmt.Println(string(out), err)
	// Output:
	// {"document":"USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 1994)","source":"USDAGuide5Rev1994","place":"page 5-10","basis":"recalled"} <nil>
}

func ExampleCitation_UnmarshalJSON() {
	var c cite.Citation
	err := json.Unmarshal([]byte(`{"source": "USDAGuide5Rev1994", "place": "page 5-10", "basis": "recalled"}`), &c)
	fmt.Println(c.Source.Key(), c.Where, c.Basis, err)
	err = json.Unmarshal([]byte(`{"document": "A cook book", "source": "USDAGuide5Rev1994", "basis": "read"}`), &c)
	fmt.Println(err)
	// Output:
	// USDAGuide5Rev1994 page 5-10 recalled <nil>
	// the document "A cook book" is not that of the source USDAGuide5Rev1994, which is "USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 1994)"
}

// Every source comes back with every basis, and a citation without a source.
func TestCitationsComeBack(t *testing.T) {
	citations := []cite.Citation{{}, {Where: "mass balance", Basis: cite.Computed}, {Basis: cite.Practice}}
	for _, source := range cite.Sources() {
		for basis := cite.Unstated; basis <= cite.Computed; basis++ {
			citations = append(citations, cite.Citation{Source: source, Where: `table 2, "fish" <½ pint>`, Basis: basis})
		}
	}
	for _, want := range citations {
		out, err := json.Marshal(want)
		require.NoError(t, err)
		var back cite.Citation
		require.NoError(t, json.Unmarshal(out, &back), string(out))
		require.Equal(t, want, back)
		require.Equal(t, want.Source != 0, strings.Contains(string(out), `"document":`))
	}
}

func TestCitationsRefuse(t *testing.T) {
	key := cite.USDAGuide5Rev1994.Key()
	for in, want := range map[string]string{
		`{"document":"A cook book","source":"` + key + `"}`: "is not that of the source",
		`{"document":"A cook book"}`:                        "without the key",
		`{"source":"ACookBook"}`:                            `source (line 1, column 11): unknown source "ACookBook"`,
		`{"basis":"seen"}`:                                  `basis (line 1, column 10): unknown basis "seen"`,
		`{"where":"page 1"}`:                                "where (line 1, column 2): unknown field; expected document, source, place, basis",
		`{"source":2}`:                                      "source (line 1, column 11): expected text",
		`{"place":null}`:                                    "place (line 1, column 10): null",
		`"` + key + `"`:                                     "expected an object",
		`{"basis":"read","basis":"read"}`:                   "twice",
	} {
		before := cite.Citation{Where: "as it was", Basis: cite.Practice}
		c := before
		err := json.Unmarshal([]byte(in), &c)
		require.ErrorContains(t, err, want, in)
		require.Empty(t, cmp.Diff(before, c), "stays as it was")
	}
	for _, none := range []cite.Citation{{Source: 60000}, {Basis: 99}} {
		_, err := json.Marshal(none)
		var field units.FieldError
		require.ErrorAs(t, err, &field)
	}
}

func ExampleContradictionError() {
	fmt.Println(cite.ContradictionError{Document: "A cook book"})
	// Output: the document "A cook book" stands without the key of its source
}
