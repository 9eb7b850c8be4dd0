package smoke

import (
	"encoding/json"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

// ruleOf is the rule that a table names.
func ruleOf[R any, ID interface{ ~uint8 }](t *testing.T, name string, parse func(string) (ID, error), find func(ID) (R, error)) R {
	t.Helper()
	id, err := parse(name)
	require.NoError(t, err)
	rule, err := find(id)
	require.NoError(t, err)
	return rule
}

// Recipes with the figures of a source exactly as printed, in either of its scales, meet the rules of that source; a little
// less, warmer or longer and they do not.
func TestQuotedRecipesMeetTheirOwnRules(t *testing.T) {
	unsound := 0
	printed.Table(t, "smoke/quoted-recipes.csv").Each(t, func(t *testing.T, r printed.Row) {
		by := Rules{
			Core:    limit(t, r.Text("core_rule")),
			Cooling: coolingRule(t, r.Text("cooling_rule")),
			Keep:    ruleOf(t, r.Text("keep_rule"), ParseStorageRuleID, FindStorageRule),
			Life:    ruleOf(t, r.Text("life_rule"), ParseStorageRuleID, FindStorageRule),
		}
		var c Claim
		require.NoError(t, json.Unmarshal([]byte(r.Text("claim")), &c))
		a, err := CheckBy(by, c)
		require.NoError(t, err)
		require.True(t, a.Verdict.Passes(), "%v %v", a.Verdict, a.Findings)
		for _, worse := range lessThan(c) {
			a, err := CheckBy(by, worse)
			require.NoError(t, err)
			require.False(t, a.Verdict.Passes(), "%+v", worse)
			unsound++
		}
	})
	require.GreaterOrEqual(t, unsound, 40)
}

// lessThan are the claims that state a little less, or leave out what decides.
func lessThan(c Claim) (all []Claim) {
	add := func(given bool, change func(*Claim)) {
		if given {
			worse := c
			change(&worse)
			all = append(all, worse)
		}
	}
	add(true, func(c *Claim) { c.Smoking = 0 })
	add(true, func(c *Claim) { c.Smoking = ColdSmoked })
	add(c.Core.Given, func(c *Claim) { c.Core.Value = c.Core.Value.Add(-units.Kelvins / 2) })
	add(c.Core.Given, func(c *Claim) { c.Core.Given = false })
	add(c.Hold.Given, func(c *Claim) { c.Hold.Value -= time.Minute })
	add(c.Keep.Given, func(c *Claim) { c.Keep.Value = c.Keep.Value.Add(units.Kelvins / 2) })
	add(c.Days.Given, func(c *Claim) { c.Days.Value += 19 })
	add(c.ToCore.Given, func(c *Claim) { c.ToCore.Value = 8*time.Hour + time.Minute })
	add(c.Oven.Given, func(c *Claim) { c.Oven.Value.After.Value += time.Minute })
	add(c.Oven.Given, func(c *Claim) { c.Oven.Value.After.Given = false })
	add(c.Cooling[0].To.IsSet(), func(c *Claim) { c.Cooling[0].Within += time.Minute })
	add(c.Cooling[1].To.IsSet(), func(c *Claim) { c.Cooling[1].To = c.Cooling[1].To.Add(units.Kelvins) })
	add(c.Wait.Given, func(c *Claim) { c.Wait.Value += time.Minute })
	add(c.Wait.Given, func(c *Claim) { c.Refrigerated = false })
	add(c.Loss.Given, func(c *Claim) { c.Loss.Value -= units.Percent / 10 })
	return all
}

// A bare number where a quantity was meant is refused by its size.
func TestBareNumbersAreRefused(t *testing.T) {
	hot := fahrenheit(t, 10*time.Minute, 185, 185, 185, 185)
	for name, f := range map[string]func() error{
		"hold of 30":     func() error { _, err := Check(Claim{Hold: units.State(time.Duration(30))}); return err },
		"time of 5":      func() error { _, err := Check(Claim{Time: units.State(time.Duration(5))}); return err },
		"three hours":    func() error { _, err := Check(Claim{ToCore: units.State(time.Duration(3))}); return err },
		"wait of 24":     func() error { _, err := Check(Claim{ForJars: true, Wait: units.State(time.Duration(24))}); return err },
		"loss of 15":     func() error { _, err := Check(Claim{ForJars: true, Loss: units.State(units.Ratio(15))}); return err },
		"jar loss of 20": func() error { _, err := CheckJarLoss(20); return err },
		"gap of 10": func() error {
			_, err := AuditHold(DefaultCoreLimit(), Record{Cores: []core{hot}, MaxGap: 10})
			return err
		},
		"cooling in 2": func() error {
			_, err := Check(Claim{Cooling: [2]CoolingStep{{To: units.Celsius(4), Within: 2}}})
			return err
		},
		"oven after 1": func() error {
			_, err := Check(Claim{Oven: units.State(Oven{After: units.State(time.Duration(1))})})
			return err
		},
		"a mark at 120": func() error {
			_, err := Audit(Rules{}, Record{Cores: []core{hot}, MaxGap: time.Minute, Marks: Marks{InOven: units.State(time.Duration(120))}})
			return err
		},
		"piece of 25": func() error {
			_, err := AuditHold(DefaultCoreLimit(), Record{Cores: []core{hot}, MaxGap: time.Minute, Piece: units.State(FilletSlab(25, 25, TwoFaces, units.Celsius(4)))})
			return err
		},
		"oven before out": func() error {
			_, err := Audit(Rules{}, Record{Cores: []core{hot}, MaxGap: time.Minute, Marks: Marks{OutOfSmoker: units.State(2 * time.Hour), InOven: units.State(time.Hour)}})
			return err
		},
	} {
		require.ErrorIs(t, f(), units.ErrRange, name)
	}
	require.ErrorContains(t, func() error { _, err := Check(Claim{Hold: units.State(time.Duration(30))}); return err }(), "was the unit left out?")
	// At the least size that is believed it is a short hold, and no slip.
	a, err := Check(Claim{Smoking: HotSmoked, Hold: units.State(time.Second)})
	require.NoError(t, err)
	require.False(t, a.Verdict.Passes())
}

// A probe that sits badly is said first.
func TestBadSiteStandsFirst(t *testing.T) {
	hot := fahrenheit(t, 10*time.Minute, 185, 185, 185, 185)
	for _, site := range []Site{NearBone, NearRack, InTail} {
		r := recorded(10*time.Minute, hot)
		r.Site = site
		h, err := AuditHold(DefaultCoreLimit(), r)
		require.NoError(t, err)
		require.Equal(t, badSite, h.Cautions[0])
		c, err := AuditCooling(DefaultCoolingRule(), r)
		require.NoError(t, err)
		require.Equal(t, badSite, c.Cautions[0])
	}
	for _, site := range []Site{0, InThickest} {
		r := recorded(10*time.Minute, hot)
		r.Site = site
		h, err := AuditHold(DefaultCoreLimit(), r)
		require.NoError(t, err)
		require.NotContains(t, h.Cautions, badSite)
	}
	_, err := AuditHold(DefaultCoreLimit(), Record{Cores: []core{hot}, MaxGap: time.Minute, Site: InTail + 1})
	require.ErrorIs(t, err, units.ErrUnknown)
}
