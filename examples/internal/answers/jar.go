package answers

import (
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/examples/internal/chart"
	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

func jarSection() Section {
	const what = "What if"
	return Section{
		Name: "jar", Title: "The middle of the jar", About: "Steam, centre and lethality of raw fish through its published process. It explains the minutes and shortens nothing.",
		Fields: []Field{
			{Name: "altitude", Label: "altitude", Help: "of the stove, such as 4350 ft", Stops: stops(), Confirm: true},
			{Name: "jar", Label: "jar", Choices: words[process.Jar](), Confirm: true},
			{Name: "gauge", Label: "gauge", Choices: words[process.Gauge](), Confirm: true},
			{Name: "radius", Label: "radius", Help: "of the fish inside the glass, such as 37.5 mm"},
			{Name: "height", Label: "height", Help: "of the fish in the jar, such as 115 mm"},
			{Name: "start", Label: "start", Help: "the fish when the heat is turned on, such as 10 °C"},
			{Name: "comeUp", Label: "come-up", Help: "from there to the full steam, such as 30 min"},
			{Name: "trapped", Label: "air left in", Group: what, Help: "a share of the steam's place, such as 5 %"},
			{Name: "low", Label: "gauge reads high by", Group: what, Help: "and nobody knows, such as 1 psi"},
		},
		Example: map[string]string{
			"altitude": "4350 ft", "jar": "pint", "gauge": "weighted", "radius": "37.5 mm", "height": "115 mm", "start": "10 °C", "comeUp": "30 min",
			"trapped": "0 %", "low": "0 psi",
		},
	}
}

// The jar that is not asked for: raw coho by the composition tables, and invented glass, film and cooling.
var (
	coho = lethality.Composition{Water: 7635 * units.Percent / 100, Protein: 1994 * units.Percent / 100, Fat: 345 * units.Percent / 100, Ash: 122 * units.Percent / 100}
	film = 1500 * units.WattPerSquareMetreKelvin
)

// warmed is the middle of one jar through the published process, and with the what-ifs beside it.
func warmed(w *writer) {
	w.required("altitude", "jar", "gauge", "radius", "height", "start", "comeUp")
	request := process.Request{
		Product: process.Fish, Pack: process.RawPack, Altitude: typed[units.Length](w, "altitude"), Jar: word(w, "jar", process.ParseJar), Gauge: word(w, "gauge", process.ParseGauge),
	}
	pack := lethality.Cylinder{Radius: typed[units.Length](w, "radius").Value, Height: typed[units.Length](w, "height").Value}
	run := lethality.Run{Start: typed[units.Temperature](w, "start").Value, ComeUp: typed[time.Duration](w, "comeUp").Value}
	trapped, less := typed[units.Ratio](w, "trapped").Value, typed[units.Pressure](w, "low").Value
	if len(w.Faults) > 0 {
		return
	}
	s, err := process.Find(request)
	var none process.NotPublishedError
	switch {
	case errors.As(err, &none):
		w.Verdict, w.Headline = "not published", none.Error()
		return
	case err != nil:
		w.refuse(err, "altitude")
		return
	}
	food, err := coho.At(units.Celsius(80))
	if err != nil {
		w.refuse(err, "jar")
		return
	}
	if pack.Film, err = lethality.Through(film, 3*units.Millimetre, units.WattPerMetreKelvin); err != nil {
		w.refuse(err, "jar")
		return
	}
	pack.Diffusivity, pack.Conductivity = (food.DiffusivityLow+food.DiffusivityHigh)/2, food.ConductivityMiddle
	run.Hold, run.Cooling, run.End = s.Process, units.Kelvins, units.Celsius(20)
	base, err := w.follow(s, pack, run, 0, 0)
	if err != nil {
		w.refuse(err, "radius")
		return
	}
	if trapped != 0 || less != 0 {
		other, err := w.follow(s, pack, run, trapped, less)
		if err != nil {
			w.refuse(err, "trapped")
			return
		}
		w.middle(s, base, other, true)
		return
	}
	w.middle(s, base, base, false)
}

// follow is the run under the steam of the published pressure, less what the gauge hides and what air takes.
func (w *writer) follow(s process.Schedule, pack lethality.Cylinder, run lethality.Run, trapped units.Ratio, less units.Pressure) (lethality.Result, error) {
	air, err := pressure.AirAt(s.Altitude.Value)
	if err != nil {
		return lethality.Result{}, err
	}
	total, err := air.Absolute(s.Pressure - less)
	if err != nil {
		return lethality.Result{}, err
	}
	steam, err := pressure.SteamPart(total, trapped)
	if err != nil {
		return lethality.Result{}, err
	}
	if run.Steam, err = pressure.SteamTemperature(steam); err != nil {
		return lethality.Result{}, err
	}
	return pack.Follow(run, lethality.F0())
}

// middle writes and draws what happens there, as published and with the what-ifs.
func (w *writer) middle(s process.Schedule, base, other lethality.Result, differs bool) {
	w.Headline = "F0 at the middle, for this jar as it is stated: " + cut(base.F.Total)
	w.block("As published")
	w.figure("the process", units.Lasting(s.Process)+" at "+up(w, s.Pressure), s.Citation)
	w.results(base)
	if differs {
		w.block("With what is otherwise")
		w.results(other)
		w.line(fmt.Sprintf("That is %+.0f %% of F0. A change that costs little here may cost much in a real jar.", 100*(other.F.Total.Minutes()/base.F.Total.Minutes()-1)))
	}
	w.do("Can by the published process. This explains it, decides nothing and shortens nothing.", s.Citation)
	w.line("The fish is taken as raw coho of the composition tables, a solid that does not move; glass, film and cooling are guesses.")
	w.warn(base.Cautions...)
	w.warn(s.Cautions()...)
	w.drawMiddle(base, other, differs)
}

func (w *writer) results(r lethality.Result) {
	w.figure("F0 at the middle", cut(r.F.Total)+": "+cut(r.F.ComeUp)+" in the come-up, "+cut(r.F.Hold)+" in the hold, "+cut(r.F.Cooling)+" in the cooling", r.Citation)
	w.figure("the middle when the heat goes off", text(w, r.AtSteamOff))
	w.figure("its highest", text(w, r.Peak.Value)+", "+units.Lasting((r.Peak.At-r.SteamOff).Round(time.Minute))+" later")
}

// cut is an F in minutes and hundredths, cut.
func cut(d time.Duration) string {
	return fmt.Sprintf("%.2f min", d.Truncate(time.Minute/100).Minutes())
}

// drawMiddle draws steam and centre, and F0 as it grows, the whole of it as high as the frame.
func (w *writer) drawMiddle(base, other lethality.Result, differs bool) {
	steam, unit := curveOf(base.Medium, w.request.System)
	centre, _ := curveOf(base.Centre, w.request.System)
	end := steam[len(steam)-1].X
	centre = until(centre, end)
	curves := [][]chart.Point{steam, centre}
	if differs {
		changed, _ := curveOf(other.Centre, w.request.System)
		curves = append(curves, until(changed, end))
	}
	c := framed("Steam and the middle of the jar", "The temperature of the steam, that of the middle of the jar, which follows it slowly, and F0, which grows to "+
		cut(base.F.Total)+" at the upper edge.", curves...)
	shade(c, stretchOf(base), chart.Shade)
	c.Frame("minutes since the heat was turned on", unit, nil, nil)
	over(c, chart.Limit, steam)
	over(c, chart.Strong, centre)
	over(c, chart.Thin, grown(base, c.Y, end))
	y := c.Key(330, chart.Limit, "steam; shaded: the published minutes at pressure")
	y = c.Key(y, chart.Strong, "the middle")
	y = c.Key(y, chart.Thin, "F0 so far; the upper edge is "+cut(base.F.Total))
	if differs {
		over(c, chart.Second, curves[2])
		c.Key(y, chart.Second, "the middle with what is otherwise; F0 "+cut(other.F.Total))
	}
	w.Picture = c.String()
}

// grown is F0 so far, from the lower edge of a frame to the upper one.
func grown(r lethality.Result, y chart.Axis, end float64) []chart.Point {
	running, err := lethality.Start(r.Reference)
	if err != nil {
		return nil
	}
	var all []chart.Point
	for _, reading := range r.Centre.Readings() {
		if running, err = running.Next(reading); err != nil || reading.At.Minutes() > end {
			break
		}
		share := running.F().F.Minutes() / r.F.Total.Minutes()
		all = append(all, chart.Point{X: reading.At.Minutes(), Y: y.Low + float64(share*(y.High-y.Low))})
	}
	return all
}

// until cuts a curve at a minute.
func until(points []chart.Point, end float64) []chart.Point {
	for i, q := range points {
		if q.X > end {
			return points[:i]
		}
	}
	return points
}
