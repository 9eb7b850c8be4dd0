package canner

import (
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Gauge is the gauge on this canner's lid. ReadsHigh is by how much its dial shows more than there is, from its yearly test,
// negative when it shows less; a weighted gauge has no error and no reading.
type Gauge struct {
	Kind      process.Gauge
	ReadsHigh units.Pressure
}

// Setting is how the gauge stands when the pressure is that of the schedule. A dial must never show less than AtLeast;
// a Weighted gauge carries the weight of that many pounds and tells by its rhythm. Corrected is the lower reading that the
// schedule's pressure has on a dial that reads low, equal to AtLeast on any other: subtracting saves overprocessing and is not needed for safety.
type Setting struct {
	Kind      process.Gauge
	AtLeast   units.Pressure
	Corrected units.Pressure
	Citation  cite.Citation // of the correction
	Cautions  []cite.Caution
}

// Setting returns what the gauge must show, or which weight it must carry, for a schedule. What a dial reads high is
// added, what it reads low is not subtracted. Exact. A dial off by more than 2 psi is an UnsuitableError and gives no
// setting; from 1 psi on there is a caution. A gauge that is not of the schedule's kind is a ContradictionError, an
// error given for a weighted gauge a units.RangeError. Source: USDA Complete Guide, Guide 1, rev. 2015, p. 1-20.
func (g Gauge) Setting(s process.Schedule) (Setting, error) {
	if err := g.check(s); err != nil {
		return Setting{}, err
	}
	set := Setting{Kind: g.Kind, AtLeast: s.Pressure, Corrected: s.Pressure, Citation: gaugeSource}
	if g.Kind == process.Weighted {
		set.Citation, set.Cautions = s.Citation, []cite.Caution{rhythm}
		return set, nil
	}
	set.AtLeast += max(0, g.ReadsHigh)
	set.Corrected += g.ReadsHigh
	set.Cautions = append(set.Cautions, testYearly)
	if g.ReadsHigh >= gaugeWarn || g.ReadsHigh <= -gaugeWarn {
		set.Cautions = append(set.Cautions, olderLimit)
	}
	if g.ReadsHigh < 0 {
		set.Cautions = append(set.Cautions, notSubtracted)
		if s.Pressure-g.ReadsHigh > newCannerMost {
			set.Cautions = append(set.Cautions, newCanner)
		}
	}
	return set, nil
}

func (g Gauge) check(s process.Schedule) error {
	if s.Process <= 0 || g.Kind != s.Gauge {
		return ContradictionError{What: "gauge", Got: g.Kind.String(), Expected: "a schedule and its gauge, " + s.Gauge.String()}
	}
	if g.Kind == process.Weighted {
		return units.Check("error of a weighted gauge, which has none,", g.ReadsHigh, 0, 0)
	}
	if g.ReadsHigh > gaugeLimit || g.ReadsHigh < -gaugeLimit {
		return UnsuitableError{What: "dial gauge", Got: "off by " + bothPressures(g.ReadsHigh), Citation: gaugeSource,
			Required: "2 psi at most; replace the gauge"}
	}
	return nil
}

const (
	gaugeLimit    = 2 * units.PSI
	gaugeWarn     = 1 * units.PSI
	newCannerMost = 15 * units.PSI
)

var (
	gaugeSource = cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "Pressure canners, p. 1-20", Basis: cite.Read}

	testYearly = cite.Caution{Text: "A dial gauge is tested every year before use.", Citation: gaugeSource}
	olderLimit = cite.Caution{Text: "Older advice replaces a dial gauge that is off by 1 psi or more.",
		Citation: cite.Citation{Source: cite.PublicGaugeTestingPage, Where: "limit of the error", Basis: cite.Read}}
	notSubtracted = cite.Caution{Text: "The gauge reads low. Nothing is subtracted: the true pressure is then above the schedule's, which is safe and costs quality.",
		Citation: gaugeSource}
	newCanner = cite.Caution{Text: "The true pressure may pass 15 psi, which is not recommended in a new canner.",
		Citation: cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "Equipment and methods not recommended, p. 1-10", Basis: cite.Read}}
	rhythm = cite.Caution{Text: "A weighted gauge tells by its rhythm: it jiggles two or three times a minute, or rocks slowly all the time, as its maker says. " +
		"The clock starts when it does.", Citation: cite.Citation{Source: cite.USDAGuide1Rev1994, Where: "Recommended canners, part 3", Basis: cite.Read}}
)

// bothPressures prints a pressure in both systems.
func bothPressures(p units.Pressure) string {
	return units.Text(p, units.PSI, 2) + " (" + units.Text(p, units.Kilopascal, 1) + ")"
}
