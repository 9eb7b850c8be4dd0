package answers

import (
	"fmt"
	"strconv"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/keeping"
	"example.org/lakelarder/yield/season"
)

func yearSection() Section {
	const jar, limits, trips = "What is in a jar", "The limits where you fish", "The trips"
	return Section{
		Name: "year", Title: "The year", About: "Jars for a year of meals, and whether the catch of the trips can be held under the limits, week by week.",
		Fields: []Field{
			{Name: "people", Label: "people", Help: "of all households together, such as 4"},
			{Name: "weeks", Label: "weeks", Help: "such as 40"},
			{Name: "meals", Label: "meals a week", Help: "of each person, such as 1"},
			{Name: "serving", Label: "serving", Help: "such as 4 oz"},
			{Name: "fish", Label: "fish", Help: "mean weight of one as caught, such as 3400 g"},
			{Name: "pack", Label: "raw fish", Group: jar, Help: "such as 400 g"},
			{Name: "served", Label: "served", Group: jar, Help: "share of it that is eaten, such as 79 %"},
			{Name: "yield", Label: "yield", Group: jar, Help: "share of the whole fish that is packed, such as 70 %"},
			{Name: "load", Label: "jars a load", Group: jar, Help: "such as 9"},
			{Name: "shape", Label: "what counts", Group: limits, Choices: words[season.Shape]()},
			{Name: "anglers", Label: "anglers", Group: limits, Help: "who keep their own limit, such as 3"},
			{Name: "daily", Label: "fish a day", Group: limits, Help: "of each angler"},
			{Name: "possession", Label: "fish held", Group: limits, Help: "at once by each angler; empty where the rule has none"},
			{Name: "processed", Label: "processed fish held", Group: limits, Help: "at once; empty where the rule has none"},
			{Name: "annual", Label: "fish a year", Group: limits, Help: "empty where there is no such limit"},
			{Name: "trips", Label: "weeks of the trips", Group: trips, Help: "from 0, such as 0, 1, 2, 6, 9"},
			{Name: "catch", Label: "fish a trip", Group: trips, Help: "on an ordinary day, all anglers together, such as 5"},
		},
		Example: map[string]string{
			"people": "4", "weeks": "20", "meals": "1", "serving": "4 oz", "fish": "3400 g", "pack": "400 g", "served": "79 %", "yield": "70 %", "load": "9",
			"shape": season.Everything.String(), "anglers": "1", "daily": "5", "possession": "10", "trips": "0, 1, 2, 3, 6, 9", "catch": "5",
		},
	}
}

// count reads a whole number; an empty field is none.
func (w *writer) count(field string) int { return whole(w, field).Value }

// provided is what a year of meals needs and whether it can be held.
func provided(w *writer) {
	w.required("people", "weeks", "meals", "serving", "fish", "pack", "served", "yield")
	house := season.Household{People: w.count("people"), Weeks: w.count("weeks"), Fish: typed[units.Mass](w, "fish").Value}
	meals := w.count("meals")
	want := season.Want{
		Name: "jars", Meals: units.Ratio(meals) * units.One, Serving: typed[units.Mass](w, "serving").Value, Pack: typed[units.Mass](w, "pack").Value,
		Served: typed[units.Ratio](w, "served").Value, Yield: typed[units.Ratio](w, "yield").Value, Load: w.count("load"),
	}
	if meals < 0 || meals > 21 {
		w.wrong("meals", units.RangeError{What: "meals a week", Got: strconv.Itoa(meals), Low: "0", High: "21"})
	}
	if len(w.Faults) > 0 {
		return
	}
	var ok bool
	if want.Keeps, ok = w.keeps(keeping.HomeCanned, keeping.InCupboard); !ok {
		return
	}
	larder, err := season.Size(house, want)
	if err != nil {
		w.refuse(err, "people")
		return
	}
	w.block("What it takes")
	w.figure("jars", counted(larder.Containers, "jar"))
	w.figure("whole fish", counted(larder.Fish, "fish")+", "+up(w, larder.Round))
	w.figure("loads of the canner", counted(larder.Loads, "load"))
	w.figure("jars keep", units.Lasting(want.Keeps.Time), want.Keeps.Citation)
	w.warn(larder.Cautions...)
	if w.request.Values["trips"] == "" {
		w.Headline = "what a year of meals takes; say the trips to see whether it can be held"
		return
	}
	w.held(house, larder, want.Keeps)
}

// keeps is the strictest published time for a food.
func (w *writer) keeps(food keeping.Food, storage keeping.Storage) (season.Keeping, bool) {
	times, err := keeping.Find(food, storage)
	if err != nil {
		w.wrong("weeks", err)
		return season.Keeping{}, false
	}
	w.warn(times.Cautions...)
	if len(times.Safety) > 0 && !times.Safety[0].NoEnd {
		return season.Keeping{Time: times.Safety[0].Low, Citation: times.Safety[0].Citation}, true
	}
	if len(times.Quality) > 0 {
		return season.Keeping{Time: times.Quality[0].Low, Citation: times.Quality[0].Citation}, true
	}
	w.wrong("weeks", units.UnsetError{What: "keeping time"})
	return season.Keeping{}, false
}

// held plans the year under the limits, week by week.
func (w *writer) held(house season.Household, larder season.Larder, keeps season.Keeping) {
	fresh, ok := w.keeps(keeping.Raw, keeping.InRefrigerator)
	if !ok {
		return
	}
	w.required("shape", "anglers", "daily", "catch")
	year := season.Year{
		Rule: season.Rule{
			Shape: word(w, "shape", season.ParseShape), Anglers: w.count("anglers"), Daily: w.count("daily"), Possession: w.count("possession"),
			Processed: w.count("processed"), Annual: w.count("annual"),
		},
		Fishing: season.Expected, Weeks: house.Weeks, Lag: 1, Fish: house.Fish, Weekly: larder.Weekly, Fresh: fresh, Keeps: keeps,
	}
	catch := w.count("catch")
	for _, part := range strings.Split(w.request.Values["trips"], ",") {
		week, err := strconv.Atoi(strings.TrimSpace(part))
		if err != nil {
			w.wrong("trips", units.ParseError{Quantity: "week", Text: part, Reason: "expected weeks as whole numbers with commas between, such as 0, 1, 2"})
			return
		}
		year.Trips = append(year.Trips, season.Trip{Week: week, Days: 1, Expected: catch, Possible: catch})
	}
	if len(w.Faults) > 0 {
		return
	}
	plan, err := season.Keep(year)
	if err != nil {
		w.refuse(err, "trips")
		return
	}
	w.Headline = plan.String()
	if !plan.Proven {
		w.line("This is the best plan that was found; it is not proven that there is no better one.")
	}
	w.block("The limits")
	w.figure("what counts", year.Rule.Shape.String(), year.Rule.Shape.Citation())
	w.figure("fresh fish keeps", units.Lasting(fresh.Time), fresh.Citation)
	w.warn(plan.Cautions...)
	w.weeks(plan)
	batches, err := season.Calendar(plan, larder)
	if err != nil {
		w.refuse(err, "trips")
		return
	}
	b := Block{Heading: "What is preserved when", Head: []string{"by week", "fish", "round mass", "jars"}}
	for _, one := range batches {
		jars := 0
		for _, made := range one.Made {
			jars += made.Containers
		}
		b.Rows = append(b.Rows, []string{strconv.Itoa(one.Week), strconv.Itoa(one.Fish), text(w, one.Round), strconv.Itoa(jars)})
	}
	w.Blocks = append(w.Blocks, b)
}

// weeks is the stock, week by week.
func (w *writer) weeks(plan season.Plan) {
	b := Block{Heading: "The stock, week by week", Head: []string{"week", "fish kept", "held before eating", "eaten", "short"}}
	short := map[int]bool{}
	for _, week := range plan.Short {
		short[week] = true
	}
	for i, week := range plan.Weeks {
		lack := ""
		if short[i] {
			lack = "short"
		}
		b.Rows = append(b.Rows, []string{strconv.Itoa(i), strconv.Itoa(week.Kept), fmt.Sprintf("%d fish", week.Held.All), text(w, week.Eaten), lack})
	}
	w.Blocks = append(w.Blocks, b)
}
