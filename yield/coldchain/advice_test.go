package coldchain_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
	"github.com/stretchr/testify/require"
)

func cooling(d time.Duration, from, to float64) logged.Segment {
	return logged.Ramp(d, units.Fahrenheit(from), units.Fahrenheit(to))
}

// Five days at 45 °F are within the short rule for raw fish, which begins at 50 °F, and past eight others: a narrow
// question is answered as one.
func TestNarrowTermsAreNamed(t *testing.T) {
	s := logged.Record(t, logged.Flat(60*hour, 45), logged.Flat(60*hour, 45))
	said := func(terms coldchain.Terms) (rules, hazards bool) {
		for _, c := range exposed(t, s, terms).Cautions {
			rules = rules || strings.Contains(c.Text, "only against the rules asked for")
			hazards = hazards || strings.Contains(c.Text, "only the hazards asked for")
		}
		return rules, hazards
	}
	narrow := coldchain.Terms{Rules: []coldchain.Rule{coldchain.RawReadyToEat}}
	require.Equal(t, verdict.Met, exposed(t, s, narrow).Verdict)
	require.Equal(t, verdict.NotMet, exposed(t, s, coldchain.Terms{}).Verdict)
	for _, c := range []struct {
		terms          coldchain.Terms
		rules, hazards bool
	}{
		{coldchain.Terms{}, false, false}, {narrow, true, false}, {coldchain.Terms{Hazards: []coldchain.Hazard{coldchain.Campylobacter}}, false, true},
		{coldchain.Terms{Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{coldchain.Campylobacter}}, true, true},
		{coldchain.Terms{Rules: []coldchain.Rule{coldchain.KitchenTwoHours}, Hazards: []coldchain.Hazard{coldchain.Campylobacter}}, true, false},
	} {
		rules, hazards := said(c.terms)
		require.Equal(t, []bool{c.rules, c.hazards}, []bool{rules, hazards}, "%+v", c.terms)
	}
}

// Raw fish in ice, cooled from the water, is not condemned by the rules that ask where it lay and how it is eaten; fish
// that was too warm is, in whatever it is past a limit, and whatever was asked for. Both are exceeded, and both are
// told why.
func TestAdviceTellsIcedFromWarm(t *testing.T) {
	const discard, ask, raw, where = "discard it", "ask the extension service before it is cooked", "do not eat this fish raw", "time out of the cold"
	kitchen, table := coldchain.Terms{Product: coldchain.RawFish}, coldchain.Terms{Product: coldchain.RawFish, Rules: []coldchain.Rule{coldchain.TableA2}, Hazards: []coldchain.Hazard{coldchain.Listeria}, MaxGap: 1000 * hour}
	for name, c := range map[string]struct {
		segs  []logged.Segment
		terms coldchain.Terms
		says  []string
		not   []string
		why   string
	}{
		"eight days in ice": {[]logged.Segment{logged.Flat(96*hour, 32), logged.Flat(96*hour, 32)}, kitchen, []string{raw, ask}, []string{discard, where, "toxins"},
			"table A-2, Listeria monocytogenes, after 168 h (read); table A-2, Yersinia enterocolitica, after 24 h (read)."},
		"a day in ice":                {[]logged.Segment{logged.Flat(25*hour, 32)}, kitchen, []string{raw, ask}, []string{discard, "only from memory"}, "Yersinia enterocolitica, after 24 h (read)."},
		"a large fish cools":          {[]logged.Segment{cooling(4*hour, 55, 34)}, kitchen, []string{where, ask, discard}, []string{"Do not eat, smoke", raw}, "kitchen two hours, after 2 h (read)."},
		"and is still cooling":        {[]logged.Segment{cooling(3*hour, 55, 45)}, kitchen, []string{where, ask}, []string{"Do not eat, smoke"}, "kitchen two hours, after 2 h (read)."},
		"three hours at 60":           {[]logged.Segment{logged.Flat(3*hour, 60)}, kitchen, []string{"Do not eat, smoke", discard, "toxins"}, []string{ask}, "kitchen two hours, after 2 h (read)."},
		"a warm refrigerator":         {[]logged.Segment{logged.Flat(20*hour, 43)}, kitchen, []string{"Do not eat, smoke", discard}, []string{ask}, "kitchen two hours, after 2 h (read)."},
		"a refrigerator that swings":  {[]logged.Segment{cooling(6*hour, 44, 42), cooling(14*hour, 42, 43)}, kitchen, []string{"Do not eat, smoke", discard}, []string{ask}, ""},
		"six hours of cooling":        {[]logged.Segment{cooling(6*hour, 60, 40)}, kitchen, []string{where, ask}, []string{"Do not eat, smoke"}, ""},
		"a minute more":               {[]logged.Segment{logged.Flat(time.Minute, 60), cooling(6*hour, 60, 40)}, kitchen, []string{"Do not eat, smoke"}, []string{ask}, ""},
		"warm before the ice":         {[]logged.Segment{cooling(12*hour, 60, 50), cooling(hour, 50, 33)}, kitchen, []string{"Do not eat, smoke", "toxins"}, []string{ask}, ""},
		"above 70 before the ice":     {[]logged.Segment{cooling(3*hour, 71, 33)}, kitchen, []string{"Do not eat, smoke"}, []string{ask}, ""},
		"hot sun":                     {[]logged.Segment{logged.Flat(10*hour, 136), cooling(time.Minute, 136, 33)}, kitchen, []string{"Do not eat, smoke"}, []string{ask}, ""},
		"a week at 40":                {[]logged.Segment{logged.Flat(96*hour, 40), logged.Flat(96*hour, 40)}, kitchen, []string{"Do not eat, smoke", "toxins"}, []string{ask}, "botulinum type E and non-proteolytic B, F, after 168 h (read)"},
		"only Listeria asked, iced":   {[]logged.Segment{logged.Flat(200*hour, 32)}, table, []string{raw, ask}, []string{discard}, "Listeria monocytogenes, after 168 h (read)."},
		"only Listeria asked, warm":   {[]logged.Segment{logged.Flat(40*hour, 45)}, table, []string{"Do not eat, smoke"}, []string{ask}, "Listeria monocytogenes, after 24 h (read)."},
		"cooked fish, days in ice":    {[]logged.Segment{logged.Flat(200*hour, 32)}, coldchain.Terms{Product: coldchain.CookedFish, MaxGap: 1000 * hour}, []string{"Do not eat, smoke", discard}, []string{ask, "toxins"}, "(read)"},
		"fish nobody described, iced": {[]logged.Segment{logged.Flat(200*hour, 32)}, coldchain.Terms{MaxGap: 1000 * hour}, []string{"Do not eat, smoke", discard}, []string{ask, "toxins"}, "(read)"},
		"ice with a gap":              {[]logged.Segment{logged.Flat(96*hour, 32), logged.Flat(96*hour, 32), logged.Flat(97*hour, 32)}, coldchain.Terms{Product: coldchain.RawFish, MaxGap: 96 * hour}, []string{"Do not eat, smoke", discard}, []string{ask, "toxins"}, ""},
	} {
		r := exposed(t, logged.Record(t, c.segs...), c.terms)
		require.Equal(t, verdict.NotMet, r.Verdict, name)
		text := ""
		for _, step := range r.Next {
			text += step.Text(units.Both) + "\n"
		}
		for _, says := range c.says {
			require.Contains(t, text, says, name)
		}
		for _, not := range c.not {
			require.NotContains(t, text, not, name)
		}
		require.Contains(t, why(r), c.why, name)
	}
}

// why names what is exceeded, when it was and whether that was read.
func why(r coldchain.Report) string {
	var all []string
	for _, a := range r.Allowances {
		if a.Verdict != verdict.NotMet {
			continue
		}
		name, basis := a.Rule.String(), "read"
		if a.Hazard != 0 {
			name += ", " + a.Hazard.String()
		}
		if a.FromMemory {
			basis = "from memory"
		}
		all = append(all, fmt.Sprintf("%s, after %s (%s)", name, units.Lasting(a.ExceededAt.Truncate(time.Minute)), basis))
	}
	return strings.Join(all, "; ") + "."
}
