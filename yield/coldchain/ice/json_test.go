package ice_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/ice"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

// trip is an invented one.
func trip() ice.Trip {
	return ice.Trip{
		Fish: 25 * units.Kilogram, From: units.Celsius(14), To: units.Celsius(0), Box: ice.MeltRate{PerHour: 9 * units.Gram},
		Outside: units.Celsius(24), For: 10 * time.Hour, Spare: 25 * units.Percent,
	}
}

func TestTripsComeBack(t *testing.T) {
	for _, change := range []func(*ice.Trip){
		func(*ice.Trip) {}, func(trip *ice.Trip) { trip.Box = ice.MeltRate{} }, func(trip *ice.Trip) { trip.Spare = 0 },
		func(trip *ice.Trip) { trip.Constant = ice.Constants()[2] },
		func(trip *ice.Trip) { trip.IceShare = units.State(33 * units.Percent) },
	} {
		trip := trip()
		change(&trip)
		load, err := ice.Plan(trip)
		require.NoError(t, err)
		logged.Back(t, trip)
		logged.Back(t, load)
	}
	times, err := ice.ChillTime(ice.FishOf(ice.Slab, units.Centimetre, 2*units.Centimetre, units.Celsius(14)), ice.CrushedFilm(), units.Celsius(0), units.Celsius(4))
	require.NoError(t, err)
	logged.Back(t, times)
}

func TestTripJSONRefuses(t *testing.T) {
	const whole = `"fish": "25 kg", "from": "14 °C", "to": "0 °C", "outside": "24 °C"`
	logged.Unreadable(t, ice.Trip{Spare: units.Percent}, map[string]string{
		`{` + whole + `}`:                              "for",
		`{` + whole + `, "for": 10}`:                   "for",
		`{` + whole + `, "for": null}`:                 "for",
		`{` + whole + `, "for": "10 h", "for": "9 h"}`: "for",
		`{` + whole + `, "for": "10 h", "spare": 25}`:  "spare",
		`{` + whole + `, "for": "10 h", "days": 2}`:    "days",
		`{"fish": 25}`:                                 "fish",
		`{"fish": "25"}`:                               "fish",
	})
}

func TestGolden(t *testing.T) {
	load, err := ice.Plan(trip())
	require.NoError(t, err)
	logged.Golden(t, "ice-trip", trip())
	logged.Golden(t, "ice-load", load)
	times, err := ice.ChillTime(ice.FishOf(ice.Cylinder, 9*units.Centimetre, 11*units.Centimetre, units.Celsius(14)), ice.CrushedFilm(), units.Celsius(0), units.Celsius(4))
	require.NoError(t, err)
	logged.Golden(t, "ice-chill-times", times)
}

// A number without a unit is a few sixteenths of a nanogram.
func TestUnitLeftOut(t *testing.T) {
	for name, fish := range map[string]units.Mass{"25": 25, "a hair below a gram": units.Gram - 1, "below zero": -25} {
		_, err := ice.ToChill(fish, units.Celsius(14), units.Celsius(0), ice.Constant{})
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = ice.RoughHold(fish, units.Celsius(24), time.Hour)
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = ice.Slurry(fish, 33*units.Percent)
		require.ErrorIs(t, err, units.ErrRange, name)
		_, err = ice.MeltTest(fish, fish, units.Celsius(24), time.Hour)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	for _, fish := range []units.Mass{0, units.Gram} {
		_, err := ice.ToChill(fish, units.Celsius(14), units.Celsius(0), ice.Constant{})
		require.NoError(t, err)
	}
}
