package conformance

import (
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

var lethalityExempt = map[string]string{"KillTable.Cautions": sources, "KillTable.Citation": sources, "Pasteurisation.Citation": sources}

func tenths(celsius int64) units.Temperature {
	return units.Celsius(float64(celsius) / 10)
}

// zigzag is a record of n readings that goes up and down by whole numbers, with steep lines and level ones.
func zigzag(r *results, n, seed int64) series.Series[units.Temperature] {
	var readings []series.Reading[units.Temperature]
	at, c := time.Duration(seed)*time.Second, 600+17*seed
	for i := int64(0); i < n; i++ {
		readings = append(readings, series.Reading[units.Temperature]{At: at, Value: tenths(c)})
		seed = (seed*1_103_515_245 + 12_345) % (1 << 31)
		at += time.Duration(1+seed%90) * time.Second
		switch seed / 128 % 8 {
		case 0:
			c = 20
		case 1, 2: // level
		default:
			c = 500 + (c+seed/1024%400-150)%700
		}
	}
	s, err := series.New(readings)
	require.NoError(r.t, err)
	return s
}

func lethalityGrid(r *results) {
	references := []lethality.Reference{
		lethality.F0(), lethality.F0Fahrenheit(), {Temperature: units.Celsius(70), Z: 15 * units.Kelvins / 2}, {Temperature: units.Celsius(90), Z: 7 * units.Kelvins},
	}
	r.add("F0", nil, one(references[0]))
	r.add("F0Fahrenheit", nil, one(references[1]))
	for _, ref := range references {
		for c := int64(-20); c <= 1_380; c += 23 {
			rate, err := ref.Rate(tenths(c))
			r.add("Reference.Rate", err, one(rate), ref, tenths(c))
			worth, err := ref.Worth(tenths(c), 7*time.Minute)
			r.add("Reference.Worth", err, one(worth), ref, tenths(c), 7*time.Minute)
			held, err := ref.TimeAt(tenths(c), 3*time.Second)
			r.add("Reference.TimeAt", err, one(held), ref, tenths(c), 3*time.Second)
		}
		for seed := int64(1); seed <= 40; seed++ {
			recordGrid(r, zigzag(r, 5+2*seed, seed), ref, seed)
		}
	}
	pasteurisationGrid(r)
	countGrid(r)
	tableGrid(r)
	transientGrid(r)
	cylinderGrid(r)
	compositionGrid(r)
}

func recordGrid(r *results, s series.Series[units.Temperature], ref lethality.Reference, seed int64) {
	f, err := lethality.F(s, ref)
	r.add("F", err, one(f), ref, seed)
	trapezoid, err := lethality.FBy(s, ref, lethality.Trapezoid)
	r.add("FBy", err, one(trapezoid), ref, seed, "trapezoid")
	first, _ := s.First()
	hold := series.Stretch{From: first.At + s.Span()/3, To: first.At + s.Span()/2}
	parts, err := lethality.Divide(s, ref, hold)
	r.add("Divide", err, one(parts), ref, seed, hold)
	running, err := lethality.Start(ref)
	r.add("Start", err, one(running.F()), ref)
	for _, reading := range s.Readings() {
		running, err = running.Next(reading)
		require.NoError(r.t, err)
	}
	r.add("Running.Next", err, one(running.F()), ref, seed)
	r.add("Running.F", nil, one(running.F()), ref, seed)
	r.add("Running.Len", nil, one(running.Len()), ref, seed)
	r.add("Running.LongestGap", nil, one(running.LongestGap()), ref, seed)
}

func pasteurisationGrid(r *results) {
	for _, target := range []struct {
		name string
		of   func() lethality.Pasteurisation
	}{{"Listeria", lethality.Listeria}, {"NonProteolytic", lethality.NonProteolytic}, {"NonProteolyticUK", lethality.NonProteolyticUK}} {
		p := target.of()
		r.add(target.name, nil, one(p))
		reference, six := p.SixD()
		r.add("Pasteurisation.SixD", nil, []any{reference, six}, target.name)
		span := p.Span()
		r.add("Pasteurisation.Span", nil, one(span), target.name)
		for t := span.From; !t.Above(span.To); t = t.Add(7 * units.Kelvins / 10) {
			held, err := p.TimeAt(t)
			r.add("Pasteurisation.TimeAt", err, one(held), target.name, t)
		}
		for seed := int64(1); seed <= 60; seed++ {
			v, err := p.Value(zigzag(r, 30, seed), lethality.Moist)
			r.add("Pasteurisation.Value", err, one(v), target.name, seed)
		}
	}
}

func countGrid(r *results) {
	for i := int64(1); i <= 40; i++ {
		d := time.Duration(i*i) * time.Second / 7
		kill, err := lethality.Reductions(time.Duration(i)*time.Minute, d)
		r.add("Reductions", err, one(kill), time.Duration(i)*time.Minute, d)
		r.add("Logs.String", nil, one(kill.Reductions.String()), kill.Reductions)
		target, err := lethality.Target(d, lethality.Logs(lethality.Number(i)*lethality.One/3))
		r.add("Target", err, one(target), d, i)
		left, err := lethality.Survivors(i*i*i*1_000, lethality.Logs(lethality.Number(i)*lethality.One/3))
		r.add("Survivors", err, one(left), i*i*i*1_000, i)
		logs, err := lethality.LogCount(i * i * 97)
		r.add("LogCount", err, one(logs), i*i*97)
		counted, err := lethality.DFromCounts(i*i*i*1_000, 7*i, time.Minute)
		r.add("DFromCounts", err, one(counted), i*i*i*1_000, 7*i, time.Minute)
	}
}

func tableGrid(r *results) {
	for _, row := range lethality.KillTimes() {
		r.add("KillTimes", nil, one(row))
		r.add("KillTimesAt", nil, one(lethality.KillTimesAt(row.Temperature, row.Table)), row.Temperature, row.Table)
	}
	for _, row := range lethality.Resistances() {
		r.add("Resistances", nil, one(row))
	}
	for i := lethality.Number(5); i <= 2_000; i += 31 {
		logG, _, err := lethality.GTable(i * lethality.One / 10)
		r.add("GTable", err, one(logG), i)
	}
	for minutes := time.Duration(60); minutes <= 180; minutes += 7 {
		for fh := time.Duration(40); fh <= 60; fh += 5 {
			b := lethality.Formula{
				Medium: units.Celsius(116), Start: units.Celsius(10), Fh: fh * time.Minute, Jch: 2_039_697_534_123, ComeUp: 15 * time.Minute,
			}
			answer, err := b.Lethality(minutes * time.Minute)
			r.add("Formula.Lethality", err, one(answer), b, minutes*time.Minute)
			answer, err = b.Process(minutes * time.Minute / 20)
			r.add("Formula.Process", err, one(answer), b, minutes*time.Minute/20)
		}
	}
}

func transientGrid(r *results) {
	for _, shape := range []lethality.Shape{lethality.Slab, lethality.InfiniteCylinder, lethality.Sphere} {
		for _, biot := range []lethality.Number{
			lethality.One / 1_000, lethality.One / 30, lethality.One / 3, lethality.One, 7 * lethality.One, 90 * lethality.One, 1_000_000 * lethality.One, lethality.Held,
		} {
			b := lethality.Transient{Shape: shape, Biot: biot}
			roots, err := b.Eigenvalues(8)
			r.add("Transient.Eigenvalues", err, one(roots), b, 8)
			roots, err = b.Eigenvalues(200)
			r.add("Transient.Eigenvalues", err, one(roots), b, 200)
			zeta, c, err := b.OneTerm()
			r.add("Transient.OneTerm", err, []any{zeta, c}, b)
			for fo := lethality.One / 500; fo < 9*lethality.One; fo *= 3 {
				mean, err := b.Mean(fo)
				r.add("Transient.Mean", err, one(mean), b, fo)
				for place := units.Ratio(0); place <= 100; place += 25 {
					share, err := b.At(fo, place*units.Percent)
					r.add("Transient.At", err, one(share), b, fo, place*units.Percent)
				}
			}
		}
	}
}

func cylinderGrid(r *results) {
	run := lethality.Run{
		Start: units.Celsius(10), Steam: units.Celsius(116), End: units.Celsius(20), ComeUp: 15 * time.Minute, Hold: 100 * time.Minute, Cooling: units.Kelvins,
	}
	for _, film := range []units.FilmCoefficient{50, 300, 5_000, 0} {
		for height := units.Length(50); height <= 170; height += 40 {
			c := lethality.Cylinder{
				Radius: 75 * units.Millimetre / 2, Height: height * units.Millimetre, Diffusivity: 14 * units.SquareMillimetrePerSecond / 100,
				Film: film * units.WattPerSquareMetreKelvin, Conductivity: units.WattPerMetreKelvin / 2,
			}
			if film == 0 {
				c.Film = lethality.HeldSurface
			} else {
				through, err := lethality.Through(c.Film, 3*units.Millimetre, units.WattPerMetreKelvin)
				r.add("Through", err, one(through), c.Film)
			}
			run.Hold += 7 * time.Minute
			medium, err := run.Medium(time.Hour)
			r.add("Run.Medium", err, one(medium), run)
			r.add("Run.SteamOff", nil, one(run.SteamOff()), run)
			for _, at := range []lethality.Point{{}, {FromAxis: 2 * units.Centimetre}, {FromMiddle: units.Centimetre}} {
				factors, err := c.Factors(at)
				r.add("Cylinder.Factors", err, one(factors), c, at)
				curve, err := c.Warm(run.Start, medium, at, 5*time.Minute)
				r.add("Cylinder.Warm", err, one(curve), c, run, at)
			}
			followed, err := c.Follow(run, lethality.F0())
			r.add("Cylinder.Follow", err, one(followed), c, run)
			r.add("Result.BeforeSteamOff", nil, one(followed.BeforeSteamOff()), c, run)
			if height == 130 {
				band, err := c.FollowBand(c.Diffusivity, c.Diffusivity*5/4, run, lethality.F0())
				r.add("Cylinder.FollowBand", err, one(band), c, run)
				band, err = lethality.FollowBetween(c, c, run, lethality.F0Fahrenheit())
				r.add("FollowBetween", err, one(band), c, run)
			}
		}
	}
}

func compositionGrid(r *results) {
	for fat := units.Ratio(0); fat <= 30; fat += 3 {
		for c := int64(0); c <= 1_400; c += 200 {
			food := lethality.Composition{Water: (78 - fat) * units.Percent, Protein: 20 * units.Percent, Fat: fat * units.Percent, Ash: 2 * units.Percent}
			properties, err := food.At(tenths(c))
			r.add("Composition.At", err, one(properties), food, tenths(c))
		}
	}
}
