package spoilage

import (
	"math"
	"slices"
	"sort"
	"strings"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
	"example.org/lakelarder/yield/coldchain/internal/chain"
)

// Life is one published life of fish in melting ice, from the catch to the end of what people will eat,
// as printed: from Low to High, the same where one figure is printed. Gutted is stated where the source
// states it. Lives are comparable.
type Life struct {
	Fish     string
	Waters   string // "temperate" or "tropical" where the source parts them
	Gutted   units.Stated[bool]
	Low      time.Duration
	High     time.Duration
	Note     string
	Citation cite.Citation
}

// MarshalJSON writes the life as an app shows it.
func (l Life) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (l *Life) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// Lives returns every published life, in the order of the table. The slice is the caller's own.
func Lives() []Life {
	all := make([]Life, 0, len(lifeTable))
	for _, r := range lifeTable {
		l := Life{
			Fish: r.fish, Waters: r.waters, Low: tenthDays(r.low), High: tenthDays(r.high), Note: r.note,
			Citation: r.citation,
		}
		if r.belly != notStated {
			l.Gutted = units.State(r.belly == gutted)
		}
		all = append(all, l)
	}
	return all
}

func tenthDays(n int64) time.Duration { return time.Duration(n) * (chain.Day / 10) }

// FindLives returns the published lives that may speak of a fish, the shortest first: that one is the one to
// go by. The row of a kind speaks of all its fish and theirs of the kind: "rainbow trout" and "lake trout"
// are held to "trout" as well. Where gutted is stated, rows that state the other are left out; rows that
// state nothing always stand. Capitals do not matter. A fish of which nothing is published, and one that is no
// longer fresh ("smoked salmon"), is a units.UnknownError: for fresh fish "freshwater fish" is the row to take then.
func FindLives(fish string, gutted units.Stated[bool]) ([]Life, error) {
	fish = strings.ToLower(strings.TrimSpace(fish))
	for _, done := range [...]string{"smoked", "salted", "dried", "cooked", "canned", "frozen"} {
		if strings.Contains(fish, done) {
			return nil, unknownFish(fish)
		}
	}
	var rows []Life
	for _, l := range Lives() {
		speaks := l.Fish == fish || strings.HasSuffix(fish, " "+l.Fish) || strings.HasSuffix(l.Fish, " "+fish)
		if speaks && !(l.Gutted.Given && gutted.Given && l.Gutted != gutted) {
			rows = append(rows, l)
		}
	}
	if len(rows) == 0 {
		return nil, unknownFish(fish)
	}
	sort.SliceStable(rows, func(i, j int) bool { return rows[i].Low < rows[j].Low })
	return rows, nil
}

// unknownFish says that no life on ice is published here for a fish.
func unknownFish(fish string) error {
	var known []string
	for _, r := range lifeTable {
		if !slices.Contains(known, r.fish) {
			known = append(known, r.fish)
		}
	}
	return units.UnknownError{What: "fresh fish with a life on ice", Got: fish, Known: known}
}

// LifeLeft is what a record has left of a published life, on ice from now on: Low of the shortest printed,
// High of the longest, below zero where the fish is that far past it. LifeAt turns either into the life at
// another temperature.
type LifeLeft struct {
	Life     Life
	Low      time.Duration `wire:"always"`
	High     time.Duration `wire:"always"`
	Cautions []cite.Caution
}

// MarshalJSON writes what is left as an app shows it.
func (l LifeLeft) MarshalJSON() ([]byte, error) { return wire.Marshal(l) }

// UnmarshalJSON reads what MarshalJSON writes, strictly.
func (l *LifeLeft) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, l) }

// Left returns what is left of a published life after the record. It says when fish stops being good, never
// that it is safe; below zero it is overdue. The life must be above zero, its High not below its Low, and the time
// used not below zero: otherwise a units.RangeError.
func (s Age) Left(life Life) (LifeLeft, error) {
	if err := units.CheckDuration("life used", s.Used, 0, math.MaxInt64); err != nil {
		return LifeLeft{}, err
	}
	if err := units.CheckDuration("life on ice", life.Low, 1, math.MaxInt64); err != nil {
		return LifeLeft{}, err
	}
	if err := units.CheckDuration("longest life on ice", life.High, life.Low, math.MaxInt64); err != nil {
		return LifeLeft{}, err
	}
	left := LifeLeft{Life: life, Low: life.Low - s.Used, High: life.High - s.Used}
	of := func(c cite.Caution) cite.Caution {
		c.Citation = life.Citation
		return c
	}
	left.Cautions = append(make([]cite.Caution, 0, mostCautions), s.Cautions...)
	if left.Low <= 0 {
		left.Cautions = append(left.Cautions, of(lifeUsedUp))
	}
	if life.Citation.Unverified() {
		left.Cautions = append(left.Cautions, of(lifeFromMemory))
	}
	if !life.Gutted.Given {
		left.Cautions = append(left.Cautions, of(guttingNotStated))
	}
	return left, nil
}
