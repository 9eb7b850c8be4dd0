package lethality

import (
	"time"

	"example.org/lakelarder/internal/portable"
)

// modes is the temperature of one place in a cylinder as a sum of parts that each decay at their own rate. lag stands for every part
// that is left out because it has decayed within one step.
type modes struct {
	amplitude, rate []float64 // A and λ of a part
	part            []float64 // A·q, kelvins
	lag             float64   // S less Σ A/λ of the parts kept, seconds

	step       float64 // the step, in seconds, of the two below
	keep, gain []float64
}

const forgotten = 25. // a part with λ·step beyond it has decayed to 1e-11

// modes builds the parts that outlive a step of so many seconds.
func (s solid) modes(step float64) modes {
	m := modes{lag: s.lag()}
	limit := forgotten / step
	var axial, axialRoot []float64
	for n := 1; ; n++ {
		v := Slab.root(s.biotZ, n)
		if n > 1 && s.decay(0, v) > limit {
			break
		}
		axialRoot, axial = append(axialRoot, v), append(axial, s.axial(v))
	}
	for n := 1; ; n++ {
		b := InfiniteCylinder.root(s.biotR, n)
		if n > 1 && s.decay(b, axialRoot[0]) > limit {
			break
		}
		c := s.radial(b)
		for i, v := range axialRoot {
			rate := s.decay(b, v)
			if rate > limit && len(m.rate) > 0 {
				break
			}
			m.amplitude, m.rate = append(m.amplitude, c*axial[i]), append(m.rate, rate)
			m.lag -= c * axial[i] / rate
		}
	}
	n := len(m.rate)
	m.part, m.keep, m.gain = make([]float64, n), make([]float64, n), make([]float64, n)
	return m
}

// start puts the pack at one temperature, a number of kelvins below the medium.
func (m *modes) start(below float64) {
	for i, a := range m.amplitude {
		m.part[i] = a * below
	}
}

// advance lets the medium rise at a slope, in K/s, for a time.
func (m *modes) advance(dt time.Duration, slope float64) {
	if seconds := dt.Seconds(); seconds != m.step {
		m.step = seconds
		for i, rate := range m.rate {
			m.keep[i] = portable.Exp(-float64(rate * seconds))
			m.gain[i] = -m.amplitude[i] * portable.Expm1(-float64(rate*seconds)) / rate
		}
	}
	part, keep, gain := m.part, m.keep[:len(m.part)], m.gain[:len(m.part)]
	for i, p := range part {
		part[i] = float64(p*keep[i]) + float64(slope*gain[i])
	}
}

// behind is how far the place is behind the medium, in kelvins.
func (m *modes) behind(slope float64) float64 {
	var a, b, c, d float64 // four sums, which a processor adds side by side
	part := m.part
	for ; len(part) >= 4; part = part[4:] {
		a, b, c, d = a+part[0], b+part[1], c+part[2], d+part[3]
	}
	for _, p := range part {
		a += p
	}
	return (a + b) + (c + d) + float64(slope*m.lag)
}
