package smoke

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// watched is a RunningHold as JSON has it.
type watched struct {
	Limit   CoreLimit     `wire:"required"`
	MaxGap  time.Duration `wire:"required"`
	At      time.Duration `wire:"always"`
	Cores   []units.Temperature
	Steps   int
	Holding bool
	From    time.Duration
	Longest series.Stretch
}

// MarshalJSON writes the hold so that a watch goes on where it was saved; one not made by WatchHold is a units.UnsetError.
func (h RunningHold) MarshalJSON() ([]byte, error) {
	if h.maxGap == 0 {
		return nil, errNotWatched
	}
	return wire.Marshal(watched{h.limit, h.maxGap, h.at, h.cores[:h.probes], h.steps, h.holding, h.from, h.longest})
}

// UnmarshalJSON reads what MarshalJSON writes, strictly, and refuses what no watch could have written; on an error the
// value stays as it was.
func (h *RunningHold) UnmarshalJSON(data []byte) error {
	var w watched
	if err := wire.Unmarshal(data, &w); err != nil {
		return err
	}
	read, err := WatchHold(w.Limit, Record{MaxGap: w.MaxGap})
	if err != nil {
		return err
	}
	if (w.Steps > 0) != (len(w.Cores) > 0) || w.Steps < 0 || w.Longest.To > w.At || w.Longest.Length() < 0 || w.From > w.At || w.From < 0 {
		return units.RangeError{What: "saved hold", Got: "one that no watch can come to", Low: "what MarshalJSON writes"}
	}
	if len(w.Cores) > 0 {
		if err := read.checkStep(w.At, w.Cores); err != nil {
			return err
		}
	}
	read.at, read.probes = w.At, copy(read.cores[:], w.Cores)
	read.steps, read.holding, read.from, read.longest = w.Steps, w.Holding, w.From, w.Longest
	*h = read
	return nil
}
