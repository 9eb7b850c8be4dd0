package process

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// highest is what the guide advises not to pass in a new canner, and what the largest weight holds.
const highest = 15 * units.PSI

var highestCitation = guide1("Equipment and methods not recommended, p. 1-10")

func pressureFindings(c Claim, published []Schedule) []Finding {
	found := against(figure[units.Pressure]{
		what: "pressure", text: pounds, off: poundsOff,
		of: func(s Schedule) (units.Pressure, cite.Citation) { return s.Pressure, s.Citation },
	}, c.Pressure, published)
	for i := range found {
		if found[i].Kind == Short {
			found[i].Known = knownPressure(c)
		}
	}
	other := Finding{What: "pressure", Kind: Different, Stated: pounds(c.Pressure.Value)}
	switch p := c.Pressure.Value; {
	case p > highest:
		other.Published, other.Citation = "at most 15 psi", highestCitation
	case c.Gauge == Weighted && p%(5*units.PSI) != 0:
		other.Published, other.Citation = "weights of 5, 10 and 15 psi", weightedCautions[0].Citation
	default:
		return found
	}
	return append(found, other)
}

func timeFindings(c Claim, published []Schedule) []Finding {
	found := against(figure[time.Duration]{
		what: "process time", text: minutes,
		of: func(s Schedule) (time.Duration, cite.Citation) { return s.Process, s.Citation },
	}, c.Process, published)
	for i := range found {
		if found[i].Kind == Short {
			found[i].Known = knownTime(c)
		}
	}
	found = append(found, against(figure[time.Duration]{
		what: "vent time", text: minutes,
		of: func(s Schedule) (time.Duration, cite.Citation) { return s.Vent, s.VentCitation },
	}, c.Vent, published)...)
	// The print allows heating and venting to take longer.
	return append(found, against(figure[time.Duration]{
		what: "come-up time", text: minutes, may: true,
		of: func(s Schedule) (time.Duration, cite.Citation) { return s.ComeUp, s.ComeUpCitation },
	}, c.ComeUp, published)...)
}

// waterFindings judges water where a volume is printed for it: a depth says nothing about quarts, but that there is some.
func waterFindings(c Claim, published []Schedule) []Finding {
	found := against(figure[units.Volume]{
		what: "water", text: quarts, may: true,
		of: func(s Schedule) (units.Volume, cite.Citation) { return s.Water.Volume, s.WaterCitation },
	}, c.Water, published)
	if len(found) == 0 && c.Water.Given && c.Water.Value == 0 { // whatever the row: a canner without water makes no steam
		return []Finding{{What: "water", Kind: Short, Stated: quarts(0), Published: "2 to 3 in deep", Citation: generalWater}}
	}
	first := published[0]
	for _, s := range published {
		if s.Water != first.Water {
			return found
		}
	}
	volume := first.Water.Volume
	if metric := units.CeilTo(volume, 10*units.Millilitre); volume != 0 && !first.Water.AtLeast && c.Water.Value > metric { // 3 qt is 2.84 L
		found = append(found, Finding{
			What: "water", Kind: Different, Stated: quarts(c.Water.Value), Published: quarts(volume),
			Difference: quarts(c.Water.Value - volume), Citation: first.WaterCitation,
		})
	}
	return found
}

// metricInch is the headspace as a ruler in millimetres tells it; practice, no source. No jar is filled to less than a millimetre.
const metricInch = 25 * units.Millimetre

func headspaceFindings(c Claim, published []Schedule) []Finding {
	s := published[0] // the same for every load
	if !c.Headspace.Given || c.Headspace.Value == s.Headspace || c.Headspace.Value == metricInch {
		return nil
	}
	off := c.Headspace.Value - s.Headspace
	if off < 0 {
		off = -off
	}
	return []Finding{{
		What: "headspace", Kind: Different, Stated: inches(c.Headspace.Value), Published: inches(s.Headspace),
		Difference: inches(off), Citation: s.HeadspaceCitation,
	}}
}
