package main

import (
	"fmt"
	"io"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield"
)

// file is season.json as it is written: texts, so that a fault can be named by its field.
type file struct {
	About      string        `json:"about"`
	Place      string        `json:"place"`
	Altitude   string        `json:"altitude"`
	Households int           `json:"households"`
	People     int           `json:"people"`
	Serving    string        `json:"serving"`
	Canner     fileCanner    `json:"canner"`
	PackPerJar string        `json:"packPerJar"`
	Fish       []fileFish    `json:"fish"`
	Smoker     []fileSmoker  `json:"smoker"`
	Weighed    []fileWeighed `json:"weighed"`
	Cure       fileCure      `json:"cure"`
	Loss       fileRange     `json:"smokingLoss"`
	CoreLimit  string        `json:"coreLimit"`
	CoreLog    string        `json:"coreLog"`
	CoolerLog  string        `json:"coolerLog"`
	Run        fileRun       `json:"run"`
	Year       fileYear      `json:"year"`
}

type fileCanner struct {
	Gauge       string `json:"gauge"`
	Jar         string `json:"jar"`
	JarsPerLoad int    `json:"jarsPerLoad"`
}

type fileFish struct {
	Species string `json:"species"`
	Mass    string `json:"mass"`
}

type fileSmoker struct {
	Species string `json:"species"`
	Largest int    `json:"largest"`
}

type fileWeighed struct {
	Species string `json:"species"`
	Stage   string `json:"stage"`
	Share   string `json:"share"`
}

type fileCure struct {
	SaltToFish string `json:"saltToFish"`
	SaltParts  int64  `json:"saltParts"`
	SugarParts int64  `json:"sugarParts"`
	Salt       string `json:"salt"`
	Sugar      string `json:"sugar"`
}

type fileRange struct {
	Low  string `json:"low"`
	High string `json:"high"`
}

// season is what the file says, understood.
type season struct {
	about, place       string
	altitude           units.Length
	households, people int
	serving            units.Mass
	gauge              process.Gauge
	jar                process.Jar
	jarsPerLoad        int
	packPerJar         units.Mass
	fish               []fish
	smoker             map[yield.Species]int
	weighed            map[weighing]units.Ratio
	saltToFish         units.Ratio
	mix                brine.Mix
	salt, sugar        brine.Ingredient
	lossLow, lossHigh  units.Ratio
	coreLimit          smoke.CoreLimit
	core               []series.Column[units.Temperature]
	cooler             series.Series[units.Temperature]
	steam              series.Series[units.Temperature]
	vessel             vessel
	marks              canner.Marks
	year               year
}

type fish struct {
	species yield.Species
	mass    units.Mass
}

// weighing is a share that the households weighed themselves.
type weighing struct {
	species yield.Species
	stage   yield.Stage
}

// load reads the season and its logs, which lie beside it; an error names the file and the field or line.
func load(path string) (season, error) {
	var f file
	if err := form.Read(path, &f); err != nil {
		return season{}, err
	}
	s, err := f.understand()
	if err != nil {
		return season{}, fmt.Errorf("%s: %w", path, err)
	}
	if s.core, err = form.Log(path, f.CoreLog, series.ReadColumns[units.Temperature]); err != nil {
		return season{}, err
	}
	if s.cooler, err = form.Log(path, f.CoolerLog, oneColumn); err != nil {
		return season{}, err
	}
	s.steam, err = form.Log(path, f.Run.Log, oneColumn)
	return s, err
}

func oneColumn(r io.Reader) (series.Series[units.Temperature], error) {
	return series.ReadColumn[units.Temperature](r, "")
}

func (f file) understand() (season, error) {
	r := &form.Fields{}
	s := season{about: f.About, place: f.Place, households: f.Households, people: f.People, jarsPerLoad: f.Canner.JarsPerLoad}
	r.Require(f.About != "", "about", "say what this season is, and that it is invented if it is")
	s.altitude = form.Field(r, "altitude", f.Altitude, units.ParseLength)
	r.Require(f.Households > 0, "households", "expected a number above 0")
	r.Require(f.People > 0, "people", "expected a number above 0")
	s.serving = form.Field(r, "serving", f.Serving, units.ParseMass)
	r.Require(s.serving > 0 || r.Err != nil, "serving", "expected more than 0 g")
	s.gauge = form.Field(r, "canner.gauge", f.Canner.Gauge, process.ParseGauge)
	s.jar = form.Field(r, "canner.jar", f.Canner.Jar, process.ParseJar)
	r.Require(f.Canner.JarsPerLoad > 0, "canner.jarsPerLoad", "expected a number above 0")
	s.packPerJar = form.Field(r, "packPerJar", f.PackPerJar, units.ParseMass)
	r.Require(s.packPerJar > 0 || r.Err != nil, "packPerJar", "expected more than 0 g")
	f.readFish(r, &s)
	f.readCure(r, &s)
	s.coreLimit = form.Field(r, "coreLimit", f.CoreLimit, smoke.FindCoreLimit)
	s.lossLow = form.Field(r, "smokingLoss.low", f.Loss.Low, units.ParseRatio)
	s.lossHigh = form.Field(r, "smokingLoss.high", f.Loss.High, units.ParseRatio)
	r.Require(s.lossLow <= s.lossHigh, "smokingLoss", "low must not be above high")
	f.Run.read(r, &s)
	f.Year.read(r, &s)
	return s, r.Err
}

func (f file) readFish(r *form.Fields, s *season) {
	r.Require(len(f.Fish) > 0, "fish", "expected at least one fish")
	caught := map[yield.Species]int{}
	for i, one := range f.Fish {
		field := fmt.Sprintf("fish[%d]", i)
		species := form.Field(r, field+".species", one.Species, yield.ParseSpecies)
		mass := form.Field(r, field+".mass", one.Mass, units.ParseMass)
		r.Require(mass > 0 || r.Err != nil, field+".mass", "expected more than 0 g")
		s.fish = append(s.fish, fish{species, mass})
		caught[species]++
	}
	s.smoker = map[yield.Species]int{}
	for i, one := range f.Smoker {
		field := fmt.Sprintf("smoker[%d]", i)
		species := form.Field(r, field+".species", one.Species, yield.ParseSpecies)
		r.Require(one.Largest >= 0 && one.Largest <= caught[species], field+".largest",
			fmt.Sprintf("%d of %s for the smoker, but %d caught", one.Largest, species, caught[species]))
		s.smoker[species] = one.Largest
	}
	s.weighed = map[weighing]units.Ratio{}
	for i, w := range f.Weighed {
		field := fmt.Sprintf("weighed[%d]", i)
		key := weighing{form.Field(r, field+".species", w.Species, yield.ParseSpecies), form.Field(r, field+".stage", w.Stage, yield.ParseStage)}
		s.weighed[key] = form.Field(r, field+".share", w.Share, units.ParseRatio)
	}
}

func (f file) readCure(r *form.Fields, s *season) {
	s.saltToFish = form.Field(r, "cure.saltToFish", f.Cure.SaltToFish, units.ParseRatio)
	r.Require(f.Cure.SaltParts > 0 && f.Cure.SugarParts >= 0, "cure", "expected salt parts above 0 and sugar parts of 0 or more")
	s.mix = brine.Mix{Salt: units.Mass(f.Cure.SaltParts), Sugar: units.Mass(f.Cure.SugarParts)}
	s.salt = form.Field(r, "cure.salt", f.Cure.Salt, brine.FindIngredient)
	s.sugar = form.Field(r, "cure.sugar", f.Cure.Sugar, brine.FindIngredient)
}
