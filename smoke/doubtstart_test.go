package smoke

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
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
