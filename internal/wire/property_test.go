package wire_test

import (
	"encoding/json"
	"math/rand"
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
)

// filled makes a value at random: of any numbers, any text in UTF-8, some things left out.
func filled(r *rand.Rand, v reflect.Value, depth int) {
	switch v.Interface().(type) {
	case colour:
		v.SetUint(uint64(r.Intn(4)))
		return
	case units.Temperature:
		v.Set(reflect.ValueOf(units.FromAbsoluteZero(units.TemperatureChange(r.Int63n(1 << 40)))))
		return
	case time.Time:
		v.Set(reflect.ValueOf(time.Unix(r.Int63n(1<<37), r.Int63n(1e9)).UTC()))
		return
	case limit:
		v.Set(reflect.ValueOf(limit{units.Length(r.Int63())}))
		return
	}
	switch v.Kind() {
	case reflect.Bool:
		v.SetBool(r.Intn(2) == 0)
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		v.SetInt(int64(r.Uint64()) >> r.Intn(64) >> (64 - v.Type().Bits()))
	case reflect.Uint8, reflect.Uint64:
		v.SetUint(r.Uint64() >> r.Intn(64) >> (64 - v.Type().Bits()))
	case reflect.String:
		letters := make([]rune, r.Intn(6))
		for i := range letters {
			letters[i] = []rune("a\"\\/<&>°\x00\x1f\x7f\u2028\ufffd😀 \n")[r.Intn(16)]
		}
		v.SetString(string(letters))
	default:
		fillMany(r, v, depth)
	}
}

func fillMany(r *rand.Rand, v reflect.Value, depth int) {
	n := r.Intn(4) - 1 // -1 leaves it out
	if depth > 4 {
		n = -1
	}
	switch {
	case v.Kind() == reflect.Array:
		for i := 0; i < v.Len(); i++ {
			filled(r, v.Index(i), depth+1)
		}
	case v.Kind() == reflect.Struct && strings.HasPrefix(v.Type().Name(), "Stated["):
		if filled(r, v.Field(0), depth+1); n < 0 || v.Field(0).Interface() == colour(0) {
			v.Set(reflect.Zero(v.Type()))
			return
		}
		v.Field(1).SetBool(true)
	case v.Kind() == reflect.Struct:
		for i := 0; i < v.NumField(); i++ {
			if f := v.Type().Field(i); f.Tag.Get("wire") != "-" && f.Name != "hidden" && (f.Anonymous || r.Intn(3) > 0) {
				filled(r, settable(v.Field(i)), depth+1)
			}
		}
	case n < 0:
	case v.Kind() == reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		filled(r, v.Elem(), depth+1)
	case v.Kind() == reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), n, n))
		for i := 0; i < n; i++ {
			filled(r, v.Index(i), depth+1)
		}
	case v.Kind() == reflect.Map:
		v.Set(reflect.MakeMap(v.Type()))
		for ; n > 0; n-- {
			key, value := reflect.New(v.Type().Key()).Elem(), reflect.New(v.Type().Elem()).Elem()
			filled(r, key, depth+1)
			if filled(r, value, depth+1); value.Kind() == reflect.Slice && value.IsNil() {
				value.Set(reflect.MakeSlice(value.Type(), 0, 0)) // a map has no place for nothing
			}
			v.SetMapIndex(key, value)
		}
	}
}

// settable opens an embedded struct whose type is not exported.
func settable(v reflect.Value) reflect.Value {
	if v.CanSet() {
		return v
	}
	return reflect.NewAt(v.Type(), v.Addr().UnsafePointer()).Elem()
}

// Whatever is written comes back as it was, and is written again to the byte.
func TestWhateverIsWrittenComesBack(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	types := []any{plain{}, kept{}, result{}, holder{}, []plain{}, map[colour]result{}, [2]finding{}}
	for i := 0; i < 3000; i++ {
		v := reflect.New(reflect.TypeOf(types[i%len(types)]))
		filled(r, v.Elem(), 0)
		if v.Elem().IsZero() {
			continue // a root that is nil
		}
		out, err := wire.Marshal(v.Interface())
		require.NoError(t, err)
		require.True(t, json.Valid(out))
		back := reflect.New(v.Type().Elem())
		require.NoError(t, wire.Unmarshal(out, back.Interface()), string(out))
		require.Empty(t, cmp.Diff(v.Interface(), back.Interface(), exact), string(out))
		again, err := wire.Marshal(back.Interface())
		require.NoError(t, err)
		require.Equal(t, string(out), string(again))
	}
}

// A byte changed, cut out or put in is an error with a place, or another value; never a panic.
func TestSpoiltTextIsNamed(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for i := 0; i < 3000; i++ {
		var v result
		filled(r, reflect.ValueOf(&v).Elem(), 0)
		out, err := wire.Marshal(v)
		require.NoError(t, err)
		at := r.Intn(len(out))
		letter := `"{}[],:\n0-a`[r.Intn(12)]
		spoilt := append(append(append([]byte{}, out[:at]...), letter), out[at+r.Intn(2):]...)
		heldTo(t, spoilt, &result{})
	}
}

// heldTo checks what must be true of any text whatever.
func heldTo(t *testing.T, data []byte, into any) {
	err := wire.Unmarshal(data, into)
	if err != nil {
		field, ok := err.(units.FieldError)
		require.True(t, ok, "%T", err)
		lines := strings.Split(string(data), "\n")
		require.True(t, field.Line >= 1 && field.Line <= len(lines), "%v", err)
		require.True(t, field.Column >= 1 && field.Column <= 1+len([]rune(lines[field.Line-1])), "%v", err)
		require.True(t, reflect.ValueOf(into).Elem().IsZero(), "stays as it was")
		return
	}
	require.True(t, json.Valid(data), "%q", data)
	out, err := wire.Marshal(into)
	require.NoError(t, err)
	back := reflect.New(reflect.TypeOf(into).Elem())
	require.NoError(t, wire.Unmarshal(out, back.Interface()), string(out))
	require.Empty(t, cmp.Diff(into, back.Interface(), exact), string(out))
}
