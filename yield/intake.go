package yield

import (
	"math"
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Intake is the arithmetic behind a consumption advisory: a substance at a concentration in what is eaten, a dose
// that a person may take up each day for each mass of body, the body, and the size of a meal.
type Intake struct {
	Concentration units.Ratio // of the substance in the meal as eaten
	Dose          units.Ratio `wire:"required"` // each day, of the body's mass: 0.1 µg/kg is units.PartsPerBillion/10
	Body          units.Mass  `wire:"required"`
	Meal          units.Mass  `wire:"required"`
}

// MarshalJSON writes the intake as an object of its fields.
func (i Intake) MarshalJSON() ([]byte, error) { return wire.Marshal(i) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, a dose, body or meal that is missing too, is a
// units.FieldError. The concentration may be left out, for Edge.
func (i *Intake) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, i) }

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

// Edge returns the concentration at which this many meals in a period just meet the dose: the edge of an advisory's
// band, dose· body·days/(meals·meal), rounded down to 1e-12 so that Meals allows them there. Meals must be 1 to
// 10,000; limits otherwise as in Meals, and the Concentration of the Intake is not looked at.
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

// Advisory is what the caller's own jurisdiction says of this water, species and size: Meals in a Period. It is an
// input, never worked out here. Of fish that is not to be eaten the Meals are zero; it needs no Period.
type Advisory struct {
	Meals  int
	Period time.Duration
}

// MealAdvice is how often a fish may be eaten. Meals in Period rule: the local advisory's, and without one the
// federal advice for such fish. Explained is what the arithmetic gives for the same period, to show beside it.
type MealAdvice struct {
	Meals     int `wire:"always"`
	Period    time.Duration
	Explained int64 `wire:"always"`
	Citation  cite.Citation
	Cautions  []cite.Caution
}

// MarshalJSON writes the advice as an object of its fields; no meals are written too.
func (a MealAdvice) MarshalJSON() ([]byte, error) { return wire.Marshal(a) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else is a units.FieldError.
func (a *MealAdvice) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, a) }

var (
	localAdvisory = cite.Citation{Where: "the advisory of the caller's jurisdiction, as stated by the caller", Basis: cite.Practice}
	withoutOne    = cite.Citation{Source: cite.EPALocalFish, Where: "page", Basis: cite.Read}
	whatStays     = cite.Citation{Where: "what preserving leaves in the fish", Basis: cite.Practice}
	doseEquation  = cite.Citation{Source: cite.FDAEPATechnicalPage, Where: "dose equation", Basis: cite.Computed}
)

// Advise returns the meals of the local advisory, whatever the arithmetic of the intake says; where the arithmetic
// allows fewer, a caution says so. Where no advisory is stated it is the federal advice: one serving in the week and
// no other fish in it; the zero Advisory, stated, is that the fish is not to be eaten. Canning and smoking remove
// neither mercury nor PCB. Negative meals, meals without a period, or an intake that Meals refuses, are a RangeError.
func Advise(local units.Stated[Advisory], intake Intake) (MealAdvice, error) {
	a := MealAdvice{Meals: local.Value.Meals, Period: local.Value.Period, Citation: localAdvisory}
	switch {
	case !local.Given:
		a.Meals, a.Period, a.Citation = 1, 7*24*time.Hour, withoutOne
		a.Cautions = append(a.Cautions, noAdvisory)
	case a.Meals < 0:
		return MealAdvice{}, units.RangeError{What: "meals of the advisory", Got: strconv.Itoa(a.Meals), Low: "0"}
	case a.Meals == 0:
		if a.Period == 0 {
			a.Period = 365 * 24 * time.Hour
		}
		a.Cautions = append(a.Cautions, doNotEat)
	}
	var err error
	if a.Explained, err = intake.Meals(a.Period); err != nil {
		return MealAdvice{}, err
	}
	if a.Explained < int64(a.Meals) {
		a.Cautions = append(a.Cautions, fewerMeals)
	}
	a.Cautions = append(a.Cautions, staysIn)
	return a, nil
}

// What must be known of advice on meals.
var (
	noAdvisory = cite.Caution{
		ID: "yield.no-advisory", Deciding: true, Citation: withoutOne,
		Text: "No local advisory was stated. Eat one serving, and no other fish in that week.",
	}
	doNotEat = cite.Caution{
		ID: "yield.do-not-eat", Deciding: true, Citation: localAdvisory,
		Text: "The advisory says not to eat this fish. No preserving makes it fit to eat.",
	}
	fewerMeals = cite.Caution{
		ID: "yield.fewer-meals", Deciding: true, Citation: doseEquation,
		Text: "The arithmetic allows fewer meals than the advisory. " +
			"Ask the agency that issues it, and eat no more than the fewer.",
	}
	staysIn = cite.Caution{
		ID: "yield.mercury-stays", Deciding: true, Citation: whatStays,
		Text: "Canning and smoking remove neither mercury nor PCB. A skin-on raw pack keeps the fat that holds PCB.",
	}
)
