package canner

import (
	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Gauge is the gauge on this canner's lid, of the kind that the schedule is for. ReadsHigh is by how much its dial
// shows more than there is, from its yearly test, negative when it shows less; a weighted gauge has no error and no
// reading.
type Gauge struct {
	ReadsHigh units.Pressure
}

// MarshalJSON writes the gauge in the words that UnmarshalJSON reads.
func (g Gauge) MarshalJSON() ([]byte, error) { return wire.Marshal(g) }

// UnmarshalJSON reads a gauge strictly.
func (g *Gauge) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, g) }

// Setting is how the gauge stands when the pressure is that of the schedule. A dial must never show less than
// AtLeast; a Weighted gauge carries the weight of that many pounds and speaks by its rhythm. Corrected is the lower
// reading that the schedule's pressure has on a dial that reads low, equal to AtLeast on any other: subtracting saves
// overprocessing and is not needed for safety.
type Setting struct {
	Kind      process.Gauge
	AtLeast   units.Pressure
	Corrected units.Pressure
	Citation  cite.Citation // of the correction
	Cautions  []cite.Caution
}

// MarshalJSON writes the setting as an app shows it.
func (s Setting) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (s *Setting) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// Setting returns what the gauge must show, or which weight it must carry, for a schedule. What a dial reads high is
// added, what it reads low is not subtracted. Exact. A dial off by more than 2 psi is an UnsuitableError and gives no
// setting; from 1 psi on there is a caution. No schedule, or an error given for a weighted gauge, which has none, is
// a ContradictionError. Source: USDA Complete Guide, Guide 1, rev. 2015, p. 1-20.
func (g Gauge) Setting(s process.Schedule) (Setting, error) {
	if err := g.check(s); err != nil {
		return Setting{}, err
	}
	set := Setting{Kind: s.Gauge, AtLeast: s.Pressure, Corrected: s.Pressure, Citation: gaugeSource}
	if s.Gauge == process.Weighted {
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
	switch {
	case s.Process <= 0:
		return ContradictionError{What: "schedule", Got: "of no process", Expected: "one that process returned"}
	case s.Gauge == process.Weighted && g.ReadsHigh != 0:
		return ContradictionError{
			What: "gauge error", Got: g.ReadsHigh.String(), Expected: "none: a weighted gauge has no dial",
		}
	case units.CheckUnit("error of the dial", g.ReadsHigh, leastPressure) != nil:
		return units.CheckUnit("error of the dial", g.ReadsHigh, leastPressure)
	case g.ReadsHigh > gaugeLimit || g.ReadsHigh < -gaugeLimit:
		return UnsuitableError{
			What: "dial gauge", Got: "off by " + units.AmountOf(g.ReadsHigh).Text(units.Both, units.Up),
			Required: "2 psi at most; replace the gauge", Citation: gaugeSource,
		}
	}
	return nil
}

const (
	gaugeLimit    = 2 * units.PSI
	gaugeWarn     = 1 * units.PSI
	newCannerMost = 15 * units.PSI
)
