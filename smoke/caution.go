package smoke

import "example.org/lakelarder/units/cite"

// Caution is a warning that belongs to a result: show it with the figures. Citation says where a figure in the
// text is from, or that the warning is practice.
type Caution struct {
	Text     string
	Citation cite.Citation
}

// String is the text and, in parentheses, its citation.
func (c Caution) String() string { return c.Text + " (" + c.Citation.String() + ")" }

var (
	probeInCore = Caution{
		"the readings must come from the core: the thickest flesh of a largest fish in the coldest spot; a thermometer of the smoker or the oven shows the air",
		cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7(1)", Basis: cite.Read},
	}
	notByHeatAlone = Caution{
		"heat alone does not make smoked fish keep: cool it at once to 38 °F (3.3 °C) or below, and have its water phase salt measured",
		cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.8(1), (2)", Basis: cite.Read},
	}
	stricterExists = Caution{
		"the strictest published figure for home smoking is 180 °F (82.2 °C) for 30 min; this limit is lower",
		DefaultCoreLimit().Citation,
	}
	commercial = Caution{
		"a limit that is not home guidance belongs to a licensed process that measures its salt and records its cold storage",
		cite.Citation{Source: cite.MichiganRegulation569, Where: "R 285.569.7(1) and 8", Basis: cite.Read},
	}
)

func holdCautions(limit CoreLimit) []Caution {
	all := make([]Caution, 0, 5)
	all = append(all, probeInCore, notByHeatAlone)
	if limit.AtLeast.Below(DefaultCoreLimit().AtLeast) {
		all = append(all, stricterExists)
	}
	if !limit.Home {
		all = append(all, commercial)
	}
	if limit.Citation.Unverified() {
		all = append(all, Caution{"this limit was not seen in print", limit.Citation})
	}
	return all
}
