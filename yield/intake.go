package yield

import (
	"math"
	"strconv"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Intake is the arithmetic behind a consumption advisory: a substance at a concentration in what is eaten, a dose that a
// person may take up each day for each mass of body, the body, and the size of a meal.
type Intake struct {
	Concentration units.Ratio // of the substance in the meal as eaten
	Dose          units.Ratio // each day, of the mass of the body: 0.1 µg/kg is units.PartsPerBillion/10
	Body          units.Mass
	Meal          units.Mass
}

// Meals returns how many meals in a period meet the dose: dose·body·days/(concentration·meal), rounded down to a whole
// meal. It explains an advisory and never replaces one. The concentration must be more than 0 and at most 1 %, the
// dose more than 0 and at most 1 ppm, body 1 to 500 kg, meal 1 g to 2 kg, the period a day to ten years; otherwise a
// RangeError. Cooking raises the concentration of mercury (raw/0.75): state it as eaten.
func (i Intake) Meals(period time.Duration) (int64, error) {
	if err := units.Check("concentration", i.Concentration, 1, units.Percent); err != nil {
		return 0, err
	}
	allowed, err := i.allowed(period)
	if err != nil {
		return 0, err
	}
	meals := allowed / float64(float64(i.Concentration)*float64(i.Meal))
	return int64(meals * (1 + 1e-12)), nil // a meal that is met exactly counts
}

// Edge returns the concentration at which this many meals in a period just meet the dose: the edge of an advisory's band, dose·
// body·days/(meals·meal), rounded down to 1e-12 so that Meals allows them there. Meals must be 1 to 10,000; limits otherwise as in Meals, and
// the Concentration of the Intake is not looked at.
func (i Intake) Edge(meals int, period time.Duration) (units.Ratio, error) {
	if meals < 1 || meals > 10_000 {
		return 0, units.RangeError{What: "meals", Got: strconv.Itoa(meals), Low: "1", High: "10000"}
	}
	allowed, err := i.allowed(period)
	if err != nil {
		return 0, err
	}
	return units.OfFloat(math.Floor(allowed/float64(float64(meals)*float64(i.Meal))), units.Ratio(1))
}

// allowed is dose·body·days, in quanta of ratio times mass.
func (i Intake) allowed(period time.Duration) (float64, error) {
	if err := units.Check("dose a day", i.Dose, 1, units.PartsPerMillion); err != nil {
		return 0, err
	}
	if err := units.Check("mass of the body", i.Body, units.Kilogram, 500*units.Kilogram); err != nil {
		return 0, err
	}
	if err := units.Check("mass of a meal", i.Meal, units.Gram, 2*units.Kilogram); err != nil {
		return 0, err
	}
	const day = 24 * time.Hour
	if err := units.CheckDuration("period", period, day, 3653*day); err != nil {
		return 0, err
	}
	return float64(float64(i.Dose)*float64(i.Body)) * (float64(period) / float64(day)), nil
}

// Advisory is what the caller's own jurisdiction says of this water, species and size: Meals in a Period. It is an input, never worked
// out here. Of fish that is not to be eaten the Meals are zero; it needs no Period.
type Advisory struct {
	Meals  int
	Period time.Duration
}

// MealAdvice is how often a fish may be eaten. Meals in Period rule: the local advisory's, and without one the federal advice
// for such fish. Explained is what the arithmetic gives for the same period, to show beside it.
type MealAdvice struct {
	Meals     int
	Period    time.Duration
	Explained int64
	Citation  cite.Citation
	Cautions  []cite.Caution
}

var (
	localAdvisory = cite.Citation{Where: "the advisory of the caller's jurisdiction, as stated by the caller", Basis: cite.Practice}
	withoutOne    = cite.Citation{Source: cite.EPALocalFish, Where: "page", Basis: cite.Read}
	whatStays     = cite.Citation{Where: "what preserving leaves in the fish", Basis: cite.Practice}
	doseEquation  = cite.Citation{Source: cite.FDAEPATechnicalPage, Where: "dose equation", Basis: cite.Computed}
)

// Advise returns the meals of the local advisory, whatever the arithmetic of the intake says; where the arithmetic allows fewer, a
// caution says so. Where no advisory is stated it is the federal advice: one serving in the week and no other fish in it; the zero
// Advisory, stated, is that the fish is not to be eaten. Canning and smoking remove neither mercury nor PCB. Negative meals, meals
// without a period, or an intake that Meals refuses, are a RangeError.
func Advise(local units.Stated[Advisory], intake Intake) (MealAdvice, error) {
	a := MealAdvice{Meals: local.Value.Meals, Period: local.Value.Period, Citation: localAdvisory}
	switch {
	case !local.Given:
		a.Meals, a.Period, a.Citation = 1, 7*24*time.Hour, withoutOne
		a.warn("no local advisory was stated: one serving, and no other fish in that week", withoutOne)
	case a.Meals < 0:
		return MealAdvice{}, units.RangeError{What: "meals of the advisory", Got: strconv.Itoa(a.Meals), Low: "0"}
	case a.Meals == 0:
		if a.Period == 0 {
			a.Period = 365 * 24 * time.Hour
		}
		a.warn("the advisory says not to eat this fish: no preserving makes it fit to eat", localAdvisory)
	}
	var err error
	if a.Explained, err = intake.Meals(a.Period); err != nil {
		return MealAdvice{}, err
	}
	if a.Explained < int64(a.Meals) {
		a.warn("the arithmetic allows fewer meals than that, "+strconv.FormatInt(a.Explained, 10)+": ask the agency that issues the advisory, and eat no more than the fewer", doseEquation)
	}
	a.warn("canning and smoking remove neither mercury nor PCB, and a skin-on raw pack keeps the fat that holds PCB", whatStays)
	return a, nil
}

func (a *MealAdvice) warn(text string, from cite.Citation) {
	a.Cautions = append(a.Cautions, cite.Caution{Text: text, Citation: from})
}
