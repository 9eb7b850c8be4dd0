package main

import (
	"fmt"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/keeping"
	larder "example.org/lakelarder/yield/season"
)

type fileYear struct {
	First        string          `wire:"required" help:"what week 0 is"`
	Weeks        int             `wire:"required"`
	Lag          int             `wire:"required" help:"weeks until fish is preserved"`
	Rule         larder.Rule     `wire:"required"`
	Trips        []larder.Trip   `help:"in the order of their weeks"`
	Fresh        *larder.Keeping `help:"of fresh fish, where it is shorter than published" example:"{\"time\": \"1 d\", \"citation\": {\"place\": \"a label\", \"basis\": \"practice\"}}"`
	Jars         fileProduct     `wire:"required"`
	Smoked       fileProduct     `wire:"required"`
	IcePerFish   units.Ratio     `wire:"required" help:"ice for the mass of whole fish"`
	SaltPerJar   units.Mass      `wire:"required" help:"for taste"`
	Currency     string          `wire:"required"`
	PricePerTrip decimal.Decimal `wire:"required"`
	Prices       prices          `wire:"required"`
}

type fileProduct struct {
	MealsAWeek decimal.Decimal `wire:"required" help:"of each person"`
	Serving    units.Mass      `wire:"required"`
	Pack       units.Mass      `wire:"required" help:"raw fish in one jar or bag"`
	Served     units.Ratio     `wire:"required" help:"share of the pack that is eaten"`
	Keeps      *larder.Keeping `help:"where it is shorter than published" example:"{\"time\": \"30 d\", \"citation\": {\"place\": \"a label\", \"basis\": \"practice\"}}"`
}

// prices are in the currency of the year.
type prices struct {
	JarAndLid  decimal.Decimal `wire:"required"`
	Bag        decimal.Decimal `wire:"required"`
	CannerLoad decimal.Decimal `wire:"required"`
}

// year is what the file says of it, understood: the year without the fish and what is eaten, and the two products
// without their yields, which all follow from the catch.
type year struct {
	plan         larder.Year
	jars, smoked larder.Want
}

func (f fileYear) understand(c fileCanner) (y year, err error) {
	for _, price := range []struct {
		name  string
		value decimal.Decimal
	}{
		{"pricePerTrip", f.PricePerTrip}, {"prices.jarAndLid", f.Prices.JarAndLid}, {"prices.bag", f.Prices.Bag},
		{"prices.cannerLoad", f.Prices.CannerLoad},
	} {
		if price.value.IsNegative() {
			return y, fmt.Errorf("year.%s: %v: expected a number of 0 or more", price.name, price.value)
		}
	}
	if f.IcePerFish < 0 || f.SaltPerJar < 0 {
		return y, fmt.Errorf("year: ice and salt must not be negative")
	}
	y.plan = larder.Year{Weeks: f.Weeks, Lag: f.Lag, Rule: f.Rule, Trips: f.Trips, Fishing: larder.Expected,
		Fresh: keeps(f.Fresh, keeping.Raw, keeping.InRefrigerator)}
	if y.jars, err = f.Jars.understand(c.Jar.String()+" jars", keeps(f.Jars.Keeps, keeping.HomeCanned,
		keeping.InCupboard)); err != nil {
		return y, fmt.Errorf("year.jars: %w", err)
	}
	y.jars.Load = c.JarsPerLoad
	if y.smoked, err = f.Smoked.understand("smoked, frozen", keeps(f.Smoked.Keeps, keeping.SmokedVacuum,
		keeping.InFreezer)); err != nil {
		return y, fmt.Errorf("year.smoked: %w", err)
	}
	y.plan.Keeps = y.jars.Keeps
	return y, nil
}

func (f fileProduct) understand(name string, keeps larder.Keeping) (larder.Want, error) {
	meals, err := units.Of(f.MealsAWeek, units.One)
	if err != nil {
		return larder.Want{}, fmt.Errorf("mealsAWeek: %w", err)
	}
	if f.Served <= 0 || f.Served > units.One {
		return larder.Want{}, fmt.Errorf("served: %v: expected more than 0 %% and no more than 100 %%", f.Served)
	}
	return larder.Want{Name: name, Meals: meals, Serving: f.Serving, Pack: f.Pack, Served: f.Served, Keeps: keeps}, nil
}

// keeps is the strictest time that is published for a food, or the file's own where it states a shorter one.
func keeps(stated *larder.Keeping, food keeping.Food, storage keeping.Storage) larder.Keeping {
	rule := strictest(food, storage)
	if stated != nil && stated.Time < rule.Low {
		return *stated
	}
	return larder.Keeping{Time: rule.Low, Citation: rule.Citation}
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
