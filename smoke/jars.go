package smoke

import (
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// JarLoss says whether smoked fish of some loss is what the canning process for smoked fish was tested with.
type JarLoss struct {
	Loss        units.Ratio
	Tested      bool
	Least, Most units.Ratio // loss of weight in smoking that was tested
	Citation    cite.Citation
	Cautions    []cite.Caution
}

// The losses that were tested.
const (
	jarLeast = 10 * units.Percent
	jarMost  = 30 * units.Percent
)

// CheckJarLoss returns whether a loss in smoking, of the weight that enters the smoker, lies within the 10 to 30 % for which the process of smoked fish in jars was tested; drier, packed
// tight, the jars heat more slowly than the process allows for. The loss must be 0 to 100 %: otherwise a units.RangeError. The process itself, its jars, its
// water and its canner are for package process and for the printed guide to say. Source: J. Food Prot. 56(7):619, abstract.
func CheckJarLoss(loss units.Ratio) (JarLoss, error) {
	if err := units.Check("loss in smoking", loss, 0, units.One); err != nil {
		return JarLoss{}, err
	}
	j := JarLoss{Loss: loss, Least: jarLeast, Most: jarMost, Citation: jarLossCitation}
	j.Tested = loss >= j.Least && loss <= j.Most
	j.Cautions = append(j.Cautions, jarProcess, jarCanner, jarSize, jarSoon)
	if !j.Tested {
		j.Cautions = append([]cite.Caution{{Text: "the process was tested at losses of 10 to 30 % alone: do not can this fish; cook it through and eat it, or freeze it", Citation: jarLossCitation}}, j.Cautions...)
	}
	return j, nil
}

var (
	jarLossCitation = cite.Citation{Source: cite.RaabHilderbrand1993, Where: "abstract: chum salmon smoked to losses of 10, 20 and 30 %", Basis: cite.Read}
	jarProcess      = cite.Caution{
		Text:     "fish for jars is smoked lightly and follows the published process of smoked fish, not that of raw fish",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, pp. 5-13 and 5-14", Basis: cite.Read},
	}
	jarCanner = cite.Caution{
		Text:     "only a canner of 16 to 22 quarts, with 4 quarts of cool water: never a smaller one",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, p. 5-13", Basis: cite.Read},
	}
	jarSize = cite.Caution{
		Text:     "no jar larger than a pint",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, p. 5-13", Basis: cite.Read},
	}
	jarSoon = cite.Caution{
		Text:     "lightly smoked fish is not cooked: do not taste it; can it at once, or hold it refrigerated for no more than a day",
		Citation: cite.Citation{Source: cite.PNW450, Where: "holding lightly smoked fish", Basis: cite.Read},
	}
)
