package units

// dimensionOf returns the text form of Q.
func dimensionOf[Q Quantity]() dimension {
	switch any(Q(0)).(type) {
	case Length:
		return lengths
	case Area:
		return areas
	case Mass:
		return masses
	case Volume:
		return volumes
	case Pressure:
		return pressures
	case TemperatureChange:
		return temperatureChanges
	case Ratio:
		return ratios
	case Density:
		return densities
	case Speed:
		return speeds
	case Diffusivity:
		return diffusivities
	case Conductivity:
		return conductivities
	case FilmCoefficient:
		return filmCoefficients
	case SpecificHeat:
		return specificHeats
	case Energy:
		return energies
	case SpecificEnergy:
		return specificEnergies
	}
	return phs
}
