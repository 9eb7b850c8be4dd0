package smoke_test

import (
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// smoker is a hot, dry smoker at 4,350 ft: summer air heated to 225 °F.
func smoker() moistair.Air {
	outside, _ := moistair.ByRelativeHumidity(units.Celsius(20), 50*units.Percent, 86_300*units.Pascal)
	a, _ := outside.Heated(units.Fahrenheit(225))
	return a
}

func ExampleFaces() {
	fmt.Println(smoke.TwoFaces, "or", smoke.OneFace)
	// Output:
	// two faces or one face
}

func ExampleFilletSlab() {
	s := smoke.FilletSlab(20*units.Millimetre, 25*units.Millimetre, smoke.TwoFaces, units.Celsius(4))
	fmt.Println(s.Conductivity, s.Diffusivity)
	// Output: 0.5 W/(m K) 0.135 mm²/s
}

func ExampleWetThenDry() {
	phases, err := smoke.WetThenDry(smoker(), time.Hour, 4*time.Hour)
	for _, p := range phases {
		fmt.Println(p.Medium.Text(units.FahrenheitScale, 1), p.For)
	}
	fmt.Println(err)
	// Output:
	// 92.3 °F 1h0m0s
	// 225.0 °F 3h0m0s
	// <nil>
}

// A fillet of 20 to 25 mm on a rack in dry air of 225 °F, its surface wet for the first hour.
func ExampleWarmCore() {
	slab := smoke.FilletSlab(20*units.Millimetre, 25*units.Millimetre, smoke.TwoFaces, units.Celsius(4))
	phases, _ := smoke.WetThenDry(smoker(), time.Hour, 4*time.Hour)
	w, err := smoke.WarmCore(slab, moistair.SmokerFilm(), units.Fahrenheit(160), phases...)
	fmt.Println(w.ToLimit.Low, "to", w.ToLimit.High, w.Reached, err)
	wet, _ := smoke.WetThenDry(smoker(), 4*time.Hour, 4*time.Hour)
	w, _ = smoke.WarmCore(slab, moistair.SmokerFilm(), units.Fahrenheit(160), wet...)
	fmt.Println(w.Reached, w.End.High.Text(units.FahrenheitScale, 1))
	// Output:
	// 1h20m33s to 2h17m49s true <nil>
	// false 92.3 °F
}

func ExampleCoreCurve() {
	slab := smoke.FilletSlab(25*units.Millimetre, 25*units.Millimetre, smoke.TwoFaces, units.Celsius(4))
	phases, _ := smoke.WetThenDry(smoker(), time.Hour, 2*time.Hour)
	curve, err := smoke.CoreCurve(slab, moistair.SmokerFilm(), 30*time.Minute, phases...)
	for _, r := range curve.Readings() {
		fmt.Println(r.At, r.Value.Text(units.FahrenheitScale, 1))
	}
	fmt.Println(err)
	// Output:
	// 0s 39.2 °F
	// 30m0s 63.0 °F
	// 1h0m0s 77.2 °F
	// 1h30m0s 144.1 °F
	// 2h0m0s 183.3 °F
	// <nil>
}

func ExampleWarming_Cautions() {
	for _, c := range (smoke.Warming{}).Cautions()[:2] {
		fmt.Println(c.ID, c.Deciding)
	}
	// Output:
	// smoke.probe-in-core true
	// smoke.model-only true
}

func ExampleStageKind() {
	fmt.Println(smoke.Dry, smoke.Smoke, smoke.Cook, smoke.Glaze, smoke.Cool)
	// Output: dry smoke cook glaze cool
}

func ExampleParseStageKind() {
	k, err := smoke.ParseStageKind("Cook")
	fmt.Println(k, err)
	_, err = smoke.ParseStageKind("rest")
	fmt.Println(err)
	// Output:
	// cook <nil>
	// unknown stage "rest": expected dry, smoke, cook, glaze or cool
}

func ExampleDamper() {
	fmt.Println(smoke.DamperHalf)
	// Output:
	// half open
}

func ExampleParseDamper() {
	d, err := smoke.ParseDamper("closed")
	fmt.Println(d, err)
	// Output:
	// closed <nil>
}

// planned is an invented schedule at 4,350 ft for two kilograms of fillets.
func planned(cook smoke.Stage) smoke.Schedule {
	outside, _ := moistair.ByRelativeHumidity(units.Celsius(18), 50*units.Percent, 86_300*units.Pascal)
	return smoke.Schedule{
		Batch: smoke.Batch{
			Slab: smoke.FilletSlab(20*units.Millimetre, 25*units.Millimetre, smoke.TwoFaces, units.Celsius(4)),
			Mass: 2 * units.Kilogram, Area: 1600 * units.SquareCentimetre, Water: 68 * units.Percent, WaterActivity: 98 * units.Percent,
		},
		Outside: outside, Film: moistair.SmokerFilm(), Limit: smoke.DefaultCoreLimit(),
		Stages: []smoke.Stage{
			{Kind: smoke.Dry, Air: units.Fahrenheit(80), Damper: smoke.DamperOpen, For: 30 * time.Minute},
			{Kind: smoke.Smoke, Air: units.Fahrenheit(140), Damper: smoke.DamperHalf, For: time.Hour, Baste: 30 * time.Minute},
			cook,
			{Kind: smoke.Cool, Air: units.Fahrenheit(36), For: 4 * time.Hour},
		},
	}
}

func ExampleSchedule_Plan() {
	cook := smoke.Stage{Kind: smoke.Cook, Air: units.Fahrenheit(225), For: 4 * time.Hour, DryAfter: units.State(30 * time.Minute)}
	p, err := planned(cook).Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range p.Timetable {
		fmt.Println(e.At, e.Stage, e.Event)
	}
	fmt.Println("core at the limit after", p.Core.ToLimit.Low.Round(time.Minute), "to", p.Core.ToLimit.High.Round(time.Minute), "fits", p.Fits)
	fmt.Println("final weight", units.Text(p.Final.Low, units.Gram, 0), "to", units.Text(p.Final.High, units.Gram, 0))
	// Output:
	// 0s 0 begin
	// 30m0s 1 begin
	// 1h0m0s 1 baste
	// 1h30m0s 2 begin
	// 5h30m0s 3 begin
	// 9h30m0s 3 end
	// core at the limit after 2h30m0s to 3h47m0s fits true
	// final weight 1,061 g to 1,598 g
}

// The same cooking, whose surface nobody says will dry: no time is long enough.
func ExampleCeilingError() {
	_, err := planned(smoke.Stage{Kind: smoke.Cook, Air: units.Fahrenheit(225), For: 4 * time.Hour}).Plan()
	fmt.Println(err)
	var ceiling smoke.CeilingError
	fmt.Println(errors.As(err, &ceiling), errors.Is(err, units.ErrRange))
	// Output:
	// stage 3 (cook): a wet surface in this air of 225 °F (107.2 °C) does not get above its wet bulb, 91.5 °F (33 °C); the core must reach at least 180 °F (82.3 °C): a relative humidity of 39.3 % would allow it, or a surface that has dried, or an oven
	// true true
}

func ExampleStageError() {
	_, err := planned(smoke.Stage{Kind: smoke.Cook, Air: units.Fahrenheit(225)}).Plan()
	var stage smoke.StageError
	fmt.Println(errors.As(err, &stage), stage.Stage)
	fmt.Println(err)
	// Output:
	// true 2
	// stage 3 (cook): time of the stage 0 min is out of range: expected 1 min to 48 h
}

// A live probe, read every ten minutes.
func ExampleWatchHold() {
	limit, _ := smoke.FindCoreLimit(smoke.Hot160PNW)
	h, err := smoke.WatchHold(limit, recorded(10*time.Minute))
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, f := range []float64{150, 162, 164, 165, 166} {
		h, _ = h.Next(time.Duration(i)*10*time.Minute, units.Fahrenheit(f))
		fmt.Println(h)
	}
	// Output:
	// 30 minutes still owed
	// 29 minutes still owed
	// 19 minutes still owed
	// 9 minutes still owed
	// the hold is met
}

func ExampleRunningHold() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute))
	h, _ = h.Next(0, units.Fahrenheit(181), units.Fahrenheit(184))
	h, _ = h.Next(18*time.Minute/2, units.Fahrenheit(182), units.Fahrenheit(185))
	h, _ = h.Next(18*time.Minute, units.Fahrenheit(183), units.Fahrenheit(186))
	fmt.Println(h)
	// Output: 12 minutes still owed
}

// A faulty step is refused and the hold stays as it was.
func ExampleRunningHold_Next() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute))
	h, _ = h.Next(0, units.Fahrenheit(181))
	h, err := h.Next(5*time.Minute, units.Temperature{})
	fmt.Println(err)
	fmt.Println(h.Coldest())
	// Output:
	// probe 1 at 5 min: the value is not set
	// 181 °F
}

func ExampleRunningHold_Met() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), recorded(15*time.Minute))
	for i := time.Duration(0); i < 3; i++ {
		h, _ = h.Next(i*15*time.Minute, units.Fahrenheit(181+0.5*float64(i)))
	}
	fmt.Println(h.Met(), h)
	// Output: true the hold is met
}

func ExampleRunningHold_Held() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute))
	for i, f := range []float64{180, 185, 180, 170} {
		h, _ = h.Next(time.Duration(i)*10*time.Minute, units.Fahrenheit(f))
	}
	fmt.Println(h.Held(), h.Current(), h.Owed())
	// Output: 20m0s 0s 30m0s
}

func ExampleRunningHold_Current() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute))
	h, _ = h.Next(0, units.Fahrenheit(170))
	h, _ = h.Next(10*time.Minute, units.Fahrenheit(190))
	fmt.Println(h.Current())
	// Output: 5m0s
}

func ExampleRunningHold_Owed() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute))
	h, _ = h.Next(0, units.Fahrenheit(180))
	h, _ = h.Next(8*time.Minute, units.Fahrenheit(181))
	fmt.Println(h.Owed())
	// Output: 22m0s
}

// Two probes: the colder one decides.
func ExampleRunningHold_Coldest() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), recorded(10*time.Minute))
	h, _ = h.Next(0, units.Fahrenheit(183), units.Fahrenheit(178))
	fmt.Println(h.Coldest(), h)
	// Output: 178 °F 30 minutes still owed
}

func ExamplePasteurise() {
	p, err := smoke.Pasteurise(core(158, 158, 158, 158))
	fmt.Println(p.Equivalent.Round(time.Second), "at", p.Reference, "beside", p.SixLog, err)
	fmt.Println(p.Cautions[0].Text)
	// Output:
	// 30m0s at 70 °C beside 2m0s <nil>
	// This explains and proves nothing. The dry surface shields Listeria, which lived on salmon steaks at cores up to 82.8 °C without smoke and up to 80.0 °C with smoke in the second half only.
}

func ExampleCoolingRules() {
	for _, r := range smoke.CoolingRules() {
		fmt.Println(r.ID, r.Steps[0].To.Text(units.FahrenheitScale, 1), r.Steps[0].Within, r.Citation.Basis)
	}
	// Output:
	// COOL-2-4 69.8 °F 2h0m0s read
	// COOL-FRANCE 50.0 °F 2h0m0s read
	// COOL-FOODCODE 70.0 °F 2h0m0s read
	// COOL-135-40 70.0 °F 2h0m0s read
	// COOL-3-12 50.0 °F 3h0m0s recalled
	// COOL-5-12 50.0 °F 5h0m0s recalled
}

func ExampleDefaultCoolingRule() {
	fmt.Println(smoke.DefaultCoolingRule().ID)
	// Output: COOL-2-4
}

// An invented cooling: quick at first, then forgotten on the table.
func ExampleAuditCooling() {
	var readings []series.Reading[units.Temperature]
	for i, c := range []float64{70, 40, 24, 19, 18, 18, 12, 8, 6, 5, 4} {
		readings = append(readings, series.Reading[units.Temperature]{At: time.Duration(i) * 30 * time.Minute, Value: units.Celsius(c)})
	}
	record, _ := series.New(readings)
	c, err := smoke.AuditCooling(smoke.DefaultCoolingRule(), recorded(30*time.Minute, record))
	fmt.Println(c.Verdict, err)
	for _, s := range c.Steps {
		fmt.Println(s.Step.To, s.Verdict, s.Took.Round(time.Minute), "of", s.Step.Within)
	}
	// Output:
	// met <nil>
	// 21 °C met 1h8m0s of 2h0m0s
	// 4 °C met 3h42m0s of 4h0m0s
}

func ExamplePack() {
	fmt.Println(smoke.AirPack, smoke.LowOxygenPack)
	// Output:
	// air pack low-oxygen pack
}

func ExampleParsePack() {
	p, err := smoke.ParsePack("Vacuum")
	fmt.Println(p, err)
	_, err = smoke.ParsePack("foil")
	fmt.Println(err)
	// Output:
	// low-oxygen pack <nil>
	// unknown pack "foil": expected air pack or low-oxygen pack
}

func ExampleStorageRules() {
	for _, r := range smoke.StorageRules() {
		if r.Home {
			fmt.Println(r.ID, r.AtMost, r.Days, r.Place, r.Citation.Basis)
		}
	}
	// Output:
	// STORE-36 36 °F 0 Michigan (1997) read
	// LIFE-10 not set 10 some extension sheets recalled
	// LIFE-14 not set 14 Michigan (1997) read
	// LIFE-14-PNW not set 14 Pacific Northwest read
	// LIFE-21 not set 21 Washington read
	// LIFE-28 not set 28 Wisconsin, Minnesota read
}

func ExampleFindStorage() {
	s, err := smoke.FindStorage(smoke.AirPack)
	fmt.Println(s.AtMost, s.Days, "days", err)
	s, _ = smoke.FindStorage(smoke.LowOxygenPack)
	fmt.Println(s.Days)
	fmt.Println(s.Cautions[0].Text)
	// Output:
	// 36 °F 14 days <nil>
	// 0
	// Freeze smoked fish in a vacuum or sealed pack. No home guidance keeps it in the refrigerator, and the trade needs a variance to pack it so.
}

func ExampleCheckJarLoss() {
	j, err := smoke.CheckJarLoss(35 * units.Percent)
	fmt.Println(j.Verdict, err)
	fmt.Println(j.Cautions[0].Text)
	// Output:
	// not published <nil>
	// The process was tested at losses of 10 to 30 % only. Do not can this fish; cook it through and eat it, or freeze it.
}

func ExampleChamberRules() {
	for _, r := range smoke.ChamberRules() {
		if r.AtMost.IsSet() && r.Within > 0 {
			fmt.Println(r.ID, r.AtMost, r.Within)
		}
	}
	// Output:
	// COLD-90-20 90 °F 20h0m0s
	// COLD-50-24 10 °C 24h0m0s
	// TIME-12 225 °F 12h0m0s
	// LIGHT-140-160 160 °F 2h0m0s
}

func ExampleSmoking() {
	fmt.Println(smoke.HotSmoked, smoke.ColdSmoked)
	// Output:
	// hot-smoked cold-smoked
}

// An invented recipe: ten minutes at 160 °F, then three weeks in the refrigerator.
func ExampleCheck() {
	a, err := smoke.Check(smoke.Claim{
		Smoking: smoke.HotSmoked, Air: units.State(units.Fahrenheit(200)), Core: units.State(units.Fahrenheit(160)), Hold: units.State(10 * time.Minute),
		Pack: smoke.AirPack, Keep: units.State(units.Fahrenheit(36.5)), Days: units.State(21),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(a.Verdict)
	for _, f := range a.Findings {
		fmt.Println("-", f)
	}
	fmt.Println(a.Findings[0].Known.Text)
	// Output:
	// not met
	// - core: 160 °F (71.1 °C) stated, at least 180 °F (82.2 °C) published, short by 20 F° (11.2 C°) (This is a published figure, HOT-160-PNW, but not the one that governs here)
	// - hold: 10 min stated, at least 30 min published, short by 20 min
	// - storage: 36.5 °F (2.5 °C) stated, at most 36 °F (2.2 °C) published, too warm by 0.5 F° (0.3 C°)
	// - days: 21 days stated, at most 14 days published, too long by 7
	// This is a published figure, HOT-160-PNW, but not the one that governs here.
}

func ExampleCheckAgainst() {
	limit, _ := smoke.FindCoreLimit(smoke.Hot160PNW)
	a, err := smoke.CheckAgainst(limit, smoke.Claim{
		Smoking: smoke.HotSmoked, Air: units.State(units.Fahrenheit(225)), Core: units.State(units.Fahrenheit(160)), Hold: units.State(30 * time.Minute),
		Pack: smoke.AirPack, Keep: units.State(units.Fahrenheit(35)), Days: units.State(10),
	})
	fmt.Println(a.Verdict, a.Governing.ID, err)
	// Output:
	// met HOT-160-PNW <nil>
}

func ExampleEvent() {
	fmt.Println(smoke.Begin, smoke.Baste, smoke.End)
	// Output: begin baste end
}
