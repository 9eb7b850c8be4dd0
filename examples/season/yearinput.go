package main

import (
	"fmt"
	"time"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/keeping"
	larder "example.org/lakelarder/yield/season"
)

type fileYear struct {
	First    string        `json:"first"`
	Weeks    int           `json:"weeks"`
	Lag      int           `json:"lag"`
	Rule     fileRule      `json:"rule"`
	Trips    []fileTrip    `json:"trips"`
	Fresh    fileKeeping   `json:"fresh"`
	Jars     fileProduct   `json:"jars"`
	Smoked   fileProduct   `json:"smoked"`
	Ice      string        `json:"icePerFish"`
	JarSalt  string        `json:"saltPerJar"`
	Currency string        `json:"currency"`
	Trip     string        `json:"pricePerTrip"`
	Together filePriceList `json:"prices"`
}

type fileRule struct {
	Shape      string `json:"shape"`
	Anglers    int    `json:"anglers"`
	Daily      int    `json:"daily"`
	Possession int    `json:"possession"`
	Processed  int    `json:"processed"`
	Annual     int    `json:"annual"`
}

type fileTrip struct {
	Week     int `json:"week"`
	Days     int `json:"days"`
	Expected int `json:"expected"`
	Possible int `json:"possible"`
}

type fileKeeping struct {
	Days   int    `json:"days"`
	Source string `json:"source"`
	Place  string `json:"place"`
	Basis  string `json:"basis"`
}

type fileProduct struct {
	Meals   string      `json:"mealsAWeek"`
	Serving string      `json:"serving"`
	Pack    string      `json:"pack"`
	Served  string      `json:"served"`
	Keeps   fileKeeping `json:"keeps"`
}

type filePriceList struct {
	Jar  string `json:"jarAndLid"`
	Bag  string `json:"bag"`
	Load string `json:"cannerLoad"`
}

// year is what the file says of it, understood.
type year struct {
	first        string
	plan         larder.Year // without the fish and what is eaten, which follow from the catch
	jars, smoked larder.Want // without the yields, which follow too
	ice          units.Ratio // for the mass of whole fish
	jarSalt      units.Mass
	currency     string
	trip         decimal.Decimal
	prices       [3]decimal.Decimal // jar, bag, load
}

func (f fileYear) read(r *form.Fields, s *season) {
	y := &s.year
	y.first, y.currency = f.First, f.Currency
	r.Require(f.First != "", "year.first", "say what week 0 is")
	y.plan = larder.Year{Weeks: f.Weeks, Lag: f.Lag, Fresh: f.Fresh.read(r, "year.fresh", keeping.Raw, keeping.InRefrigerator)}
	y.plan.Rule = larder.Rule{
		Shape: form.Field(r, "year.rule.shape", f.Rule.Shape, larder.ParseShape), Anglers: f.Rule.Anglers, Daily: f.Rule.Daily,
		Possession: f.Rule.Possession, Processed: f.Rule.Processed, Annual: f.Rule.Annual,
	}
	for _, t := range f.Trips {
		y.plan.Trips = append(y.plan.Trips, larder.Trip(t))
	}
	y.jars = f.Jars.read(r, "year.jars", s.jar.String()+" jars", keeping.HomeCanned, keeping.InCupboard)
	y.jars.Load = s.jarsPerLoad
	y.smoked = f.Smoked.read(r, "year.smoked", "smoked, frozen", keeping.SmokedVacuum, keeping.InFreezer)
	y.plan.Keeps = y.jars.Keeps
	y.ice = form.Field(r, "year.icePerFish", f.Ice, units.ParseRatio)
	y.jarSalt = form.Field(r, "year.saltPerJar", f.JarSalt, units.ParseMass)
	r.Require(y.ice >= 0 && y.jarSalt >= 0, "year", "ice and salt must not be negative")
	y.trip = price(r, "year.pricePerTrip", f.Trip)
	y.prices = [3]decimal.Decimal{
		price(r, "year.prices.jarAndLid", f.Together.Jar), price(r, "year.prices.bag", f.Together.Bag), price(r, "year.prices.cannerLoad", f.Together.Load),
	}
}

func price(r *form.Fields, name, text string) decimal.Decimal {
	return form.Field(r, name, text, func(text string) (decimal.Decimal, error) {
		d, err := decimal.NewFromString(text)
		if err != nil || d.IsNegative() {
			return decimal.Zero, fmt.Errorf("cannot read %q as a price: expected a number of 0 or more", text)
		}
		return d, nil
	})
}

// read is the strictest time that is published for a food, or the file's own where it states a shorter one.
func (f fileKeeping) read(r *form.Fields, name string, food keeping.Food, storage keeping.Storage) larder.Keeping {
	rule := strictest(food, storage)
	published := larder.Keeping{Time: rule.Low, Citation: rule.Citation}
	if f == (fileKeeping{}) {
		return published
	}
	r.Require(f.Days > 0, name+".days", "a stated keeping time must be one day or more")
	stated := larder.Keeping{Time: time.Duration(f.Days) * day, Citation: cite.Citation{
		Source: form.Field(r, name+".source", f.Source, cite.ParseSource), Where: f.Place, Basis: form.Field(r, name+".basis", f.Basis, cite.ParseBasis),
	}}
	if stated.Time < published.Time {
		return stated
	}
	return published
}

// strictest is the first rule of safety for a food or, where there is none with an end, of quality.
func strictest(food keeping.Food, storage keeping.Storage) keeping.Rule {
	times, err := keeping.Find(food, storage)
	if err == nil && len(times.Safety) > 0 && !times.Safety[0].NoEnd {
		return times.Safety[0].Rule
	}
	if err == nil && len(times.Quality) > 0 {
		return times.Quality[0].Rule
	}
	return keeping.Rule{}
}

func (f fileProduct) read(r *form.Fields, field, name string, food keeping.Food, storage keeping.Storage) larder.Want {
	return larder.Want{
		Name: name, Serving: form.Field(r, field+".serving", f.Serving, units.ParseMass), Pack: form.Field(r, field+".pack", f.Pack, units.ParseMass),
		Meals: form.Field(r, field+".mealsAWeek", f.Meals, func(text string) (units.Ratio, error) {
			d, err := decimal.NewFromString(text)
			if err != nil {
				return 0, fmt.Errorf("cannot read %q as a number of meals", text)
			}
			return units.Of(d, units.One)
		}),
		Served: form.Field(r, field+".served", f.Served, units.ParseRatio), Keeps: f.Keeps.read(r, field+".keeps", food, storage),
	}
}
