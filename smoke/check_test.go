package smoke

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// claimOf is the recipe that a row tells: an empty cell is not stated.
func claimOf(t *testing.T, r printed.Row) Claim {
	t.Helper()
	warmth := func(col string) (stated units.Stated[units.Temperature]) {
		if r.Has(col) {
			v, err := units.TemperatureOf(r.Decimal(col), units.FahrenheitScale)
			require.NoError(t, err)
			stated = units.State(v)
		}
		return stated
	}
	length := func(col string) (stated units.Stated[time.Duration]) {
		if r.Has(col) {
			d, err := time.ParseDuration(r.Text(col))
			require.NoError(t, err)
			stated = units.State(d)
		}
		return stated
	}
	c := Claim{
		Method: map[string]Method{"hot": HotSmoke, "cold": ColdSmoke}[r.Text("method")],
		Air:    warmth("air_f"), Time: length("time"), Core: warmth("core_f"), Hold: length("hold"), Keep: warmth("keep_f"),
	}
	if r.Has("pack") {
		pack, err := ParsePack(r.Text("pack"))
		require.NoError(t, err)
		c.Pack = pack
	}
	if r.Has("days") {
		c.Days = units.State(int(r.Int("days")))
	}
	return c
}

// brief is a finding as the table writes it: what, kind and by how much, degrees in Fahrenheit alone.
func brief(f RecipeFinding) string {
	s := f.What + " " + f.Kind.String()
	if degrees, _, both := strings.Cut(f.Difference, " ("); both {
		number, unit, _ := strings.Cut(degrees, " ")
		return s + " " + decimal.RequireFromString(number).String() + " " + unit
	}
	if f.Difference != "" {
		s += " " + f.Difference
	}
	return s
}

func TestInventedRecipes(t *testing.T) {
	meets := 0
	printed.Table(t, "smoke/claims.csv").Each(t, func(t *testing.T, r printed.Row) {
		claim := claimOf(t, r)
		a, err := CheckAgainst(limit(t, r.Text("limit")), claim)
		require.NoError(t, err)
		var found []string
		for i, f := range a.Findings {
			found = append(found, brief(f))
			require.True(t, i == 0 || f.Kind.verdict() <= a.Findings[i-1].Kind.verdict(), "the worst comes first")
			if !f.Citation.IsZero() {
				require.NoError(t, f.Citation.Check())
			}
		}
		require.Equal(t, r.Text("findings"), strings.Join(found, "; "))
		require.Equal(t, r.Text("verdict"), a.Verdict.String())
		require.Equal(t, a.Verdict == RecipeNotPublished, a.Refusal != "")
		require.Equal(t, claim.Method == ColdSmoke, a.Governing == CoreLimit{})
		for _, c := range a.Cautions() {
			require.NoError(t, c.Citation.Check(), c.Text)
		}
		if a.Verdict == RecipeMeets {
			meets++
		}
	})
	require.LessOrEqual(t, 2*meets, len(printed.Table(t, "smoke/claims.csv")), "as many to reject as to accept")
}

// A known figure is named and does not help; the smoker's air is sent to the oven.
func TestKnownFiguresAreNamed(t *testing.T) {
	claim := Claim{
		Method: HotSmoke, Air: units.State(units.Fahrenheit(190)), Core: units.State(units.Fahrenheit(160)), Hold: units.State(30 * time.Minute),
		Pack: AirPack, Keep: units.State(units.Fahrenheit(35)), Days: units.State(10),
	}
	a, err := Check(claim)
	require.NoError(t, err)
	require.Len(t, a.Findings, 2)
	require.Contains(t, a.Findings[0].Known.Text, "HOT-160-PNW")
	require.Equal(t, cite.PNW238, a.Findings[0].Known.Citation.Source)
	require.Equal(t, finishInOven, a.Findings[1].Known)
	claim.Core = units.State(units.Fahrenheit(161))
	a, err = Check(claim)
	require.NoError(t, err)
	require.Zero(t, a.Findings[0].Known)
}

// What is the limit itself in whole degrees Fahrenheit is told so: the print has 36 °F beside 2.2 °C.
func TestWholeDegreesAreNamed(t *testing.T) {
	for keep, known := range map[float64]bool{36: true, 35.97: false, 37: false} {
		c := Claim{Method: HotSmoke, Keep: units.State(units.Fahrenheit(keep))}
		a, err := Check(c)
		require.NoError(t, err)
		require.Equal(t, "storage", a.Findings[0].What)
		require.Equal(t, known, strings.Contains(a.Findings[0].Known.Text, "whole degrees, 36 °F"), keep)
		jars, err := CheckForJars(c, units.State(20*units.Percent))
		require.NoError(t, err)
		require.Equal(t, a.Findings[0].Known, jars.Findings[0].Known)
	}
	a, err := Check(Claim{Method: ColdSmoke, Air: units.State(units.Fahrenheit(90))})
	require.NoError(t, err)
	require.Contains(t, a.Findings[0].Known.Text, "whole degrees, 90 °F")
}

// Figures of a recipe that do not fit each other are not told as published.
func TestOwnFiguresAreNotPublished(t *testing.T) {
	a, err := Check(Claim{
		Method: HotSmoke, Air: units.State(units.Fahrenheit(205)), Core: units.State(units.Fahrenheit(210)), Hold: units.State(7 * time.Hour), Time: units.State(6 * time.Hour),
		Pack: AirPack, Keep: units.State(units.Fahrenheit(35)), Days: units.State(10),
	})
	require.NoError(t, err)
	require.Len(t, a.Findings, 2)
	require.Equal(t, "air of the smoker: 205.00 °F (96.11 °C) with a core of 210.00 °F (98.89 °C) stated, short by 5.00 °F (2.78 K)", a.Findings[0].String())
	require.Equal(t, "time in the smoker: 6 h with a hold of 7 h stated, short by 1 h", a.Findings[1].String())
	require.Zero(t, a.Findings[1].Citation)
}

// A caller's own limit is warned of like a published one: it is lower than the strictest, no home guidance and not in print.
func TestOwnLimitIsWarnedOf(t *testing.T) {
	own := CoreLimit{AtLeast: units.Fahrenheit(150), Hold: 30 * time.Minute}
	a, err := CheckAgainst(own, Claim{Method: HotSmoke})
	require.NoError(t, err)
	require.Subset(t, a.Cautions(), holdCautions(own))
	require.Contains(t, a.Cautions(), stricterExists)
}

func TestClaimsRefused(t *testing.T) {
	for name, c := range map[string]Claim{
		"unknown method":         {Method: ColdSmoke + 1},
		"unknown pack":           {Method: HotSmoke, Pack: VacuumPack + 1},
		"core above boiling":     {Method: HotSmoke, Core: units.State(units.Fahrenheit(225))},
		"core not a number":      {Method: HotSmoke, Core: units.State(units.Celsius(math.NaN()))},
		"Celsius as Fahrenheit":  {Method: HotSmoke, Air: units.State(units.Celsius(301))},
		"storage in an oven":     {Method: HotSmoke, Keep: units.State(units.Celsius(51))},
		"colder than any winter": {Method: ColdSmoke, Air: units.State(units.Celsius(-51))},
		"negative time":          {Method: HotSmoke, Time: units.State(-time.Second)},
		"negative hold":          {Method: HotSmoke, Hold: units.State(-time.Second)},
		"negative days":          {Method: HotSmoke, Days: units.State(-1)},
	} {
		a, err := Check(c)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.Zero(t, a, name)
	}
	a, err := CheckAgainst(CoreLimit{AtLeast: units.Fahrenheit(140), Hold: 30 * time.Minute}, Claim{Method: HotSmoke})
	require.ErrorIs(t, err, units.ErrRange)
	require.Zero(t, a)
}

// Hotter, longer, colder and sooner never makes a verdict worse; a figure left out never makes it better than stated within the limits.
func TestSaferClaimsAreNotWorse(t *testing.T) {
	for _, core := range []float64{140, 160, 180, 200} {
		for _, hold := range []time.Duration{0, 29 * time.Minute, 30 * time.Minute, time.Hour} {
			for _, keep := range []float64{-5, 33, 36, 45} {
				for _, days := range []int{0, 14, 15} {
					for pack := PackNotStated; pack <= VacuumPack; pack++ {
						c := Claim{Method: HotSmoke, Core: units.State(units.Fahrenheit(core)), Hold: units.State(hold), Pack: pack, Keep: units.State(units.Fahrenheit(keep)), Days: units.State(days)}
						base := verdictOf(t, c)
						safer := []Claim{c, c, c, c}
						safer[0].Core = units.State(units.Fahrenheit(core + 5))
						safer[1].Hold = units.State(hold + time.Minute)
						safer[2].Keep = units.State(units.Fahrenheit(keep - 1))
						safer[3].Days = units.State(max(0, days-1))
						for _, s := range safer {
							require.LessOrEqual(t, verdictOf(t, s), base, "%v to %v", c, s)
						}
						c.Core = units.Stated[units.Temperature]{}
						require.NotEqual(t, RecipeMeets, verdictOf(t, c))
					}
				}
			}
		}
	}
}

func verdictOf(t *testing.T, c Claim) RecipeVerdict {
	t.Helper()
	a, err := Check(c)
	require.NoError(t, err)
	return a.Verdict
}
