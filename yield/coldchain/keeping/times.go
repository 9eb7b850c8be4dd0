package keeping

import (
	"sort"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Rule is one printed keeping time, Low to High: after Low it is time, after High it is over. Both are zero where the
// source states no end (NoEnd). AtMost is the warmest that the time is printed for, with Under already too warm; not
// set where the source states none. A month counts 30 days, a year 365.
type Rule struct {
	Food      Food    // as printed; zero for any
	Storage   Storage // as printed
	Printed   string  // "1-2 days"
	Low, High time.Duration
	NoEnd     bool
	AtMost    units.Temperature
	Under     bool
	Note      string
	Citation  cite.Citation
}

// MarshalJSON writes the rule as an app shows it.
func (r Rule) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *Rule) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// SafetyRule is a keeping time after which the food may make ill.
type SafetyRule struct{ Rule }

// QualityRule is a keeping time after which the food may be poor to eat. It says nothing of safety.
type QualityRule struct{ Rule }

// Times is what is published of a food in a storage, each list from the strictest: the shorter Low, then the shorter
// High, then the colder. A list without rules is a time that is not published, and not a time without an end.
type Times struct {
	Food     Food
	Storage  Storage
	Safety   []SafetyRule
	Quality  []QualityRule
	Cautions []cite.Caution
}

// MarshalJSON writes the times as an app shows them.
func (t Times) MarshalJSON() ([]byte, error) { return wire.Marshal(t) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (t *Times) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, t) }

// Find returns every published keeping time of a food in a storage, safety and quality apart, each with the strictest
// first. A food counts as what it is and as what it belongs to: trout as trout, raw, lean and fatty fish. A Food or
// Storage that is not set or not known is a units.RangeError. Refrigerator days are of safety; freezer months are of
// quality only, as is the year of a jar.
func Find(food Food, storage Storage) (Times, error) {
	if err := foodNames.Check(food); err != nil {
		return Times{}, err
	}
	if err := storageNames.Check(storage); err != nil {
		return Times{}, err
	}
	k := Times{Food: food, Storage: storage}
	for _, row := range timeRows {
		if row.storage != storage || !food.countsAs(row.food, storage) {
			continue
		}
		if row.concern == Safety {
			k.Safety = append(k.Safety, SafetyRule{row.rule()})
		} else {
			k.Quality = append(k.Quality, QualityRule{row.rule()})
		}
	}
	sort.SliceStable(k.Safety, func(i, j int) bool { return k.Safety[i].stricter(k.Safety[j].Rule) })
	sort.SliceStable(k.Quality, func(i, j int) bool { return k.Quality[i].stricter(k.Quality[j].Rule) })
	k.Cautions = k.cautionsOf()
	return k, nil
}

func (row timeRow) rule() Rule {
	r := Rule{
		Food: row.food, Storage: row.storage, Printed: row.printed, Low: row.low, High: row.high, NoEnd: row.high == 0,
		AtMost: row.at, Under: row.under, Note: row.note, Citation: row.citation,
	}
	if r.Food == anyFood {
		r.Food = 0
	}
	return r
}

func (r Rule) stricter(than Rule) bool {
	switch {
	case r.NoEnd != than.NoEnd:
		return than.NoEnd
	case r.Low != than.Low:
		return r.Low < than.Low
	case r.High != than.High:
		return r.High < than.High
	}
	return r.AtMost.Below(than.AtMost) || r.AtMost == than.AtMost && r.Under && !than.Under
}
