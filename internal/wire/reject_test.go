package wire_test

import (
	"bytes"
	"errors"
	"math"
	"reflect"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

const given = `"altitude":"0 ft","colour":"red","depth":"0 m","warm":"0 °C","name":"x","count":0`

// faults are texts, by what they are read into, with the error that names path, line and column.
var faults = []struct {
	into any
	in   string
	want string
}{
	// the text is no JSON, or more than one value
	{plain{}, ``, "line 1, column 1: expected an object, not the end"},
	{plain{}, ` `, "line 1, column 2: expected an object, not the end"},
	{plain{}, `{`, "line 1, column 2: expected the name of a field in quotes, not the end"},
	{plain{}, `{}{}`, "line 1, column 3: expected the end after one value, not an object"},
	{plain{}, `{} x`, `line 1, column 4: expected the end after one value, not the character "x"`},
	{plain{}, "\ufeff{}", `line 1, column 1: expected an object, not the character "\ufeff"`},
	{plain{}, `{"id":"a",}`, `line 1, column 11: expected the name of a field in quotes, not the character "}"`},
	{plain{}, `{"id":"a" "count":1}`, `line 1, column 11: expected "," or the end of an object, not text`},
	{plain{}, `{"id" "a"}`, `id (line 1, column 7): expected ":" after the name of a field, not text`},
	{plain{}, `{id:"a"}`, `line 1, column 2: expected the name of a field in quotes, not the character "i"`},
	{plain{}, `{"id":"a"`, `line 1, column 10: expected "," or the end of an object, not the end`},
	{plain{}, `{"id":}`, `id (line 1, column 7): expected text in quotes, not the character "}"`},
	{plain{}, `{"id":'a'}`, `id (line 1, column 7): expected text in quotes, not the character "'"`},
	{plain{}, `{"id":"a}`, "id (line 1, column 7): the text has no closing quote"},
	{plain{}, "{\"id\":\"a\nb\"}", `id (line 1, column 9): a text cannot hold the control character '\n' as it is`},
	{plain{}, `{"id":"\x41"}`, "id (line 1, column 8): this is no escape"},
	{plain{}, `{"id":"\u00g0"}`, "id (line 1, column 8): this is no escape"},
	{plain{}, `{"id":"\u+0ff"}`, "id (line 1, column 8): this is no escape"},
	{plain{}, `{"id":"\ud800"}`, "id (line 1, column 8): this is no escape of JSON, or half of a pair"},
	{plain{}, `{"id":"\ud800\u0041"}`, "id (line 1, column 8): this is no escape of JSON, or half of a pair"},
	{plain{}, `{"id":"\udc00\ud800"}`, "id (line 1, column 8): this is no escape of JSON, or half of a pair"},
	{plain{}, `{"id":"\`, "id (line 1, column 8): this is no escape"},
	{plain{}, "{\"id\":\"°\xff\"}", "id (line 1, column 9): the byte 0xff is no UTF-8"},
	{plain{}, "{\"i\xffd\":1}", "line 1, column 4: the byte 0xff is no UTF-8"},
	{plain{}, `{/* why */}`, `expected the name of a field in quotes, not the character "/"`},
	{[]int{}, `[1,]`, `[1] (line 1, column 4): expected a number, not the character "]"`},
	{[]int{}, `[1 2]`, `line 1, column 4: expected "," or the end of a list, not the number 2`},
	{[]int{}, `[1`, `line 1, column 3: expected "," or the end of a list, not the end`},
	{[]int{}, `[01]`, `[0] (line 1, column 2): this is no number of JSON`},
	{[]int{}, `[-]`, `[0] (line 1, column 2): this is no number of JSON`},
	{[]int{}, `[+1]`, `[0] (line 1, column 2): expected a number, not the character "+"`},
	{[]int{}, `[.5]`, `[0] (line 1, column 2): expected a number, not the character "."`},
	{[]int{}, `[1.]`, `[0] (line 1, column 2): this is no number of JSON`},
	{[]int{}, `[1e]`, `[0] (line 1, column 2): this is no number of JSON`},
	{[]int{}, `[NaN]`, `[0] (line 1, column 2): expected a number, not the character "N"`},
	{[]bool{}, `[truth]`, `[0] (line 1, column 2): expected true or false, not the character "t"`},
	{[]bool{}, `[trues]`, `line 1, column 6: expected "," or the end of a list, not the character "s"`},
	// fields
	{plain{}, "{\n  \"id\": \"°\",\n  \"° jar\": 1\n}", `["° jar"] (line 3, column 3): unknown field; expected id, maxGap, f0, colour,`},
	{plain{}, `{"ID":"a"}`, "ID (line 1, column 2): unknown field; expected id, maxGap"},
	{plain{}, `{"hidden":1}`, "hidden (line 1, column 2): unknown field"},
	{kept{}, `{"skip":1}`, "skip (line 1, column 2): unknown field; expected zero, time, warm, deep, hue, named"},
	{struct{}{}, `{"a":1}`, "a (line 1, column 2): unknown field; expected none"},
	{plain{}, `{"id":"a","id":"a"}`, "id (line 1, column 11): this field stands twice"},
	{plain{}, `{"id":"a","i\u0064":"a"}`, "id (line 1, column 11): this field stands twice"},
	{plain{}, `{"byName":{"a":"1 %","a":"1 %"}}`, "byName.a (line 1, column 22): this field stands twice"},
	{plain{}, `{"byColour":{"red":[],"RED":[]}}`, "byColour.RED (line 1, column 23): this field stands twice"},
	{plain{}, `{"byColour":{"mauve":[]}}`, `byColour.mauve (line 1, column 14): cannot read "mauve" as a colour: expected red, green or blue`},
	// null
	{plain{}, `null`, "line 1, column 1: null says nothing: leave it out"},
	{plain{}, `{"id":null}`, "id (line 1, column 7): null"},
	{plain{}, `{"next":null}`, "next (line 1, column 9): null"},
	{plain{}, `{"altitude":null}`, "altitude (line 1, column 13): null"},
	{plain{}, `{"list":["1 g",null]}`, "list[1] (line 1, column 16): null"},
	{plain{}, `{"byName":{"a b":null}}`, `byName["a b"] (line 1, column 18): null`},
	{result{}, `{"limit":null}`, "limit (line 1, column 10): null"},
	// the wrong kind of value
	{plain{}, `[]`, "line 1, column 1: expected an object, not a list"},
	{plain{}, `{"id":1}`, "id (line 1, column 7): expected text in quotes, not the number 1"},
	{plain{}, `{"height":4350}`, `height (line 1, column 11): expected text with a unit, such as "2000 ft", not the number 4350`},
	{plain{}, `{"altitude":4350.5}`, `altitude (line 1, column 13): expected text with a unit, such as "2000 ft", not the number 4350.5`},
	{plain{}, `{"maxGap":600}`, `maxGap (line 1, column 11): expected text with a unit, such as "100 min", not the number 600`},
	{plain{}, `{"warm":121.1}`, `expected text with a unit, such as "121.1 °C", not the number 121.1`},
	{units.Speed(0), `3`, `expected text with a unit, in quotes, not the number 3`},
	{units.PH(0), `3`, `expected text in quotes, not the number 3`},
	{plain{}, `{"colour":2}`, `colour (line 1, column 11): expected text in quotes, not the number 2: cannot read "2" as a colour: expected red, green or blue`},
	{plain{}, `{"colour":["red"]}`, `expected text in quotes, not a list`},
	{plain{}, `{"colour":true}`, `expected text in quotes, not true or false`},
	{plain{}, `{"count":"1"}`, `count (line 1, column 10): expected a number, not text`},
	{plain{}, `{"count":{}}`, `count (line 1, column 10): expected a number, not an object`},
	{plain{}, `{"yes":1}`, `yes (line 1, column 8): expected true or false, not the number 1`},
	{plain{}, `{"yes":"true"}`, `expected true or false, not text`},
	{plain{}, `{"list":"1 g"}`, `list (line 1, column 9): expected a list, not text`},
	{plain{}, `{"list":{}}`, `expected a list, not an object`},
	{plain{}, `{"next":[]}`, `expected an object, not a list`},
	{plain{}, `{"byName":[]}`, `expected an object, not a list`},
	{plain{}, `{"altitude":{"value":"0 ft","given":true}}`, `expected text with a unit`},
	// values
	{plain{}, `{"count":1.0}`, `count (line 1, column 10): "1.0" is no count`},
	{plain{}, `{"count":1e2}`, `"1e2" is no count`},
	{plain{}, `{"count":9223372036854775808}`, "count 9223372036854775808 is out of range: expected " + strconv.Itoa(math.MinInt) + " to " + strconv.Itoa(math.MaxInt)},
	{plain{}, `{"small":128}`, "small (line 1, column 10): count 128 is out of range: expected -128 to 127"},
	{plain{}, `{"tiny":-1}`, "tiny (line 1, column 9): count -1 is out of range: expected 0 to 255"},
	{plain{}, `{"large":18446744073709551616}`, "out of range: expected 0 to 18446744073709551615"},
	{plain{}, `{"grid":[[1,2]]}`, "grid (line 1, column 9): expected a list of 2, not of 1"},
	{plain{}, `{"grid":[[1,2],[3]]}`, "grid[1] (line 1, column 16): expected a list of 2, not of 1"},
	{plain{}, `{"grid":[[1,2],[3,4],[]]}`, "grid[2] (line 1, column 22): one too many: expected a list of 2"},
	{plain{}, `{"grid":[]}`, "expected a list of 2, not of 0"},
	{plain{}, `{"height":"4350"}`, `height (line 1, column 11): cannot read "4350" as a length: the unit is missing`},
	{plain{}, `{"height":""}`, `height (line 1, column 11): cannot read ""`},
	{plain{}, `{"warm":"hot"}`, `cannot read "hot" as a temperature`},
	{plain{}, `{"told":""}`, "told (line 1, column 9): it is empty, which is not stated"},
	{struct {
		W units.Stated[units.Temperature]
	}{}, `{"w":"not set"}`, "w (line 1, column 6): it is empty, which is not stated"},
	{struct{ W units.Stated[string] }{}, `{"w":" "}`, "w (line 1, column 6): it is empty, which is not stated"},
	{plain{}, `{"when":"2021-03-04"}`, "when (line 1, column 9)"},
	{plain{}, `{"when":""}`, "when (line 1, column 9)"},
	{plain{}, `{"next":{"byColour":{"red":[{"list":["1 g","2"]}]}}}`, "next.byColour.red[0].list[1] (line 1, column 44): cannot read"},
	// required
	{asked{}, "\n {}", "altitude (line 2, column 2): it is required and missing"},
	{asked{}, `{` + strings.Replace(given, `"colour":"red",`, "", 1) + `}`, "colour (line 1, column 1): it is required and missing"},
	{asked{}, `{` + strings.Replace(given, `"depth":"0 m",`, "", 1) + `}`, "depth (line 1, column 1): it is required and missing"},
	{asked{}, `{` + strings.Replace(given, `,"count":0`, "", 1) + `}`, "count (line 1, column 1): it is required and missing"},
	{asked{}, `{` + strings.Replace(given, `"red"`, `""`, 1) + `}`, "colour (line 1, column 29): it is required and empty"},
	{asked{}, `{` + strings.Replace(given, `"x"`, `""`, 1) + `}`, "name (line 1, column 70): it is required and empty"},
	{asked{}, `{` + strings.Replace(given, `"x"`, `" \t"`, 1) + `}`, "name (line 1, column 70): it is required and empty"},
	{asked{}, `{` + strings.Replace(given, `"0 °C"`, `"not set"`, 1) + `}`, "warm (line 1, column 56): it is required and empty"},
	// times
	{time.Duration(0), `"100"`, `cannot read "100" as a time: the unit is missing`},
	{time.Duration(0), `""`, "as a time"}, {time.Duration(0), `"-"`, "as a time"}, {time.Duration(0), `"min"`, "as a time"},
	{time.Duration(0), `"0"`, "as a time"}, {time.Duration(0), `"1 min 1 h"`, "as a time"}, {time.Duration(0), `"1 min 1 min"`, "as a time"},
	{time.Duration(0), `"--1 min"`, "as a time"}, {time.Duration(0), `"1 -min"`, "as a time"},
	{time.Duration(0), `"1,5 min"`, "as a time"}, {time.Duration(0), `"1 MIN"`, "as a time"},

	{time.Duration(0), `"2562048 h"`, "out of range"}, {time.Duration(0), `"9223372036854775808 ns"`, "out of range"},
	{time.Duration(0), `"2562047 h 60 min"`, "out of range"}, {time.Duration(0), `"-9223372036854775809ns"`, "out of range"},
	{time.Duration(0), `"99999999999999999999999999999999999999 ns"`, "out of range"},
	{time.Duration(0), `"18446744073709551617 ns"`, "out of range"},
	// types that read themselves
	{result{}, "{\"steps\":[\n {\"atMost\":\"1 m\"},\n {\n  \"atMost\":\"1\"}]}", `steps[1].atMost (line 4, column 12): cannot read "1" as a length`},
	{result{}, "{\"limit\":\n\n{ \"°\":1}}", "limit.° (line 3, column 3): unknown field; expected atMost"},
	{result{}, `{"steps":[{}]}`, "steps[0].atMost (line 1, column 11): it is required and missing"},
	{result{}, `{"limit":{"atMost":[1,{"b":null}]}}`, "limit.atMost[1].b (line 1, column 28): expected a value, not null"},
	{result{}, `{"findings":[{},{},{"wanted":{"low":"x"}}]}`, "findings[2].wanted.low (line 1, column 37): cannot read"},
	{struct{ A stubborn }{}, `{"a": 1}`, "a (line 1, column 7): not today"},
	// depth
	{plain{}, strings.Repeat(`{"next":`, 64) + `{}` + strings.Repeat(`}`, 64), "nested more than 64 deep"},
	{result{}, `{"limit":` + strings.Repeat(`[`, 1<<20), "nested more than 64 deep"},
	{[]int{}, strings.Repeat(`[`, 1<<20), "[0] (line 1, column 2): expected a number, not a list"},
}

type stubborn struct{ A int }

var errStubborn = errors.New("not today")

func (stubborn) UnmarshalJSON([]byte) error { return errStubborn }

func TestFaultsAreNamed(t *testing.T) {
	for _, c := range faults {
		into := reflect.New(reflect.TypeOf(c.into))
		into.Elem().Set(reflect.ValueOf(c.into))
		err := wire.Unmarshal([]byte(c.in), into.Interface())
		require.ErrorContains(t, err, c.want, shown(c.in))
		field, ok := err.(units.FieldError)
		require.True(t, ok, "a FieldError itself: %T", err)
		require.Positive(t, field.Line)
		require.Positive(t, field.Column)
		if field.Err != errStubborn && !strings.Contains(c.in, "when") {
			require.True(t, errors.Is(err, units.ErrSyntax) || errors.Is(err, units.ErrRange), c.want)
		}
		require.Empty(t, cmp.Diff(c.into, into.Elem().Interface(), exact), "stays as it was")
	}
	require.Greater(t, len(faults), len(forms), "more is refused than accepted")
}

func shown(s string) string { return s[:min(len(s), 100)] }

// What into held before an error it holds after it, however late the error comes.
func TestAnErrorChangesNothing(t *testing.T) {
	before := func() plain {
		return plain{ID: "old", List: []units.Mass{1, 2}, ByName: map[string]units.Ratio{"old": 1}, Next: &plain{ID: "next"}, hidden: 3}
	}
	p := before()
	require.Error(t, wire.Unmarshal([]byte(`{"id":"new","list":["9 g"],"byName":{"new":"1 %"},"next":{"id":"new"},"count":"x"}`), &p))
	require.Empty(t, cmp.Diff(before(), p, exact))
	require.Error(t, wire.Unmarshal([]byte(`{"id":"new"}}`), &p))
	require.Empty(t, cmp.Diff(before(), p, exact))
}

func TestTooMuchIsRefused(t *testing.T) {
	var list []int
	err := wire.Unmarshal(bytes.Repeat([]byte(" "), 64<<20+1), &list)
	require.ErrorContains(t, err, "more than 64 MiB")
	_, err = wire.Marshal(strings.Repeat("x", 64<<20-1))
	require.ErrorContains(t, err, "more than 64 MiB")
}

func TestTargetsAreRefused(t *testing.T) {
	for _, into := range []any{nil, 1, plain{}, (*plain)(nil)} {
		require.ErrorContains(t, wire.Unmarshal([]byte(`{}`), into), "expected a pointer")
	}
}

func TestIndentRefuses(t *testing.T) {
	for _, in := range []string{``, `{`, `{}{}`, `[1,]`} {
		out, err := wire.Indent([]byte(in))
		require.Error(t, err, in)
		require.Nil(t, out)
	}
}
