package answers

import (
	"errors"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// feet is a length as a slider writes it into the field.
func feet(l units.Length) string { return units.Text(l, units.Foot, 0) }

func cannerSection() Section {
	var sizes []string
	for _, size := range canner.JarSizes() {
		sizes = append(sizes, size.Name)
	}
	const load, run = "The load", "A run that was recorded"
	return Section{
		Name: "canner", Title: "The canner", About: "What is published for these jars on this stove, and whether a recorded run kept to it.",
		Fields: append([]Field{
			{Name: "altitude", Label: "altitude", Help: "of the stove, such as 4350 ft or 1326 m", Stops: stops(), Confirm: true},
			{Name: "product", Label: "product", Choices: words[process.Product]()},
			{Name: "pack", Label: "pack", Choices: words[process.Pack]()},
			{Name: "jar", Label: "jar", Choices: words[process.Jar](), Confirm: true},
			{Name: "gauge", Label: "gauge", Choices: words[process.Gauge](), Confirm: true},
			{Name: "readsHigh", Label: "dial reads high by", Help: "from its yearly test, such as 1 psi; negative when it reads low", Confirm: true},
			{Name: "size", Label: "jar and mouth", Group: load, Choices: sizes},
			{Name: "jars", Label: "jars in all", Group: load, Help: "such as 50"},
			{Name: "diameter", Label: "diameter", Group: load, Help: "of the canner inside, such as 12 in"},
			{Name: "height", Label: "height", Group: load, Help: "inside, from the bottom to the lid"},
			{Name: "rack", Label: "rack", Group: load, Help: "height of the rack under the jars"},
			{Name: "divider", Label: "divider", Group: load, Help: "thickness of the rack between two layers; empty for none"},
			{Name: "capacity", Label: "capacity", Group: load, Help: "as the canner is sold, such as 21.5 qt"},
			{Name: "clearance", Label: "clearance", Group: load, Help: "room across the layer, such as 1/4 in"},
			{Name: "record", Label: "what was recorded", Group: run, Choices: []string{"pressure", "temperature"}},
			{Name: "maxGap", Label: "longest gap", Group: run, Help: "between readings across which a straight line is believed, such as 5 min"},
		}, markFields(run)...),
		Drops: []Drop{{Name: "run", Label: "Record of the run", Help: "a CSV file of the logger or of a dial written down", Sample: "night.csv"}},
		Example: map[string]string{
			"altitude": "4350 ft", "product": "fish", "pack": "raw", "jar": "pint", "gauge": "dial", "readsHigh": "1 psi",
			"size": "pint regular", "jars": "50", "diameter": "12 in", "height": "11 1/2 in", "rack": "1/2 in", "divider": "1/8 in",
			"capacity": "21.5 qt", "clearance": "1/4 in", "record": "pressure", "maxGap": "5 min", "heatOn": "0 min", "steadySteam": "14 min",
			"ventClosed": "25 min", "timer": "33 min", "heatOff": "132 min", "gone": "166 min", "weightOff": "167 min", "lidOff": "178 min",
		},
	}
}

// canned is the published process for what is stated, and what goes with it; or that there is none.
func canned(w *writer) {
	request := process.Request{
		Altitude: typed[units.Length](w, "altitude"),
		Product:  word(w, "product", process.ParseProduct), Pack: word(w, "pack", process.ParsePack),
		Jar: word(w, "jar", process.ParseJar), Gauge: word(w, "gauge", process.ParseGauge),
	}
	w.required("altitude", "product", "pack", "jar", "gauge")
	gauge := canner.Gauge{ReadsHigh: typed[units.Pressure](w, "readsHigh").Value}
	if len(w.Faults) > 0 {
		return
	}
	s, err := process.Find(request)
	var none process.NotPublishedError
	switch {
	case errors.As(err, &none):
		w.Verdict = "not published"
		w.Headline = none.Error()
		w.do("Take a published process as it is printed, or freeze the fish. The nearest jar or the next band is no answer.")
		return
	case err != nil:
		w.refuse(err, "altitude")
		return
	}
	setting, err := gauge.Setting(s)
	if err != nil {
		w.refuse(err, "readsHigh")
		return
	}
	w.process(s, setting)
	w.steam(s)
	w.load(s)
	w.audited(s, gauge)
	w.warn(setting.Cautions...)
	w.warn(s.Cautions()...)
}

// process writes the figures of the schedule.
func (w *writer) process(s process.Schedule, setting canner.Setting) {
	w.Headline = s.Pack.String() + " " + s.Product.String() + ", " + s.Jar.String() + " jars, " + s.Gauge.String() + " gauge, " + text(w, s.Altitude.Value)
	w.block("The published process")
	switch setting.Kind {
	case process.Weighted:
		w.figure("weight", "the weight of "+text(w, setting.AtLeast), s.Citation)
	default:
		w.figure("needle at or above", up(w, setting.AtLeast), s.Citation, setting.Citation)
	}
	w.figure("pressure in print", up(w, s.Pressure)+", altitudes "+bandText(w, s.Band), s.Citation)
	if setting.Corrected < setting.AtLeast {
		w.line("The dial reads low; "+up(w, setting.Corrected)+" would do, but nothing is subtracted.", setting.Citation)
	}
	w.figure("time at pressure", units.Lasting(s.Process)+", without a break", s.Citation)
	w.figure("venting of steady steam", units.Lasting(s.Vent), s.VentCitation)
	if s.ComeUp > 0 {
		w.figure("heating and venting together, at least", units.Lasting(s.ComeUp), s.ComeUpCitation)
	}
	w.figure("headspace", text(w, s.Headspace), s.HeadspaceCitation)
	w.figure("water in the canner", waterText(w, s.Water), s.WaterCitation)
}

// bandText is the altitudes of a setting in the units of the answer.
func bandText(w *writer, b process.Band) string {
	switch {
	case b.UpTo == process.NoLimit:
		return units.MoreThan(b.Over).Text(w.request.System)
	case b.Over == 0:
		return units.AtMost(b.UpTo).Text(w.request.System)
	}
	return units.MoreThan(b.Over).Text(w.request.System) + ", " + units.AtMost(b.UpTo).Text(w.request.System)
}

func waterText(w *writer, in process.Water) string {
	switch {
	case in.Volume == 0:
		return units.Between(in.Shallow, in.Deep).With("deep").Text(w.request.System)
	case in.AtLeast:
		return units.AtLeast(in.Volume).Text(w.request.System)
	}
	return units.Exactly(in.Volume).Text(w.request.System)
}

// steam writes how hot the steam is behind the setting, which decides nothing.
func (w *writer) steam(s process.Schedule) {
	air, err := pressure.AirAt(s.Altitude.Value)
	if err != nil {
		w.refuse(err, "altitude")
		return
	}
	m, err := s.Margin(air)
	if err != nil {
		w.refuse(err, "altitude")
		return
	}
	side, apart := "above", m.Above
	if apart < 0 {
		side, apart = "below", -apart
	}
	w.block("The steam behind it")
	w.figure("steam at the published pressure, on a true gauge", text(w, m.Steam), m.Citation)
	w.line("That is " + text(w, apart) + " " + side + " " + text(w, m.Reference) + ". It explains the setting and decides nothing.")
	w.warn(air.Cautions()...)
}

// load writes what stands in the canner and how long the day is, where the canner is stated.
func (w *writer) load(s process.Schedule) {
	w.block("The load and the day")
	cycle, err := canner.CycleOf(s)
	if err != nil {
		w.refuse(err, "product")
		return
	}
	w.figure("one load, from heat to lid", spanText(cycle.Total), cycle.Total.Citation)
	vessel := canner.Vessel{
		Diameter: typed[units.Length](w, "diameter").Value, Height: typed[units.Length](w, "height").Value, Rack: typed[units.Length](w, "rack").Value,
		Divider: typed[units.Length](w, "divider").Value, Capacity: typed[units.Volume](w, "capacity").Value,
	}
	clearance := typed[units.Length](w, "clearance").Value
	jars := whole(w, "jars")
	if vessel.Diameter == 0 || w.request.Values["size"] == "" {
		return
	}
	size, err := canner.FindJarSize(w.request.Values["size"])
	if err != nil {
		w.wrong("size", err)
		return
	}
	fit, err := canner.Fit(s, vessel, size, clearance)
	if err != nil {
		w.refuse(err, "size")
		return
	}
	w.figure("jars a load", counted(fit.Jars, "jar")+" in "+counted(fit.Layers, "layer")+", no more for "+fit.LayersBy.String(),
		fit.Packing.Citation, size.Citation)
	w.warn(fit.Cautions()...)
	if !jars.Given {
		return
	}
	batch, err := fit.Loads(jars.Value)
	if err != nil {
		w.refuse(err, "jars")
		return
	}
	w.figure("loads", counted(batch.Loads, "load")+", the last of "+counted(batch.Last, "jar"))
}

func spanText(s canner.Span) string {
	if s.Open {
		return units.Lasting(s.Least) + " or more"
	}
	return units.Lasting(s.Least) + " to " + units.Lasting(s.Most)
}
