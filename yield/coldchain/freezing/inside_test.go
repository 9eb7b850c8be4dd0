package freezing

import (
	"math/big"
	"testing"
	"time"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/stretchr/testify/require"
)

// Both ways. Source: Choi and Okos (1986) as printed in Ibarz and Barbosa-Canovas.
func TestFleshCoefficients(t *testing.T) {
	have := map[string]polynomial{"water, specific heat, -40": coldWaterHeat}
	low := map[string]string{"water": "0", "ice": "-40"}
	for name, c := range map[string]constituent{
		"water": liquidWater, "ice": iceItself, "protein": protein, "fat": fat, "carbohydrate": carbohydrate, "ash": ash,
	} {
		have[name+", thermal conductivity, -40"] = c.conductivity
		have[name+", density, -40"] = c.density
		from := low[name]
		if from == "" {
			from = "-40"
		}
		have[name+", specific heat, "+from] = c.heat
	}
	for _, r := range printed.Table(t, "coldchain/choi-okos.csv") {
		key := r.Text("component") + ", " + r.Text("property") + ", " + r.Text("range_low_c")
		read := polynomial{r.Float("c0"), r.Float("c1_per_c"), r.Float("c2_per_c2")}
		if r.Text("used") == "no" {
			require.NotEqual(t, read, have[key], r.String())
			continue
		}
		require.Equal(t, read, have[key], r.String())
		delete(have, key)
	}
	require.Empty(t, have)
}

func TestFleshConstants(t *testing.T) {
	have := map[string]float64{
		"heat of fusion": fusion / 1000, "water bound by protein": bindingProtein, "Tchigeov numerator": tchigeovA, "Tchigeov divisor": tchigeovB,
	}
	from := map[string]cite.Citation{
		"water bound by protein": IdealIce.Citation(), "Tchigeov numerator": TchigeovIce.Citation(), "Tchigeov divisor": TchigeovIce.Citation(),
	}
	for _, r := range printed.Table(t, "coldchain/flesh-constants.csv") {
		if c, ok := from[r.Text("what")]; ok {
			require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(c), r.String())
		}
		require.Equal(t, r.Float("value"), have[r.Text("what")], r.String())
		delete(have, r.Text("what"))
	}
	require.Empty(t, have)
}

// Source: Plank's equation as printed in textbooks; Pham 1986 from memory.
func TestFreezingConstants(t *testing.T) {
	percentOf := func(n float64) units.Ratio {
		x, err := units.OfFloat(n, units.One)
		require.NoError(t, err)
		return x
	}
	means := map[string]float64{
		"mean freezing temperature: constant": phamMean[0], "mean freezing temperature: of the core's end": phamMean[1], "mean freezing temperature: of the medium": phamMean[2],
	}
	for span, c := range map[ratios]cite.Caution{phamBiot: biotOutside, phamStefan: stefanOutside, phamAbove: plankOutside} {
		require.Contains(t, c.Text, units.In(span.low, units.One, 2).String()+" to "+units.In(span.high, units.One, 2).String()+",")
	}
	spans := map[string]ratios{"Biot number": phamBiot, "Stefan number": phamStefan, "Plank number": phamAbove}
	shapes := 0
	for _, r := range printed.Table(t, "coldchain/freezing-constants.csv") {
		what := r.Text("what")
		switch {
		case r.Has("slab"):
			for i, col := range []string{"slab", "cylinder", "sphere"} {
				fraction, ok := new(big.Rat).SetString(r.Text(col))
				require.True(t, ok)
				want, _ := fraction.Float64()
				require.Equal(t, want, map[string]float64{"P": plankTable[i].p, "R": plankTable[i].r, "E": plankTable[i].e}[what], r.String())
			}
			shapes++
		case r.Has("value"):
			require.Equal(t, r.Float("value"), means[what], r.String())
			delete(means, what)
		default:
			require.Equal(t, ratios{percentOf(r.Float("low")), percentOf(r.Float("high"))}, spans[what], r.String())
			delete(spans, what)
		}
	}
	require.Equal(t, 3, shapes)
	require.Empty(t, means)
	require.Empty(t, spans)
}

// Both ways. Source: extension services and household freezer manuals, as each row says.
func TestFreezerRules(t *testing.T) {
	rules := LoadRules()
	rows := printed.Table(t, "coldchain/freezer-rules.csv")
	require.Len(t, rows, len(rules)+1)
	for i, r := range rows[:len(rules)] {
		rule := rules[i]
		require.Equal(t, r.Text("for"), rule.For, r.String())
		require.True(t, units.In(rule.PerCubicFoot, units.Pound, 9).Equal(r.Decimal("lb_per_cubic_foot")), r.String())
		require.Equal(t, r.Text("used") == "named", rule.Named, r.String())
		require.Equal(t, logged.Provenance(r), logged.ProvenanceOf(rule.Citation), r.String())
		want := time.Duration(0)
		if r.Has("hours") {
			want = logged.Hours(t, r, "hours")
		}
		require.Equal(t, want, rule.Within, r.String())
	}
	last := rows[len(rules)]
	require.Equal(t, logged.Provenance(last), logged.ProvenanceOf(freezerSet))
	require.Equal(t, last.Int("setting_f"), int64(freezerSetting))
	require.Equal(t, logged.Hours(t, last, "hours"), freezerAhead)
	require.Contains(t, setBefore.Text, units.Fahrenheit(freezerSetting).Text(units.FahrenheitScale, 0))
	require.Contains(t, setBefore.Text, units.Lasting(freezerAhead)+" before")
}
