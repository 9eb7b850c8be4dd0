package keeping

import (
	"math"
	"strconv"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// FrozenLife is how long frozen fish stays good by its temperature, as one table prints it: quality, never safety.
// Points stand warmest first; between two the logarithm of the life is a straight line in temperature.
type FrozenLife struct {
	Name     string
	Points   []LifePoint
	Citation cite.Citation
}

// MarshalJSON writes the life as an app shows it.
func (s FrozenLife) MarshalJSON() ([]byte, error) { return wire.Marshal(s) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (s *FrozenLife) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, s) }

// LifePoint is one printed life; Over says that it is printed as "over" that, and it is counted as no more.
type LifePoint struct {
	At   units.Temperature
	Life time.Duration
	Over bool
}

// FrozenLives returns the tables, the newer edition first. The editions differ: at -18 °C fatty fish has 5 months in
// one and 4 in the other. A month counts 30 days. The slice is the caller's own. All are from memory, and say so.
func FrozenLives() []FrozenLife {
	all := append([]FrozenLife(nil), frozenLives...)
	for i := range all {
		all[i].Points = append([]LifePoint(nil), all[i].Points...)
	}
	return all
}

// At returns the life at a temperature, rounded down to the hour and exact at a printed one. Colder than the table it
// is that of the coldest point, which is short of the truth; warmer than the table, or not set, is a units.RangeError,
// as is a table that is not in order.
func (s FrozenLife) At(t units.Temperature) (time.Duration, error) {
	if err := s.check(); err != nil {
		return 0, err
	}
	warmest, coldest := s.Points[0], s.Points[len(s.Points)-1]
	if err := units.CheckTemperature("store of "+s.Name, t, units.Kelvin(1), warmest.At); err != nil {
		return 0, err
	}
	if !t.Above(coldest.At) {
		return coldest.Life, nil
	}
	for _, p := range s.Points {
		if t == p.At {
			return p.Life, nil
		}
	}
	hours := math.Floor(1 / s.knots().rate(t.Celsius()) / 3600)
	return time.Duration(hours) * time.Hour, nil
}

// check refuses a table that no print could hold: fewer than two points, not falling in temperature, or living shorter
// when colder.
func (s FrozenLife) check() error {
	if len(s.Points) < 2 {
		return units.RangeError{What: "number of points of " + s.Name, Got: strconv.Itoa(len(s.Points)), Low: "2"}
	}
	for i, p := range s.Points {
		least := chain.Day
		if i > 0 {
			before := s.Points[i-1]
			if !p.At.Below(before.At) {
				return units.RangeError{
					What: "next point of " + s.Name, Got: p.At.String(), High: before.At.String(), HighExclusive: true,
				}
			}
			least = before.Life
		}
		if p.Life < least || p.Life > 20*chain.Year { // its name is made where it is needed
			return units.CheckDuration("life in "+s.Name, p.Life, least, 20*chain.Year)
		}
	}
	return nil
}

// The rules that a record of frozen fish is held against.
const (
	RuleFrozenLife     verdict.Rule = "keeping.frozen.life"
	RuleFrozenInTable  verdict.Rule = "keeping.frozen.in-table" // never warmer than the table
	RuleFrozenRecorded verdict.Rule = "keeping.frozen.recorded" // no gap longer than the one trusted
)

// FrozenReport is what a record of frozen fish has used of a storage life, of quality. Used is its share. TooWarm is
// the time warmer than the table, counted as at its warmest, which is too little; Unknown that in gaps longer than the
// one trusted, which is not counted. With either the verdict is never Met. Colder is the time colder than the table,
// counted as at its coldest, which is too much.
type FrozenReport struct {
	verdict.Report
	Life    FrozenLife
	Used    units.Ratio `wire:"always"`
	TooWarm time.Duration
	Unknown time.Duration
	Colder  time.Duration
}

// MarshalJSON writes the report as an app shows it.
func (r FrozenReport) MarshalJSON() ([]byte, error) { return wire.Marshal(r) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (r *FrozenReport) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, r) }

// Audit returns what a record used of this life by time-temperature tolerance: the sum of time over life, each straight
// stretch of the record integrated exactly. MaxGap must be above zero; an empty record is series.ErrEmpty and one of a
// single reading, or with one below -80 or above 100 °C (a fault of the probe), a units.RangeError, as is a table that
// is not in order. Used is within 1e-9 of the exact share, rounded up; times outside the table round up to the
// nanosecond. It is of quality: fish past its life is poor, fish within it is no safer.
func (s FrozenLife) Audit(record series.Series[units.Temperature], maxGap time.Duration) (FrozenReport, error) {
	if err := s.check(); err != nil {
		return FrozenReport{}, err
	}
	if err := chain.CheckRecord(record, maxGap); err != nil {
		return FrozenReport{}, err
	}
	before, _ := record.First()
	r, used, knots := FrozenReport{Life: s}, frozenSum{}, s.knots()
	celsius := before.Value.Celsius()
	for i := 1; i < record.Len(); i++ {
		next, _ := record.At(i)
		to := next.Value.Celsius()
		if gap := next.At - before.At; gap > maxGap {
			r.Unknown += gap
		} else {
			used.add(knots, gap.Seconds(), celsius, to)
		}
		before, celsius = next, to
	}
	share, err := units.OfFloat(math.Ceil(used.share*float64(units.One)), units.Ratio(1))
	if err != nil {
		return FrozenReport{}, err
	}
	r.Used, r.TooWarm, r.Colder = share, roundedUp(used.warm), roundedUp(used.cold)
	r.Report = verdict.Of(r.findings(record.LongestGap(), maxGap), r.cautionsOf())
	return r, nil
}

// findings says what the record is not within.
func (r *FrozenReport) findings(gap series.Stretch, maxGap time.Duration) []verdict.Finding {
	if r.Used <= units.One && r.TooWarm == 0 && r.Unknown == 0 {
		return nil
	}
	all := make([]verdict.Finding, 0, 3)
	if r.Used > units.One {
		all = append(all, verdict.Finding{
			Rule: RuleFrozenLife, What: "storage life of " + r.Life.Name, Kind: verdict.TooLong, Verdict: verdict.NotMet,
			Stated: units.Exactly(r.Used), Wanted: units.AtMost(units.One), By: units.AmountOf(r.Used - units.One),
			Citation: r.Life.Citation,
		})
	}
	if r.TooWarm > 0 {
		all = append(all, verdict.Finding{
			Rule: RuleFrozenInTable, What: "time warmer than the table", Kind: verdict.TooWarm, Verdict: verdict.CannotTell,
			Stated: units.Exactly(r.TooWarm), Citation: r.Life.Citation,
		})
	}
	if r.Unknown > 0 {
		all = append(all, verdict.Finding{
			Rule: RuleFrozenRecorded, What: "time between two readings", Kind: verdict.Unobserved, Verdict: verdict.CannotTell,
			When: units.State(gap), Stated: units.Exactly(gap.Length()), Wanted: units.AtMost(maxGap),
			By: units.AmountOf(gap.Length() - maxGap),
		})
	}
	return all
}

func (r *FrozenReport) cautionsOf() []cite.Caution {
	of := func(c cite.Caution) cite.Caution {
		c.Citation = r.Life.Citation
		return c
	}
	all := append(make([]cite.Caution, 0, 4), lifeIsQuality, of(livesFromMemory))
	if r.TooWarm > 0 {
		all = append(all, of(thawedInRecord))
	}
	if r.Unknown > 0 {
		all = append(all, partMissing)
	}
	return all
}

var (
	lifeIsQuality = cite.Caution{
		ID:       "keeping.life-is-quality",
		Text:     "Of quality only: no storage life says that fish is safe, and freezing stops nothing that was there.",
		Citation: federalFrozen,
	}
	livesFromMemory = cite.Caution{
		ID:   "keeping.lives-from-memory",
		Text: "Storage lives are from memory and differ by edition, by fat and by wrapping.",
	}
	thawedInRecord = cite.Caution{
		ID: "keeping.warmer-than-the-table", Deciding: true,
		Text: "Warmer than the table for a time that is counted too low: treat what thawed as raw fish, " +
			"its hours counted against the limits of exposure.",
	}
	partMissing = cite.Caution{
		ID: "keeping.part-missing", Deciding: true,
		Text: "Part of the record is missing and not counted.",
	}
)
