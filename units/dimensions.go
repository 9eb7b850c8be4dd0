package units

import "time"

// dimensionOf returns the text form of Q.
func dimensionOf[Q Quantity]() dimension { return measureOf[Q]().dimension() }

// measureOf returns what T measures.
func measureOf[T Measure]() measure {
	var v T
	switch any(v).(type) {
	case Length:
		return ofLength
	case Area:
		return ofArea
	case Mass:
		return ofMass
	case Volume:
		return ofVolume
	case Pressure:
		return ofPressure
	case TemperatureChange:
		return ofTemperatureChange
	case Ratio:
		return ofRatio
	case Density:
		return ofDensity
	case Speed:
		return ofSpeed
	case Diffusivity:
		return ofDiffusivity
	case Conductivity:
		return ofConductivity
	case FilmCoefficient:
		return ofFilmCoefficient
	case SpecificHeat:
		return ofSpecificHeat
	case Energy:
		return ofEnergy
	case SpecificEnergy:
		return ofSpecificEnergy
	case PH:
		return ofPH
	case Temperature:
		return ofTemperature
	case time.Duration:
		return ofDuration
	}
	return ofCount
}

// dimension returns the text form of a quantity; of what is none, that of PH, which has no unit.
func (m measure) dimension() dimension {
	switch m {
	case ofLength:
		return lengths
	case ofArea:
		return areas
	case ofMass:
		return masses
	case ofVolume:
		return volumes
	case ofPressure:
		return pressures
	case ofTemperatureChange:
		return temperatureChanges
	case ofRatio:
		return ratios
	case ofDensity:
		return densities
	case ofSpeed:
		return speeds
	case ofDiffusivity:
		return diffusivities
	case ofConductivity:
		return conductivities
	case ofFilmCoefficient:
		return filmCoefficients
	case ofSpecificHeat:
		return specificHeats
	case ofEnergy:
		return energies
	case ofSpecificEnergy:
		return specificEnergies
	}
	return phs
}

// quantaOf is where a measure keeps its whole number.
func quantaOf[T Measure](v *T) *int64 {
	switch p := any(v).(type) {
	case *Length:
		return (*int64)(p)
	case *Area:
		return (*int64)(p)
	case *Mass:
		return (*int64)(p)
	case *Volume:
		return (*int64)(p)
	case *Pressure:
		return (*int64)(p)
	case *TemperatureChange:
		return (*int64)(p)
	case *Ratio:
		return (*int64)(p)
	case *Density:
		return (*int64)(p)
	case *Speed:
		return (*int64)(p)
	case *Diffusivity:
		return (*int64)(p)
	case *Conductivity:
		return (*int64)(p)
	case *FilmCoefficient:
		return (*int64)(p)
	case *SpecificHeat:
		return (*int64)(p)
	case *Energy:
		return (*int64)(p)
	case *SpecificEnergy:
		return (*int64)(p)
	case *PH:
		return (*int64)(p)
	case *Temperature:
		return &p.quanta
	case *time.Duration:
		return (*int64)(p)
	case *Count:
		return (*int64)(p)
	}
	return nil
}
