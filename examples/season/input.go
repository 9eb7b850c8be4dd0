package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"example.org/lakelarder/brine"
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
	data, err := os.ReadFile(path)
	if err != nil {
		return season{}, err
	}
	var f file
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(&f); err != nil {
		return season{}, fmt.Errorf("%s: %w", place(path, data, decoder, err), err)
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return season{}, fmt.Errorf("%s: more than one JSON value", place(path, data, decoder, nil))
	}
	s, err := f.understand()
	if err != nil {
		return season{}, fmt.Errorf("%s: %w", path, err)
	}
	if s.core, err = readLog(path, f.CoreLog, series.ReadAllCSV[units.Temperature]); err != nil {
		return season{}, err
	}
	s.cooler, err = readLog(path, f.CoolerLog, func(r io.Reader) (series.Series[units.Temperature], error) {
		return series.ReadCSV[units.Temperature](r, "")
	})
	return s, err
}

// place names the line of the file that the decoder stood at.
func place(path string, data []byte, decoder *json.Decoder, err error) string {
	offset := decoder.InputOffset()
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	if errors.As(err, &syntax) {
		offset = syntax.Offset
	} else if errors.As(err, &kind) {
		offset = kind.Offset
	}
	if offset > int64(len(data)) {
		offset = int64(len(data))
	}
	return fmt.Sprintf("%s: line %d", path, 1+bytes.Count(data[:offset], []byte("\n")))
}

func readLog[T any](path, name string, read func(io.Reader) (T, error)) (T, error) {
	var none T
	f, err := os.Open(filepath.Join(filepath.Dir(path), name))
	if err != nil {
		return none, err
	}
	defer f.Close()
	log, err := read(f)
	if err != nil {
		return none, fmt.Errorf("%s: %w", f.Name(), err)
	}
	return log, nil
}

// reader parses field after field and keeps the first fault with the field's name.
type reader struct{ err error }

func parse[T any](r *reader, field, text string, parse func(string) (T, error)) T {
	v, err := parse(text)
	if err != nil && r.err == nil {
		r.err = fmt.Errorf("%s: %w", field, err)
	}
	return v
}

func (r *reader) require(ok bool, field, problem string) {
	if !ok && r.err == nil {
		r.err = fmt.Errorf("%s: %s", field, problem)
	}
}

func (f file) understand() (season, error) {
	r := &reader{}
	s := season{about: f.About, place: f.Place, households: f.Households, people: f.People, jarsPerLoad: f.Canner.JarsPerLoad}
	r.require(f.About != "", "about", "say what this season is, and that it is invented if it is")
	s.altitude = parse(r, "altitude", f.Altitude, units.ParseLength)
	r.require(f.Households > 0, "households", "expected a number above 0")
	r.require(f.People > 0, "people", "expected a number above 0")
	s.serving = parse(r, "serving", f.Serving, units.ParseMass)
	r.require(s.serving > 0 || r.err != nil, "serving", "expected more than 0 g")
	s.gauge = parse(r, "canner.gauge", f.Canner.Gauge, process.ParseGauge)
	s.jar = parse(r, "canner.jar", f.Canner.Jar, process.ParseJar)
	r.require(f.Canner.JarsPerLoad > 0, "canner.jarsPerLoad", "expected a number above 0")
	s.packPerJar = parse(r, "packPerJar", f.PackPerJar, units.ParseMass)
	r.require(s.packPerJar > 0 || r.err != nil, "packPerJar", "expected more than 0 g")
	f.readFish(r, &s)
	f.readCure(r, &s)
	s.coreLimit = parse(r, "coreLimit", f.CoreLimit, smoke.FindCoreLimit)
	s.lossLow = parse(r, "smokingLoss.low", f.Loss.Low, units.ParseRatio)
	s.lossHigh = parse(r, "smokingLoss.high", f.Loss.High, units.ParseRatio)
	r.require(s.lossLow <= s.lossHigh, "smokingLoss", "low must not be above high")
	return s, r.err
}

func (f file) readFish(r *reader, s *season) {
	r.require(len(f.Fish) > 0, "fish", "expected at least one fish")
	caught := map[yield.Species]int{}
	for i, one := range f.Fish {
		field := fmt.Sprintf("fish[%d]", i)
		species := parse(r, field+".species", one.Species, yield.ParseSpecies)
		mass := parse(r, field+".mass", one.Mass, units.ParseMass)
		r.require(mass > 0 || r.err != nil, field+".mass", "expected more than 0 g")
		s.fish = append(s.fish, fish{species, mass})
		caught[species]++
	}
	s.smoker = map[yield.Species]int{}
	for i, one := range f.Smoker {
		field := fmt.Sprintf("smoker[%d]", i)
		species := parse(r, field+".species", one.Species, yield.ParseSpecies)
		r.require(one.Largest >= 0 && one.Largest <= caught[species], field+".largest",
			fmt.Sprintf("%d of %s for the smoker, but %d caught", one.Largest, species, caught[species]))
		s.smoker[species] = one.Largest
	}
	s.weighed = map[weighing]units.Ratio{}
	for i, w := range f.Weighed {
		field := fmt.Sprintf("weighed[%d]", i)
		key := weighing{parse(r, field+".species", w.Species, yield.ParseSpecies), parse(r, field+".stage", w.Stage, yield.ParseStage)}
		s.weighed[key] = parse(r, field+".share", w.Share, units.ParseRatio)
	}
}

func (f file) readCure(r *reader, s *season) {
	s.saltToFish = parse(r, "cure.saltToFish", f.Cure.SaltToFish, units.ParseRatio)
	r.require(f.Cure.SaltParts > 0 && f.Cure.SugarParts >= 0, "cure", "expected salt parts above 0 and sugar parts of 0 or more")
	s.mix = brine.Mix{Salt: units.Mass(f.Cure.SaltParts), Sugar: units.Mass(f.Cure.SugarParts)}
	s.salt = parse(r, "cure.salt", f.Cure.Salt, brine.FindIngredient)
	s.sugar = parse(r, "cure.sugar", f.Cure.Sugar, brine.FindIngredient)
}
