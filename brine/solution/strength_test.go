package solution

import (
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func TestStrengthsAt60(t *testing.T) {
	printed.Table(t, "brine/strengths-60f.csv").Each(t, func(t *testing.T, r printed.Row) {
		x, err := FromSalometer(share(t, r, "salometer"))
		require.NoError(t, err)
		s, err := StrengthOf(x, sixty)
		require.NoError(t, err)
		printed.Within(t, r, "salt_pct", units.In(s.Share, units.Percent, 10))
		printed.WithinFloat(t, r, "molality_mol_kg", molality(units.Float(x, units.One)))
		printed.Within(t, r, "density_60_f_g_ml", units.In(s.Density, units.GramPerMillilitre, 12))
		printed.Within(t, r, "sg", units.In(s.SpecificGravity, units.One, 12))
		printed.Within(t, r, "baume", units.In(s.Baume, units.One, 12))
		printed.Within(t, r, "g_per_kg_water", units.In(s.PerWater, units.PerMille, 9))
		printed.Within(t, r, "g_per_l_water", units.In(s.PerVolumeWater, units.GramPerLitre, 9))
		printed.Within(t, r, "g_per_l_brine", units.In(s.PerVolumeBrine, units.GramPerLitre, 9))
		printed.WithinFloat(t, r, "l_brine_per_l_water", density(0, sixty.Celsius())/(units.Float(s.Density, units.GramPerMillilitre)*(1-units.Float(x, units.One))))
		printed.Within(t, r, "lb_per_us_gal_water", units.In(s.PerVolumeWater, PoundPerGallon, 9))
		printed.Within(t, r, "lb_per_us_gal_brine", units.In(s.PerVolumeBrine, PoundPerGallon, 9))
		printed.Within(t, r, "lb_per_imp_gal_water", units.In(s.PerVolumeWater, PoundPerImperialGallon, 9))
		within(t, r, "density_20_c_g_ml", x, units.Celsius(20))
		aw, err := Activity(x)
		require.NoError(t, err)
		printed.Within(t, r, "aw", units.In(aw, units.One, 12))
		if r.Has("freezing_c") {
			at, _, err := FreezingPoint(x)
			require.NoError(t, err)
			printed.Within(t, r, "freezing_c", at.In(units.CelsiusScale, 6))
		}
	})
}

func TestStrengthsInPrint(t *testing.T) {
	printed.Table(t, "brine/strengths-published.csv").Each(t, func(t *testing.T, r printed.Row) {
		x, err := FromSalometer(share(t, r, "salometer"))
		require.NoError(t, err)
		s, err := StrengthOf(x, units.Celsius(20))
		require.NoError(t, err)
		m, err := MakeBrine(units.Litre, x, units.Celsius(20))
		require.NoError(t, err)
		printed.Within(t, r, "salt_pct", units.In(x, units.Percent, 10))
		printed.Within(t, r, "g_per_l_water", units.In(s.PerVolumeWater, units.GramPerLitre, 9))
		printed.Within(t, r, "g_per_l", units.In(s.Density, units.GramPerLitre, 9))
		printed.WithinFloat(t, r, "l_per_kg", 1/units.Float(s.Density, units.GramPerMillilitre))
		printed.Within(t, r, "water_g_per_l_brine", units.In(m.Water, units.Gram, 6))
		printed.Within(t, r, "salt_g_per_l_brine", units.In(m.Salt, units.Gram, 6))
		printed.WithinFloat(t, r, "l_brine", 1/units.Float(m.WaterVolume, units.Litre))
	})
	// A column headed grams per litre of brine that holds grams per kilogram; per litre it is out by 2 g and more.
	printed.Table(t, "brine/strengths-mislabelled.csv").Each(t, func(t *testing.T, r printed.Row) {
		x, err := FromSalometer(share(t, r, "salometer"))
		require.NoError(t, err)
		printed.Within(t, r, "g_per_l_brine_as_printed", units.In(x, units.PerMille, 9))
		s, err := StrengthOf(x, sixty)
		require.NoError(t, err)
		require.Greater(t, units.Float(s.PerVolumeBrine, units.GramPerLitre), r.Float("g_per_l_brine_as_printed")+1.5)
	})
}

// The worked example of the province's sheet: 60 degrees, 15 imperial gallons, 68 litres.
func TestBrineExample(t *testing.T) {
	printed.Table(t, "brine/brine-example.csv").Each(t, func(t *testing.T, r printed.Row) {
		x, err := FromSalometer(share(t, r, "salometer"))
		require.NoError(t, err)
		s, err := StrengthOf(x, sixty)
		require.NoError(t, err)
		printed.Within(t, r, "salt_pct", units.In(x, units.Percent, 10))
		printed.Within(t, r, "lb_per_imp_gal_water", units.In(s.PerVolumeWater, PoundPerImperialGallon, 9))
		printed.WithinFloat(t, r, "salt_lb", r.Float("imp_gal")*units.Float(s.PerVolumeWater, PoundPerImperialGallon))
		printed.Within(t, r, "g_per_l_water", units.In(s.PerVolumeWater, units.GramPerLitre, 9))
		printed.WithinFloat(t, r, "salt_kg", r.Float("litres")*units.Float(s.PerVolumeWater, units.GramPerMillilitre))
	})
}

// The pound per gallon is what its units say, to half a quantum.
func TestGallons(t *testing.T) {
	for _, c := range []struct {
		perGallon units.Density
		gallon    units.Volume
	}{{PoundPerGallon, units.Gallon}, {PoundPerImperialGallon, units.ImperialGallon}} {
		want, err := units.Prorate(units.GramPerMillilitre, units.Pound, units.Gram)
		require.NoError(t, err)
		want, err = units.Prorate(want, units.Millilitre, c.gallon)
		require.NoError(t, err)
		require.Equal(t, want, c.perGallon)
	}
}

// Out on every scale and back: to within 30 quanta of 1e-12, which is what a quantum of the other scale is worth.
func FuzzStrengthScales(f *testing.F) {
	f.Add(int64(158_370_000_000), 15.5)
	f.Add(int64(0), 0.0)
	f.Add(int64(263_950_000_000), 25.0)
	f.Add(int64(1), 10.0)
	f.Fuzz(func(t *testing.T, x int64, temperature float64) {
		s, err := StrengthOf(units.Ratio(x), units.Celsius(temperature))
		if err != nil {
			return
		}
		for name, back := range map[string]func() (units.Ratio, error){
			"salometer": func() (units.Ratio, error) { return FromSalometer(s.Salometer) },
			"gravity":   func() (units.Ratio, error) { return FromSpecificGravity(s.SpecificGravity) },
			"Baumé":     func() (units.Ratio, error) { return FromBaume(s.Baume) },
			"per water": func() (units.Ratio, error) { return FromPerWater(s.PerWater) },
			"per volume of water": func() (units.Ratio, error) {
				return FromPerVolumeWater(s.PerVolumeWater, s.Temperature)
			},
			"per volume of brine": func() (units.Ratio, error) {
				return FromPerVolumeBrine(s.PerVolumeBrine, s.Temperature)
			},
		} {
			got, err := back()
			if err != nil { // a rounding past saturation
				require.Greater(t, x, int64(263_949_999_990), name)
				continue
			}
			require.InDelta(t, x, int64(got), 30, name)
		}
	})
}

func TestScalesRefused(t *testing.T) {
	for name, err := range map[string]error{
		"salometer below 0": errOf(FromSalometer(-1)), "salometer above 100": errOf(FromSalometer(units.One + 1)),
		"lighter than water": errOf(FromSpecificGravity(999 * units.PerMille)), "gravity of syrup": errOf(FromSpecificGravity(1_300 * units.PerMille)),
		"Baumé below 0": errOf(FromBaume(-units.One / 10)), "Baumé past saturation": errOf(FromBaume(25 * units.One)),
		"no salt left":         errOf(FromPerWater(-1)),
		"360 g/kg":             errOf(FromPerWater(360 * units.PerMille)),
		"3.6 lb a US gallon":   errOf(FromPerVolumeWater(36*PoundPerGallon/10, sixty)),
		"water below freezing": errOf(FromPerVolumeWater(PoundPerGallon, units.Celsius(-1))),
		"no temperature":       errOf(FromPerVolumeBrine(PoundPerGallon, units.Temperature{})),
		"320 g/L of brine":     errOf(FromPerVolumeBrine(320*units.GramPerLitre, sixty)),
		"less than none":       errOf(FromPerVolumeBrine(-1, sixty)),
	} {
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

func errOf(_ units.Ratio, err error) error { return err }

// The rule for a salometer in warm or cold brine against the density of brine: within a degree and a half, and within six tenths from 40
// degrees and 47 °F on.
func TestSalometerAt60(t *testing.T) {
	for f := 32.0; f <= 77; f += 2.5 {
		for sal := 20.0; sal <= 90; sal += 10 {
			temperature := units.Fahrenheit(f)
			reads, ok := strengthWhere(func(x float64) float64 { return density(x, sixty.Celsius()) }, density(sal*0.26395, temperature.Celsius()))
			require.True(t, ok)
			reading, err := units.OfFloat(reads/0.26395, units.Percent)
			require.NoError(t, err)
			got, citation, err := SalometerAt60(reading, temperature)
			require.NoError(t, err)
			require.NoError(t, citation.Check())
			far := 1.5
			if f >= 47 && sal >= 40 {
				far = 0.6
			}
			require.InDelta(t, sal, units.Float(got, units.Percent), far, "%g degrees at %g °F", sal, f)
		}
	}
	got, _, err := SalometerAt60(58*units.Percent, units.Fahrenheit(70))
	require.NoError(t, err)
	require.Equal(t, 59*units.Percent, got)
	for _, c := range []struct {
		reading     units.Ratio
		temperature units.Temperature
	}{{-1, sixty}, {units.One + 1, sixty}, {units.One, units.Fahrenheit(70)}, {0, units.Fahrenheit(50)}, {units.Percent, units.Temperature{}}, {units.Percent, units.Fahrenheit(90)}} {
		_, _, err := SalometerAt60(c.reading, c.temperature)
		require.ErrorIs(t, err, units.ErrRange)
	}
}

func TestFreezingPoints(t *testing.T) {
	rows := printed.Table(t, "brine/freezing-points.csv")
	require.Len(t, freezingPoints, len(rows)+1, "and water")
	rows.Each(t, func(t *testing.T, r printed.Row) {
		at, citation, err := FreezingPoint(share(t, r, "salt_pct"))
		require.NoError(t, err)
		printed.Within(t, r, "freezing_c", at.In(units.CelsiusScale, 6))
		require.Equal(t, r.Text("source")+r.Text("place")+r.Text("basis"), citation.Source.Key()+citation.Where+citation.Basis.String())
	})
	before := units.Celsius(0.1)
	for x := units.Ratio(0); x <= 231*units.PerMille; x += units.PerMille {
		at, citation, err := FreezingPoint(x)
		require.NoError(t, err)
		require.NoError(t, citation.Check())
		require.True(t, at.Below(before))
		before = at
	}
	for _, x := range []units.Ratio{-1, 231*units.PerMille + 1} {
		_, _, err := FreezingPoint(x)
		require.ErrorIs(t, err, units.ErrRange)
	}
}

// Salt and water are the brine, to the quantum.
func FuzzMakeBrine(f *testing.F) {
	f.Add(int64(units.Litre), int64(158_370_000_000), 15.5)
	f.Add(int64(1), int64(0), 0.0)
	f.Fuzz(func(t *testing.T, volume, x int64, temperature float64) {
		m, err := MakeBrine(units.Volume(volume), units.Ratio(x), units.Celsius(temperature))
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.Equal(t, m.Mass, m.Salt+m.Water)
		require.GreaterOrEqual(t, m.Salt, units.Mass(0))
		require.LessOrEqual(t, m.WaterVolume, m.Volume+2, "salt takes room")
	})
}

func TestMakeBrineRefused(t *testing.T) {
	for _, v := range []units.Volume{0, -1, 1_000*units.Litre + 1} {
		_, err := MakeBrine(v, units.Percent, sixty)
		require.ErrorIs(t, err, units.ErrRange)
	}
}
