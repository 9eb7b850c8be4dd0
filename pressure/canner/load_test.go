package canner

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

// vessel is a canner of a row, with the rack of 0.5 in and the divider of 0.12 in that the geometry is reckoned with.
func vessel(t testing.TB, r printed.Row) Vessel {
	return Vessel{Diameter: length(t, r, "diameter_in"), Height: length(t, r, "height_in"), Rack: units.Inch / 2, Divider: 12 * units.Inch / 100}
}

func TestLoadsAsComputed(t *testing.T) {
	printed.Table(t, "canner/loads.csv").Each(t, func(t *testing.T, r printed.Row) {
		jar := size(t, r.Text("jar"))
		l, err := Fit(fishIn(t, jar.Jar), vessel(t, r), jar, 0)
		require.NoError(t, err)
		require.EqualValues(t, r.Int("per_layer"), l.PerLayer)
		require.EqualValues(t, r.Int("layers"), l.Layers)
		require.EqualValues(t, r.Int("jars"), l.Jars)
	})
}

// Published counts come out at the clearance that the row states; where they cannot, the geometry has another figure.
func TestPublishedCounts(t *testing.T) {
	printed.Table(t, "canner/published-counts.csv").Each(t, func(t *testing.T, r printed.Row) {
		jar, v := size(t, r.Text("jar")), vessel(t, r)
		if !r.Has("clearance_in") {
			l, err := Fit(fishIn(t, jar.Jar), v, jar, 0)
			require.NoError(t, err)
			require.EqualValues(t, r.Int("most"), l.Jars)
			require.NotEqualValues(t, r.Int("jars"), l.Jars, "the row says that it does not come out")
			return
		}
		if jar.Jar == process.Quart {
			v.QuartLayers = int(r.Int("maker_layers"))
		} else {
			v.SmallerLayers = int(r.Int("maker_layers"))
		}
		l, err := Fit(fishIn(t, jar.Jar), v, jar, length(t, r, "clearance_in"))
		require.NoError(t, err)
		require.EqualValues(t, r.Int("jars"), l.Jars)
		require.EqualValues(t, r.Int("layers"), l.Layers)
	})
}

func TestBatches(t *testing.T) {
	printed.Table(t, "canner/batches.csv").Each(t, func(t *testing.T, r printed.Row) {
		b, err := Load{Jars: int(r.Int("per_load"))}.Loads(int(r.Int("jars")))
		require.NoError(t, err)
		require.Equal(t, Batch{Loads: int(r.Int("loads")), Last: int(r.Int("last"))}, b)
	})
	b, err := Load{Jars: 9}.Loads(18)
	require.NoError(t, err)
	require.Equal(t, Batch{Loads: 2, Last: 9}, b, "a full last load")
	for _, n := range []int{-1, 0, 1_000_001} {
		_, err := Load{Jars: 9}.Loads(n)
		require.ErrorIs(t, err, units.ErrRange)
	}
	_, err = Load{}.Loads(9)
	require.ErrorIs(t, err, units.ErrRange)
}

var twelve = Vessel{Diameter: 12 * units.Inch, Height: 12 * units.Inch, Rack: units.Inch / 2, Divider: units.Inch / 8, Capacity: 16 * units.Quart}

// More vessel never holds fewer jars, more clearance or a larger jar never more. Spare is the clearance that changes nothing.
func TestLoadsAreMonotone(t *testing.T) {
	s := fishIn(t, process.Pint)
	jar := size(t, "pint regular")
	before := 0
	for d := 106 * units.Inch / 10; d <= 20*units.Inch; d += units.Inch / 16 {
		v := twelve
		v.Diameter = d
		l, err := Fit(s, v, jar, 0)
		require.NoError(t, err)
		require.GreaterOrEqual(t, l.Jars, before)
		before = l.Jars
		if l.Spare > 0 {
			same, err := Fit(s, v, jar, l.Spare)
			require.NoError(t, err)
			require.Equal(t, l.Jars, same.Jars)
			require.Zero(t, same.Spare)
		}
		fewer, err := Fit(s, v, jar, l.Spare+1)
		require.NoError(t, err)
		require.Less(t, fewer.Jars, l.Jars)
	}
	before = 1 << 30
	for c := units.Length(0); c < 8*units.Inch; c += units.Inch / 16 {
		l, err := Fit(s, twelve, jar, c)
		require.NoError(t, err)
		require.LessOrEqual(t, l.Jars, before)
		before = l.Jars
	}
	before = 0
	for h := 8 * units.Inch; h < 20*units.Inch; h += units.Inch / 16 {
		v := twelve
		v.Height = h
		l, err := Fit(s, v, jar, 0)
		require.NoError(t, err)
		require.GreaterOrEqual(t, l.Jars, before)
		before = l.Jars
	}
}

func TestLayers(t *testing.T) {
	pint, quart, squat := size(t, "pint regular"), size(t, "quart regular"), size(t, "half-pint wide squat")
	tall := twelve
	tall.Height = 30 * units.Inch
	for name, c := range map[string]struct {
		change func(*Vessel)
		jar    JarSize
		layers int
		by     LayerLimit
	}{
		"pints in two":                {func(v *Vessel) {}, pint, 2, ByRule},
		"quarts in one":               {func(v *Vessel) {}, quart, 1, ByRule},
		"three half-pints would fit":  {func(v *Vessel) {}, squat, 2, ByRule},
		"quarts in two by the maker":  {func(v *Vessel) { v.QuartLayers = 2 }, quart, 2, ByMaker},
		"that says nothing of pints":  {func(v *Vessel) { v.QuartLayers = 1 }, pint, 2, ByRule},
		"pints in one by the maker":   {func(v *Vessel) { v.SmallerLayers = 1 }, pint, 1, ByMaker},
		"no divider":                  {func(v *Vessel) { v.Divider = 0 }, pint, 1, ByDivider},
		"height for two just":         {func(v *Vessel) { v.Height = v.Rack + 2*pint.Height + v.Divider }, pint, 2, ByRule},
		"height for two not quite":    {func(v *Vessel) { v.Height = v.Rack + 2*pint.Height + v.Divider - 1 }, pint, 1, ByHeight},
		"height for two without rack": {func(v *Vessel) { v.Height = 2*pint.Height + v.Divider }, pint, 1, ByHeight},
	} {
		v := tall
		c.change(&v)
		l, err := Fit(fishIn(t, c.jar.Jar), v, c.jar, 0)
		require.NoError(t, err, name)
		require.Equal(t, c.layers, l.Layers, name)
		require.Equal(t, c.by, l.LayersBy, name)
		require.Equal(t, c.layers*l.PerLayer, l.Jars, name)
	}
}

func TestFitsRefused(t *testing.T) {
	pint, quart := size(t, "pint regular"), size(t, "quart wide")
	s := fishIn(t, process.Pint)
	for name, change := range map[string]func(*Vessel, *JarSize, *units.Length){
		"no diameter":             func(v *Vessel, _ *JarSize, _ *units.Length) { v.Diameter = 0 },
		"diameter in feet":        func(v *Vessel, _ *JarSize, _ *units.Length) { v.Diameter = 12 * units.Foot },
		"no height":               func(v *Vessel, _ *JarSize, _ *units.Length) { v.Height = 0 },
		"rack above the lid":      func(v *Vessel, _ *JarSize, _ *units.Length) { v.Rack = v.Height + 1 },
		"rack below the bottom":   func(v *Vessel, _ *JarSize, _ *units.Length) { v.Rack = -1 },
		"divider below zero":      func(v *Vessel, _ *JarSize, _ *units.Length) { v.Divider = -1 },
		"capacity below zero":     func(v *Vessel, _ *JarSize, _ *units.Length) { v.Capacity = -1 },
		"rack, a bare number":     func(v *Vessel, _ *JarSize, _ *units.Length) { v.Rack = 12 },
		"divider, a bare number":  func(v *Vessel, _ *JarSize, _ *units.Length) { v.Divider = leastLength - 1 },
		"capacity, a bare number": func(v *Vessel, _ *JarSize, _ *units.Length) { v.Capacity = 16 },
		"three layers":            func(v *Vessel, _ *JarSize, _ *units.Length) { v.SmallerLayers = 3 },
		"layers below zero":       func(v *Vessel, _ *JarSize, _ *units.Length) { v.QuartLayers = -1 },
		"jar without a diameter":  func(_ *Vessel, j *JarSize, _ *units.Length) { j.Diameter = 0 },
		"jar without a height":    func(_ *Vessel, j *JarSize, _ *units.Length) { j.Height = 0 },
		"jar taller than vessel":  func(_ *Vessel, j *JarSize, _ *units.Length) { j.Height = 12 * units.Inch },
		"jar wider than vessel":   func(_ *Vessel, j *JarSize, _ *units.Length) { j.Diameter = 13 * units.Inch },
		"clearance below zero":    func(_ *Vessel, _ *JarSize, c *units.Length) { *c = -1 },
		"clearance of the vessel": func(_ *Vessel, _ *JarSize, c *units.Length) { *c = 12 * units.Inch },
		"more than the table":     func(_ *Vessel, j *JarSize, _ *units.Length) { j.Diameter = units.Inch },
	} {
		v, j, c := twelve, pint, units.Length(0)
		change(&v, &j, &c)
		l, err := Fit(s, v, j, c)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, l, name)
	}
	var contradiction ContradictionError
	_, err := Fit(s, twelve, quart, 0)
	require.ErrorAs(t, err, &contradiction, "a quart for the schedule of a pint")
	_, err = Fit(process.Schedule{}, twelve, JarSize{}, 0)
	require.ErrorAs(t, err, &contradiction, "no schedule")
}

func TestUnsuitableVessels(t *testing.T) {
	half := size(t, "half-pint regular")
	fish, smoked := fishIn(t, process.HalfPint), schedule(t, "smoked fish", "as smoked", "half-pint", "dial", 0)
	var e UnsuitableError
	saucepan := twelve
	saucepan.Diameter = 9 * units.Inch // 3 quarts: 9/3.8 is under the 2.4142 of four
	_, err := Fit(fish, saucepan, half, 0)
	require.ErrorAs(t, err, &e)
	require.Equal(t, fourQuarts, e.Citation)
	require.NotErrorIs(t, err, units.ErrRange)
	low := twelve
	low.Height = 7 * units.Inch
	_, err = Fit(fish, low, half, 0)
	require.ErrorAs(t, err, &e, "no quart stands under the lid")
	for capacity, ok := range map[units.Volume]bool{
		0: false, 16*units.Quart - 1: false, 16 * units.Quart: true, 22 * units.Quart: true, 22*units.Quart + 1: false, 10 * units.Quart: false, 41 * units.Quart: false,
	} {
		v := twelve
		v.Capacity = capacity
		_, err := Fit(smoked, v, half, 0)
		if ok {
			require.NoError(t, err)
			continue
		}
		require.ErrorAs(t, err, &e, "%v", capacity)
		require.Equal(t, smokedCanner, e.Citation)
		_, err = Fit(fish, v, half, 0)
		require.NoError(t, err, "that rule is for smoked fish")
	}
}

func TestRules(t *testing.T) {
	inCode := map[string]int64{
		"quarts upright at least": leastQuarts, "smoked fish from": int64(smokedLeast / units.Quart), "smoked fish up to": int64(smokedMost / units.Quart),
		"gauge limit": int64(gaugeLimit / units.PSI), "gauge limit, older": int64(gaugeWarn / units.PSI), "most in a new canner": int64(newCannerMost / units.PSI),
		"wait from weight to lid": int64(lidWait.Minutes()), "reprocess within": int64(reprocessWithin.Hours()), "layers at most": mostLayers,
	}
	c, err := CycleOf(fishIn(t, process.Pint))
	require.NoError(t, err)
	inCode["cooling from"], inCode["cooling to"] = int64(c.CoolDown.Least.Minutes()), int64(c.CoolDown.Most.Minutes())
	inCode["first steam from"], inCode["first steam to"] = int64(c.HeatUp.Least.Minutes()), int64(c.HeatUp.Most.Minutes())
	inCode["pressurize from"], inCode["pressurize to"] = int64(c.Pressurize.Least.Minutes()), int64(c.Pressurize.Most.Minutes())
	rows := printed.Table(t, "canner/rules.csv")
	require.Len(t, rows, len(inCode), "every rule of the code is in the copy")
	rows.Each(t, func(t *testing.T, r printed.Row) {
		got, known := inCode[r.Text("rule")]
		require.True(t, known)
		require.Equal(t, r.Int("figure"), got)
	})
}

// A jar of exactly a third of the vessel stands seven times; one nanometre more, and five are left, for six need the room of seven.
func TestAThirdOfTheVessel(t *testing.T) {
	jar := size(t, "quart regular")
	for diameter, want := range map[units.Length]int{4 * units.Inch: 7, 4*units.Inch + 1: 5} {
		jar.Diameter = diameter
		l, err := Fit(fishIn(t, process.Quart), twelve, jar, 0)
		require.NoError(t, err)
		require.Equal(t, want, l.Jars)
		require.Equal(t, Proven, l.Packing.Optimality)
	}
	jar.Diameter = 4 * units.Inch
	l, err := Fit(fishIn(t, process.Quart), twelve, jar, 1)
	require.NoError(t, err)
	require.Equal(t, 5, l.Jars, "one nanometre of clearance")
}
