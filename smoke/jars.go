package smoke

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// JarLoss says whether smoked fish of some loss is what the canning process for smoked fish was tested with: Met within
// Least to Most, NotPublished outside.
type JarLoss struct {
	verdict.Report
	Loss        units.Ratio `wire:"always"`
	Least, Most units.Ratio // loss of weight in smoking that was tested
	Citation    cite.Citation
}

// MarshalJSON writes the loss as an app shows it.
func (j JarLoss) MarshalJSON() ([]byte, error) { return wire.Marshal(j) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (j *JarLoss) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, j) }

// The losses that were tested.
const (
	jarLeast = 10 * units.Percent
	jarMost  = 30 * units.Percent
)

// CheckJarLoss returns whether a loss in smoking, of the weight that enters the smoker, lies within the 10 to 30 % for
// which the process of smoked fish in jars was tested; drier, packed tight, the jars heat more slowly than the process
// allows for. The loss must be 0 to 100 %: otherwise a units.RangeError. The process itself, its jars, its water and its
// canner are for package process and for the printed guide to say. Source: J. Food Prot. 56(7):619, abstract.
func CheckJarLoss(loss units.Ratio) (JarLoss, error) {
	if err := units.CheckUnit("loss in smoking", loss, leastLoss); err != nil {
		return JarLoss{}, err
	}
	if err := units.Check("loss in smoking", loss, 0, units.One); err != nil {
		return JarLoss{}, err
	}
	found := judgeLoss(nil, units.State(loss))
	j := JarLoss{Report: verdict.Of(found, jarCautions(found)), Loss: loss, Least: jarLeast, Most: jarMost, Citation: jarLossCitation}
	if found != nil {
		j.Verdict = verdict.NotPublished
	}
	return j, nil
}

// judgeLoss judges a loss of weight in smoking.
func judgeLoss(all []verdict.Finding, loss units.Stated[units.Ratio]) []verdict.Finding {
	wanted := units.Between(jarLeast, jarMost)
	switch l := loss.Value; {
	case !loss.Given:
		f := missing(RuleLoss, "loss")
		f.Wanted, f.Citation = wanted, jarLossCitation
		return append(all, f)
	case l < jarLeast:
		return append(all, told(RuleLoss, "loss", verdict.Different, units.Exactly(l), wanted, units.AmountOf(jarLeast-l), jarLossCitation))
	case l > jarMost:
		return append(all, told(RuleLoss, "loss", verdict.Different, units.Exactly(l), wanted, units.AmountOf(l-jarMost), jarLossCitation))
	}
	return all
}

// jarCautions are the cautions of fish for jars, the one about an untested loss first where there is one.
func jarCautions(found []verdict.Finding) []cite.Caution {
	all := make([]cite.Caution, 0, 8)
	for _, f := range found {
		if f.Rule == RuleLoss && f.Kind == verdict.Different {
			all = append(all, lossUntested)
		}
	}
	return append(all, jarProcess, jarCanner, jarSize, jarSoon)
}

var (
	jarLossCitation = cite.Citation{Source: cite.RaabHilderbrand1993, Where: "abstract: chum salmon smoked to losses of 10, 20 and 30 %", Basis: cite.Read}
	lossUntested    = cite.Caution{
		ID: "smoke.loss-untested", Deciding: true,
		Text:     "The process was tested at losses of 10 to 30 % only. Do not can this fish; cook it through and eat it, or freeze it.",
		Citation: jarLossCitation,
	}
	jarProcess = cite.Caution{
		ID:       "smoke.jar-process",
		Text:     "Fish for jars is smoked lightly and follows the published process of smoked fish, not that of raw fish.",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, pp. 5-13 and 5-14", Basis: cite.Read},
	}
	jarCanner = cite.Caution{
		ID:       "smoke.jar-canner",
		Text:     "Use only a canner of 16 to 22 quarts, with 4 quarts of cool water: never a smaller one.",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, p. 5-13", Basis: cite.Read},
	}
	jarSize = cite.Caution{
		ID:       "smoke.jar-size",
		Text:     "Fill no jar larger than a pint.",
		Citation: cite.Citation{Source: cite.USDAGuide5Rev2015, Where: "Smoked Fish, p. 5-13", Basis: cite.Read},
	}
	jarSoon = cite.Caution{
		ID: "smoke.jar-soon", Deciding: true,
		Text:     "Lightly smoked fish is not cooked. Do not taste it; can it at once, or hold it refrigerated for no more than a day.",
		Citation: cite.Citation{Source: cite.PNW450, Where: "holding lightly smoked fish", Basis: cite.Read},
	}
)
