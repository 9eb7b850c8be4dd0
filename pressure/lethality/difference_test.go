package lethality_test

import (
	"math"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// grid is an independent solution: the heat equation in a cylinder by finite volumes in radius and half height, Crank and Nicolson's scheme in
// alternating directions (Peaceman and Rachford). It shares nothing with the series but the problem.
type grid struct {
	nr, nz     int
	dr, dz, dt float64
	alpha      float64
	film       float64 // h/k in 1/m, +Inf when the surface is held
	u          [][]float64
}

func newGrid(c lethality.Cylinder, nr, nz int, dt, start float64) *grid {
	g := &grid{nr: nr, nz: nz, dt: dt, alpha: units.Float(c.Diffusivity, units.SquareMetrePerSecond), film: math.Inf(1)}
	g.dr = units.Float(c.Radius, units.Metre) / float64(nr)
	g.dz = units.Float(c.Height, units.Metre) / 2 / float64(nz)
	if c.Film != lethality.HeldSurface {
		g.film = units.Float(c.Film, units.WattPerSquareMetreKelvin) / units.Float(c.Conductivity, units.WattPerMetreKelvin)
	}
	for i := 0; i < nr; i++ {
		row := make([]float64, nz)
		for j := range row {
			row[j] = start
		}
		g.u = append(g.u, row)
	}
	return g
}

// edge is the conductance per area from the centre of the last cell to the medium, over k.
func (g *grid) edge(d float64) float64 { return 1 / (d/2 + 1/g.film) }

// inward and outward are what a cell's temperature gains per kelvin of its neighbours, 1/s.
func (g *grid) radial(i int) (inward, outward float64) {
	area := (float64(i) + 0.5) * g.dr * g.dr
	inward = g.alpha * float64(i) / area
	outward = g.alpha * float64(i+1) / area
	if i == g.nr-1 {
		outward = g.alpha * float64(g.nr) * g.dr * g.edge(g.dr) / area
	}
	return inward, outward
}

func (g *grid) axial(j int) (inward, outward float64) {
	inward, outward = g.alpha/(g.dz*g.dz), g.alpha/(g.dz*g.dz)
	if j == 0 {
		inward = 0
	}
	if j == g.nz-1 {
		outward = g.alpha * g.edge(g.dz) / g.dz
	}
	return inward, outward
}

// step goes on by dt with the medium at three times.
func (g *grid) step(before, middle, after float64) {
	line := func(n int, get func(int) float64, medium float64, coefficients func(int) (float64, float64)) func(int) float64 {
		return func(i int) float64 {
			in, out := coefficients(i)
			next := medium
			if i < n-1 {
				next = get(i + 1)
			}
			gain := out * (next - get(i))
			if i > 0 {
				gain += in * (get(i-1) - get(i))
			}
			return gain
		}
	}
	half := g.dt / 2
	rhs := make([][]float64, g.nr)
	for i := range rhs {
		rhs[i] = make([]float64, g.nz)
		gain := line(g.nz, func(j int) float64 { return g.u[i][j] }, before, g.axial)
		for j := range rhs[i] {
			rhs[i][j] = g.u[i][j] + half*gain(j)
		}
	}
	for j := 0; j < g.nz; j++ {
		solve(g.nr, half, middle, g.radial, func(i int) *float64 { return &rhs[i][j] })
	}
	star := rhs
	for j := 0; j < g.nz; j++ {
		gain := line(g.nr, func(i int) float64 { return star[i][j] }, middle, g.radial)
		for i := 0; i < g.nr; i++ {
			g.u[i][j] = star[i][j] + half*gain(i)
		}
	}
	for i := 0; i < g.nr; i++ {
		solve(g.nz, half, after, g.axial, func(j int) *float64 { return &g.u[i][j] })
	}
}

// solve is the implicit half step along one line, by elimination.
func solve(n int, half, medium float64, coefficients func(int) (float64, float64), value func(int) *float64) {
	factor := make([]float64, n)
	for i := 0; i < n; i++ {
		in, out := coefficients(i)
		lower, upper, right := half*in, half*out, *value(i)
		diagonal := 1 + lower + upper
		if i == n-1 {
			right += upper * medium
			upper = 0
		}
		if i > 0 {
			diagonal -= lower * factor[i-1]
			right += lower * *value(i - 1)
		}
		factor[i] = upper / diagonal
		*value(i) = right / diagonal
	}
	for i := n - 2; i >= 0; i-- {
		*value(i) += factor[i] * *value(i + 1)
	}
}

// centre is the temperature on the axis at the middle, by parabolas through the two cells nearest in each direction.
func (g *grid) centre() float64 {
	near := func(i int) float64 { return g.u[i][0] + (g.u[i][0]-g.u[i][1])/8 }
	return near(0) + (near(0)-near(1))/8
}

// numerical runs a grid through a medium and returns its centre at every step.
func numerical(t *testing.T, g *grid, medium temperatures) []float64 {
	t.Helper()
	value := func(seconds float64) float64 {
		v, err := medium.ValueAt(time.Duration(seconds * float64(time.Second)))
		require.NoError(t, err)
		return v.Celsius()
	}
	curve := []float64{g.centre()}
	for s := 0.; s+g.dt <= medium.Span().Seconds(); s += g.dt {
		g.step(value(s), value(s+g.dt/2), value(s+g.dt))
		curve = append(curve, g.centre())
	}
	return curve
}

func lethalMinutes(curve []float64, dt float64) (sum float64) {
	rate := func(c float64) float64 { return math.Pow(10, (c-121.1)/10) }
	for i := 1; i < len(curve); i++ {
		sum += dt / 60 * (rate(curve[i-1]) + rate(curve[i])) / 2
	}
	return sum
}

// The finite differences close in on the series answer at second order, and extrapolated to no grid at all agree with it.
func TestFiniteDifferencesConvergeToTheSeries(t *testing.T) {
	medium, err := pintRun.Medium(90 * time.Minute)
	require.NoError(t, err)
	want, err := pint.Follow(pintRun, lethality.F0())
	require.NoError(t, err)
	off := want.SteamOff.Seconds()
	coarse := numerical(t, newGrid(pint, 12, 18, 20, 10), medium)
	fine := numerical(t, newGrid(pint, 24, 36, 10, 10), medium)
	at := func(curve []float64, dt float64) float64 { return curve[int(math.Round(off/dt))] }
	series := want.AtSteamOff.Celsius()
	require.Less(t, math.Abs(at(fine, 10)-series), math.Abs(at(coarse, 20)-series)/3)
	require.InDelta(t, series, (4*at(fine, 10)-at(coarse, 20))/3, 0.0005)
	f1, f2 := lethalMinutes(coarse, 20), lethalMinutes(fine, 10)
	require.Less(t, math.Abs(f2-want.F.Total.Minutes()), math.Abs(f1-want.F.Total.Minutes())/3)
	require.InDelta(t, want.F.Total.Minutes(), (4*f2-f1)/3, 0.0005)
}

// The same with a wall that lets 300 W/(m² K) through, at the centre and at a place beside the surface.
func TestFiniteDifferencesWithAFilm(t *testing.T) {
	c := pint
	c.Film, c.Conductivity = 300*units.WattPerSquareMetreKelvin, units.WattPerMetreKelvin/2
	medium, err := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(10)}, {At: 15 * time.Minute, Value: units.Celsius(116)}, {At: 90 * time.Minute, Value: units.Celsius(116)},
	})
	require.NoError(t, err)
	const n, m = 24, 36
	g := newGrid(c, n, m, 10, 10)
	curve, coarse := numerical(t, g, medium), numerical(t, newGrid(c, n/2, m/2, 20, 10), medium)
	out, err := c.Warm(units.Celsius(10), medium, lethality.Point{}, time.Minute)
	require.NoError(t, err)
	for i := 1; i < out.Len(); i++ {
		reading, _ := out.At(i)
		k := int(reading.At.Seconds() / 20)
		require.InDelta(t, reading.Value.Celsius(), (4*curve[2*k]-coarse[k])/3, 0.003, reading.At.String())
	}
	place := lethality.Point{FromAxis: units.Length(float64(c.Radius) * (n - 0.5) / n), FromMiddle: units.Length(float64(c.Height) / 2 * (m - 0.5) / m)}
	edge, err := c.Warm(units.Celsius(10), medium, place, time.Minute)
	require.NoError(t, err)
	last, _ := edge.Last()
	require.InDelta(t, last.Value.Celsius(), g.u[n-1][m-1], 0.005)
	held, err := pint.Warm(units.Celsius(10), medium, lethality.Point{}, time.Minute)
	require.NoError(t, err)
	a, _ := held.Last()
	b, _ := out.Last()
	require.True(t, a.Value.Above(b.Value.Add(units.Kelvins)), "the wall costs more than a kelvin by now")
}
