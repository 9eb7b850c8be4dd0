package coldchain_test

import (
	"encoding/json"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/units/verdict"
	"example.org/lakelarder/yield/coldchain"
	"example.org/lakelarder/yield/coldchain/internal/logged"
)

// faulty makes a record of the bytes as Drawn does, with what broken probes show and with standing still among it.
func faulty(data []byte) []series.Reading[units.Temperature] {
	all := logged.Drawn(data)
	codes := [...]units.Temperature{units.Celsius(-127), units.Celsius(85), units.Celsius(-40), units.Fahrenheit(1800), units.Celsius(-18), units.Celsius(0)}
	for i := range all {
		switch n := int(data[2*i+1]) % 16; {
		case n < len(codes):
			all[i].Value = codes[n]
		case n < 10 && i > 0:
			all[i].Value = all[i-1].Value
		}
	}
	return all
}

// gateTerms are terms by number, with and without stays, air and thickness.
func gateTerms(n uint8) coldchain.Terms {
	terms := coldchain.Terms{MaxGap: time.Hour, Use: coldchain.Use(n % 5), Product: coldchain.Product(n / 5 % 3)}
	if n&1 != 0 {
		terms.Thickness = units.State(8 * units.Centimetre)
	}
	if n&2 != 0 {
		terms.Stays = []coldchain.Stay{
			{When: series.Stretch{To: 40 * minute}, In: coldchain.InIce},
			{When: series.Stretch{From: 50 * minute, To: 3 * hour}, In: coldchain.InRefrigerator, Air: units.Celsius(4)},
			{When: series.Stretch{From: 3 * hour, To: 5 * hour}, In: coldchain.Out, Air: units.Celsius(33)},
		}
	}
	if n&4 != 0 {
		terms.Air = []series.Reading[units.Temperature]{{Value: units.Celsius(20)}, {At: hour, Value: units.Celsius(5)}, {At: 2 * hour, Value: units.Celsius(5)}}
	}
	if n&8 != 0 {
		terms.Later = units.State(verdict.NotMet)
	}
	return terms
}

// The gate of the watch is that of the audit, at every prefix, and after it was saved.
func FuzzGateIsOne(f *testing.F) {
	for n := uint8(0); n < 32; n += 3 {
		f.Add([]byte{10, 200, 120, 3, 230, 90, 40, 80, 90, 200, 1, 255, 60, 255, 30, 16, 40, 17, 41, 33, 60, 50, 61, 66, 62, 1, 90, 82}, n)
		f.Add([]byte{10, 1, 10, 11, 20, 12, 30, 13, 40, 14, 50, 15, 60, 27, 60, 31, 70, 46, 80, 47, 20, 62, 20, 63}, n)
		f.Add([]byte{10, 4, 10, 27, 20, 27, 15, 31, 40, 30, 50, 31, 60, 27, 80, 31, 100, 46, 101, 47, 20, 62, 20, 63}, n)
	}
	f.Fuzz(func(t *testing.T, data []byte, n uint8) {
		readings := faulty(data)
		if len(readings) > 14 {
			readings = readings[:14]
		}
		terms := gateTerms(n)
		live, err := coldchain.Watch(terms)
		require.NoError(t, err)
		for i, reading := range readings {
			live, err = live.Next(reading)
			require.NoError(t, err)
			text, err := json.Marshal(live)
			require.NoError(t, err)
			var saved coldchain.Running
			require.NoError(t, json.Unmarshal(text, &saved), "%s", text)
			got, err := saved.Report()
			want, fault := coldchain.Audit(logged.Made(t, readings[:i+1]), terms)
			require.Equal(t, fault == nil, err == nil, "%v %v", fault, err)
			require.Empty(t, cmp.Diff(want, got), "after %d readings", i+1)
			again, _ := live.Report()
			require.Empty(t, cmp.Diff(want, again))
		}
	})
}

// Adding doubt never improves a verdict: every honest record and every use, with each thing that may be doubted.
func TestDoubtNeverImproves(t *testing.T) {
	type reading = series.Reading[units.Temperature]
	doubts := map[string]func(*coldchain.Terms, []reading) []reading{
		"not described":    func(terms *coldchain.Terms, r []reading) []reading { terms.Product = coldchain.AnyFish; return r },
		"use not stated":   func(terms *coldchain.Terms, r []reading) []reading { terms.Use = 0; return r },
		"water not stated": func(terms *coldchain.Terms, r []reading) []reading { terms.Water = 0; return r },
		"later not met": func(terms *coldchain.Terms, r []reading) []reading {
			terms.Later = units.State(verdict.NotMet)
			return r
		},
		"later cannot tell": func(terms *coldchain.Terms, r []reading) []reading {
			terms.Later = units.State(verdict.CannotTell)
			return r
		},
		"nobody vouches":     func(terms *coldchain.Terms, r []reading) []reading { terms.Undisturbed = false; return r },
		"a shorter gap":      func(terms *coldchain.Terms, r []reading) []reading { terms.MaxGap /= 2; return r },
		"refrigerator of 6°": func(terms *coldchain.Terms, r []reading) []reading { return restate(terms, r, units.Celsius(6)) },
		"refrigerator of ?":  func(terms *coldchain.Terms, r []reading) []reading { return restate(terms, r, units.Temperature{}) },
		"no air":             func(terms *coldchain.Terms, r []reading) []reading { terms.Air = nil; return r },
		"hot air":            func(terms *coldchain.Terms, r []reading) []reading { terms.HotAir = true; return r },
		"open at the end": func(terms *coldchain.Terms, r []reading) []reading {
			end := r[len(r)-1].At + terms.MaxGap + minute
			return append(append([]reading(nil), r...), reading{At: end, Value: units.Celsius(-127)})
		},
		"hot at the end": func(terms *coldchain.Terms, r []reading) []reading {
			end := r[len(r)-1].At
			return append(append([]reading(nil), r...), reading{At: end + terms.MaxGap, Value: units.Fahrenheit(135)})
		},
	}
	for _, file := range []string{"coldchain/honest.csv", "coldchain/uses.csv"} {
		printed.Table(t, file).Each(t, func(t *testing.T, r printed.Row) {
			if r.Int("every_s") < 60 || r.Text("stays") != "" && r.Text("product") == "cooked fish" {
				return
			}
			readings := recordOf(t, r)
			audited := func(terms coldchain.Terms, readings []reading) coldchain.Report {
				report, err := coldchain.Audit(logged.Made(t, readings), terms)
				require.NoError(t, err)
				return report
			}
			before := audited(termsOf(t, r), readings)
			for name, doubt := range doubts {
				terms := termsOf(t, r)
				changed := doubt(&terms, readings)
				after := audited(terms, changed)
				if name == "a shorter gap" && !before.Verdict.Passes() { // time that is not trusted counts nowhere
					require.False(t, after.Verdict.Passes(), name)
					continue
				}
				require.GreaterOrEqual(t, after.Verdict, before.Verdict, name)
			}
		})
	}
}

// restate gives every stay in a refrigerator another air.
func restate(terms *coldchain.Terms, r []series.Reading[units.Temperature], air units.Temperature) []series.Reading[units.Temperature] {
	for i := range terms.Stays {
		if s := &terms.Stays[i]; s.In == coldchain.InRefrigerator && (!air.IsSet() || s.Air.Below(air)) {
			s.Air = air
		}
	}
	return r
}

// clean reports whether the gate has nothing to say of a record.
func clean(r coldchain.Report) bool {
	for _, f := range r.Findings {
		if f.Verdict == verdict.CannotTell {
			return false
		}
	}
	return r.Dropouts == 0 && r.Doubted == 0
}

// Of a record that the gate passes, warming (up to 135 °F) or lengthening never improves the verdict. Dropping a reading improves only what a gap
// hides, which the report then names as its longest; a gap longer than the one trusted is never a pass, and a finding.
func FuzzCleanRecords(f *testing.F) {
	f.Add([]byte{10, 200, 11, 3, 12, 90, 13, 80, 14, 200, 15, 255, 16, 255}, uint8(2), uint16(300))
	f.Add([]byte{30, 200, 31, 200, 30, 200, 29, 200, 30, 200, 31, 200, 31, 200}, uint8(3), uint16(3000))
	f.Add([]byte{60, 100, 58, 100, 50, 100, 45, 100, 40, 100, 30, 100, 25, 100}, uint8(1), uint16(30))
	f.Fuzz(func(t *testing.T, data []byte, at uint8, by uint16) {
		readings := logged.Drawn(data)
		if len(readings) < 3 {
			return
		}
		for n := uint8(0); n < 30; n += 5 {
			terms := coldchain.Terms{MaxGap: time.Hour, Use: coldchain.Use(n / 5 % 5), Product: coldchain.Product(n % 3)}
			before, err := coldchain.Audit(logged.Made(t, readings), terms)
			require.NoError(t, err)
			if !clean(before) {
				continue
			}
			i := 1 + int(at)%(len(readings)-2)
			warmer := append([]series.Reading[units.Temperature](nil), readings...)
			warmer[i].Value = warmer[i].Value.Add(units.TemperatureChange(by) * 700)
			if top := units.Fahrenheit(135); warmer[i].Value.Above(top) { // above it cooked fish has no limit
				warmer[i].Value = top
			}
			longer := append([]series.Reading[units.Temperature](nil), readings...)
			for j := i; j < len(longer); j++ {
				longer[j].At += time.Duration(by) * time.Second / 100
			}
			for name, changed := range map[string][]series.Reading[units.Temperature]{"warmer": warmer, "longer": longer} {
				after, err := coldchain.Audit(logged.Made(t, changed), terms)
				if err != nil || after.Doubted > 0 { // no core warms so fast: that is a reading dropped
					continue
				}
				require.GreaterOrEqual(t, after.Verdict, before.Verdict, name)
			}
			gap := readings[i+1].At - readings[i-1].At
			dropped := append(append([]series.Reading[units.Temperature](nil), readings[:i]...), readings[i+1:]...)
			after, err := coldchain.Audit(logged.Made(t, dropped), terms)
			if err != nil { // what is left is no record
				continue
			}
			if after.Verdict < before.Verdict {
				require.GreaterOrEqual(t, after.LongestGap.Length(), gap)
			}
			if gap > terms.MaxGap {
				require.False(t, after.Verdict.Passes())
				require.Contains(t, kinds(after.Findings), "recorded not observed")
			}
		}
	})
}
