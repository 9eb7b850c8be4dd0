package answers

import (
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/brine/solution"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

func cureSection() Section {
	var salts, sugars []string
	for _, i := range brine.Ingredients() {
		if i.Substance == brine.Salt {
			salts = append(salts, i.Name)
		} else {
			sugars = append(sugars, i.Name)
		}
	}
	const record = "The core in the smoker"
	return Section{
		Name: "cure", Title: "The cure and the smoke", About: "What to weigh for a fillet, what comes of it as a range, and whether a recorded core was held.",
		Fields: []Field{
			{Name: "mass", Label: "fillet", Help: "its raw weight, such as 2 lb 4 oz"},
			{Name: "thickness", Label: "thickness", Help: "such as 1 1/4 in"},
			{Name: "water", Label: "water", Help: "share of water in the raw fish, such as 71.64 %"},
			{Name: "saltToFish", Label: "salt to fish", Help: "by weight, such as 36 g/kg"},
			{Name: "sugarToSalt", Label: "sugar to salt", Help: "by weight, such as 200 %"},
			{Name: "time", Label: "time in the salt", Help: "such as 36 h, at most 240 h"},
			{Name: "drip", Label: "drip", Help: "water drawn out, of the raw weight, such as 5 %"},
			{Name: "loss", Label: "loss in smoking", Help: "water lost in drying and smoking, of the raw weight, such as 15 %"},
			{Name: "salt", Label: "salt by volume", Choices: salts},
			{Name: "sugar", Label: "sugar by volume", Choices: sugars},
			{Name: "maxGap", Label: "longest gap", Group: record, Help: "between readings across which a straight line is believed, such as 10 min"},
		},
		Drops: []Drop{{Name: "core", Label: "Record of the core", Help: "a CSV file of a probe in the thickest fillet", Sample: "core.csv"}},
		Example: map[string]string{
			"mass": "2 lb 4 oz", "thickness": "1 1/4 in", "water": "71.64 %", "saltToFish": "36 g/kg", "sugarToSalt": "200 %", "time": "36 h", "drip": "5 %",
			"loss": "15 %", "salt": "table salt", "sugar": "packed brown sugar", "maxGap": "10 min",
		},
	}
}

// cured is what to weigh, what comes of it, and the record of the core.
func cured(w *writer) {
	w.core()
	w.required("mass", "thickness", "water", "saltToFish", "time")
	mass, thickness, water := typed[units.Mass](w, "mass").Value, typed[units.Length](w, "thickness").Value, typed[units.Ratio](w, "water").Value
	dose, sweet := typed[units.Ratio](w, "saltToFish").Value, typed[units.Ratio](w, "sugarToSalt").Value
	lasting := typed[time.Duration](w, "time").Value
	drip, loss := typed[units.Ratio](w, "drip").Value, typed[units.Ratio](w, "loss").Value
	if len(w.Faults) > 0 {
		return
	}
	sugar, err := sweet.Of(units.Kilogram)
	if err != nil {
		w.refuse(err, "sugarToSalt")
		return
	}
	mix, err := brine.MixOf(units.Kilogram, sugar)
	if err != nil {
		w.refuse(err, "sugarToSalt")
		return
	}
	cure, err := brine.DryCure(mass, dose, mix)
	if err != nil {
		w.refuse(err, "saltToFish")
		return
	}
	w.weigh(cure)
	curing := brine.Curing{Raw: mass, Salt: cure.Salt}
	for _, part := range []struct {
		field string
		to    *units.Mass
		share units.Ratio
	}{{"water", &curing.Water, water}, {"drip", &curing.Drip, drip}, {"loss", &curing.Drying, loss}} {
		if *part.to, err = part.share.Of(mass); err != nil {
			w.refuse(err, part.field)
			return
		}
	}
	w.expect(curing, thickness, lasting)
}

func (w *writer) weigh(cure brine.Cure) {
	w.block("What to weigh")
	w.figure("salt", up(w, cure.Salt))
	if cure.Sugar > 0 {
		w.figure("sugar", text(w, cure.Sugar))
	}
	w.warn(cure.Cautions...)
	if w.request.Values["salt"] == "" {
		return
	}
	salt, err := brine.FindIngredient(w.request.Values["salt"])
	if err != nil {
		w.wrong("salt", err)
		return
	}
	var sugar brine.Ingredient
	if cure.Sugar > 0 {
		if sugar, err = brine.FindIngredient(w.request.Values["sugar"]); err != nil {
			w.wrong("sugar", err)
			return
		}
	}
	volumes, err := cure.Volumes(salt, sugar)
	if err != nil {
		w.refuse(err, "salt")
		return
	}
	w.figure("by volume, of this salt only", spoons(w, volumes.Salt)+" of "+salt.Name, salt.Citation)
	if cure.Sugar > 0 {
		w.figure("and of this sugar only", spoons(w, volumes.Sugar)+" of "+sugar.Name, sugar.Citation)
	}
	w.warn(volumes.Cautions...)
}

// expect is the water phase salt to expect: a range, and what it evens out to.
func (w *writer) expect(curing brine.Curing, thickness units.Length, lasting time.Duration) {
	end, err := curing.Equilibrium()
	if err != nil {
		w.refuse(err, "loss")
		return
	}
	saturated, _ := solution.Saturation()
	slab := brine.Slab{Thickness: thickness, Faces: brine.OneFace}
	before, err := slab.WaterPhaseSaltRange(saturated, end.Cured, brine.FleshDiffusivity(), lasting)
	if err != nil {
		w.refuse(err, "time")
		return
	}
	limit := brine.DefaultSaltLimit()
	w.Headline = "a range is no measurement: have the water phase salt measured in the loin"
	w.block("Water phase salt to expect")
	w.figure("after the cure, low to high", down(w, before.Low)+" to "+down(w, before.High)+", likely "+down(w, before.Likely), before.Citation)
	w.figure("evened out, after smoking", down(w, end.Final), end.Citation)
	w.figure("published, for a low-oxygen pack", units.AtLeast(limit.Least).Text(w.request.System), limit.Citation)
	required, err := brine.SaltFor(limit.Least, curing.Water-curing.Drip-curing.Drying)
	if err != nil {
		w.refuse(err, "loss")
		return
	}
	if end.Kept < required {
		w.do("Take more salt: " + up(w, required) + " must stay in the fish for the limit, and of this dose " + down(w, end.Kept) + " does, however long it lies.")
	}
	for _, rule := range brine.SaltingRules() {
		if rule.ID == brine.DrySaltedCold {
			w.figure(rule.What, rule.Limit.Text(w.request.System), rule.Citation)
		}
	}
	w.warn(before.Cautions...)
	w.warn(end.Cautions...)
}

// spoons is a volume in the measures of a kitchen.
func spoons(w *writer, v units.Volume) string {
	kitchen := units.Kitchen(units.CeilTo(v, units.Teaspoon/4), 4, units.Quart, units.Cup, units.Tablespoon, units.Teaspoon)
	metric := units.AmountOf(v).Text(units.Metric, units.Up)
	switch w.request.System {
	case units.US:
		return kitchen
	case units.Metric:
		return metric
	}
	return kitchen + " (" + metric + ")"
}

// core judges a dropped record of the core by the strictest home rule.
func (w *writer) core() {
	log, ok := record[units.Temperature](w, "core")
	if !ok {
		return
	}
	limit := smoke.DefaultCoreLimit()
	r := smoke.Record{MaxGap: typed[time.Duration](w, "maxGap").Value}
	r.Cores = append(r.Cores, log.Series)
	hold, err := smoke.AuditHold(limit, r)
	if err != nil {
		w.refuse(err, "maxGap")
		return
	}
	w.block("The core: " + hold.Verdict.String())
	w.Verdict = hold.Verdict.String()
	w.why(hold.Report)
	w.figure("held against", limit.Printed.Text(w.request.System)+", held "+units.Lasting(limit.Hold), limit.Citation)
	w.figure("held without a break", down(w, hold.Held))
	w.line("Only the column that was chosen is judged. The coldest probe decides: drop the others too.")
	points, unit := curveOf(log.Series, w.request.System)
	need := chartLevel(points, limit.AtLeast, w.request.System)
	c := framed("The core, held "+units.Lasting(hold.Held.Truncate(time.Second)), "The recorded core and, dashed, the published limit. Verdict: "+hold.Verdict.String()+".", points, need)
	c.Frame("minutes of the record", unit, nil, nil)
	over(c, dashed, need)
	over(c, solid, points)
	c.Key(c.Key(334, solid, "as recorded"), dashed, "published: "+limit.Printed.Text(w.request.System))
	w.Picture = c.String()
}
