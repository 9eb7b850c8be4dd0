package conformance

import (
	"reflect"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Reasons for which an exported function has no results.
const (
	sources = "hands out where a figure comes from, or a caution"
	faults  = "is asked of an error"
	build   = "writes its arguments down and works nothing out"
)

// sweep adds the results of a function, or of a method written as one of its type, for every choice of one argument from
// each list, and returns those that were no errors.
func (r *results) sweep(name string, function any, lists ...[]any) (good []any) {
	r.t.Helper()
	fn := reflect.ValueOf(function)
	args := make([]any, len(lists))
	var choose func(n int)
	choose = func(n int) {
		if n == len(lists) {
			good = append(good, r.call(name, fn, args)...)
			return
		}
		for _, one := range lists[n] {
			args[n] = one
			choose(n + 1)
		}
	}
	choose(0)
	return good
}

// call adds one result and returns it.
func (r *results) call(name string, fn reflect.Value, args []any) []any {
	r.t.Helper()
	in := make([]reflect.Value, len(args))
	for i, arg := range args {
		in[i] = reflect.ValueOf(arg)
	}
	if r.also != nil {
		r.also(name, fn, args)
	}
	out := fn.Call(in)
	var err error
	if last := len(out) - 1; last >= 0 && out[last].Type() == reflect.TypeOf((*error)(nil)).Elem() {
		err, _ = out[last].Interface().(error)
		out = out[:last]
	}
	var values []any
	for _, one := range out {
		values = append(values, one.Interface())
	}
	r.add(name, err, values, args...)
	if err != nil || len(values) == 0 {
		return nil
	}
	return values[:1]
}

// these is a list of arguments.
func these(list ...any) []any { return list }

// stepped are the whole numbers from one to another in steps, each so many units.
func stepped[Q ~int | ~int32 | ~int64](from, to, step int64, unit Q) (list []any) {
	for i := from; i <= to; i += step {
		list = append(list, Q(i)*unit)
	}
	return list
}

// kinds are the values of an enumeration.
func kinds[E ~uint8](most E) (list []any) {
	for e := E(1); e <= most; e++ {
		list = append(list, e)
	}
	return list
}

// degrees are temperatures from one to another in tenths of °C.
func degrees(from, to, step int64) (list []any) {
	for i := from; i <= to; i += step {
		list = append(list, tenths(i))
	}
	return list
}

// every are the elements of a slice.
func every[T any](all []T) (list []any) {
	for _, one := range all {
		list = append(list, one)
	}
	return list
}

// stated are the arguments as stated ones.
func stated[T comparable](all []any) (list []any) {
	for _, one := range all {
		list = append(list, units.State(one.(T)))
	}
	return list
}

// some are every n-th of a list.
func some(list []any, n int) (few []any) {
	for i := 0; i < len(list); i += n {
		few = append(few, list[i])
	}
	return few
}

// scrawl is a record of n readings that wanders by whole numbers of tenths of °C between two temperatures, about a
// reading each so long.
func scrawl(r *results, n, seed, low, high int64, each time.Duration) series.Series[units.Temperature] {
	var readings []series.Reading[units.Temperature]
	at, c := time.Duration(seed)*time.Second, low+(17*seed)%(high-low)
	for i := int64(0); i < n; i++ {
		readings = append(readings, series.Reading[units.Temperature]{At: at, Value: tenths(c)})
		seed = (seed*1_103_515_245 + 12_345) % (1 << 31)
		at += each/2 + time.Duration(seed)*each/(1<<31)
		c = min(high, max(low, c+seed/1024%31-15))
	}
	s, err := series.New(readings)
	require.NoError(r.t, err)
	return s
}

// scrawls are n such records.
func scrawls(r *results, n, low, high int64, each time.Duration) (list []any) {
	for seed := int64(1); seed <= n; seed++ {
		list = append(list, scrawl(r, 10+7*seed, seed, low, high, each))
	}
	return list
}
