package smoke

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/smoke/moistair"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// everyCaution is what the results of the package warn of.
func everyCaution(t *testing.T) map[cite.Caution]bool {
	t.Helper()
	all := map[cite.Caution]bool{}
	add := func(cautions []cite.Caution, err error) {
		require.NoError(t, err)
		require.NotEmpty(t, cautions)
		for _, c := range cautions {
			all[c] = true
		}
	}
	for _, l := range CoreLimits() {
		add(holdCautions(l, 0), nil)
	}
	cold, film := air(t, 4, 70*units.Percent, units.Atmosphere), moistair.SmokerFilm()
	slow, err := moistair.FilmAlong(cold, units.MetrePerSecond/2)
	require.NoError(t, err)
	add(slow.Cautions(), nil)
	pellicle, err := DryPellicle(units.Kilogram, 600*units.SquareCentimetre, cold, film, units.One)
	add(pellicle.Cautions, err)
	lean, err := LossForWaterPhaseSalt(100*units.Gram, units.Gram, 77*units.Gram, 35*units.PerMille)
	add(lean.Cautions, err)
	add(Plan{OverDried: true}.cautions(slow, false), nil)
	add(Assessment{}.readyToEat(), nil)
	p, err := Pasteurise(fahrenheit(t, time.Minute, 160))
	add(p.Cautions, err)
	for _, rule := range CoolingRules() {
		c, err := AuditCooling(rule, recorded(time.Minute, fahrenheit(t, time.Minute, 160)))
		add(c.Cautions, err)
	}
	for pack := Pack(0); pack <= LowOxygenPack; pack++ {
		s, err := FindStorage(pack)
		add(s.Cautions, err)
	}
	j, err := CheckJarLoss(0)
	add(j.Cautions, err)
	for _, loss := range []units.Ratio{0, 20 * units.Percent} {
		a, err := Check(Claim{Smoking: HotSmoked, ForJars: true, Loss: units.State(loss)})
		add(a.Cautions, err)
	}
	return all
}

// Every figure in a caution is in print where the caution says, and every caution that is listed is said.
func TestFiguresInCautionsAreThePrintedOnes(t *testing.T) {
	rows := printed.Table(t, "smoke/cautions.csv")
	said := make([]bool, len(rows))
	for c := range everyCaution(t) {
		require.NoError(t, c.Citation.Check(), c.Text)
		require.Equal(t, strings.TrimSpace(c.Text), c.Text)
		rest := c.Text
		for i, r := range rows {
			if citationOf(r) == keyed(c.Citation) && strings.Contains(rest, r.Text("figure")) {
				rest = strings.Replace(rest, r.Text("figure"), "", 1)
				said[i] = true
			}
		}
		require.False(t, strings.ContainsAny(rest, "0123456789"), "a figure without a row: %q in %q, %v", rest, c.Text, keyed(c.Citation))
	}
	for i, r := range rows {
		require.True(t, said[i], "no caution says %s of %s", r.Text("figure"), r)
	}
}
