package smoke

import (
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// watched is a RunningHold as JSON has it; watchedTrack and watchedCore are its parts.
type watched struct {
	Limit    CoreLimit     `wire:"required"`
	MaxGap   time.Duration `wire:"required"`
	Piece    units.Stated[Slab]
	Air      units.Temperature // the hottest so far
	AirAt    time.Duration
	Seen     watchedTrack
	Believed watchedTrack
	Probes   []watchedCore
}

type watchedTrack struct {
	At      time.Duration
	Cores   []units.Temperature
	Steps   int
	Holding bool
	From    time.Duration
	Longest series.Stretch
}

// watchedCore is what is believed of the core at a probe, and whether the last reading was above or below that; Unlike says
// that it has shown something else than the air.
type watchedCore struct {
	At        time.Duration
	High, Low units.Temperature
	Above     bool
	Below     bool
	Unlike    bool
	Moved     bool              // it has shown more than one value
	Extreme   units.Temperature // since the core last turned
	Falling   bool
	Turned    time.Duration
	Turns     int
}

// MarshalJSON writes the hold so that a watch goes on where it was saved; one not made by
// WatchHold is a units.UnsetError.
func (h RunningHold) MarshalJSON() ([]byte, error) {
	if h.maxGap == 0 {
		return nil, errNotWatched
	}
	w := watched{Limit: h.limit, MaxGap: h.maxGap, Piece: h.piece, Air: h.air.most, AirAt: h.air.at, Seen: h.seen.saved(), Believed: h.believed.saved()}
	for i, e := range h.envelopes[:h.probes] {
		w.Probes = append(w.Probes, watchedCore{e.at, ofQuanta(e.high), ofQuanta(e.low), e.is == tooHot, e.is == outside, h.unlike>>i&1 == 1, h.moved>>i&1 == 1,
			ofQuanta(e.swing.extreme), e.swing.falling, e.swing.turned, int(e.swing.turns)})
	}
	return wire.Marshal(w)
}

func (t track) saved() watchedTrack {
	return watchedTrack{t.at, t.cores[:t.probes], t.steps, t.holding, t.from, t.longest}
}

var errNoWatch = units.RangeError{What: "saved hold", Got: "one that no watch can come to", Low: "what was saved"}

// UnmarshalJSON reads what MarshalJSON writes, strictly, and refuses what no watch could have written; on an error the
// value stays as it was.
func (h *RunningHold) UnmarshalJSON(data []byte) error {
	var w watched
	if err := wire.Unmarshal(data, &w); err != nil {
		return err
	}
	read, err := WatchHold(w.Limit, Record{MaxGap: w.MaxGap, Piece: w.Piece})
	if err != nil {
		return err
	}
	if len(w.Seen.Cores) > 0 {
		if err := read.checkStep(w.Seen.At, w.Seen.Cores); err != nil {
			return err
		}
	}
	if !w.Seen.possible() || !w.Believed.possible() || len(w.Probes) != len(w.Seen.Cores) ||
		w.Believed.Steps > w.Seen.Steps || w.AirAt < 0 || w.AirAt > w.Seen.At || w.Believed.At > w.Seen.At || w.Believed.Longest.Length() > w.Seen.Longest.Length() ||
		len(w.Believed.Cores) > 0 && len(w.Believed.Cores) != len(w.Seen.Cores) {
		return errNoWatch
	}
	read.air, read.probes = airMet{w.AirAt, w.Air}, len(w.Probes)
	read.seen, read.believed = w.Seen.track(), w.Believed.track()
	for i, p := range w.Probes {
		if !p.High.IsSet() || !p.Low.IsSet() || p.High.Below(p.Low) || p.At > w.Seen.At || p.At < 0 {
			return errNoWatch
		}
		if !p.Extreme.IsSet() || p.Turned < 0 || p.Turned > w.Seen.At || p.Turns < 0 || p.Turns > mostTurns {
			return errNoWatch
		}
		read.envelopes[i] = envelope{
			at: p.At, high: quanta(p.High), low: quanta(p.Low), begun: true,
			swing: swing{quanta(p.Extreme), p.Falling, p.Turned, uint8(p.Turns)},
		}
		switch {
		case p.Above:
			read.envelopes[i].is = tooHot
		case p.Below:
			read.envelopes[i].is = outside
		}
		if p.Moved {
			read.moved |= 1 << i
		}
		if p.Unlike {
			read.unlike |= 1 << i
		}
	}
	*h = read
	return nil
}

// possible reports whether a watch can come to the track.
func (w watchedTrack) possible() bool {
	return (w.Steps > 0) == (len(w.Cores) > 0) && w.Steps >= 0 && len(w.Cores) <= mostProbes &&
		w.From >= 0 && w.From <= w.At && w.Longest.From >= 0 && w.Longest.Length() >= 0 && w.Longest.To <= w.At
}

func (w watchedTrack) track() track {
	t := track{at: w.At, steps: w.Steps, holding: w.Holding, from: w.From, longest: w.Longest}
	t.probes = copy(t.cores[:], w.Cores)
	return t
}
