package conformance

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/freezing"
	"example.org/lakelarder/yield/coldchain/growth"
	"example.org/lakelarder/yield/coldchain/ice"
)

var freezingExempt = map[string]string{"IceLaw.Citation": sources}

func freezingGrid(r *results) {
	r.sweep("Fishes", freezing.Fishes)
	for _, fish := range freezing.Fishes() {
		r.sweep("FindFish", freezing.FindFish, these(fish.Name))
	}
	r.sweep("LoadRules", freezing.LoadRules)
	var loads, flesh []any
	for i := units.Mass(1); i <= 12; i++ {
		loads = append(loads, freezing.Load{Room: 7 * units.CubicFoot, Held: i * 5 * units.Pound, Catch: i * 11 * units.Pound})
		fat := units.Ratio(i)
		flesh = append(flesh, freezing.Flesh{
			Water: (78 - fat) * units.Percent, Protein: 20 * units.Percent, Fat: fat * units.Percent, Ash: 2 * units.Percent, FreezesAt: tenths(-22), Law: freezing.IceLaw(i % 3),
		})
	}
	r.sweep("Plan", freezing.Plan, loads)
	r.sweep("Flesh.IceAt", freezing.Flesh.IceAt, flesh, degrees(-390, 100, 70))
	r.sweep("Flesh.Thermal", freezing.Flesh.Thermal, flesh, degrees(-390, 100, 70))
	r.sweep("Flesh.Heat", freezing.Flesh.Heat, flesh, degrees(-350, 50, 80), degrees(-1, 200, 70))
	film := units.WattPerSquareMetreKelvin
	pieces := r.sweep("Flesh.Piece", freezing.Flesh.Piece, some(flesh, 3), kinds(freezing.Sphere), stepped(10, 90, 40, units.Millimetre), these(tenths(40)),
		degrees(-200, -100, 90), degrees(-350, -230, 117), these(7*film, 60*film))
	r.sweep("Piece.Plank", freezing.Piece.Plank, some(pieces, 2))
	r.sweep("Piece.Pham", freezing.Piece.Pham, pieces)
	r.sweep("Piece.Between", freezing.Piece.Between, some(pieces, 2), these(6*film), these(70*film))
}

var growthExempt map[string]string

func growthGrid(r *results) {
	rates := r.sweep("ListeriaRate", growth.ListeriaRate, stepped(90, 200, 37, units.PerMille), degrees(0, 80, 20), degrees(10, 100, 15))
	r.sweep("Rate.Over", growth.Rate.Over, rates, stepped(1, 97, 48, time.Hour))
	r.sweep("ListeriaInRawSalmon", growth.ListeriaInRawSalmon, degrees(-10, 250, 7))
	for c := int64(20); c <= 150; c += 26 {
		for salt := units.Ratio(20); salt <= 60; salt += 8 {
			activity := r.sweep("SeafoodActivity", growth.SeafoodActivity, these(salt*units.PerMille))[0].(units.Ratio)
			for ph := units.PH(58); ph <= 65; ph += 3 {
				r.sweep("ListeriaInSeafood", growth.ListeriaInSeafood, these(growth.Seafood{
					Temperature: tenths(c), WaterActivity: activity, PH: ph * units.PHUnit / 10, Phenol: units.Ratio(c) / 20 * units.PartsPerMillion,
					Lactic: units.Ratio(c) * 40 * units.PartsPerMillion, Acetic: salt * 10 * units.PartsPerMillion,
				}))
			}
		}
	}
	r.sweep("TimeToToxin", growth.TimeToToxin, degrees(30, 280, 3))
	r.sweep("TimeToToxinInFish", growth.TimeToToxinInFish, degrees(40, 260, 13), stepped(0, 5, 1, units.One))
	r.sweep("ToxinShare", growth.ToxinShare, scrawls(r, 60, -10, 200, 30*time.Minute), these(time.Hour))
}

var iceExempt map[string]string

func iceGrid(r *results) {
	w := units.WattPerSquareMetreKelvin
	for mm := units.Length(10); mm <= 80; mm += 10 {
		layer := ice.Layer{Thickness: mm * units.Millimetre, Conductivity: 35 * units.WattPerMetreKelvin / 1_000}
		walls := r.sweep("Wall", ice.Wall, these(8*w, 25*w), these(100*w), these(layer), these(ice.Layer{Thickness: units.Millimetre, Conductivity: units.WattPerMetreKelvin / 5}))
		melting := r.sweep("MeltRateOf", ice.MeltRateOf, walls, these(12*units.SquareMetre/10), these(ice.Fresh))
		r.sweep("MeltRate.Hold", ice.MeltRate.Hold, melting, degrees(50, 350, 100), stepped(5, 53, 24, time.Hour))
	}
	r.sweep("MeltTest", ice.MeltTest, these(10*units.Kilogram), stepped(5_003, 9_003, 1_000, units.Gram), degrees(150, 300, 50), these(24*time.Hour))
	r.sweep("RoughHold", ice.RoughHold, these(25*units.Kilogram), degrees(50, 350, 60), stepped(5, 53, 24, time.Hour))
	r.sweep("Constants", ice.Constants)
	r.sweep("CrushedFilm", ice.CrushedFilm)
	constants := r.sweep("ConstantOf", ice.ConstantOf, stepped(70, 95, 8, units.KilocaloriePerKilogramKelvin/100), these(ice.Fresh))
	constants = append(constants, ice.Constant{})
	r.sweep("ToChill", ice.ToChill, these(25*units.Kilogram+7), degrees(70, 250, 60), degrees(0, 40, 20), constants)
	r.sweep("Slurry", ice.Slurry, stepped(1, 9, 4, units.Kilogram), stepped(20, 60, 13, units.Percent))
	for c := int64(60); c <= 240; c += 30 {
		r.sweep("Plan", ice.Plan, these(ice.Trip{
			Fish: 12 * units.Kilogram, From: tenths(c), To: tenths(10), Box: ice.MeltRate{PerHour: units.Mass(c) * units.Gram / 10}, Outside: tenths(c + 77),
			For: time.Duration(c) * 7 * time.Minute, Spare: 25 * units.Percent, IceShare: units.State(40 * units.Percent),
		}))
	}
	fish := r.sweep("FishOf", ice.FishOf, kinds(ice.Cylinder), these(9*units.Centimetre, 3*units.Centimetre), these(11*units.Centimetre), degrees(80, 160, 80))
	r.sweep("ChillTime", ice.ChillTime, fish, these(ice.CrushedFilm()), degrees(-10, 0, 10), degrees(20, 60, 13))
}
