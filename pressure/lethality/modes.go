package lethality

import (
	"time"

	"example.org/lakelarder/internal/portable"
)

// modes is the temperature of one place in a cylinder as a sum of parts that each decay at their own rate, the sum of
// the rates of a radial and an axial root. While the medium rises at one slope every part comes to a level of its own
// behind it; kept is what a part still is away from that level, which only decays: so a part that has come to its
// level since the last bend of the medium costs nothing more.
type modes struct {
	solid         solid
	radial, axial []mode
	count         []int     // how many axial parts each radial root has
	active        []int     // how many of them have not come to their level,
	rows          int       // in the first rows: those beyond have none left
	level         []float64 // A/λ of a part, row by row, seconds
	part          []float64 // kelvins
	sum           float64   // of the parts

	slope, since float64 // of the medium, K/s, and the time since its last bend
	lag          float64 // Σ A/λ of all parts there are, known once there is a slope
	hasLag       bool
	step         time.Duration // of the decay kept in each mode
	work         int           // parts that were carried on
}

// mode is one root in one direction.
type mode struct {
	root, amplitude, rate, keep float64
}

const (
	forgotten = 25. // a part with λ·step beyond it has decayed to 1e-11
	settled   = 38. // and to below the last digit
)

// modes builds the parts that outlive a step of so many seconds.
func (s solid) modes(step float64) *modes {
	m := &modes{solid: s}
	limit := forgotten / step
	for n := 1; ; n++ {
		v := Slab.root(s.biotZ, n)
		if n > 1 && s.decay(0, v) > limit {
			break
		}
		m.axial = append(m.axial, mode{v, s.axial(v), s.decay(0, v), 0})
	}
	for n := 1; ; n++ {
		b := InfiniteCylinder.root(s.biotR, n)
		rate := s.decay(b, 0)
		if n > 1 && rate+m.axial[0].rate > limit {
			break
		}
		m.radial = append(m.radial, mode{b, s.radial(b), rate, 0})
		count := 1
		for count < len(m.axial) && rate+m.axial[count].rate <= limit {
			count++
		}
		m.count = append(m.count, count)
	}
	return m
}

// start puts the pack at one temperature, a number of kelvins below the medium, which rises at a slope.
func (m *modes) start(below, slope float64) {
	total := 0
	for _, count := range m.count {
		total += count
	}
	m.level, m.part, m.active = make([]float64, total), make([]float64, total), make([]int, len(m.count))
	m.slope = slope
	at := 0
	for j, count := range m.count {
		for i := 0; i < count; i++ {
			amplitude := float64(m.radial[j].amplitude * m.axial[i].amplitude)
			level := amplitude / (m.radial[j].rate + m.axial[i].rate)
			m.level[at] = level
			m.part[at] = float64(amplitude*below) - float64(slope*level)
			at++
		}
	}
	m.wake()
}

// bend lets the medium rise at another slope from now on: every part has a new level.
func (m *modes) bend(slope float64) {
	if slope == m.slope {
		return
	}
	change := m.slope - slope
	at := 0
	for j, count := range m.count {
		level, part := m.level[at:at+count], m.part[at:at+count]
		at += count
		active := 0
		if j < m.rows {
			active = m.active[j]
		}
		for i := range level {
			if i >= active {
				part[i] = 0
			}
			part[i] += float64(change * level[i])
		}
	}
	m.work += len(m.level)
	m.slope, m.since = slope, 0
	m.wake()
}

// wake makes every part active.
func (m *modes) wake() {
	copy(m.active, m.count)
	m.rows = len(m.count)
}

// advance goes on by a time at one slope.
func (m *modes) advance(dt time.Duration) {
	if dt != m.step {
		m.step = dt
		for _, side := range [][]mode{m.radial, m.axial} {
			for i := range side {
				side[i].keep = portable.Exp(-float64(side[i].rate * dt.Seconds()))
			}
		}
		m.work += 10 * (len(m.radial) + len(m.axial))
	}
	m.since += dt.Seconds()
	m.sum = 0
	at := 0
	for j := 0; j < m.rows; j++ {
		rate, active := m.radial[j].rate, m.active[j]
		for active > 0 && float64((rate+m.axial[active-1].rate)*m.since) > settled {
			active--
		}
		if active == 0 { // and so are the rows beyond, which decay faster still
			m.rows = j
			break
		}
		m.active[j] = active
		m.work += active
		row, axial := m.part[at:at+active], m.axial[:active]
		at += m.count[j]
		keep, sum := m.radial[j].keep, 0.
		for i := range row {
			row[i] = float64(row[i] * float64(keep*axial[i].keep))
			sum += row[i]
		}
		m.sum += sum
	}
	m.work += m.rows
}

// behind is how far the place is behind the medium, in kelvins.
func (m *modes) behind() float64 {
	if m.slope == 0 {
		return m.sum
	}
	if !m.hasLag {
		m.lag, m.hasLag = m.solid.lag(), true
	}
	return m.sum + float64(m.slope*m.lag)
}
