package conformance

import (
	"fmt"
	"math"
	"reflect"
	"runtime/metrics"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// What one call may take at most, whatever its arguments say. The time tells a call that has no bound, not a slow one.
const (
	largest = 64 << 20
	longest = 20 * time.Second
)

// hostileCalls is how many calls of each function are tried with every number of their arguments replaced.
const hostileCalls = 2

// Every function of the grids is called with arguments in which one number at a time is what nobody would state: also the
// results of other functions that come back. It may refuse them, and neither panics, nor runs without a bound, nor
// more memory than any answer needs, nor returns a time before the beginning.
func TestHostileArguments(t *testing.T) {
	for _, pkg := range names(grids) {
		name := pkg // one a loop, for the closure
		t.Run(strings.ReplaceAll(name, "/", "-"), func(t *testing.T) {
			r := &results{t: t, named: map[string]bool{}}
			tried := map[string]int{}
			r.also = func(function string, fn reflect.Value, args []any) {
				if tried[function]++; tried[function] <= hostileCalls && function != "Stretch.Length" { // a difference, no more
					hostile(t, function, fn, args)
				}
			}
			grids[name].of(r)
			require.NotEmpty(t, r.lines)
		})
	}
}

// hostile calls a function once for each hostile value of each number in its arguments.
func hostile(t *testing.T, name string, fn reflect.Value, args []any) {
	for i := range args {
		for leaf := 0; ; leaf++ {
			tried := false
			for choice := 0; ; choice++ {
				in := make([]reflect.Value, len(args))
				for j, arg := range args {
					in[j] = deep(reflect.ValueOf(arg))
				}
				count := leaf
				where, found, changed := spoil(in[i], &count, choice)
				if !found {
					break
				}
				tried = true
				if !changed {
					break
				}
				attempt(t, fmt.Sprintf("%s, argument %d%s = %v", name, i+1, where, in[i]), fn, in)
			}
			if !tried {
				break
			}
		}
	}
}

// attempt makes one call and holds it to what every call keeps.
func attempt(t *testing.T, what string, fn reflect.Value, in []reflect.Value) {
	before := allocated()
	start := time.Now()
	defer func() {
		if fault := recover(); fault != nil {
			t.Errorf("%s: panic: %v", what, fault)
		}
	}()
	out := fn.Call(in)
	took := time.Since(start)
	if took > longest {
		t.Errorf("%s: took %v", what, took)
	}
	if got := allocated() - before; got > largest {
		t.Errorf("%s: took %d MiB", what, got>>20)
	}
	if err, ok := out[len(out)-1].Interface().(error); ok && err != nil {
		if len(err.Error()) > 1_000 {
			t.Errorf("%s: an error of %d bytes", what, len(err.Error()))
		}
		return
	}
	for _, one := range out {
		if d, bad := negative(one); bad {
			t.Errorf("%s: a time of %v", what, d)
			return
		}
	}
}

// allocated is how many bytes were asked for since the start.
func allocated() uint64 {
	sample := []metrics.Sample{{Name: "/gc/heap/allocs:bytes"}}
	metrics.Read(sample)
	return sample[0].Value.Uint64()
}

// below are the types whose times may lie below zero: what is overdue, and the argument that a conflict names.
var below = map[string]bool{"spoilage.LifeLeft": true, "timetable.Bound": true}

// negative is the first time below zero in a result.
func negative(v reflect.Value) (time.Duration, bool) {
	if below[v.Type().String()] {
		return 0, false
	}
	switch v.Kind() {
	case reflect.Int64:
		return time.Duration(v.Int()), v.Type() == reflect.TypeOf(time.Duration(0)) && v.Int() < 0
	case reflect.Struct:
		for i := 0; i < v.NumField(); i++ {
			if d, bad := negative(v.Field(i)); bad {
				return d, true
			}
		}
	case reflect.Slice, reflect.Array:
		for i := 0; i < v.Len(); i++ {
			if d, bad := negative(v.Index(i)); bad {
				return d, true
			}
		}
	}
	return 0, false
}

var temperature = reflect.TypeOf(units.Temperature{})

// spoil puts a hostile value into the n-th number of an argument. Found is whether there is such a number, changed whether
// there is such a choice for it.
func spoil(v reflect.Value, n *int, choice int) (where string, found, changed bool) {
	if v.Type() == temperature {
		return number(v, n, choice)
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := 0; i < v.NumField(); i++ {
			if !v.Field(i).CanSet() || strings.Contains(v.Field(i).Type().String(), "cite.") {
				continue
			}
			if where, found, changed = spoil(v.Field(i), n, choice); found {
				return "." + v.Type().Field(i).Name + where, found, changed
			}
		}
	case reflect.Slice, reflect.Array:
		for i := 0; i < v.Len() && i < 3; i++ {
			if where, found, changed = spoil(v.Index(i), n, choice); found {
				return fmt.Sprintf("[%d]%s", i, where), found, changed
			}
		}
	case reflect.Int, reflect.Int32, reflect.Int64, reflect.Uint8:
		return number(v, n, choice)
	}
	return "", false, false
}

// number is spoil of one number.
func number(v reflect.Value, n *int, choice int) (string, bool, bool) {
	if *n > 0 {
		*n--
		return "", false, false
	}
	extremes := []int64{0, 1, -1, math.MaxInt64, math.MinInt64, math.MaxInt32, math.MinInt32, 1 << 53, 1e15, -1e15}
	if choice >= len(extremes) {
		return "", true, false
	}
	x := extremes[choice]
	switch {
	case v.Type() == temperature:
		v.Set(reflect.ValueOf(units.FromAbsoluteZero(units.TemperatureChange(x))))
	case v.Kind() == reflect.Uint8:
		v.SetUint(uint64(uint8(x)))
	case v.OverflowInt(x):
		v.SetInt(int64(int32(x)))
	default:
		v.SetInt(x)
	}
	return "", true, true
}

// deep is a copy that shares no slice, and may be set.
func deep(v reflect.Value) reflect.Value {
	c := reflect.New(v.Type()).Elem()
	c.Set(v)
	unshare(c)
	return c
}

func unshare(v reflect.Value) {
	switch {
	case v.Kind() == reflect.Slice && !v.IsNil() && v.CanSet():
		c := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
		reflect.Copy(c, v)
		v.Set(c)
		fallthrough
	case v.Kind() == reflect.Array:
		for i := 0; i < v.Len(); i++ {
			unshare(v.Index(i))
		}
	case v.Kind() == reflect.Struct:
		for i := 0; i < v.NumField(); i++ {
			if v.Field(i).CanSet() {
				unshare(v.Field(i))
			}
		}
	}
}
