package smoke

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
)

// judgeStore judges what the record shows of the fish once it was cold: no warmer than its storage, and no longer in it than
// its days. Frozen time does not count as days.
func (d *Day) judgeStore(all []verdict.Finding, r Record) []verdict.Finding {
	for i, core := range r.Cores {
		cooked, _ := cookedAt(core)
		cold, found := coldAt(core, cooked, d.Storage.AtMost)
		if d.Cold.Given = found && (i == 0 || d.Cold.Given); d.Cold.Given {
			d.Cold.Value = max(d.Cold.Value, cold)
		}
		if !found {
			all = append(all, d.neverCold(r, i, cooked)...)
			continue
		}
		all = append(all, d.warmAgain(r, i, cold)...)
	}
	if !d.Cold.Given {
		d.Cold.Value = 0
	}
	d.ReadyFrom = d.Cold
	if h := r.Marks.Handled; h.Given && (!d.Cold.Given || h.Value < d.Cold.Value) {
		d.ReadyFrom = h
	}
	return d.judgeKept(all, r)
}

// coldAt is when cooked fish first comes to a temperature.
func coldAt(core series.Series[units.Temperature], cooked time.Duration, to units.Temperature) (time.Duration, bool) {
	last, _ := core.Last()
	after, err := core.Slice(cooked, last.At)
	if err != nil {
		return 0, false
	}
	at, found, _ := after.FirstAtOrBelow(to)
	return at, found
}

// neverCold is a record that ends before the fish is as cold as its storage: too warm once any cooling would have been over.
func (d *Day) neverCold(r Record, probe int, cooked time.Duration) []verdict.Finding {
	core := r.Cores[probe]
	last, _ := core.Last()
	f := d.Storage.notStated()
	f.What, f.When = r.named("storage", probe), units.State(series.Stretch{From: cooked, To: last.At})
	if last.At-cooked > longestCooling {
		f.Kind, f.Verdict, f.Stated, f.By = verdict.TooWarm, verdict.NotMet, units.Exactly(last.Value), apart(last.Value, d.Storage.AtMost)
	}
	return []verdict.Finding{f}
}

// warmAgain finds every time in which fish that was cold is warmer than its storage, and the gaps that could hide one.
func (d *Day) warmAgain(r Record, probe int, cold time.Duration) (all []verdict.Finding) {
	core, limit := r.Cores[probe], d.Storage.AtMost
	var open *verdict.Finding
	for i := 0; i < core.Len(); i++ {
		a, _ := core.At(i)
		if a.At < cold {
			continue
		}
		if before, ok := core.At(i - 1); ok && before.At >= cold && a.At-before.At > r.MaxGap {
			all = append(all, unseen(r.named("readings", probe), series.Stretch{From: before.At, To: a.At}, r.MaxGap, verdict.CannotTell))
			open = nil
		}
		switch {
		case !a.Value.Above(limit):
			open = nil
		case open == nil:
			all = append(all, verdict.Finding{
				Rule: RuleKeep, What: r.named("storage", probe), Kind: verdict.TooWarm, Verdict: verdict.NotMet, When: units.State(moment(a.At)),
				Stated: units.Exactly(a.Value), Wanted: d.Storage.wanted(), By: apart(a.Value, limit), Citation: d.Storage.Temperature.Citation,
			})
			open = &all[len(all)-1]
		default:
			open.When.Value.To = a.At
			if by := apart(a.Value, limit); a.Value.Above(temperatureIn(open.Stated.Low)) {
				open.Stated, open.By = units.Exactly(a.Value), by
			}
		}
	}
	return all
}

// temperatureIn is the temperature that an amount holds, not set where it holds another thing.
func temperatureIn(a units.Amount) units.Temperature {
	t, _ := units.As[units.Temperature](a)
	return t
}

// judgeKept judges how long the fish was kept by the end of the record, from when it was ready.
func (d *Day) judgeKept(all []verdict.Finding, r Record) []verdict.Finding {
	if !d.ReadyFrom.Given {
		return all
	}
	kept := time.Duration(0)
	for _, core := range r.Cores {
		last, _ := core.Last()
		if after, err := core.Slice(d.ReadyFrom.Value, last.At); err == nil {
			unfrozen, _ := after.Above(units.Fahrenheit(0))
			kept = max(kept, unfrozen)
		}
	}
	if kept <= 0 {
		return all
	}
	wanted, from := units.AtMost(units.Count(d.Storage.Days)).With("days"), d.Storage.Time.Citation
	if d.Storage.Days == 0 {
		wanted, from = units.InWords("frozen"), vacuumVariance.Citation
	}
	days := int((kept + day - 1) / day) // a started day counts
	switch {
	case r.Marks.Pack == 0:
		all = append(all, missing(RulePack, "pack"))
	case days > max(1, d.Storage.Days): // a sealed pack is eaten on the day, or frozen
		f := tooManyDays(days, d.Storage.Days, wanted, from)
		f.When = units.State(series.Stretch{From: d.ReadyFrom.Value, To: d.ReadyFrom.Value + kept})
		all = append(all, f)
	}
	return all
}

const day = 24 * time.Hour
