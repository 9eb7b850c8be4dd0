package conformance

import (
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

var smokeExempt = map[string]string{
	"CeilingError.Is": faults, "ProbeError.Unwrap": faults, "StageError.Unwrap": faults, "Warming.Cautions": sources,
}

// smoker is air of a hot, dry smoker.
func smoker(r *results, celsius int64) moistair.Air {
	outside, err := moistair.ByRelativeHumidity(tenths(180), 50*units.Percent, 86_300*units.Pascal)
	require.NoError(r.t, err)
	hot, err := outside.Heated(tenths(celsius))
	require.NoError(r.t, err)
	return hot
}

func smokeGrid(r *results) {
	smokeTables(r)
	fallingGrid(r)
	warmingGrid(r)
	scheduleGrid(r)
	holdGrid(r)
	smokeClaims(r)
}

func smokeTables(r *results) {
	r.sweep("ChamberRules", smoke.ChamberRules)
	r.sweep("CoolingRules", smoke.CoolingRules)
	r.sweep("CoreLimits", smoke.CoreLimits)
	r.sweep("StorageRules", smoke.StorageRules)
	r.sweep("FallingRates", smoke.FallingRates)
	r.sweep("DefaultCoolingRule", smoke.DefaultCoolingRule)
	r.sweep("DefaultCoreLimit", smoke.DefaultCoreLimit)
	r.sweep("FindChamberRule", smoke.FindChamberRule, kinds(smoke.ChamberRuleID(len(smoke.ChamberRules()))))
	r.sweep("FindCoolingRule", smoke.FindCoolingRule, kinds(smoke.CoolingRuleID(len(smoke.CoolingRules()))))
	r.sweep("FindCoreLimit", smoke.FindCoreLimit, kinds(smoke.CoreLimitID(len(smoke.CoreLimits()))))
	r.sweep("FindStorageRule", smoke.FindStorageRule, kinds(smoke.StorageRuleID(len(smoke.StorageRules()))))
	r.sweep("FindStorage", smoke.FindStorage, kinds(smoke.LowOxygenPack))
}

func fallingGrid(r *results) {
	rates := every(smoke.FallingRates())
	r.sweep("FallingRate.PerHour", smoke.FallingRate.PerHour, rates)
	r.sweep("FallingRate.Moisture", smoke.FallingRate.Moisture, rates, stepped(60, 75, 5, units.Percent), stepped(0, 35, 7, time.Hour))
	r.sweep("FallingRate.TimeTo", smoke.FallingRate.TimeTo, rates, stepped(66, 74, 4, units.Percent), stepped(30, 60, 6, units.Percent))
	r.sweep("LossForWaterPhaseSalt", smoke.LossForWaterPhaseSalt, these(100*units.Gram), stepped(10, 30, 3, units.Gram/10), stepped(60, 74, 7, units.Gram), stepped(30, 50, 5, units.PerMille))
	r.sweep("CheckJarLoss", smoke.CheckJarLoss, stepped(0, 40, 3, units.Percent))
	r.sweep("Pasteurise", smoke.Pasteurise, scrawls(r, 30, 500, 850, 5*time.Minute))
	film := these(moistair.SmokerFilm())
	air := these(smoker(r, 270), smoker(r, 333), smoker(r, 410))
	r.sweep("DryPellicle", smoke.DryPellicle, these(units.Kilogram), stepped(600, 1_200, 200, units.SquareCentimetre), air, film, stepped(95, 99, 2, units.Percent))
}

func warmingGrid(r *results) {
	slabs := r.sweep("FilletSlab", smoke.FilletSlab, these(18*units.Millimetre), stepped(18, 33, 5, units.Millimetre), kinds(smoke.TwoFaces), degrees(10, 130, 60))
	for celsius := int64(700); celsius <= 1_100; celsius += 80 {
		phases := r.sweep("WetThenDry", smoke.WetThenDry, these(smoker(r, celsius)), these(50*time.Minute), these(3*time.Hour))[0].([]smoke.Phase)
		r.sweep("WarmCore", smoke.WarmCore, slabs, these(moistair.SmokerFilm()), degrees(630, 830, 200), these(phases[0]), these(phases[1]))
		r.sweep("CoreCurve", smoke.CoreCurve, some(slabs, 2), these(moistair.SmokerFilm()), these(7*time.Minute), these(phases[0]), these(phases[1]))
	}
}

func scheduleGrid(r *results) {
	outside, err := moistair.ByRelativeHumidity(tenths(180), 50*units.Percent, 86_300*units.Pascal)
	require.NoError(r.t, err)
	for thick := units.Length(20); thick <= 32; thick += 3 {
		for f := 200.0; f <= 240; f += 13 {
			r.sweep("Schedule.Plan", smoke.Schedule.Plan, these(smoke.Schedule{
				Batch: smoke.Batch{
					Slab: smoke.FilletSlab(18*units.Millimetre, thick*units.Millimetre, smoke.TwoFaces, tenths(40)),
					Mass: 2 * units.Kilogram, Area: 1600 * units.SquareCentimetre, Water: 68 * units.Percent, WaterActivity: 98 * units.Percent,
				},
				Outside: outside, Film: moistair.SmokerFilm(), Limit: smoke.DefaultCoreLimit(),
				Stages: []smoke.Stage{
					{Kind: smoke.Dry, Air: units.Fahrenheit(80), Damper: smoke.DamperOpen, For: 30 * time.Minute},
					{Kind: smoke.Smoke, Air: units.Fahrenheit(140), Damper: smoke.DamperHalf, For: time.Hour, Baste: 30 * time.Minute},
					{Kind: smoke.Cook, Air: units.Fahrenheit(f), For: 4 * time.Hour, DryAfter: units.State(30 * time.Minute)},
					{Kind: smoke.Cool, Air: units.Fahrenheit(36), For: 4 * time.Hour},
				},
			}))
		}
	}
}

func holdGrid(r *results) {
	limit, cooling := smoke.DefaultCoreLimit(), smoke.DefaultCoolingRule()
	for seed := int64(1); seed <= 24; seed++ {
		hot, cold := scrawl(r, 20+2*seed, seed, 200, 900, 4*time.Minute), scrawl(r, 90, seed, 20, 700, 6*time.Minute)
		record := smoke.Record{Cores: []series.Series[units.Temperature]{hot}, MaxGap: 10 * time.Minute}
		r.sweep("AuditHold", smoke.AuditHold, these(limit), these(record))
		r.sweep("Audit", smoke.Audit, these(smoke.Rules{}), these(record))
		r.sweep("AuditCooling", smoke.AuditCooling, these(cooling), these(smoke.Record{Cores: []series.Series[units.Temperature]{cold}, MaxGap: 10 * time.Minute}))
		running, err := smoke.WatchHold(limit, smoke.Record{MaxGap: 10 * time.Minute})
		r.add("WatchHold", err, one(running.Owed()), seed)
		for i, reading := range hot.Readings() {
			next := running.Next
			name := "RunningHold.Next"
			if seed%2 == 0 {
				name = "RunningHold.NextInAir"
				next = func(at time.Duration, cores ...units.Temperature) (smoke.RunningHold, error) {
					return running.NextInAir(at, units.Fahrenheit(225), cores...)
				}
			}
			running, err = next(reading.At, reading.Value)
			if i%5 == 0 {
				r.add(name, err, one(running.Owed()), seed, reading)
			}
		}
		r.add("RunningHold.Met", nil, one(running.Met()), seed)
		r.add("RunningHold.Doubted", nil, one(running.Doubted()), seed)
		r.add("RunningHold.Held", nil, one(running.Held()), seed)
		r.add("RunningHold.Current", nil, one(running.Current()), seed)
		r.add("RunningHold.Owed", nil, one(running.Owed()), seed)
		r.add("RunningHold.Coldest", nil, one(running.Coldest()), seed)
	}
}

func smokeClaims(r *results) {
	var claims []any
	for i := int64(0); i < 24; i++ {
		claims = append(claims, smoke.Claim{
			Smoking: smoke.Smoking(1 + i%2), Air: units.State(units.Fahrenheit(float64(80 + 7*i))), Time: units.State(time.Duration(3+i) * time.Hour),
			Core: units.State(units.Fahrenheit(float64(140 + 2*i))), Hold: units.State(time.Duration(5+2*i) * time.Minute),
			Pack: smoke.Pack(1 + i/2%2), Keep: units.State(units.Fahrenheit(float64(30 + i/2))), Days: units.State(int(3 + i)), ForJars: i%5 == 0, Loss: units.State(units.Ratio(i) * units.Percent),
		})
	}
	r.sweep("Check", smoke.Check, claims)
	r.sweep("CheckAgainst", smoke.CheckAgainst, some(every(smoke.CoreLimits()), 3), some(claims, 3))
	r.sweep("CheckBy", smoke.CheckBy, these(smoke.Rules{}), some(claims, 2))
}
