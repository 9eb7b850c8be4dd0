package process

import "example.org/lakelarder/units/cite"

// Cautions returns what must be known before a load is canned by this schedule, most particular first: first what belongs
// to this product, jar and gauge, then what holds for every process. It is never empty; the slice is the caller's own.
func (s Schedule) Cautions() []cite.Caution {
	return s.appendCautions(make([]cite.Caution, 0, mostCautions))
}

// mostCautions is room for the cautions of any schedule.
const mostCautions = len(generalCautions) + 12

func (s Schedule) appendCautions(all []cite.Caution) []cite.Caution {
	if s.Extension {
		all = append(all, extensionCaution)
	}
	switch {
	case s.Product == SmokedFish:
		all = append(all, smokedCautions...)
	case s.Product == Tuna:
		all = append(all, tunaCautions...)
	case s.Jar == Quart:
		all = append(all, quartCautions...)
	default:
		all = append(all, pintCautions...)
	}
	if s.Jar == HalfPint || s.Jar == TwelveOunce {
		all = append(all, cite.Caution{ID: "process.pint-minutes", Text: "This jar takes the minutes of the pint jar, not fewer.", Citation: s.smallJar()})
	}
	if s.Gauge == Weighted {
		all = append(all, weightsOnly)
		if s.Band.UpTo == NoLimit {
			all = append(all, openBandCaution)
		}
	} else {
		all = append(all, dialCautions...)
	}
	return append(all, generalCautions[:]...)
}

// smallJar is where the minutes of a jar smaller than a pint are printed.
func (s Schedule) smallJar() cite.Citation {
	switch s.Product {
	case SmokedFish:
		return smokedHalf
	case Tuna:
		return tuna
	}
	return fishNote
}
