package process_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// printedRow is what a copy of the guide says of one band of one row.
type printedRow struct {
	Product  process.Product
	Pack     process.Pack
	Jar      process.Jar
	Gauge    process.Gauge
	Band     process.Band
	Pressure units.Pressure
	Minutes  int64
	Citation cite.Citation
}

// printedRows takes the copies of the tables apart.
func printedRows(t *testing.T, tables ...printed.Rows) []printedRow {
	t.Helper()
	var all []printedRow
	for _, rows := range tables {
		for _, r := range rows {
			for _, pack := range packs(t, r) {
				row := printedRow{Pack: pack, Minutes: r.Int("process_min"), Pressure: psi(t, r, "gauge_psi"), Band: band(t, r), Citation: citation(t, r)}
				require.NoError(t, row.Product.UnmarshalText([]byte(r.Text("product"))))
				require.NoError(t, row.Jar.UnmarshalText([]byte(r.Text("jar"))))
				require.NoError(t, row.Gauge.UnmarshalText([]byte(r.Text("gauge"))))
				all = append(all, row)
			}
		}
	}
	return all
}

// band reads a printed head: 2,001 starts above 2,000, and no high is no limit.
func band(t *testing.T, r printed.Row) process.Band {
	t.Helper()
	b := process.Band{UpTo: process.NoLimit}
	if low := r.Int("alt_low_ft"); low != 0 {
		b.Over = units.Length(low-1) * units.Foot
	}
	if r.Has("alt_high_ft") {
		b.UpTo = feet(t, r, "alt_high_ft")
	}
	return b
}

// Every printed row is in the code and every row of the code is printed, with the same citation: Guide 5, rev. 2015.
func TestTablesAreThePrintedOnes(t *testing.T) {
	inCode := map[printedRow]int{}
	for _, s := range process.Schedules() {
		inCode[printedRow{s.Product, s.Pack, s.Jar, s.Gauge, s.Band, s.Pressure, int64(s.Process.Minutes()), s.Citation}]++
	}
	inPrint := map[printedRow]int{}
	for _, row := range printedRows(t,
		printed.Table(t, "process/fish.csv"), printed.Table(t, "process/quart.csv"),
		printed.Table(t, "process/smoked.csv"), printed.Table(t, "process/tuna.csv"),
	) {
		inPrint[row]++
		require.Equal(t, 1, inPrint[row], "printed twice: %+v", row)
	}
	if diff := cmp.Diff(inPrint, inCode); diff != "" {
		t.Errorf("-printed +code\n%s", diff)
	}
}

// Find returns the printed row at both ends of its band and in the middle, and the schedule that Schedules has.
func TestFindReturnsThePrintedRow(t *testing.T) {
	known := map[process.Schedule]bool{}
	for _, s := range process.Schedules() {
		known[s] = true
	}
	for _, row := range printedRows(t,
		printed.Table(t, "process/fish.csv"), printed.Table(t, "process/quart.csv"),
		printed.Table(t, "process/smoked.csv"), printed.Table(t, "process/tuna.csv"),
	) {
		top := row.Band.UpTo
		if top == process.NoLimit {
			top = process.Ceiling
		}
		for _, altitude := range []units.Length{lowest(row.Band), row.Band.Over + (top-row.Band.Over)/2, top} {
			request := process.Request{Product: row.Product, Pack: row.Pack, Jar: row.Jar, Gauge: row.Gauge, Altitude: units.State(altitude)}
			s, err := process.Find(request)
			require.NoError(t, err, request.String())
			require.True(t, s.IsPublished())
			found := s
			found.Altitude = units.Stated[units.Length]{}
			require.True(t, known[found], "%v: not in Schedules", request)
			got := printedRow{s.Product, s.Pack, s.Jar, s.Gauge, s.Band, s.Pressure, int64(s.Process.Minutes()), s.Citation}
			if diff := cmp.Diff(row, got); diff != "" {
				t.Errorf("%v: -printed +found\n%s", request, diff)
			}
			require.Equal(t, request, s.Request())
		}
	}
}

// lowest is the lowest altitude of a band: zero in the first, a nanometre above the one before in the others.
func lowest(b process.Band) units.Length {
	if b.Over == 0 {
		return 0
	}
	return b.Over + units.Nanometre
}

// The edition of 1994 prints the same figures for the rows it has: pints of fish, smoked fish and tuna.
func TestEditionOf1994Agrees(t *testing.T) {
	printed.Table(t, "process/rev1994.csv").Each(t, func(t *testing.T, r printed.Row) {
		for _, pack := range packs(t, r) {
			q := process.Request{Pack: pack, Altitude: units.State(feet(t, r, "alt_low_ft"))}
			require.NoError(t, q.Product.UnmarshalText([]byte(r.Text("product"))))
			require.NoError(t, q.Jar.UnmarshalText([]byte(r.Text("jar"))))
			require.NoError(t, q.Gauge.UnmarshalText([]byte(r.Text("gauge"))))
			s, err := process.Find(q)
			require.NoError(t, err)
			require.Equal(t, psi(t, r, "gauge_psi"), s.Pressure)
			require.Equal(t, minutes(r, "process_min"), s.Process)
			require.Equal(t, band(t, r), s.Band)
		}
	})
}

// Other foods and other publishers have the same altitude bands: for a process of 10 lb (or 5, or 15) at sea level their pressure rises as that of fish
// does. Their minutes are none of ours.
func TestBandsOfOtherFoodsAgree(t *testing.T) {
	printed.Table(t, "process/other-foods.csv").Each(t, func(t *testing.T, r printed.Row) {
		gauge, err := process.ParseGauge(r.Text("gauge"))
		require.NoError(t, err)
		ends := []string{"alt_low_ft"}
		if r.Has("alt_high_ft") {
			ends = append(ends, "alt_high_ft")
		}
		for _, end := range ends {
			s, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: gauge, Altitude: units.State(feet(t, r, end))})
			require.NoError(t, err)
			require.Equal(t, psi(t, r, "gauge_psi")-psi(t, r, "rule_psi"), s.Pressure-10*units.PSI, end)
		}
	})
}

// Figures in circulation that are not the published ones do not come out: they are lower, shorter, or for an altitude that is refused.
func TestUnpublishedRowsDoNotComeOut(t *testing.T) {
	printed.Table(t, "process/not-published.csv").Each(t, func(t *testing.T, r printed.Row) {
		q := process.Request{Altitude: units.State(feet(t, r, "alt_ft"))}
		require.NoError(t, q.Product.UnmarshalText([]byte(r.Text("product"))))
		require.NoError(t, q.Jar.UnmarshalText([]byte(r.Text("jar"))))
		require.NoError(t, q.Gauge.UnmarshalText([]byte(r.Text("gauge"))))
		q.Pack = usualPack(q.Product)
		s, err := process.Find(q)
		if r.Text("expected") == "refused" {
			require.ErrorAs(t, err, new(process.NotPublishedError))
			return
		}
		require.NoError(t, err)
		require.NotEqual(t, citation(t, r).Source, s.Citation.Source)
		switch r.Text("expected") {
		case "lower":
			require.Greater(t, s.Pressure, psi(t, r, "gauge_psi"))
		case "agrees":
			require.Equal(t, psi(t, r, "gauge_psi"), s.Pressure)
		case "shorter":
			require.Greater(t, s.Process, minutes(r, "process_min"))
		default:
			t.Fatalf("expected %q", r.Text("expected"))
		}
	})
}

// Vent, come-up, headspace and water: Guides 1 and 5, rev. 2015, and the same for every pack, gauge and altitude of a load.
func TestProcedure(t *testing.T) {
	loads := 0
	printed.Table(t, "process/procedure.csv").Each(t, func(t *testing.T, r printed.Row) {
		want := process.Schedule{Vent: minutes(r, "vent_min"), Headspace: units.Length(r.Int("headspace_in")) * units.Inch}
		if r.Has("come_up_min") {
			want.ComeUp = minutes(r, "come_up_min")
		}
		if r.Has("water_qt") {
			want.Water = process.Water{Volume: units.Volume(r.Int("water_qt")) * units.Quart, AtLeast: r.Text("water_least") == "yes"}
		} else {
			want.Water = process.Water{Shallow: units.Length(r.Int("water_low_in")) * units.Inch, Deep: units.Length(r.Int("water_high_in")) * units.Inch}
		}
		for _, s := range process.Schedules() {
			if s.Product.String() != r.Text("product") || s.Jar.String() != r.Text("jar") {
				continue
			}
			loads++
			got := process.Schedule{Vent: s.Vent, Headspace: s.Headspace, ComeUp: s.ComeUp, Water: s.Water}
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("%v %v: -printed +code\n%s", s.Product, s.Jar, diff)
			}
			require.Equal(t, r.Text("headspace_place"), s.HeadspaceCitation.Where)
			require.Equal(t, r.Text("water_place"), s.WaterCitation.Where)
			require.Equal(t, r.Text("vent_place"), s.VentCitation.Where)
			require.Equal(t, r.Text("come_up_place"), s.ComeUpCitation.Where)
		}
	})
	require.Equal(t, len(process.Schedules()), loads, "every schedule has a printed procedure")
}

// Every figure of every schedule carries a complete citation, and says Unverified exactly when one of them was not seen in print.
func TestEveryFigureIsCited(t *testing.T) {
	for _, s := range process.Schedules() {
		figures := []cite.Citation{s.Citation, s.VentCitation, s.HeadspaceCitation, s.WaterCitation}
		if s.ComeUp != 0 {
			figures = append(figures, s.ComeUpCitation)
		}
		unverified := false
		for _, c := range figures {
			require.NoError(t, c.Check(), "%v %v", s.Product, s.Jar)
			unverified = unverified || c.Unverified()
		}
		require.Equal(t, unverified, s.Unverified())
		require.Equal(t, s.ComeUp == 0, s.ComeUpCitation.IsZero())
		for _, c := range s.Cautions() {
			require.NotEmpty(t, c.Text)
			require.NoError(t, c.Citation.Check(), c.Text)
		}
	}
}

// A schedule with a figure from memory or from practice says so.
func TestUnverifiedSeesEveryFigure(t *testing.T) {
	for _, spoil := range []func(*process.Schedule) *cite.Citation{
		func(s *process.Schedule) *cite.Citation { return &s.Citation },
		func(s *process.Schedule) *cite.Citation { return &s.VentCitation },
		func(s *process.Schedule) *cite.Citation { return &s.ComeUpCitation },
		func(s *process.Schedule) *cite.Citation { return &s.HeadspaceCitation },
		func(s *process.Schedule) *cite.Citation { return &s.WaterCitation },
	} {
		s, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Quart, Gauge: process.Dial, Altitude: units.State(units.Length(0))})
		require.NoError(t, err)
		require.False(t, s.Unverified())
		spoil(&s).Basis = cite.Recalled
		require.True(t, s.Unverified())
	}
}
