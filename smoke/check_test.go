package smoke

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
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
	var smoking Smoking
	if r.Has("method") {
		var err error
		smoking, err = ParseSmoking(r.Text("method"))
		require.NoError(t, err)
	}
	c := Claim{
		Smoking: smoking,
		Air:     warmth("air_f"), Time: length("time"), Core: warmth("core_f"), Hold: length("hold"), Keep: warmth("keep_f"),
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

// brief is a finding as the table writes it: what, kind and by how much, degrees in Fahrenheit only.
func brief(f verdict.Finding) string {
	s := f.What + " " + f.Kind.String()
	if d, ok := units.As[units.TemperatureChange](f.By); ok {
		return s + " " + units.In(d, units.FahrenheitDegrees, 6).String() + " F°"
	}
	if f.By.IsStated() {
		s += " " + f.By.String()
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
			require.True(t, i == 0 || f.Verdict <= a.Findings[i-1].Verdict, "the worst comes first")
			if !f.Citation.IsZero() {
				require.NoError(t, f.Citation.Check())
			}
		}
		require.Equal(t, r.Text("findings"), strings.Join(found, "; "))
		require.Equal(t, r.Text("verdict"), a.Verdict.String())
		require.Equal(t, a.Verdict == verdict.NotPublished, a.Refusal != (cite.Caution{}))
		require.Equal(t, claim.Smoking == ColdSmoked, a.Governing == CoreLimit{})
		for _, c := range a.Cautions {
			require.NoError(t, c.Citation.Check(), c.Text)
		}
		if a.Verdict == verdict.Met {
			meets++
		}
	})
	require.LessOrEqual(t, 2*meets, len(printed.Table(t, "smoke/claims.csv")), "as many to reject as to accept")
}

// A known figure is named and does not help; the smoker's air is sent to the oven.
func TestKnownFiguresAreNamed(t *testing.T) {
	claim := Claim{
		Smoking: HotSmoked, Air: units.State(units.Fahrenheit(190)), Core: units.State(units.Fahrenheit(160)), Hold: units.State(30 * time.Minute),
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

// A printed pair is one figure rounded twice: either reading meets it, and a hair beyond both does not.
func TestEitherPrintedReadingMeets(t *testing.T) {
	for stated, meets := range map[units.Temperature]bool{
		units.Fahrenheit(36): true, units.Celsius(2.2): true, units.Fahrenheit(36.001): false, units.Celsius(2.3): false,
	} {
		for _, jars := range []bool{false, true} {
			c := Claim{
				Smoking: HotSmoked, Core: units.State(units.Celsius(82.2)), Hold: units.State(30 * time.Minute), Pack: AirPack,
				Keep: units.State(stated), Days: units.State(1),
			}
			if jars {
				c = Claim{Smoking: HotSmoked, ForJars: true, Loss: units.State(20 * units.Percent), Keep: units.State(stated), Days: units.State(1)}
			}
			require.Equal(t, meets, verdictOf(t, c).Passes(), "%v %v", stated, jars)
		}
	}
	for stated, meets := range map[units.Temperature]bool{
		units.Fahrenheit(180): true, units.Celsius(82.2): true, units.Celsius(82.199): false, units.Fahrenheit(179.9): false,
	} {
		a, err := Check(Claim{Smoking: HotSmoked, Core: units.State(stated), Hold: units.State(30 * time.Minute)})
		require.NoError(t, err)
		require.Equal(t, meets, a.Findings[0].Rule != RuleCore, "%v", stated)
	}
	for stated, meets := range map[units.Temperature]bool{units.Fahrenheit(90): true, units.Celsius(32.2): true, units.Celsius(32.3): false} {
		a, err := Check(Claim{Smoking: ColdSmoked, Air: units.State(stated), Time: units.State(20 * time.Hour)})
		require.NoError(t, err)
		require.Equal(t, meets, a.Findings[0].Rule != RuleAir, "%v", stated)
	}
}

// A caller's own limit is not met by the second reading of another, and a second reading that is no rounding is refused.
func TestOwnLimitHasNoOtherReading(t *testing.T) {
	own := DefaultCoreLimit()
	own.AtLeast = units.Fahrenheit(185)
	a, err := CheckAgainst(own, Claim{Smoking: HotSmoked, Core: units.State(units.Celsius(82.2)), Hold: units.State(30 * time.Minute)})
	require.ErrorIs(t, err, units.ErrRange)
	require.Zero(t, a)
	own.Printed = units.Figure{}
	a, err = CheckAgainst(own, Claim{Smoking: HotSmoked, Core: units.State(units.Celsius(82.2)), Hold: units.State(30 * time.Minute)})
	require.NoError(t, err)
	require.Equal(t, RuleCore, a.Findings[0].Rule)
}

// Figures of a recipe that do not fit each other are not told as published.
func TestOwnFiguresAreNotPublished(t *testing.T) {
	a, err := Check(Claim{
		Smoking: HotSmoked, Air: units.State(units.Fahrenheit(205)), Core: units.State(units.Fahrenheit(210)), Hold: units.State(7 * time.Hour), Time: units.State(6 * time.Hour),
		Pack: AirPack, Keep: units.State(units.Fahrenheit(35)), Days: units.State(10),
	})
	require.NoError(t, err)
	require.Len(t, a.Findings, 2)
	require.Equal(t, "air of the smoker: 205 °F (96.1 °C) stated, more than 210 °F (98.9 °C) for the core that is stated wanted, short by 5 F° (2.8 C°)", a.Findings[0].String())
	require.Equal(t, "time in the smoker: 6 h stated, at least 7 h for the hold that is stated wanted, short by 1 h", a.Findings[1].String())
	require.Zero(t, a.Findings[1].Citation)
}

// A caller's own limit is warned of like a published one: it is lower than the strictest, no home guidance and not in print.
func TestOwnLimitIsWarnedOf(t *testing.T) {
	own := CoreLimit{AtLeast: units.Fahrenheit(150), Hold: 30 * time.Minute}
	a, err := CheckAgainst(own, Claim{Smoking: HotSmoked})
	require.NoError(t, err)
	require.Subset(t, a.Cautions, holdCautions(own, 0))
	require.Contains(t, a.Cautions, stricterExists)
}

func TestClaimsRefused(t *testing.T) {
	for name, c := range map[string]Claim{
		"unknown method":         {Smoking: ColdSmoked + 1},
		"unknown pack":           {Smoking: HotSmoked, Pack: LowOxygenPack + 1},
		"core above boiling":     {Smoking: HotSmoked, Core: units.State(units.Fahrenheit(225))},
		"core not a number":      {Smoking: HotSmoked, Core: units.State(units.Celsius(math.NaN()))},
		"Celsius as Fahrenheit":  {Smoking: HotSmoked, Air: units.State(units.Celsius(301))},
		"storage in an oven":     {Smoking: HotSmoked, Keep: units.State(units.Celsius(51))},
		"colder than any winter": {Smoking: ColdSmoked, Air: units.State(units.Celsius(-51))},
		"negative time":          {Smoking: HotSmoked, Time: units.State(-time.Second)},
		"negative hold":          {Smoking: HotSmoked, Hold: units.State(-time.Second)},
		"negative days":          {Smoking: HotSmoked, Days: units.State(-1)},
	} {
		a, err := Check(c)
		require.True(t, errors.Is(err, units.ErrRange) || errors.Is(err, units.ErrUnknown), name)
		require.Zero(t, a, name)
	}
	a, err := CheckAgainst(CoreLimit{AtLeast: units.Fahrenheit(140), Hold: 30 * time.Minute}, Claim{Smoking: HotSmoked})
	require.ErrorIs(t, err, units.ErrRange)
	require.Zero(t, a)
}

// Hotter, longer, colder and sooner never makes a verdict worse; a figure left out never makes it better than stated within the limits.
func TestSaferClaimsAreNotWorse(t *testing.T) {
	for _, core := range []float64{140, 160, 180, 200} {
		for _, hold := range []time.Duration{0, 29 * time.Minute, 30 * time.Minute, time.Hour} {
			for _, keep := range []float64{-5, 33, 36, 45} {
				for _, days := range []int{0, 14, 15} {
					for pack := Pack(0); pack <= LowOxygenPack; pack++ {
						c := Claim{Smoking: HotSmoked, Core: units.State(units.Fahrenheit(core)), Hold: units.State(hold), Pack: pack, Keep: units.State(units.Fahrenheit(keep)), Days: units.State(days)}
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
						require.NotEqual(t, verdict.Met, verdictOf(t, c))
					}
				}
			}
		}
	}
}

func verdictOf(t *testing.T, c Claim) verdict.Verdict {
	t.Helper()
	a, err := Check(c)
	require.NoError(t, err)
	return a.Verdict
}
