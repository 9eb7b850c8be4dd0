package wire_test

import (
	"errors"
	"reflect"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

//lint:file-ignore U1000 the fields are there to be refused

// Types that have no form, or would lose something of themselves.
type (
	number int
	sealed struct{ a int }
	half   struct{ value units.Length }
	tagged struct {
		a int `wire:"always"`
	}
	unknown struct {
		A int `wire:"omitempty"`
	}
	noKey  struct{ A map[int]int }
	clash  struct{ ID, Id int }
	shadow struct {
		report
		Findings []int
	}
	twice struct {
		report
		band
		finding
		other
	}
	other        struct{ Rule string }
	embedsSealed struct {
		sealed
		A int
	}
	embedsText struct {
		units.Temperature
		A int
	}
	embedsNumber struct {
		Number
		A int
	}
	Number        int
	embedsPointer struct{ *Band }
	Band          struct{ Low units.Length }
	embedsTagged  struct {
		Band `wire:"required"`
	}
	embedsStated struct{ units.Stated[int] }
	embedsTwo    struct {
		phraseLike
		Phraseful
	}
	phraseLike struct{ Low units.Length }
	Phraseful  struct{ High units.Length }
	embedsOwn  struct {
		mixed
		A int
	}
	mixed struct {
		Shown  int
		hidden int
	}
	skipsAll struct {
		A int `wire:"-"`
	}
	onlyRead  struct{ a int }
	onlyWrite struct{ a int }
	spoilt    struct{ A string }
	slipshod  struct{ A int }
	silent    uint8
)

func (mixed) MarshalJSON() ([]byte, error)      { return []byte(`{}`), nil }
func (phraseLike) MarshalText() ([]byte, error) { return []byte("x"), nil }
func (Phraseful) MarshalText() ([]byte, error)  { return []byte("x"), nil }
func (*onlyRead) UnmarshalText([]byte) error    { return nil }
func (onlyWrite) MarshalText() ([]byte, error)  { return []byte("x"), nil }
func (s spoilt) MarshalJSON() ([]byte, error)   { return []byte(s.A), nil }
func (slipshod) MarshalJSON() ([]byte, error)   { return nil, errStubborn }
func (silent) MarshalText() ([]byte, error)     { return nil, nil }
func (*silent) UnmarshalText([]byte) error      { return nil }

var noForms = []struct {
	value any
	want  string
}{
	{3.5, "float64: a float64 has no form"},
	{struct{ A float32 }{}, "a: float32: a float32 has no form"},
	{struct{ A []float64 }{[]float64{1}}, "a[0]: float64: a float64 has no form"},
	{struct{ A any }{}, "a: interface {}: a interface has no form"},
	{struct{ A error }{errStubborn}, "a: error: a interface has no form"},
	{struct{ A func() }{}, "a: func(): a func has no form"},
	{struct{ A chan int }{}, "a: chan int: a chan has no form"},
	{struct{ A complex128 }{}, "a: complex128: a complex128 has no form"},
	{struct{ A uintptr }{}, "a: uintptr: a uintptr has no form"},
	{struct{ A **int }{}, "a: **int: a pointer to a pointer has no form"},
	{struct{ A number }{}, "a: wire_test.number: a whole number of a type of its own needs a text form"},
	{struct{ A time.Month }{}, "a: time.Month: a whole number of a type of its own needs a text form"},
	{struct {
		A *asked `wire:"partial"`
	}{}, "field A is partial and no struct of fields"},
	{noKey{}, "a: map[int]int: a map needs keys that are text"},
	{sealed{}, "wire_test.sealed: none of its fields is written, and what it holds would be lost"},
	{struct{ A half }{}, "a: wire_test.half: none of its fields is written"},
	{skipsAll{}, "none of its fields is written"},
	{tagged{}, "field a has a tag and is not exported"},
	{unknown{}, `field A has the tag "omitempty"; expected always, required, partial or -`},
	{clash{}, "two fields are called id"},
	{shadow{}, "two fields are called findings"},
	{twice{}, "two fields are called rule"},
	{embedsSealed{}, "it embeds wire_test.sealed, none of whose fields is written"},
	{embedsText{}, "it embeds units.Temperature, whose text form would stand for the whole"},
	{embedsNumber{}, "it embeds wire_test.Number, which is no struct of fields"},
	{embedsPointer{}, "it embeds *wire_test.Band, which is no struct of fields"},
	{embedsTagged{}, `embedded field Band can have no tag but "-"`},
	{embedsStated{}, "it embeds units.Stated[int], which is no struct of fields"},
	{embedsTwo{}, "it embeds wire_test.phraseLike, which is no struct of fields"},
	{embedsOwn{}, "it embeds wire_test.mixed, whose own form may say more than its exported fields"},
}

func TestTypesWithoutAFormAreRefused(t *testing.T) {
	for _, c := range noForms {
		out, err := wire.Marshal(c.value)
		require.ErrorContains(t, err, c.want)
		require.Nil(t, out)
		field, ok := err.(units.FieldError)
		require.True(t, ok)
		require.Zero(t, field.Line)
	}
	for _, in := range []any{noKey{}, sealed{}, clash{}, shadow{}, embedsSealed{}, embedsOwn{}, tagged{}} {
		err := wire.Unmarshal([]byte(`{"a":{}}`), reflect.New(reflect.TypeOf(in)).Interface())
		require.ErrorIs(t, err, units.ErrSyntax, "%T", in)
	}
}

func TestValuesThatWouldNotComeBackAreRefused(t *testing.T) {
	var none *plain
	ring := &plain{}
	ring.Next = ring
	for want, v := range map[string]any{
		"the value is nil": nil, "nothing to write: the value is nil": none,
		"next.next.next":                         ring,
		"next: nested more than 64 deep":         chain(64),
		"colour: cannot read":                    plain{Colour: 9},
		"byColour: cannot read":                  struct{ ByColour map[colour]int }{map[colour]int{9: 1}},
		`id: "a\xff" is no UTF-8`:                plain{ID: "a\xff"},
		`byName: "\xff" is no UTF-8`:             plain{ByName: map[string]units.Ratio{"\xff": 1}},
		"[1]: it is nil":                         []*int{new(int), nil},
		"a: it is nil":                           map[string]*int{"a": nil},
		"[0]: it is not stated":                  []units.Stated[int]{{}},
		"it is not stated":                       units.Stated[int]{},
		"often: it is not stated":                plain{Often: units.Stated[int]{Value: 3}},
		"told: it counts as stated and is empty": plain{Told: units.State(colour(0))},
		"w: it counts as stated and is empty": struct {
			W units.Stated[units.Temperature]
		}{units.State(units.Temperature{})},
		"s: it counts as stated and is empty":                       struct{ S units.Stated[string] }{units.State(" ")},
		"name: it is required and blank":                            asked{Name: " "},
		"when: Time.MarshalText: year outside":                      plain{When: time.Date(10000, 1, 1, 0, 0, 0, 0, time.UTC)},
		"has seconds, which RFC 3339":                               plain{When: time.Date(2000, 1, 1, 0, 0, 0, 0, time.FixedZone("", 61))},
		"onlyRead can be read from text and not":                    onlyRead{1},
		"is set and has no text":                                    silent(3),
		"[0]: MarshalJSON of wire_test.spoilt":                      []spoilt{{"{"}},
		"[0].a: not today":                                          []struct{ A slipshod }{{slipshod{1}}},
		"writes what cannot be read: a: expected a value, not null": []spoilt{{`{"a":null}`}},
		"expected the end after one value":                          []spoilt{{`1 2`}},
	} {
		out, err := wire.Marshal(v)
		require.ErrorContains(t, err, want)
		require.Nil(t, out)
	}
	require.True(t, errors.Is(wire.Unmarshal([]byte(`"x"`), new(onlyWrite)), units.ErrSyntax))
	require.ErrorContains(t, wire.Unmarshal([]byte(`"x"`), new(onlyWrite)), "can be written as text and not read")
	_, err := wire.Marshal(map[silent]int{1: 1, 2: 2})
	require.ErrorContains(t, err, `two keys are written ""`)
}

// What is not compact in a type's own form is made so.
func TestOwnFormsAreCompacted(t *testing.T) {
	out, err := wire.Marshal([]spoilt{{" { \"a\" : [ 1 ,\n2 ] } "}})
	require.NoError(t, err)
	require.Equal(t, `[{"a":[1,2]}]`, string(out))
}

// A required field that is not given is left out, so that reading misses it and says so.
func TestWhatIsRequiredAndNotGivenIsMissed(t *testing.T) {
	out, err := wire.Marshal(asked{})
	require.NoError(t, err)
	require.Equal(t, `{"depth":"0 mm","count":0}`, string(out))
	var back asked
	require.ErrorContains(t, wire.Unmarshal(out, &back), "altitude (line 1, column 1): it is required and missing")
}
