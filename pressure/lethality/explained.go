package lethality

import (
	"time"

	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Lethality is an F, and what must stand beside it wherever it is shown. F says nothing of whether a food may be kept
// or eaten.
type Lethality struct {
	F          time.Duration
	Reference  Reference
	LongestGap series.Stretch // between two readings, zero where no record was read
	Cautions   []cite.Caution
}

// Equivalent is a time that was worked out, and what must stand beside it: it is to learn from and never a time to
// process by.
type Equivalent struct {
	Time     time.Duration
	Cautions []cite.Caution
}

// Kill is how many log10 reductions the log-linear model makes of an F, and what must stand beside it.
type Kill struct {
	Reductions Logs
	Cautions   []cite.Caution
}

// Survival is how many the log-linear model leaves on average, and what must stand beside it.
type Survival struct {
	Left     Number
	Cautions []cite.Caution
}

// explains are the cautions of every figure that is worked out.
func explains() []cite.Caution {
	return []cite.Caution{notAProcess()}
}

func notAProcess() cite.Caution {
	return cite.Caution{Text: "None of this shortens, replaces or confirms a published process: follow the tested schedule for the product, jar, gauge and altitude."}
}

// explainsSolid are those of every run worked out for a solid.
func explainsSolid(surface ...cite.Caution) []cite.Caution {
	return append([]cite.Caution{notAProcess(), {
		Text: "A real jar holds liquid and head space, and its coldest spot is seldom the middle of an even solid. F worked out for a solid is no measure of safety.",
	}}, surface...)
}

// explainsRecord are those of a record that was read.
func explainsRecord() []cite.Caution {
	return []cite.Caution{notAProcess(), {
		Text: "F is no better than the sensor, its place and the straight lines between readings; away from the coldest spot it reads high.",
	}}
}

// explainsModel are those of what rests on one D and z.
func explainsModel() []cite.Caution {
	return []cite.Caution{notAProcess(), {
		Text: "D and z differ between strains, foods and laboratories by more than any rounding, and not every population dies along one straight line.",
	}}
}
