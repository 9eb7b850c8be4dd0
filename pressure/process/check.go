package process

import (
	"sort"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Check holds what a recipe states against the official tables and says which row governs, what falls short, differs, exceeds or is
// left out, by how much and where the published figure is printed. Where the recipe leaves the row open, a figure is
// short only if it is short in every row it may mean. Product, pack, jar, gauge, altitude, pressure, minutes and venting decide, and for
// quarts and smoked fish come-up and water as far as they are printed; headspace is judged only when it is stated. No process published is a
// verdict, not an error; a figure below zero is a units.RangeError. Nothing is rounded: a second short is short.
// Only 25 mm of headspace counts as the inch, and 2.84 L of water as no more than the 3 quarts.
func Check(c Claim) (Assessment, error) {
	if err := c.check(); err != nil {
		return Assessment{}, err
	}
	published, refusal := c.candidates()
	if refusal != nil {
		return Assessment{Verdict: NotPublished, Refusal: *refusal, Findings: beyond(c)}, nil
	}
	findings := c.unset()
	for _, judged := range [...][]Finding{
		pressureFindings(c, published), timeFindings(c, published), waterFindings(c, published), headspaceFindings(c, published),
	} {
		findings = append(findings, judged...)
	}
	sort.SliceStable(findings, func(i, j int) bool { return findings[i].Kind.verdict() > findings[j].Kind.verdict() })
	a := Assessment{Verdict: Meets, Findings: findings}
	if len(findings) > 0 {
		a.Verdict = findings[0].Kind.verdict()
	}
	if len(published) == 1 {
		a.Governing = published[0]
	}
	return a, nil
}

// verdict is what a finding of the kind comes to; the worst one decides.
func (k Kind) verdict() Verdict {
	switch k {
	case Short:
		return FallsShort
	case Different:
		return Differs
	case NotStated:
		return CannotTell
	}
	return Exceeds
}

// unset are the parts of a request that the claim leaves out.
func (c Claim) unset() []Finding {
	var found []Finding
	for _, p := range parts(c.request()) {
		if p.asked == 0 {
			found = append(found, Finding{What: p.missing.String(), Kind: NotStated})
		}
	}
	if !c.Altitude.Given {
		found = append(found, Finding{What: MissingAltitude.String(), Kind: NotStated})
	}
	return found
}

// figure is one published figure to hold a stated one against.
type figure[T units.Quantity | time.Duration] struct {
	what string
	of   func(Schedule) (T, cite.Citation)
	text func(T) string
	off  func(T) string // of a difference, where text is not
	may  bool           // may be more than published
}

// against compares a stated figure with the least and the greatest that the published rows have. A figure that no row prints is
// not judged.
func against[T units.Quantity | time.Duration](f figure[T], stated units.Stated[T], published []Schedule) []Finding {
	low, citation := f.of(published[0])
	high, top := low, citation
	least := low // that is printed
	for _, s := range published[1:] {
		v, from := f.of(s)
		if v < low {
			low, citation = v, from
		}
		if v > high {
			high, top = v, from
		}
		if least == 0 || v > 0 && v < least {
			least = v
		}
	}
	text := f.text(least)
	if least != high {
		text += " to " + f.text(high)
	}
	if low == 0 { // a figure that is not printed is no figure of zero
		text, citation = text+" for some of these loads", top
	}
	if f.off == nil {
		f.off = f.text
	}
	found := Finding{What: f.what, Stated: f.text(stated.Value), Published: text, Citation: citation}
	switch {
	case high == 0:
		return nil
	case !stated.Given:
		found.Kind, found.Stated = NotStated, ""
	case stated.Value < low:
		found.Kind, found.Difference = Short, f.off(low-stated.Value)
	case stated.Value > high && !f.may:
		found.Kind, found.Difference, found.Citation = Over, f.off(stated.Value-high), top
	default:
		return nil
	}
	return []Finding{found}
}
