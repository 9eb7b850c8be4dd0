package keeping

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// JarReport is what the signs of a jar demand together: the gravest of them. Its verdict is NotMet with a sign that
// demands something, and else CannotTell, for a jar without a sign is proven by its process only. Signs are those that
// were given, as published.
type JarReport struct {
	verdict.Report
	Action JarAction
	Signs  []SpoilageSign
}

// MarshalJSON writes the report as an app shows it.
func (r JarReport) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *JarReport) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// CheckJar returns what the signs on a home-canned jar demand together. SinceCanned is the time since its process
// ended, 0 to 20 years, otherwise a units.RangeError: within 24 h a lid that did not seal may be processed again,
// later, or where the time is left out, the jar is discarded. A sign that is not set is a units.UnsetError, an unknown
// one a units.UnknownError. No sign demands nothing and proves nothing: botulinum toxin shows none. How long to boil
// before anyone tastes, at an altitude, is answered by BoilBeforeEating of pressure/process.
func CheckJar(sinceCanned units.Stated[time.Duration], signs ...JarSign) (JarReport, error) {
	if err := units.CheckDuration("time since the canning", sinceCanned.Value, 0, 20*chain.Year); err != nil {
		return JarReport{}, err
	}
	r := JarReport{Action: NoAction}
	var findings []verdict.Finding
	for _, sign := range signs {
		if err := jarSigns.Check(sign); err != nil {
			return JarReport{}, err
		}
		row := jarSignTable[sign-1]
		if sign == LidUnsealed && (!sinceCanned.Given || sinceCanned.Value > processAgain) {
			row.Action, row.Citation = BoilThenDiscard, unsealedLate
		}
		r.Signs = append(r.Signs, row)
		r.Action = max(r.Action, row.Action)
		if row.Action > NoAction {
			findings = append(findings, verdict.Finding{
				Rule: row.ID, What: "jar", Kind: verdict.Different, Verdict: verdict.NotMet,
				Stated: units.InWords(sign.String()), Citation: row.Citation,
			})
		}
	}
	cautions := append(make([]cite.Caution, 0, 3), noSign, boilBefore)
	if r.Action >= DiscardShut {
		cautions = append(cautions, discardClean)
	}
	r.Report = verdict.Of(findings, cautions)
	if len(findings) == 0 {
		r.Verdict = verdict.CannotTell
	}
	return r, nil
}

var (
	noSign = cite.Caution{
		ID: "keeping.toxin-without-sign", Deciding: true,
		Text: "Botulinum toxin has neither smell, taste nor sight: a jar without a sign is safe only by its process " +
			"and its record.",
		Citation: cite.Citation{Where: "jars without a sign", Basis: cite.Practice},
	}
	boilBefore = cite.Caution{
		ID: "keeping.boil-before", Deciding: true,
		Text: "Where any step of the canning is in doubt, boil before anyone tastes, " +
			"for the minutes that the canning guide prints for the altitude. It does not mend a jar with a sign.",
		Citation: chain.ReadIn(cite.USDAGuide1Rev1994, "For Safety's Sake"),
	}
	discardClean = cite.Caution{
		ID:       "keeping.clean-with-bleach",
		Text:     "Wear gloves; whatever the food touched is cleaned with a solution of bleach, as the guide describes.",
		Citation: cite.Citation{Source: cite.USDAGuide1Rev2015, Where: "spoiled food, bleach method", Basis: cite.Recalled},
	}
)
