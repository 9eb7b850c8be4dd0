package smoke

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
)

// citationOf is a row's citation: its source by key.
func citationOf(r printed.Row) [3]string {
	return [3]string{r.Text("source"), r.Text("place"), r.Text("basis")}
}

func keyed(c cite.Citation) [3]string {
	return [3]string{c.Source.Key(), c.Where, c.Basis.String()}
}

// figure is a temperature printed in Fahrenheit, Celsius or both: own is the one in the source's own scale, Fahrenheit
// unless the row says otherwise, other the one beside it. The two of a row are one, rounded.
func figure(t *testing.T, r printed.Row, name string) (own, other units.Temperature) {
	t.Helper()
	var c, f units.Temperature
	var err error
	if r.Has(name + "_c") {
		c = celsius(t, r, name+"_c")
	}
	if r.Has(name + "_f") {
		f, err = units.TemperatureOf(r.Decimal(name+"_f"), units.FahrenheitScale)
		require.NoError(t, err)
	}
	if !f.IsSet() {
		return c, f
	}
	if c.IsSet() {
		printed.Within(t, r, name+"_c", f.In(units.CelsiusScale, 6))
	}
	return f, c
}

// upTo is an upper limit as printed.
func upTo(own, other units.Temperature) units.Figure {
	switch {
	case !own.IsSet():
		return units.Figure{}
	case !other.IsSet():
		return units.AtMost(own)
	}
	return units.AtMost(own).Also(units.AtMost(other))
}

func within(r printed.Row) time.Duration {
	if !r.Has("within_h") {
		return 0
	}
	return time.Duration(r.Int("within_h")) * time.Hour
}

func TestCoolingRulesAreThePrintedOnes(t *testing.T) {
	type row struct {
		Steps    [2]CoolingStep
		Citation [3]string
	}
	inPrint, inCode := map[string]row{}, map[string]row{}
	for _, r := range printed.Table(t, "smoke/cooling-rules.csv") {
		rule := inPrint[r.Text("id")]
		rule.Citation = citationOf(r)
		from, fromAlso := figure(t, r, "from")
		to, toAlso := figure(t, r, "to")
		if r.Text("own") == "C" && fromAlso.IsSet() {
			from, fromAlso, to, toAlso = fromAlso, from, toAlso, to
		}
		rule.Steps[r.Int("step")-1] = CoolingStep{from, to, fromAlso, toAlso, within(r), r.Text("counts_from") == "all"}
		inPrint[r.Text("id")] = rule
	}
	for _, rule := range CoolingRules() {
		require.NoError(t, rule.Citation.Check(), rule.ID)
		require.NotEmpty(t, rule.Fish)
		require.NotEmpty(t, rule.Place)
		inCode[rule.ID.String()] = row{rule.Steps, keyed(rule.Citation)}
	}
	require.Empty(t, cmp.Diff(inPrint, inCode))
	require.Equal(t, cite.Read, DefaultCoolingRule().Citation.Basis)
	CoolingRules()[0].ID = 0
	require.Equal(t, Cool2And4, DefaultCoolingRule().ID, "the slice is the caller's own")
}

func TestStorageRulesAreThePrintedOnes(t *testing.T) {
	type row struct {
		Pack     Pack
		AtMost   units.Temperature
		Printed  units.Figure
		Days     int
		Home     bool
		Citation [3]string
	}
	inPrint, inCode := map[string]row{}, map[string]row{}
	for _, r := range printed.Table(t, "smoke/storage-rules.csv") {
		own, other := figure(t, r, "at_most")
		rule := row{AtMost: own, Printed: upTo(own, other), Home: r.Text("home") == "yes", Citation: citationOf(r)}
		if r.Has("pack") {
			pack, err := ParsePack(r.Text("pack"))
			require.NoError(t, err)
			rule.Pack = pack
		}
		if r.Has("days") {
			rule.Days = int(r.Int("days"))
		}
		inPrint[r.Text("id")] = rule
	}
	all := StorageRules()
	for i, rule := range all {
		require.NoError(t, rule.Citation.Check(), rule.ID)
		require.NotEmpty(t, rule.Fish)
		require.NotEmpty(t, rule.Place)
		require.True(t, rule.AtMost.IsSet() || rule.Days > 0, rule.ID)
		inCode[rule.ID.String()] = row{rule.Pack, rule.AtMost, rule.Printed, rule.Days, rule.Home, keyed(rule.Citation)}
		if i > 0 {
			colder := all[i-1]
			require.True(t, !rule.AtMost.IsSet() || !rule.AtMost.Below(colder.AtMost), "coldest first: %s", rule.ID)
			require.True(t, rule.AtMost.IsSet() || colder.AtMost.IsSet() || rule.Days >= colder.Days, "then the shortest: %s", rule.ID)
		}
	}
	require.Empty(t, cmp.Diff(inPrint, inCode))
	all[0].ID = 0
	require.Equal(t, Store36, StorageRules()[0].ID, "the slice is the caller's own")
}

func TestChamberRulesAreThePrintedOnes(t *testing.T) {
	type row struct {
		AtLeast, AtMost  units.Temperature
		Printed          units.Figure
		Within, OrWithin time.Duration
		Citation         [3]string
	}
	inPrint, inCode := map[string]row{}, map[string]row{}
	for _, r := range printed.Table(t, "smoke/chamber-rules.csv") {
		low, _ := figure(t, r, "at_least")
		high, other := figure(t, r, "at_most")
		asPrinted := upTo(high, other)
		if low.IsSet() {
			asPrinted = units.Between(low, high)
		}
		var orWithin time.Duration
		if r.Has("or_within_h") {
			orWithin = time.Duration(r.Int("or_within_h")) * time.Hour
		}
		inPrint[r.Text("id")] = row{low, high, asPrinted, within(r), orWithin, citationOf(r)}
	}
	for _, rule := range ChamberRules() {
		require.NoError(t, rule.Citation.Check(), rule.ID)
		require.NotEmpty(t, rule.Of)
		require.NotEmpty(t, rule.Place)
		found, err := FindChamberRule(rule.ID)
		require.NoError(t, err)
		require.Equal(t, rule, found)
		inCode[rule.ID.String()] = row{rule.AtLeast, rule.AtMost, rule.Printed, rule.Within, rule.OrWithin, keyed(rule.Citation)}
	}
	require.Empty(t, cmp.Diff(inPrint, inCode))
	ChamberRules()[0].ID = 0
	require.Equal(t, Cold90, ChamberRules()[0].ID, "the slice is the caller's own")
}

// The tested losses and those between are tested; a millionth outside is not.
func TestJarLossIsThePrintedRange(t *testing.T) {
	least, most := units.One, units.Ratio(0)
	for _, r := range printed.Table(t, "smoke/jar-loss.csv") {
		loss := quantity(t, r.Decimal("loss_pct"), units.Percent)
		j, err := CheckJarLoss(loss)
		require.NoError(t, err)
		require.Equal(t, verdict.Met, j.Verdict)
		require.Equal(t, citationOf(r), keyed(j.Citation))
		least, most = min(least, loss), max(most, loss)
	}
	for _, c := range []struct {
		loss   units.Ratio
		tested bool
	}{{least, true}, {most, true}, {least - units.PartsPerMillion, false}, {most + units.PartsPerMillion, false}, {0, false}, {units.One, false}} {
		j, err := CheckJarLoss(c.loss)
		require.NoError(t, err)
		require.Equal(t, map[bool]verdict.Verdict{true: verdict.Met, false: verdict.NotPublished}[c.tested], j.Verdict, "%v", c.loss)
		require.Equal(t, []units.Ratio{c.loss, least, most}, []units.Ratio{j.Loss, j.Least, j.Most})
		require.Equal(t, !c.tested, j.Cautions[0] == lossUntested, "%v", c.loss)
		for _, caution := range j.Cautions {
			require.NoError(t, caution.Citation.Check(), caution.Text)
		}
	}
	for _, loss := range []units.Ratio{-1, units.One + 1, -units.Percent} {
		j, err := CheckJarLoss(loss)
		require.ErrorIs(t, err, units.ErrRange)
		require.Zero(t, j)
	}
}

func TestKeepTakesTheStrictestThatWasRead(t *testing.T) {
	air, err := FindStorage(AirPack)
	require.NoError(t, err)
	vacuum, err := FindStorage(LowOxygenPack)
	require.NoError(t, err)
	unstated, err := FindStorage(Pack(0))
	require.NoError(t, err)
	for _, r := range StorageRules() {
		if r.Home && r.Citation.Basis == cite.Read {
			require.False(t, r.AtMost.Below(air.AtMost), r.ID)
			require.True(t, r.Days == 0 || r.Days >= air.Days, r.ID)
		}
	}
	require.Equal(t, []StorageRuleID{Store36, Life14}, []StorageRuleID{air.Temperature.ID, air.Time.ID})
	require.Equal(t, cite.Recalled, tenDays.Citation.Basis)
	require.Contains(t, air.Cautions, tenDays, "a stricter one from memory is named")
	require.Zero(t, vacuum.Days)
	require.Zero(t, vacuum.Time)
	require.Equal(t, air.AtMost, vacuum.AtMost)
	require.Equal(t, vacuumVariance, vacuum.Cautions[0])
	unstated.Pack = LowOxygenPack
	require.Equal(t, vacuum, unstated, "what is not stated is not given the benefit of air")
	_, err = FindStorage(LowOxygenPack + 1)
	require.ErrorIs(t, err, units.ErrUnknown)
}
