package conformance

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"math"
	"path"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// results are the lines of one package.
type results struct {
	t     *testing.T
	lines []string
	named map[string]bool // whether it had a result that was no error
	good  int             // results that were none
	also  func(function string, fn reflect.Value, args []any)
}

// add writes down what a function made of its arguments. An error is a result like any other, but only as such: its
// text is not arithmetic.
func (r *results) add(function string, err error, values []any, args ...any) {
	r.t.Helper()
	r.named[function] = r.named[function] || err == nil
	var said []string
	for _, arg := range args {
		said = append(said, short(full(arg)))
	}
	call := function + "(" + strings.Join(said, ", ") + ")"
	if err != nil {
		r.lines = append(r.lines, call+" = error")
		return
	}
	r.good++
	var got []string
	for _, value := range values {
		got = append(got, full(value))
	}
	r.lines = append(r.lines, call+" = "+strings.Join(got, ", "))
}

// short is an argument as the grid has it, of a long one the beginning and a hash: the call is found by it.
func short(arg string) string {
	const most = 120
	if len(arg) <= most {
		return arg
	}
	return arg[:most/2] + "… " + digest(arg)[:16]
}

// one is the list of a single result.
func one(value any) []any { return []any{value} }

// full is a value with all its digits, unexported parts included; of a long list the ends and a hash, and no texts of
// people.
func full(value any) string {
	if text, ok := value.(string); ok {
		return text
	}
	var b strings.Builder
	write(&b, reflect.ValueOf(value))
	return b.String()
}

func write(b *strings.Builder, v reflect.Value) {
	switch v.Kind() {
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		b.WriteString(strconv.FormatInt(v.Int(), 10))
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		b.WriteString(strconv.FormatUint(v.Uint(), 10))
	case reflect.Bool:
		b.WriteString(strconv.FormatBool(v.Bool()))
	case reflect.Float64:
		if v.Float() != v.Float() {
			b.WriteString("NaN") // any of them
			return
		}
		fmt.Fprintf(b, "%016x", math.Float64bits(v.Float()))
	case reflect.String:
		if v.Type() == reflect.TypeOf("") { // words for a person, which may be put better
			b.WriteString("…")
			return
		}
		b.WriteString(strconv.Quote(v.String()))
	case reflect.Struct:
		if v.IsZero() {
			b.WriteString("{}")
			return
		}
		if readings := v.MethodByName("Readings"); readings.IsValid() && v.CanInterface() { // a series, however it holds them
			write(b, readings.Call(nil)[0])
			return
		}
		writeFields(b, v)
	case reflect.Slice, reflect.Array:
		writeList(b, v)
	default:
		b.WriteString(v.Kind().String())
	}
}

// writeFields leaves out who said it.
func writeFields(b *strings.Builder, v reflect.Value) {
	b.WriteByte('{')
	first := true
	for i := 0; i < v.NumField(); i++ {
		kind := v.Field(i).Type()
		for kind.Kind() == reflect.Slice {
			kind = kind.Elem()
		}
		if path.Base(kind.PkgPath()) == "cite" {
			continue
		}
		if !first {
			b.WriteByte(' ')
		}
		first = false
		write(b, v.Field(i))
	}
	b.WriteByte('}')
}

func writeList(b *strings.Builder, v reflect.Value) {
	const most = 8
	b.WriteByte('[')
	for i := 0; i < v.Len(); i++ {
		if v.Len() > most && i == most/2 {
			var all strings.Builder
			for j := 0; j < v.Len(); j++ {
				write(&all, v.Index(j))
				all.WriteByte(' ')
			}
			fmt.Fprintf(b, " … %d, %s …", v.Len(), digest(all.String())[:16])
			i = v.Len() - 2
		}
		if i > 0 {
			b.WriteByte(' ')
		}
		write(b, v.Index(i))
	}
	b.WriteByte(']')
}

func digest(text string) string {
	sum := sha256.Sum256([]byte(text))
	return hex.EncodeToString(sum[:])
}

// How values are written down.
func TestFull(t *testing.T) {
	type pair struct {
		X float64
		y int64
	}
	require.Equal(t, "-7", full(int64(-7)))
	require.Equal(t, "{3ff8000000000000 2}", full(pair{1.5, 2}))
	require.Equal(t, "[1 2 3]", full([]int{1, 2, 3}))
	require.Equal(t, "[{8000000000000000 1}]", full([]pair{{X: math.Copysign(0, -1), y: 1}}))
	require.Equal(t, `{1 true … "a.b"}`, full(struct {
		A int
		B bool
		C string
		D verdict.Rule
	}{1, true, "a", "a.b"}))
	require.Equal(t, "[{} {1 {}}]", full([]struct {
		A int
		B pair
	}{{}, {A: 1}}))
	require.Equal(t, "{1}", full(struct {
		A        int
		Citation cite.Citation
		Cautions []cite.Caution
	}{A: 1}))
	long, other := make([]int, 9), make([]int, 9)
	other[4] = 1
	require.Contains(t, full(long), "[0 0 0 0 … 9, ")
	require.NotEqual(t, full(long), full(other), "what is left out is in the hash")
}
