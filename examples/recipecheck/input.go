package main

import (
	"fmt"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// file is a recipe as it is written: texts with their units, so that a fault can be named by its field. What is left out or empty is not stated.
type file struct {
	About   string       `json:"about"`
	Title   string       `json:"title"`
	Process *fileProcess `json:"process"`
	Cure    *fileCure    `json:"cure"`
	Smoke   *fileSmoke   `json:"smoke"`
}

type fileProcess struct {
	Product   string `json:"product"`
	Pack      string `json:"pack"`
	Jar       string `json:"jar"`
	Gauge     string `json:"gauge"`
	Altitude  string `json:"altitude"`
	Pressure  string `json:"pressure"`
	Time      string `json:"time"`
	Vent      string `json:"vent"`
	ComeUp    string `json:"comeUp"`
	Headspace string `json:"headspace"`
	Water     string `json:"water"`
}

type fileCure struct {
	Method         string `json:"method"`
	Fish           string `json:"fish"`
	Salt           string `json:"salt"`
	SaltVolume     string `json:"saltVolume"`
	SaltName       string `json:"saltName"`
	SaltToFish     string `json:"saltToFish"`
	Sugar          string `json:"sugar"`
	Water          string `json:"water"`
	Strength       string `json:"strength"`
	Time           string `json:"time"`
	Temperature    string `json:"temperature"`
	Thickness      string `json:"thickness"`
	Faces          string `json:"faces"`
	Fatness        string `json:"fatness"`
	WaterPhaseSalt string `json:"waterPhaseSalt"`
	Nitrite        bool   `json:"nitrite"`
}

type fileSmoke struct {
	Method string `json:"method"`
	For    string `json:"for"`
	Air    string `json:"air"`
	Time   string `json:"time"`
	Core   string `json:"core"`
	Hold   string `json:"hold"`
	Rule   string `json:"rule"` // of the core
	Loss   string `json:"loss"`
	Pack   string `json:"pack"`
	Keep   string `json:"keep"`
	Days   string `json:"days"`
}

// recipe is what the file says, understood; a part that it does not have is nil.
type recipe struct {
	about, title string
	process      *process.Claim
	cure         *brine.Claim
	smoke        *smoke.Claim
	smokedFor    purpose
	rule         smoke.CoreLimit           // that the smoking is held against
	loss         units.Stated[units.Ratio] // of weight, in drying and smoking
}

// load reads a recipe; an error names the file and the field or the line.
func load(path string) (recipe, error) {
	var f file
	if err := form.Read(path, &f); err != nil {
		return recipe{}, err
	}
	fields := &form.Fields{}
	r := recipe{about: f.About, title: f.Title, rule: smoke.DefaultCoreLimit()}
	fields.Require(f.About != "", "about", "say what this recipe is, and that it is invented if it is")
	fields.Require(f.Title != "", "title", "expected the recipe's name")
	fields.Require(f.Process != nil || f.Cure != nil || f.Smoke != nil, "recipe", "expected at least one of process, cure and smoke")
	if f.Process != nil {
		r.process = f.Process.understand(fields)
	}
	if f.Smoke != nil {
		r.smoke = f.Smoke.understand(fields)
		r.smokedFor = given(fields, "smoke.for", f.Smoke.For, among("eating, jars", eating, jars))
		if f.Smoke.Rule != "" {
			r.rule = form.Field(fields, "smoke.rule", f.Smoke.Rule, parseRule)
		}
		r.loss = stated(fields, "smoke.loss", f.Smoke.Loss, units.ParseRatio)
	}
	if f.Cure != nil {
		r.cure = f.Cure.understand(fields)
		r.smokes()
	}
	if fields.Err != nil {
		return recipe{}, fmt.Errorf("%s: %w", path, fields.Err)
	}
	return r, nil
}

// smokes tells the cure what the smoking makes of the fish: one recipe says it once.
func (r *recipe) smokes() {
	r.cure.Loss = r.loss
	if r.smoke != nil {
		r.cure.Smoked = map[smoke.Method]brine.Smoking{smoke.HotSmoke: brine.HotSmoked, smoke.ColdSmoke: brine.ColdSmoked}[r.smoke.Method]
		r.cure.Pack = map[smoke.Pack]brine.Pack{smoke.AirPack: brine.AirPack, smoke.VacuumPack: brine.LowOxygenPack}[r.smoke.Pack]
	}
}

func (f fileProcess) understand(r *form.Fields) *process.Claim {
	return &process.Claim{
		Product:   given(r, "process.product", f.Product, process.ParseProduct),
		Pack:      given(r, "process.pack", f.Pack, process.ParsePack),
		Jar:       given(r, "process.jar", f.Jar, process.ParseJar),
		Gauge:     given(r, "process.gauge", f.Gauge, process.ParseGauge),
		Altitude:  stated(r, "process.altitude", f.Altitude, units.ParseLength),
		Pressure:  stated(r, "process.pressure", f.Pressure, units.ParsePressure),
		Process:   stated(r, "process.time", f.Time, parseTime),
		Vent:      stated(r, "process.vent", f.Vent, parseTime),
		ComeUp:    stated(r, "process.comeUp", f.ComeUp, parseTime),
		Headspace: stated(r, "process.headspace", f.Headspace, units.ParseLength),
		Water:     stated(r, "process.water", f.Water, units.ParseVolume),
	}
}

func (f fileCure) understand(r *form.Fields) *brine.Claim {
	return &brine.Claim{
		Method:         given(r, "cure.method", f.Method, among("dry salted, wet brined", brine.DrySalted, brine.WetBrined)),
		Fish:           stated(r, "cure.fish", f.Fish, units.ParseMass),
		Salt:           stated(r, "cure.salt", f.Salt, units.ParseMass),
		SaltVolume:     stated(r, "cure.saltVolume", f.SaltVolume, units.ParseVolume),
		SaltAs:         given(r, "cure.saltName", f.SaltName, parseSalt),
		SaltToFish:     stated(r, "cure.saltToFish", f.SaltToFish, units.ParseRatio),
		Sugar:          stated(r, "cure.sugar", f.Sugar, units.ParseMass),
		Water:          stated(r, "cure.water", f.Water, units.ParseVolume),
		Strength:       stated(r, "cure.strength", f.Strength, units.ParseRatio),
		Time:           stated(r, "cure.time", f.Time, parseTime),
		Temperature:    stated(r, "cure.temperature", f.Temperature, units.ParseTemperature),
		Thickness:      stated(r, "cure.thickness", f.Thickness, units.ParseLength),
		Faces:          given(r, "cure.faces", f.Faces, among("one, two", brine.OneFace, brine.TwoFaces)),
		Fatness:        given(r, "cure.fatness", f.Fatness, among("fat, lean", brine.FatFish, brine.LeanFish)),
		WaterPhaseSalt: stated(r, "cure.waterPhaseSalt", f.WaterPhaseSalt, units.ParseRatio),
		Nitrite:        f.Nitrite,
	}
}

func (f fileSmoke) understand(r *form.Fields) *smoke.Claim {
	return &smoke.Claim{
		Method: given(r, "smoke.method", f.Method, among("hot, cold", smoke.HotSmoke, smoke.ColdSmoke)),
		Air:    stated(r, "smoke.air", f.Air, units.ParseTemperature),
		Time:   stated(r, "smoke.time", f.Time, parseTime),
		Core:   stated(r, "smoke.core", f.Core, units.ParseTemperature),
		Hold:   stated(r, "smoke.hold", f.Hold, parseTime),
		Pack:   given(r, "smoke.pack", f.Pack, smoke.ParsePack),
		Keep:   stated(r, "smoke.keep", f.Keep, units.ParseTemperature),
		Days:   stated(r, "smoke.days", f.Days, parseDays),
	}
}
