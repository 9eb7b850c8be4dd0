package smoke

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// A reading that no fish has is refused alike by every judge, wherever it stands, and a watch stays as it was.
func TestALooseProbeIsRefusedByEveryJudge(t *testing.T) {
	for at := 0; at < 20; at += 5 {
		for _, c := range []struct {
			shown   float64
			refused bool
		}{{-200, true}, {-127, true}, {-40.1, true}, {-40, false}, {38, false}} {
			readings := drawnRecord(t, "0 40; 100 186; 160 190", "F", 5*time.Minute).Readings()
			readings[at].Value = units.Fahrenheit(c.shown)
			rec := recorded(15*time.Minute, record(t, readings...))
			_, day := Audit(Rules{}, withPack(rec))
			_, hold := AuditHold(DefaultCoreLimit(), rec)
			_, cooling := AuditCooling(coolingRule(t, "COOL-2-4"), rec)
			h, err := WatchHold(DefaultCoreLimit(), recorded(15*time.Minute))
			require.NoError(t, err)
			after, watch := h.Next(readings[at].At, readings[at].Value)
			for name, err := range map[string]error{"day": day, "hold": hold, "cooling": cooling, "watch": watch} {
				if !c.refused {
					require.NoError(t, err, "%s: %v", name, c.shown)
					continue
				}
				var fault ProbeError
				require.ErrorAs(t, err, &fault, "%s: %v", name, c.shown)
				require.ErrorIs(t, err, units.ErrRange)
				require.Equal(t, readings[at].At, fault.At)
			}
			if c.refused {
				require.Equal(t, h, after)
			}
		}
	}
}

func withPack(r Record) Record {
	r.Marks.Pack = AirPack
	return r
}

// A probe that never moves tells nothing, however long and whatever it shows; the first small move says that it lives, a leap
// that it did not; and a watch agrees at every step.
func TestAProbeThatStandsStillIsNotBelieved(t *testing.T) {
	for name, c := range map[string]struct {
		one, two []float64
		want     verdict.Verdict
	}{
		"never read":            {repeated(185, 13), nil, verdict.CannotTell},
		"at the limit":          {repeated(180, 13), nil, verdict.CannotTell},
		"two, of one moves":     {repeated(185, 13), append(repeated(185, 6), repeated(186, 7)...), verdict.CannotTell},
		"read at last, cold":    {append(repeated(185, 13), 60, 61, 62), nil, verdict.CannotTell},
		"read at last, hot":     {append(repeated(185, 13), 199, 199), nil, verdict.CannotTell},
		"read, and then a hold": {append(repeated(185, 13), 194.1, 194, 195, 194, 193, 194, 194, 194), nil, verdict.Met},
		"a rounded slow logger": {append(repeated(184, 6), repeated(185, 5)...), nil, verdict.Met},
		"too short":             {repeated(185, 6), nil, verdict.NotMet},
		"cold, and heated":      {append(repeated(40, 6), append([]float64{90, 130, 160}, repeated(185, 8)...)...), nil, verdict.Met},
	} {
		t.Run(name, func(t *testing.T) {
			h, err := WatchHold(DefaultCoreLimit(), recorded(15*time.Minute))
			require.NoError(t, err)
			for n := 1; n <= len(c.one); n++ {
				cores, now := []core{fahrenheit(t, 5*time.Minute, c.one[:n]...)}, []units.Temperature{units.Fahrenheit(c.one[n-1])}
				if c.two != nil {
					cores, now = append(cores, fahrenheit(t, 5*time.Minute, c.two[:n]...)), append(now, units.Fahrenheit(c.two[n-1]))
				}
				h, err = h.Next(time.Duration(n-1)*5*time.Minute, now...)
				require.NoError(t, err)
				got, err := AuditHold(DefaultCoreLimit(), recorded(15*time.Minute, cores...))
				require.NoError(t, err)
				require.Equal(t, got.Verdict == verdict.Met, h.Met(), "reading %d", n)
				require.Equal(t, got.Owed, h.Owed(), "reading %d", n)
				require.Equal(t, got.Verdict == verdict.Met, got.Owed == 0)
				if n == len(c.one) {
					require.Equal(t, c.want, got.Verdict, "%v", got.Findings)
				}
			}
		})
	}
}

func repeated(f float64, n int) (all []float64) {
	for i := 0; i < n; i++ {
		all = append(all, f)
	}
	return all
}
