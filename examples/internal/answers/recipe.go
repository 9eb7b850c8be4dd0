package answers

import (
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

func recipeSection() Section {
	const jars, cure, smoked = "Its process in jars", "Its cure", "Its smoke"
	steps := "such as 70 °F"
	return Section{
		Name: "recipe", Title: "The recipe", About: "What a recipe states, part by part, against what is published. What is left empty is not stated.",
		Fields: []Field{
			{Name: "product", Label: "product", Group: jars, Choices: words[process.Product]()},
			{Name: "pack", Label: "pack", Group: jars, Choices: words[process.Pack]()},
			{Name: "jar", Label: "jar", Group: jars, Choices: words[process.Jar](), Confirm: true},
			{Name: "gauge", Label: "gauge", Group: jars, Choices: words[process.Gauge](), Confirm: true},
			{Name: "altitude", Label: "altitude", Group: jars, Help: "of the stove, such as 4350 ft", Confirm: true},
			{Name: "pressure", Label: "pressure", Group: jars, Help: "on the gauge, such as 13 psi", Confirm: true},
			{Name: "process", Label: "process time", Group: jars, Help: "at pressure, such as 100 min"},
			{Name: "vent", Label: "venting", Group: jars, Help: "of steady steam, such as 10 min"},
			{Name: "comeUp", Label: "come-up", Group: jars, Help: "heating and venting together, for quarts"},
			{Name: "headspace", Label: "headspace", Group: jars, Help: "such as 1 in"},
			{Name: "method", Label: "method", Group: cure, Choices: words[brine.Method]()},
			{Name: "fish", Label: "fish", Group: cure, Help: "such as 2 kg"},
			{Name: "salt", Label: "salt", Group: cure, Help: "by weight, such as 60 g"},
			{Name: "sugar", Label: "sugar", Group: cure, Help: "by weight"},
			{Name: "water", Label: "water", Group: cure, Help: "of the brine, such as 2 L"},
			{Name: "saltTime", Label: "time in the salt", Group: cure, Help: "such as 48 h"},
			{Name: "saltCold", Label: "temperature", Group: cure, Help: "while it is salted, such as 37 °F"},
			{Name: "thickness", Label: "thickness", Group: cure, Help: "such as 1 in"},
			{Name: "faces", Label: "faces", Group: cure, Choices: words[brine.Faces]()},
			{Name: "fatness", Label: "fatness", Group: cure, Choices: words[brine.Fatness]()},
			{Name: "waterPhaseSalt", Label: "water phase salt", Group: cure, Help: "measured in the loin, such as 4.2 %"},
			{Name: "smoking", Label: "smoking", Group: smoked, Choices: words[smoke.Smoking]()},
			{Name: "air", Label: "air", Group: smoked, Help: "the hottest of the smoker, such as 215 °F"},
			{Name: "smokeTime", Label: "time", Group: smoked, Help: "in the smoker in all"},
			{Name: "core", Label: "core", Group: smoked, Help: "of the thickest piece, such as 180 °F"},
			{Name: "hold", Label: "hold", Group: smoked, Help: "at that core without a break"},
			{Name: "loss", Label: "loss", Group: smoked, Help: "of raw weight, in drying and smoking, such as 20 %"},
			{Name: "cool1", Label: "cooled first to", Group: smoked, Help: steps},
			{Name: "cool1in", Label: "within", Group: smoked, Help: "of the end of the heating"},
			{Name: "cool2", Label: "and then to", Group: smoked, Help: "such as 37 °F"},
			{Name: "cool2in", Label: "within another", Group: smoked, Help: "of the first step"},
			{Name: "smokePack", Label: "pack of the smoked fish", Group: smoked, Choices: words[smoke.Pack]()},
			{Name: "keep", Label: "kept at", Group: smoked, Help: "such as 35 °F"},
			{Name: "days", Label: "days", Group: smoked, Help: "in the refrigerator, such as 14"},
		},
		Example: map[string]string{
			"product": "fish", "pack": "raw", "jar": "pint", "gauge": "dial", "altitude": "4350 ft", "pressure": "11 psi", "process": "90 min", "vent": "10 min",
			"headspace": "1 in", "method": "dry salted", "fish": "2 kg", "salt": "60 g", "sugar": "120 g", "saltTime": "48 h", "saltCold": "37 °F",
			"thickness": "1 in", "faces": "two faces", "fatness": "fat fish", "waterPhaseSalt": "4.2 %", "smoking": "hot-smoked", "air": "215 °F",
			"smokeTime": "6 h", "core": "180 °F", "hold": "30 min", "loss": "20 %", "smokePack": "air pack", "keep": "35 °F", "days": "14",
		},
	}
}

// stated reports whether anything stands in a group of fields.
func (w *writer) stated(group string) bool {
	for _, f := range w.section.Fields {
		if f.Group == group && w.request.Values[f.Name] != "" {
			return true
		}
	}
	return false
}

// weighed holds every part of a recipe against what is published.
func weighed(w *writer) {
	inJars, cure, smoked := w.processClaim(), w.cureClaim(), w.smokeClaim()
	if len(w.Faults) > 0 {
		return
	}
	var all []verdict.Report
	if w.stated("Its process in jars") {
		a, err := process.Check(inJars)
		if err != nil {
			w.refuse(err, "pressure")
			return
		}
		all = append(all, a.Judgement())
		w.part("Its process in jars", a.Judgement(), a.Refusal)
		w.governing(a.Governing)
	}
	if w.stated("Its cure") {
		a, err := brine.Check(cure)
		if err != nil {
			w.refuse(err, "fish")
			return
		}
		all = append(all, a.Judgement())
		w.part("Its cure", a.Judgement(), process.NotPublishedError{})
		w.figure("held against, water phase salt in the loin", units.AtLeast(a.Limit.Least).Text(w.request.System), a.Limit.Citation)
	}
	if w.stated("Its smoke") {
		a, err := smoke.Check(smoked)
		if err != nil {
			w.refuse(err, "core")
			return
		}
		all = append(all, a.Judgement())
		w.part("Its smoke", a.Judgement(), process.NotPublishedError{})
		if g := a.Governing; g.AtLeast.IsSet() {
			w.figure("held against, core of the thickest piece", g.Printed.Text(w.request.System)+", held "+units.Lasting(g.Hold), g.Citation)
		}
	}
	w.together(all)
}

// together is the verdict of all parts. That each passes says nothing of how they go together, so of more than the process
// of jars no verdict passes here.
func (w *writer) together(all []verdict.Report) {
	whole := verdict.Join(all...)
	w.Verdict, w.Headline = whole.Verdict.String(), "the recipe, part by part"
	onlyJars := len(all) == 1 && w.stated("Its process in jars") && w.request.Values["product"] != process.SmokedFish.String()
	if whole.Verdict.Passes() && !onlyJars {
		w.Verdict = verdict.CannotTell.String()
		w.Headline = "each part passes by itself; whether they go together is not judged here"
	}
}

func (w *writer) part(heading string, r verdict.Report, refusal process.NotPublishedError) {
	w.block(heading + ": " + r.Verdict.String())
	if r.Verdict == verdict.NotPublished && refusal.Stated != "" {
		w.line(refusal.Error())
	}
	w.why(r)
}

// governing is the row that a process is held against.
func (w *writer) governing(s process.Schedule) {
	if s == (process.Schedule{}) {
		w.line("What the recipe states leaves no published row, or more than one.")
		return
	}
	w.figure("the row that governs", s.Pack.String()+" "+s.Product.String()+", "+s.Jar.String()+" jars, "+s.Gauge.String()+" gauge, altitudes "+bandText(w, s.Band), s.Citation)
	w.figure("its pressure and time", up(w, s.Pressure)+" for "+units.Lasting(s.Process), s.Citation)
	w.figure("its venting", units.Lasting(s.Vent), s.VentCitation)
}

func (w *writer) processClaim() process.Claim {
	return process.Claim{
		Product: word(w, "product", process.ParseProduct), Pack: word(w, "pack", process.ParsePack), Jar: word(w, "jar", process.ParseJar),
		Gauge: word(w, "gauge", process.ParseGauge), Altitude: typed[units.Length](w, "altitude"), Pressure: typed[units.Pressure](w, "pressure"),
		Process: typed[time.Duration](w, "process"), Vent: typed[time.Duration](w, "vent"), ComeUp: typed[time.Duration](w, "comeUp"),
		Headspace: typed[units.Length](w, "headspace"),
	}
}

func (w *writer) cureClaim() brine.Claim {
	smoked, _ := brine.ParseSmoking(w.request.Values["smoking"]) // the words are the same; none is not stated
	pack, _ := brine.ParsePack(w.request.Values["smokePack"])
	return brine.Claim{
		Method: word(w, "method", brine.ParseMethod), Fish: typed[units.Mass](w, "fish"), Salt: typed[units.Mass](w, "salt"), Sugar: typed[units.Mass](w, "sugar"),
		Water: typed[units.Volume](w, "water"), Time: typed[time.Duration](w, "saltTime"), Temperature: typed[units.Temperature](w, "saltCold"),
		Thickness: typed[units.Length](w, "thickness"), Faces: word(w, "faces", brine.ParseFaces), Fatness: word(w, "fatness", brine.ParseFatness),
		Smoked: smoked, Pack: pack, Loss: typed[units.Ratio](w, "loss"), WaterPhaseSalt: typed[units.Ratio](w, "waterPhaseSalt"),
	}
}

func (w *writer) smokeClaim() smoke.Claim {
	first, second := typed[units.Temperature](w, "cool1"), typed[units.Temperature](w, "cool2")
	return smoke.Claim{
		Smoking: word(w, "smoking", smoke.ParseSmoking), Air: typed[units.Temperature](w, "air"), Time: typed[time.Duration](w, "smokeTime"),
		Core: typed[units.Temperature](w, "core"), Hold: typed[time.Duration](w, "hold"), Loss: typed[units.Ratio](w, "loss"),
		Cooling: [2]smoke.CoolingStep{{To: first.Value, Within: typed[time.Duration](w, "cool1in").Value},
			{From: first.Value, To: second.Value, Within: typed[time.Duration](w, "cool2in").Value}},
		Pack: word(w, "smokePack", smoke.ParsePack), Keep: typed[units.Temperature](w, "keep"), Days: whole(w, "days"),
	}
}
