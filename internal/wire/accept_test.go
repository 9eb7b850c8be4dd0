package wire_test

import (
	"encoding/json"
	"math"
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

func altitude(ft units.Length) units.Stated[units.Length] { return units.State(ft * units.Foot) }

func pointTo[T any](v T) *T { return &v }

// forms are values and what is written for them; reading gives the value back.
var forms = map[string]struct {
	value any
	want  string
}{
	"nothing set": {plain{}, `{}`},
	"words and quantities": {plain{ID: "a", MaxGap: 100 * time.Minute, F0: 1500 * time.Millisecond, Colour: 2, Height: 609600 * units.Millimetre, Warm: units.Celsius(121.1)},
		`{"id":"a","maxGap":"100 min","f0":"1.5s","colour":"green","height":"2000 ft","warm":"121.1 °C"}`},
	"sea level is stated":   {plain{Altitude: altitude(0)}, `{"altitude":"0 mm"}`},
	"a stated word":         {plain{Told: units.State(colour(1))}, `{"told":"red"}`},
	"a stated count of 0":   {plain{Often: units.State(0), Sure: units.State(false)}, `{"often":0,"sure":false}`},
	"counts":                {plain{Yes: true, Count: -3, Small: -128, Large: math.MaxUint64, Tiny: 255}, `{"yes":true,"count":-3,"small":-128,"large":18446744073709551615,"tiny":255}`},
	"lists":                 {plain{List: []units.Mass{units.Gram, 0}, Grid: [2][2]int32{{1, 2}, {0, 4}}}, `{"list":["1 g","0 g"],"grid":[[1,2],[0,4]]}`},
	"empty is not nothing":  {plain{List: []units.Mass{}, ByName: map[string]units.Ratio{}}, `{"list":[],"byName":{}}`},
	"maps are sorted":       {plain{ByName: map[string]units.Ratio{"b": units.Percent, "a": 0, "": 2 * units.Percent}}, `{"byName":{"":"2 %","a":"0 %","b":"1 %"}}`},
	"maps by word":          {plain{ByColour: map[colour][]plain{3: {{Count: 1}}, 0: {}}}, `{"byColour":{"":[],"blue":[{"count":1}]}}`},
	"pointers":              {plain{Next: &plain{}, Number: pointTo(0)}, `{"next":{},"number":0}`},
	"a moment":              {plain{When: time.Date(2021, 3, 4, 5, 6, 7, 80, time.UTC)}, `{"when":"2021-03-04T05:06:07.00000008Z"}`},
	"nothing is HTML":       {plain{ID: "a < b & c > d ° \u2028"}, `{"id":"a < b & c > d ° ` + "\u2028" + `"}`},
	"what JSON forbids":     {plain{ID: "\"\\/\n\r\t\x00\x1f\x7f"}, `{"id":"\"\\/\n\r\t\u0000\u001f` + "\x7f" + `"}`},
	"zeros that stay":       {kept{}, `{"zero":0,"time":"0 min","deep":"0 mm","hue":""}`},
	"a required zero":       {asked{Altitude: altitude(0), Colour: 1, Warm: units.Celsius(0), Name: "x"}, `{"altitude":"0 mm","colour":"red","depth":"0 mm","warm":"0 °C","name":"x","count":0}`},
	"embedded, nested":      {result{Name: "r", report: report{Verdict: 1, Findings: []finding{{Rule: "x", Wanted: band{High: units.Metre}}}}, Steps: []limit{{}}}, `{"name":"r","verdict":"red","findings":[{"rule":"x","wanted":{"high":"1 m"}}],"steps":[{"atMost":"0 mm"}]}`},
	"a form of its own":     {result{Limit: limit{units.Metre}}, `{"limit":{"atMost":"1 m"}}`},
	"a lent form":           {holder{One: borrower{lender{1}, 2}, Many: []borrower{{Own: 3}}}, `{"one":{"held":1,"own":2},"many":[{"own":3}]}`},
	"a list at the root":    {[]finding{{Rule: "x"}, {}}, `[{"rule":"x"},{}]`},
	"a map at the root":     {map[string]int{"b": 1, "a": 0}, `{"a":0,"b":1}`},
	"a word at the root":    {colour(3), `"blue"`},
	"a time at the root":    {time.Duration(1), `"1ns"`},
	"a stated at the root":  {units.State(4), `4`},
	"an array at the root":  {[3]bool{true, false, true}, `[true,false,true]`},
	"a form, at the root":   {limitForm{}, `{"atMost":"0 mm"}`},
	"no field":              {struct{}{}, `{}`},
	"names":                 {struct{ IDs, PHLow, EPA, FishAbove41, X, XY, ÅngströmÅ int }{1, 2, 3, 4, 5, 6, 7}, `{"ids":1,"phLow":2,"epa":3,"fishAbove41":4,"x":5,"xy":6,"ångströmÅ":7}`},
	"a stated object":       {struct{ B units.Stated[band] }{units.State(band{})}, `{"b":{}}`},
	"as deep as is allowed": {chain(63), strings.Repeat(`{"next":`, 63) + `{}` + strings.Repeat(`}`, 63)},
}

func chain(n int) plain {
	if n == 0 {
		return plain{}
	}
	return plain{Next: pointTo(chain(n - 1))}
}

var exact = cmp.Options{cmp.Exporter(func(reflect.Type) bool { return true })}

func TestFormsComeBack(t *testing.T) {
	for name, c := range forms {
		out, err := wire.Marshal(c.value)
		require.NoError(t, err, name)
		require.Equal(t, c.want, string(out), name)
		require.True(t, json.Valid(out), name)
		back := reflect.New(reflect.TypeOf(c.value))
		require.NoError(t, wire.Unmarshal(out, back.Interface()), name)
		require.Empty(t, cmp.Diff(c.value, back.Elem().Interface(), exact), name)
		indented, err := wire.Indent(out)
		require.NoError(t, err)
		again := reflect.New(reflect.TypeOf(c.value))
		require.NoError(t, wire.Unmarshal(indented, again.Interface()), name)
		require.Empty(t, cmp.Diff(c.value, again.Elem().Interface(), exact), name)
	}
}

// Encoding/json and this package call each other.
func TestStandardEncoderReachesTheSameForm(t *testing.T) {
	r := result{Name: "r", Limit: limit{units.Metre}}
	out, err := json.Marshal(r)
	require.NoError(t, err)
	require.Equal(t, `{"name":"r","limit":{"atMost":"1 m"}}`, string(out))
	var back result
	require.NoError(t, json.Unmarshal(out, &back))
	require.Equal(t, r, back)
	back = result{}
	err = json.Unmarshal([]byte(`{"name":"r","limits":{}}`), &back)
	require.ErrorContains(t, err, `limits (line 1, column 13): unknown field; expected name, verdict, findings, limit, steps`)
}

// What people write is read, though it is written in another way.
func TestOtherSpellings(t *testing.T) {
	for in, want := range map[string]any{
		" \t\r\n[ 1 , 2 ]\n":                    []int{1, 2},
		`"\u00e9\ud83d\ude00\/\b\f\n\r\t\"\\é"`: "é😀/\b\f\n\r\t\"\\é",
		`"GREEN"`:                               colour(2),
		`{"\u0061":1}`:                          map[string]int{"a": 1},
		`-0`:                                    0,
		`"2,000 ft"`:                            2000 * units.Foot,
		`"100 min"`:                             100 * time.Minute,
		`"100min"`:                              100 * time.Minute,
		`"1h40m"`:                               100 * time.Minute,
		`"1.5 h"`:                               90 * time.Minute,
		`"0.000000001 s"`:                       time.Nanosecond,
		`"1.50 ms"`:                             1500 * time.Microsecond,
		`"2 µs"`:                                2 * time.Microsecond,
		`"-1 h 30 min"`:                         -90 * time.Minute,
		`"-0 min"`:                              time.Duration(0),
		`"2021-03-04T05:06:07+02:00"`:           time.Date(2021, 3, 4, 5, 6, 7, 0, time.FixedZone("", 7200)),
	} {
		into := reflect.New(reflect.TypeOf(want))
		require.NoError(t, wire.Unmarshal([]byte(in), into.Interface()), in)
		if moment, ok := want.(time.Time); ok {
			require.True(t, moment.Equal(into.Elem().Interface().(time.Time)))
			require.Equal(t, moment.String(), into.Elem().Interface().(time.Time).String())
			continue
		}
		require.Empty(t, cmp.Diff(want, into.Elem().Interface()), in)
	}
}

// Every time comes back to the nanosecond.
func TestTimesComeBack(t *testing.T) {
	times := []time.Duration{0, 1, -1, 999, 1000, 1001, math.MaxInt64, math.MinInt64, math.MinInt64 + 1, time.Hour + 1, time.Minute - 1, -36 * time.Hour}
	for d := time.Duration(3); d > 0 && d < math.MaxInt64/7; d = d*7 + 1 {
		times = append(times, d, -d, d.Truncate(time.Second), d.Truncate(time.Minute), d.Truncate(time.Millisecond))
	}
	for _, d := range times {
		out, err := wire.Marshal(d)
		require.NoError(t, err)
		var back time.Duration
		require.NoError(t, wire.Unmarshal(out, &back), string(out))
		require.Equal(t, d, back, string(out))
	}
}

// What into held is replaced, not added to.
func TestReadingReplaces(t *testing.T) {
	p := plain{ID: "old", List: []units.Mass{1}, ByName: map[string]units.Ratio{"old": 1}, hidden: 3}
	require.NoError(t, wire.Unmarshal([]byte(`{"count":1}`), &p))
	require.Empty(t, cmp.Diff(plain{Count: 1}, p, exact))
}

// Of a partial input nothing is required, and what is there is read as strictly as ever.
func TestPartialInputs(t *testing.T) {
	type answer struct {
		Asked asked `wire:"partial"`
	}
	for want, v := range map[string]answer{
		`{}`: {},
		`{"asked":{"altitude":"0 mm","colour":"red"}}`: {asked{Altitude: altitude(0), Colour: 1}},
	} {
		out, err := wire.Marshal(v)
		require.NoError(t, err)
		require.Equal(t, want, string(out))
		var back answer
		require.NoError(t, wire.Unmarshal(out, &back))
		require.Equal(t, v, back)
	}
	for in, want := range map[string]string{
		`{"asked":{"altitude":"0"}}`: "asked.altitude (line 1, column 22): cannot read",
		`{"asked":{"hue":"red"}}`:    "asked.hue (line 1, column 11): unknown field",
		`{"asked":null}`:             "asked (line 1, column 10): null",
	} {
		require.ErrorContains(t, wire.Unmarshal([]byte(in), new(answer)), want)
	}
}

// A list or map has no place for nothing: a nil slice or map in it, or at the root, comes back empty.
func TestNilWithinAListIsEmpty(t *testing.T) {
	out, err := wire.Marshal([]map[string][]int{nil, {"a": nil}})
	require.NoError(t, err)
	require.Equal(t, `[{},{"a":[]}]`, string(out))
	var back []map[string][]int
	require.NoError(t, wire.Unmarshal(out, &back))
	require.Equal(t, []map[string][]int{{}, {"a": {}}}, back)
	out, err = wire.Marshal([]int(nil))
	require.NoError(t, err)
	require.Equal(t, `[]`, string(out))
}
