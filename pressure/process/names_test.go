package process_test

import (
	"encoding"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// Every word comes back as its value, in capitals too; what has no word is neither written nor read.
func TestNames(t *testing.T) {
	roundTrip(t, 3, func(v uint8) process.Product { return process.Product(v) }, process.ParseProduct)
	roundTrip(t, 3, func(v uint8) process.Pack { return process.Pack(v) }, process.ParsePack)
	roundTrip(t, 6, func(v uint8) process.Jar { return process.Jar(v) }, process.ParseJar)
	roundTrip(t, 2, func(v uint8) process.Gauge { return process.Gauge(v) }, process.ParseGauge)
}

type named interface {
	comparable
	fmt.Stringer
	encoding.TextMarshaler
}

func roundTrip[T named](t *testing.T, last uint8, of func(uint8) T, parse func(string) (T, error)) {
	t.Helper()
	for v := uint8(1); v <= last; v++ {
		back, err := parse(of(v).String())
		require.NoError(t, err)
		require.Equal(t, of(v), back)
		text, err := of(v).MarshalText()
		require.NoError(t, err)
		require.Equal(t, of(v).String(), string(text))
	}
	text, err := of(0).MarshalText()
	require.NoError(t, err)
	require.Empty(t, text)
	for _, bad := range []uint8{last + 1, 200, 255} {
		_, err := of(bad).MarshalText()
		require.ErrorIs(t, err, units.ErrSyntax)
		_, err = parse(of(bad).String())
		require.ErrorIs(t, err, units.ErrSyntax)
	}
	for _, bad := range []string{"", "x", "1", of(0).String(), of(1).String() + "s!"} {
		_, err := parse(bad)
		require.ErrorIs(t, err, units.ErrSyntax, bad)
	}
}

func TestUnmarshalKeepsTheValueOnAnError(t *testing.T) {
	j := process.Quart
	require.ErrorIs(t, j.UnmarshalText([]byte("bucket")), units.ErrSyntax)
	require.Equal(t, process.Quart, j)
	require.NoError(t, j.UnmarshalText(nil))
	require.Zero(t, j)
}

// The nominal volumes are whole numbers of the smallest: USDA Complete Guide, Guide 1, Jars and lids.
func TestJarVolumes(t *testing.T) {
	for jar, halfPints := range map[process.Jar]units.Volume{
		process.HalfPint: 2, process.TwelveOunce: 3, process.Pint: 4, process.PintAndHalf: 6, process.Quart: 8, process.HalfGallon: 16,
	} {
		require.Equal(t, halfPints*units.HalfPint, 2*jar.Volume(), jar.String())
	}
	for _, jar := range []process.Jar{0, 7, 255} {
		require.Zero(t, jar.Volume())
	}
}
