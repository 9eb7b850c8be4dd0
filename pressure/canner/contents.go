package canner

import (
	"encoding"
	"strconv"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// Contents is one kind of jar that stood in the canner, as far as it is stated; a part that is not stated is as
// scheduled.
type Contents struct {
	Product process.Product
	Pack    process.Pack
	Jar     process.Jar
	Jars    int                // how many; zero: not stated
	Liquid  units.Stated[bool] // whether liquid was poured over the fish
}

// MarshalJSON writes the contents in the words that UnmarshalJSON reads.
func (c Contents) MarshalJSON() ([]byte, error) { return wire.Marshal(c) }

// UnmarshalJSON reads contents strictly.
func (c *Contents) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }

// Noticed is what somebody saw of a run and wrote down. It changes no verdict, unless the
// counts contradict each other. The zero Noticed is nothing.
type Noticed struct {
	Room         int  // jars of this kind that the canner takes, as Fit counts them; zero: not stated
	Siphoned     int  // jars that lost liquid
	WeightSticks bool // the weight did not jiggle or rock freely
}

// MarshalJSON writes what was noticed in the words that UnmarshalJSON reads.
func (n Noticed) MarshalJSON() ([]byte, error) { return wire.Marshal(n) }

// UnmarshalJSON reads what was noticed strictly.
func (n *Noticed) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, n) }

// mostJars is more than any canner takes.
const mostJars = 100

func (r *Run) checkContents() error {
	for _, n := range [...]struct {
		what  string
		count int
	}{{"room for jars", r.Noticed.Room}, {"siphoned jars", r.Noticed.Siphoned}} {
		if n.count < 0 || n.count > mostJars {
			return units.RangeError{What: n.what, Got: strconv.Itoa(n.count), Low: "0", High: strconv.Itoa(mostJars)}
		}
	}
	for i := range r.Contents {
		c := &r.Contents[i]
		for _, kind := range [...]encoding.TextMarshaler{c.Product, c.Pack, c.Jar} {
			if _, err := kind.MarshalText(); err != nil {
				return err
			}
		}
		if n := c.Jars; n < 0 || n > mostJars {
			return units.RangeError{
				What: "jars in the canner", Got: strconv.Itoa(n), Low: "0", High: strconv.Itoa(mostJars),
			}
		}
	}
	return nil
}

// loaded: what stood in the canner is what the schedule is for, all of it.
func (j *judgement[T]) loaded() {
	s := &j.run.Schedule
	for i := range j.run.Contents {
		c := &j.run.Contents[i]
		for _, part := range [...]struct {
			what, got, wanted string
			differs           bool
		}{
			{"product in the canner", c.Product.String(), s.Product.String(), c.Product != 0 && c.Product != s.Product},
			{"pack in the canner", c.Pack.String(), s.Pack.String(), c.Pack != 0 && c.Pack != s.Pack},
			{"jar in the canner", c.Jar.String(), s.Jar.String(), c.Jar != 0 && c.Jar != s.Jar},
			{"liquid over the fish", "poured in", "none", c.Liquid.Value && s.Product != process.Tuna},
		} {
			if part.differs {
				j.add(verdict.Finding{
					Rule: RuleContents, What: part.what, Kind: verdict.Different, Verdict: verdict.CannotTell,
					Stated: units.InWords(part.got), Wanted: units.InWords(part.wanted), Citation: s.Citation,
				}, putRight)
			}
		}
	}
}

// counted: no more jars stood in the canner than it takes, and no more lost liquid than stood in it. Jars are counted
// where every kind states how many.
func (j *judgement[T]) counted() {
	n, jars, known := j.run.Noticed, 0, len(j.run.Contents) > 0
	for i := range j.run.Contents {
		jars += j.run.Contents[i].Jars
		known = known && j.run.Contents[i].Jars > 0
	}
	for _, one := range [...]struct {
		what         string
		stated, most int
		known        bool
	}{
		{"jars in the canner", jars, n.Room, n.Room > 0},
		{"jars that lost liquid", n.Siphoned, jars, known},
		{"jars that lost liquid", n.Siphoned, n.Room, !known && n.Room > 0},
	} {
		if one.known && one.stated > one.most {
			j.impossible(verdict.Finding{
				Rule: RuleContents, What: one.what, Stated: units.Exactly(units.Count(one.stated)),
				Wanted: units.AtMost(units.Count(one.most)), By: units.AmountOf(units.Count(one.stated - one.most)),
				Citation: countSource,
			})
		}
	}
}

// noticed are remarks: they change no verdict.
func (j *judgement[T]) noticed() {
	n, jars := j.run.Noticed, 0
	for i := range j.run.Contents {
		jars += j.run.Contents[i].Jars
	}
	remark := verdict.Finding{Kind: verdict.Different, Verdict: verdict.Met}
	if n.Room > 0 && jars > 0 && 2*jars <= n.Room {
		f := remark
		f.Rule, f.What, f.Kind, f.Citation = RuleHalfFilled, "jars in the canner", verdict.Short, smallLoad.Citation
		f.Stated = units.Exactly(units.Count(jars))
		f.Wanted = units.MoreThan(units.Count(n.Room / 2)).With("or jars of water beside them")
		j.add(f, Step{})
	}
	if n.Siphoned > 0 {
		f := remark
		f.Rule, f.What, f.Citation = RuleSiphoned, "jars that lost liquid", usualCaution
		f.Stated, f.Wanted = units.Exactly(units.Count(n.Siphoned)), units.Exactly(units.Count(0))
		j.add(f, Step{})
	}
	if n.WeightSticks {
		f := remark
		f.Rule, f.What, f.Citation = RuleWeight, "weight", rhythm.Citation
		f.Stated, f.Wanted = units.InWords("sticks"), units.InWords("jiggling or rocking freely")
		j.add(f, Step{})
	}
}
