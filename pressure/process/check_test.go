package process_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// claim reads a row of recipe figures; an empty cell is not stated.
func claim(t *testing.T, r printed.Row) process.Claim {
	t.Helper()
	q := request(t, r)
	c := process.Claim{Product: q.Product, Pack: q.Pack, Jar: q.Jar, Gauge: q.Gauge}
	c.Altitude = stated(t, r, "altitude", units.ParseLength)
	c.Pressure = stated(t, r, "pressure", units.ParsePressure)
	c.Process = stated(t, r, "process", time.ParseDuration)
	c.Vent = stated(t, r, "vent", time.ParseDuration)
	c.ComeUp = stated(t, r, "come_up", time.ParseDuration)
	c.Headspace = stated(t, r, "headspace", units.ParseLength)
	c.Water = stated(t, r, "water", units.ParseVolume)
	return c
}

func stated[T comparable](t *testing.T, r printed.Row, col string, parse func(string) (T, error)) units.Stated[T] {
	t.Helper()
	if !r.Has(col) {
		return units.Stated[T]{}
	}
	v, err := parse(r.Text(col))
	require.NoError(t, err, col)
	return units.State(v)
}

// A figure that only some of the open rows print is not told as zero in the others.
func TestPrintedForSome(t *testing.T) {
	a, err := process.Check(process.Claim{Gauge: process.Dial, Altitude: units.State(4_350 * units.Foot)})
	require.NoError(t, err)
	var lines []string
	for _, f := range a.Findings {
		if f.What == "come-up time" || f.What == "water" {
			require.NoError(t, f.Citation.Check())
			lines = append(lines, f.Text(units.US))
		}
	}
	require.Equal(t, []string{"come-up time: missing, at least 30 min for some of these loads published", "water: missing, 3 qt to 4 qt for some of these loads published"}, lines)
}

// short is a finding in the words of the claims: "process time short 10 min".
func short(f verdict.Finding) string {
	return strings.TrimSpace(f.What + " " + f.Kind.String() + " " + f.By.Text(units.US, units.Up))
}

// Claims judged by hand from the printed rows.
func TestCheck(t *testing.T) {
	printed.Table(t, "process/claims.csv").Each(t, func(t *testing.T, r printed.Row) {
		a, err := process.Check(claim(t, r))
		require.NoError(t, err)
		require.Equal(t, r.Text("verdict"), a.Verdict.String(), "%v", a.Findings)
		var found []string
		known := ""
		for _, f := range a.Findings {
			found = append(found, short(f))
			known += f.Known.Text
			if f.Kind == verdict.Short || f.Kind == verdict.Over || f.Kind == verdict.Different && a.Verdict != verdict.NotPublished {
				require.NoError(t, f.Citation.Check(), f.String())
				require.True(t, f.Wanted.IsStated())
			}
		}
		require.Equal(t, r.Text("findings"), strings.Join(found, "; "))
		require.Equal(t, r.Has("known"), known != "")
		require.Contains(t, known, r.Text("known"))
		require.Equal(t, r.Text("governs"), governs(a))
		require.Equal(t, a.Verdict == verdict.NotPublished, a.Refusal.Missing != 0)
		require.Greater(t, len(a.Cautions), 1)
		require.True(t, a.Cautions[0].Deciding)
		if a.Governing != (process.Schedule{}) {
			require.Subset(t, a.Cautions, a.Governing.Cautions())
		}
	})
}

func governs(a process.Assessment) string {
	if a.Governing == (process.Schedule{}) {
		return ""
	}
	return fmt.Sprintf("%s, %v min", units.Text(a.Governing.Pressure, units.PSI, 0), a.Governing.Process.Minutes())
}

// A recipe that states the published figures meets them; one second, one quantum of pressure or one minute of venting less falls short, and no
// amount of anything else mends that. Over every published row.
func TestCheckOfEveryRow(t *testing.T) {
	for _, s := range process.Schedules() {
		exact := of(s)
		requireVerdict(t, exact, verdict.Met)
		for name, less := range map[string]func(*process.Claim){
			"process time": func(c *process.Claim) { c.Process.Value -= time.Second },
			"nanosecond":   func(c *process.Claim) { c.Process.Value-- },
			"pressure":     func(c *process.Claim) { c.Pressure.Value-- },
			"vent time":    func(c *process.Claim) { c.Vent.Value -= time.Nanosecond },
		} {
			c := exact
			less(&c)
			requireVerdict(t, c, verdict.NotMet)
			for _, more := range []func(*process.Claim){
				func(c *process.Claim) { c.Pressure.Value = max(c.Pressure.Value, 15*units.PSI) },
				func(c *process.Claim) { c.Vent.Value += time.Hour },
			} {
				if c := c; name != "pressure" && name != "vent time" {
					more(&c)
					requireVerdict(t, c, verdict.NotMet)
				}
			}
		}
		for _, omit := range []func(*process.Claim){
			func(c *process.Claim) { c.Product = 0 }, func(c *process.Claim) { c.Pack = 0 }, func(c *process.Claim) { c.Jar = 0 },
			func(c *process.Claim) { c.Gauge = 0 }, func(c *process.Claim) { c.Altitude.Given = false },
			func(c *process.Claim) { c.Pressure = units.Stated[units.Pressure]{} }, func(c *process.Claim) { c.Process.Given = false },
			func(c *process.Claim) { c.Vent.Given = false },
		} {
			c := exact
			omit(&c)
			requireVerdict(t, c, verdict.CannotTell)
		}
	}
}

// of is a recipe that states what is published.
func of(s process.Schedule) process.Claim {
	c := process.Claim{
		Product: s.Product, Pack: s.Pack, Jar: s.Jar, Gauge: s.Gauge, Altitude: units.State(lowest(s.Band)),
		Pressure: units.State(s.Pressure), Process: units.State(s.Process), Vent: units.State(s.Vent), Headspace: units.State(s.Headspace),
	}
	if s.ComeUp != 0 {
		c.ComeUp = units.State(s.ComeUp)
	}
	if s.Water.Volume != 0 {
		c.Water = units.State(s.Water.Volume)
	}
	return c
}

func requireVerdict(t *testing.T, c process.Claim, want verdict.Verdict) {
	t.Helper()
	a, err := process.Check(c)
	require.NoError(t, err)
	require.Equal(t, want, a.Verdict, "%v", a.Findings)
}

func max[T units.Quantity](a, b T) T {
	if a > b {
		return a
	}
	return b
}

func TestCheckRefusesFiguresBelowZero(t *testing.T) {
	for _, c := range []process.Claim{
		{Pressure: units.State(-units.PSI)}, {Process: units.State(-time.Minute)}, {Vent: units.State(-time.Nanosecond)},
		{ComeUp: units.State(-time.Minute)}, {Headspace: units.State(-units.Inch)}, {Water: units.State(-units.Quart)},
	} {
		a, err := process.Check(c)
		require.ErrorIs(t, err, units.ErrRange)
		require.Zero(t, a.Verdict)
	}
}

// TestMoreIsNotBetter: a claim beyond the published figure is said to be that, never praised.
func TestMoreIsNotBetter(t *testing.T) {
	a, err := process.Check(process.Claim{
		Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Weighted,
		Altitude: units.State(4350 * units.Foot), Pressure: units.State(15 * units.PSI),
		Process: units.State(110 * time.Minute), Vent: units.State(10 * time.Minute),
	})
	require.NoError(t, err)
	require.Equal(t, verdict.More, a.Verdict)
	require.Len(t, a.Findings, 1)
	require.Equal(t, "process time: 110 min stated, 100 min published, over by 10 min", a.Findings[0].String())
}
