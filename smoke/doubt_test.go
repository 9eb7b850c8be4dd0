package smoke

import (
	"encoding/json"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// drawnRecord is a record drawn by its corners: "0 4; 150 83; 190 83 ~1.5" goes in straight lines from 4 at minute 0 to 83 at
// minute 150 and on, a reading every so many seconds and at the corners, up and down in turn by 1.5; "!1" rounds to whole degrees.
func drawnRecord(t *testing.T, text, scale string, every time.Duration) core {
	t.Helper()
	text, step, rounded := strings.TrimSpace(text), 0., 0.
	if head, tail, ok := strings.Cut(text, "~"); ok {
		text, step = head, number(t, tail)
	}
	if head, tail, ok := strings.Cut(text, "!"); ok {
		text, rounded = head, number(t, tail)
	}
	in := map[string]func(float64) units.Temperature{"C": units.Celsius, "F": units.Fahrenheit}[scale]
	var readings []reading
	var atBefore time.Duration
	before := 0.
	for i, corner := range strings.Split(text, ";") {
		minute, degrees, ok := strings.Cut(strings.TrimSpace(corner), " ")
		require.True(t, ok, "%q", corner)
		at, value := time.Duration(number(t, minute)*float64(time.Minute)), number(t, degrees)
		for now := atBefore + every; i > 0 && now < at; now += every {
			readings = append(readings, reading{At: now, Value: in(before + (value-before)*float64(now-atBefore)/float64(at-atBefore))})
		}
		readings = append(readings, reading{At: at, Value: in(value)})
		atBefore, before = at, value
	}
	for i := range readings {
		degrees := readings[i].Value.Celsius()
		if scale == "F" {
			degrees = units.Float(readings[i].Value.AboveAbsoluteZero(), units.FahrenheitDegrees) - 459.67
		}
		degrees += step * float64(1-i%2*2)
		if rounded > 0 {
			degrees = math.Round(degrees/rounded) * rounded
		}
		if step > 0 || rounded > 0 {
			readings[i].Value = in(degrees)
		}
	}
	return record(t, readings...)
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(strings.TrimSpace(s), 64)
	require.NoError(t, err)
	return v
}

// recordOf is the record that a row tells.
func recordOf(t *testing.T, r printed.Row) Record {
	t.Helper()
	every := time.Duration(r.Int("every_s")) * time.Second
	rec := Record{MaxGap: time.Duration(r.Int("max_gap_min")) * time.Minute}
	for _, col := range []string{"core", "core_2"} {
		if r.Has(col) {
			rec.Cores = append(rec.Cores, drawnRecord(t, r.Text(col), r.Text("scale"), every))
		}
	}
	if r.Has("air") {
		rec.Air = drawnRecord(t, r.Text("air"), r.Text("scale"), every)
	}
	if r.Has("piece_mm") {
		l := units.Length(r.Int("piece_mm")) * units.Millimetre
		rec.Piece = units.State(FilletSlab(l, l, TwoFaces, units.Celsius(r.Float("start"))))
	}
	if r.Has("marks") {
		marks, pack, _ := strings.Cut(r.Text("marks"), "pack=")
		var err error
		rec.Marks.Pack, err = ParsePack(pack)
		require.NoError(t, err)
		for _, mark := range strings.Fields(marks) {
			name, minute, _ := strings.Cut(mark, "=")
			at := units.State(time.Duration(number(t, minute)) * time.Minute)
			switch name {
			case "out":
				rec.Marks.OutOfSmoker = at
			case "in":
				rec.Marks.InOven = at
			}
		}
	}
	return rec
}

// judged is the report on a row.
func judged(t *testing.T, r printed.Row) verdict.Report {
	t.Helper()
	switch r.Text("judge") {
	case "hold":
		h, err := AuditHold(limit(t, r.Text("rule")), recordOf(t, r))
		require.NoError(t, err)
		return h.Report
	case "cooling":
		c, err := AuditCooling(coolingRule(t, r.Text("rule")), recordOf(t, r))
		require.NoError(t, err)
		return c.Report
	case "day":
		d, err := Audit(Rules{Core: limit(t, r.Text("rule"))}, recordOf(t, r))
		require.NoError(t, err)
		return d.Report
	}
	var c Claim
	require.NoError(t, json.Unmarshal([]byte(r.Text("claim")), &c))
	a, err := Check(c)
	require.NoError(t, err)
	return a.Report
}

// What contradicts physics or itself is never a pass, and says why.
func TestNothingImpossibleIsBelieved(t *testing.T) {
	rows := printed.Table(t, "smoke/impossible.csv")
	require.GreaterOrEqual(t, len(rows), 40)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		got := judged(t, r)
		require.Equal(t, r.Text("verdict"), got.Verdict.String(), "%s: %v", r.Text("why"), got.Findings)
		require.False(t, got.Verdict.Passes())
		require.NotEmpty(t, got.Findings)
		for _, f := range got.Findings {
			if !f.Citation.IsZero() {
				require.NoError(t, f.Citation.Check())
			}
		}
	})
}

// The gate does not cry wolf.
func TestHonestRecordsKeepTheirVerdict(t *testing.T) {
	rows := printed.Table(t, "smoke/honest.csv")
	require.GreaterOrEqual(t, len(rows), 20)
	rows.Each(t, func(t *testing.T, r printed.Row) {
		got := judged(t, r)
		require.Equal(t, r.Text("verdict"), got.Verdict.String(), "%s: %v", r.Text("why"), got.Findings)
		for _, f := range got.Findings {
			require.NotEqual(t, verdict.Impossible, f.Kind, fmt.Sprint(f))
		}
	})
}

// Watch equals the audit at every prefix, with and without air and piece, whatever the probes show; what is met stays met.
func FuzzWatchIsTheAudit(f *testing.F) {
	f.Add([]byte{10, 120, 130, 140, 150, 160, 170, 180, 190, 200, 210, 220, 118}, []byte{200, 200, 200, 90, 200, 200, 220, 220, 200, 200, 200, 200, 200}, uint8(0))
	f.Add([]byte{0, 250, 250, 250, 250, 250, 250, 250, 250}, []byte{115, 115, 114, 115, 116, 115, 115, 115, 115}, uint8(1))
	f.Add([]byte{240, 240, 240, 20, 240, 240, 240, 240}, []byte{240, 240, 240, 240, 240, 240, 240, 240}, uint8(2))
	f.Add([]byte{230, 230, 231, 232, 233, 234, 235, 236, 236}, []byte{230, 230, 231, 232, 233, 234, 235, 236, 236}, uint8(3))
	f.Add([]byte{1, 30, 60, 90, 120, 150, 180, 210, 230, 240, 240, 240, 240}, []byte{1, 40, 70, 95, 125, 155, 185, 215, 235, 241, 242, 240, 240}, uint8(7))
	f.Fuzz(func(t *testing.T, one, two []byte, how uint8) {
		n := min(len(one), len(two))
		if n == 0 || n > 60 {
			return
		}
		const maxGap = 4 * step
		base := Record{MaxGap: maxGap}
		if how&2 != 0 {
			base.Piece = units.State(FilletSlab(15*units.Millimetre, 20*units.Millimetre, TwoFaces, units.Celsius(4)))
		}
		h, err := WatchHold(pnwLimit, base)
		require.NoError(t, err)
		var first, second, airs []reading
		at := time.Duration(0)
		for i := 0; i < n; i++ {
			at += time.Duration(1+one[i]%4+two[i]%3) * step / time.Duration(2+4*int(how>>3%3))
			if one[i] > 250 { // the logger slept
				at += 2 * maxGap
			}
			a := reading{At: at, Value: units.Celsius(float64(one[i]) * 0.39)}
			b := reading{At: at, Value: units.Celsius(float64(two[i]) * 0.39)}
			first, second = append(first, a), append(second, b)
			before := h
			rec := base
			rec.Cores = []core{record(t, first...), record(t, second...)}
			if how&1 != 0 {
				air := reading{At: at, Value: units.Celsius(float64(two[i]) * 0.39)}
				if how&4 != 0 {
					air.Value = units.Celsius(float64(two[i])*0.39 + 7)
				}
				airs = append(airs, air)
				rec.Air = record(t, airs...)
				h, err = h.NextInAir(at, air.Value, a.Value, b.Value)
			} else {
				h, err = h.Next(at, a.Value, b.Value)
			}
			require.NoError(t, err)
			want, err := AuditHold(pnwLimit, rec)
			require.NoError(t, err)
			require.Equal(t, want.Verdict == verdict.Met, h.Met(), "step %d: %v", i, want.Findings)
			require.Equal(t, want.Held, h.Held(), "step %d", i)
			require.Equal(t, want.Owed, h.Owed(), "step %d", i)
			require.False(t, before.Met() && !h.Met(), "a hold that is met stays met")

			// Doubt never improves: without air and piece the verdict is no worse.
			plain, err := AuditHold(pnwLimit, Record{Cores: rec.Cores, MaxGap: maxGap})
			require.NoError(t, err)
			require.GreaterOrEqual(t, want.Verdict, plain.Verdict)

			// A saved watch goes on alike.
			text, err := json.Marshal(h)
			require.NoError(t, err)
			var again RunningHold
			require.NoError(t, json.Unmarshal(text, &again))
			require.Equal(t, h, again)
		}
	})
}
