package brine

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// leastBrine is the weakest brine for smoking in print: a cup of salt to a gallon of water, with table salt.
var leastBrineCitation = cite.Citation{Source: cite.MSUEPreservingFoodSafely1997, Where: "item 01600579", Basis: cite.Read}

func leastBrine() (units.Ratio, error) {
	salt, err := weighings[0].MassOf(units.Cup)
	if err != nil {
		return 0, err
	}
	return strengthOf(salt, units.Gallon)
}

// judgeMethod tells a recipe that is a dry cure and a brine at once: figures of the one say nothing of the other.
func judgeMethod(c Claim, a *Assessment) error {
	f := Finding{What: "method", Kind: Different, Published: "one method", Citation: cite.Citation{Where: "the recipe's own figures", Basis: cite.Computed}}
	switch {
	case a.Method == DrySalted && (c.Water.Given || c.Strength.Given):
		f.Stated = "dry salted, with a brine"
	case a.Method == WetBrined && c.SaltToFish.Given:
		f.Stated = "wet brined, with salt to fish"
	default:
		return nil
	}
	a.find(f)
	return nil
}

func judgeDose(c Claim, a *Assessment) error {
	switch {
	case a.Method == MethodNotStated:
		a.find(Finding{What: "method", Kind: NotStated})
	case a.Method == DrySalted && a.SaltToFish == 0 && !c.SaltToFish.Given:
		a.find(Finding{What: "salt to fish", Kind: NotStated, Published: "30 g per kg, 1:4 and 1:3", Citation: handSaltedCitation})
	case a.Method == DrySalted:
		judgeDryDose(a)
	case a.Strength == 0 && !c.Strength.Given:
		a.find(Finding{What: "brine strength", Kind: NotStated})
	default:
		return judgeStrength(a)
	}
	return nil
}

func judgeDryDose(a *Assessment) {
	f := Finding{What: "salt to fish", Stated: percent(a.SaltToFish)}
	switch {
	case a.SaltToFish < handSalted:
		f.Kind, f.Published, f.Citation = Short, percent(handSalted), handSaltedCitation
		f.Difference = percent(handSalted - a.SaltToFish)
	case a.SaltToFish > handSalted && a.SaltToFish < quarter:
		f.Kind, f.Published, f.Citation = Different, "no dose between 3 % and 1:4", quarterCitation
	case a.SaltToFish > third+1:
		f.Kind, f.Published, f.Citation = Over, "1:3", thirdCitation
	default:
		return
	}
	a.find(f)
}

func judgeStrength(a *Assessment) error {
	least, err := leastBrine()
	if err != nil {
		return err
	}
	limit, citation := Saturation()
	f := Finding{What: "brine strength", Stated: percent(a.Strength)}
	switch {
	case a.Strength < least:
		f.Kind, f.Published, f.Citation = Short, percent(least)+" (a cup of table salt to the gallon)", leastBrineCitation
		f.Difference = percent(least - a.Strength)
	case a.Strength > limit:
		f.Kind, f.Published, f.Citation = Different, percent(limit)+" (saturation)", citation
		f.Difference = percent(a.Strength - limit)
	default:
		return nil
	}
	a.find(f)
	return nil
}

// judgeTime holds fish buried in salt against the dry-salting table; a measured dose and a brine are judged by what salt they can bring in.
func judgeTime(c Claim, a *Assessment) error {
	if !c.Time.Given {
		a.find(Finding{What: "time", Kind: NotStated})
		return nil
	}
	if a.SaltToFish < quarter || !c.Thickness.Given {
		return nil
	}
	if c.Fatness == FatnessNotStated {
		c.Fatness = FatFish // the longer time
	}
	printed, err := FindSaltingTime(c.Thickness.Value, c.Fatness)
	if err != nil {
		a.find(Finding{What: "time", Kind: Different, Stated: units.Lasting(c.Time.Value), Published: "no time for this thickness",
			Citation: cite.Citation{Source: cite.WhelanSmoking, Where: "dry-salting table", Basis: cite.Read}})
		return nil
	}
	f := Finding{What: "time", Stated: units.Lasting(c.Time.Value), Published: units.Lasting(printed.Time) + " for " + c.Fatness.String(), Citation: printed.Citation}
	switch off := c.Time.Value - printed.Time; {
	case off < 0:
		f.Kind, f.Difference = Short, units.Lasting(-off)
	case off > 0:
		f.Kind, f.Difference = Over, units.Lasting(off)
	default:
		return nil
	}
	a.find(f)
	return nil
}

// The published temperatures: where dry-salted fish lies and where it brines for more than four hours, and the brine at its start.
var (
	coldLimit         = units.Fahrenheit(38)
	startLimit        = units.Fahrenheit(60)
	startLimitHolds   = 4 * time.Hour
	brineTempCitation = cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.5(2); also 1 NYCRR 262.5(a)", Basis: cite.Read}
)

func judgeTemperature(c Claim, a *Assessment) error {
	limit, citation := coldLimit, keepCold.Citation
	if a.Method == WetBrined {
		citation = brineTempCitation
		if c.Time.Given && c.Time.Value <= startLimitHolds {
			limit = startLimit
		}
	}
	if !c.Temperature.Given {
		a.find(Finding{What: "temperature", Kind: NotStated, Published: "at most " + limit.Text(units.FahrenheitScale, 0), Citation: citation})
		return nil
	}
	if !c.Temperature.Value.Above(limit) {
		return nil
	}
	off, err := c.Temperature.Value.Sub(limit)
	if err != nil {
		return err
	}
	places := int32(1)
	if off < units.Kelvins/20 { // never "too warm by nothing"
		places = 6
	}
	a.find(Finding{What: "temperature", Kind: TooWarm, Stated: c.Temperature.Value.String(), Published: "at most " + limit.Text(units.FahrenheitScale, 0),
		Difference: units.Text(off, units.FahrenheitDegrees, places), Citation: citation})
	return nil
}

// percent is to two decimals, and exact where that would hide a shortfall.
func percent(r units.Ratio) string {
	if r > 0 && r < units.Percent/100 {
		return r.String()
	}
	return units.Text(r, units.Percent, 2)
}
