package lethality

import (
	"time"

	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
)

// Lethality is an F, and what must stand beside it wherever it is shown. F says nothing of whether a food may be kept
// or eaten.
type Lethality struct {
	F          time.Duration `wire:"always"`
	Reference  Reference
	LongestGap series.Stretch // between two readings, zero where no record was read
	Cautions   []cite.Caution
}

// Equivalent is a time that was worked out, and what must stand beside it: it is to learn from and never a time to
// process by.
type Equivalent struct {
	Time     time.Duration `wire:"always"`
	Cautions []cite.Caution
}

// Kill is how many log10 reductions the log-linear model makes of an F, and what must stand beside it.
type Kill struct {
	Reductions Logs `wire:"always"`
	Cautions   []cite.Caution
}

// Survival is how many the log-linear model leaves on average, and what must stand beside it.
type Survival struct {
	Left     Number `wire:"always"`
	Cautions []cite.Caution
}

// What must stand beside a figure that was worked out.
var (
	notAProcess = cite.Caution{
		ID: "lethality.not-a-process",
		Text: "None of this shortens, replaces or confirms a published process. " +
			"Follow the tested schedule for the product, jar, gauge and altitude.",
		Deciding: true,
	}
	evenSolid = cite.Caution{
		ID: "lethality.even-solid",
		Text: "A real jar holds liquid and head space, and its coldest spot is seldom the middle of an even solid. " +
			"F worked out for a solid is no measure of safety.",
		Deciding: true,
	}
	surfaceHeld = cite.Caution{
		ID: "lethality.surface-held",
		Text: "The surface was taken to have the temperature of the medium at once. " +
			"Glass and film, which are left out, make the pack slower: F reads high.",
		Deciding: true,
	}
	noBetter = cite.Caution{
		ID: "lethality.no-better-than-its-sensor",
		Text: "F is no better than the sensor, its place and the straight lines between readings. " +
			"Away from the coldest spot it reads high.",
	}
	oneDAndZ = cite.Caution{
		ID: "lethality.one-d-and-z",
		Text: "D and z differ between strains, foods and laboratories by more than any rounding. " +
			"Not every population dies along one straight line.",
	}
)

// explains are the cautions of every figure that is worked out.
func explains() []cite.Caution { return []cite.Caution{notAProcess} }

// explainsSolid are those of every run worked out for a solid.
func explainsSolid(surface ...cite.Caution) []cite.Caution {
	return append([]cite.Caution{notAProcess, evenSolid}, surface...)
}

// explainsRecord are those of a record that was read.
func explainsRecord() []cite.Caution { return []cite.Caution{notAProcess, noBetter} }

// explainsModel are those of what rests on one D and z.
func explainsModel() []cite.Caution { return []cite.Caution{notAProcess, oneDAndZ} }
