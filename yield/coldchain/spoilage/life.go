package spoilage

import (
	"fmt"
	"sort"
	"strings"
	"time"

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

// Lives returns every published life, in the order of the table. The slice is the caller's own.
func Lives() []Life {
	all := make([]Life, 0, len(lifeTable))
	for _, r := range lifeTable {
		l := Life{Fish: r.fish, Waters: r.waters, Low: tenthDays(r.low), High: tenthDays(r.high), Note: r.note, Citation: r.citation}
		if r.belly != notStated {
			l.Gutted = units.State(r.belly == gutted)
		}
		all = append(all, l)
	}
	return all
}

func tenthDays(n int64) time.Duration { return time.Duration(n) * (chain.Day / 10) }

// LivesOf returns the published lives that may speak of a fish, the shortest first: that one is the one to
// go by. The row of a kind speaks of all its fish and theirs of the kind: "rainbow trout" and "lake trout"
// are held to "trout" as well. Where gutted is stated, rows that state the other are left out; rows that
// state nothing always stand. Capitals do not matter. A fish of which nothing is published, and one that is no
// longer fresh ("smoked salmon"), is an UnknownFishError: for fresh fish "freshwater fish" is the row to take then.
func LivesOf(fish string, gutted units.Stated[bool]) ([]Life, error) {
	fish = strings.ToLower(strings.TrimSpace(fish))
	for _, done := range [...]string{"smoked", "salted", "dried", "cooked", "canned", "frozen"} {
		if strings.Contains(fish, done) {
			return nil, UnknownFishError{Fish: fish}
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
		return nil, UnknownFishError{Fish: fish}
	}
	sort.SliceStable(rows, func(i, j int) bool { return rows[i].Low < rows[j].Low })
	return rows, nil
}

// UnknownFishError says that no life on ice is published here for a fish.
type UnknownFishError struct {
	Fish string
}

// Error names the fish and those there are.
func (e UnknownFishError) Error() string {
	known := make([]string, 0, len(lifeTable))
	seen := map[string]bool{}
	for _, r := range lifeTable {
		if !seen[r.fish] {
			seen[r.fish] = true
			known = append(known, r.fish)
		}
	}
	return fmt.Sprintf("no published life on ice for %q: expected fresh fish, one of %s", e.Fish, strings.Join(known, ", "))
}

// LifeLeft is what a record has left of a published life, on ice from now on: Low of the shortest printed,
// High of the longest, below zero where the fish is that far past it. LifeAt turns either into the life at
// another temperature.
type LifeLeft struct {
	Life     Life
	Low      time.Duration
	High     time.Duration
	Cautions []cite.Caution
}

// Left returns what is left of a published life after the record. It says when fish stops being good, never
// that it is safe. The life must be above zero and its High not below its Low: otherwise a units.RangeError.
func (s Age) Left(life Life) (LifeLeft, error) {
	if life.Low <= 0 || life.High < life.Low {
		return LifeLeft{}, units.RangeError{What: "life on ice", Got: life.Low.String() + " to " + life.High.String(), Low: "above 0s, and rising"}
	}
	left := LifeLeft{Life: life, Low: life.Low - s.Used, High: life.High - s.Used}
	left.Cautions = append(left.Cautions, s.Cautions...)
	if left.Low <= 0 {
		left.Cautions = append(left.Cautions, cite.Caution{Text: "the shortest published life is used up: do not keep this fish", Citation: life.Citation})
	}
	if life.Citation.Unverified() {
		left.Cautions = append(left.Cautions, cite.Caution{Text: "the life on ice is from memory: check the print before relying on it", Citation: life.Citation})
	}
	if !life.Gutted.Given {
		left.Cautions = append(left.Cautions, cite.Caution{Text: "the source does not say whether the fish was gutted; fish not gutted spoils sooner", Citation: life.Citation})
	}
	return left, nil
}
