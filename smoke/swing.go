package smoke

import "time"

// A core lags behind its air: it does not turn from warming to cooling and back by more than the noise of a probe, three
// times with no more than a quarter of an hour between. Practice; one opened door turns it twice.
const (
	mostTurns = 3
	turnTime  = 15 * time.Minute
)

// swing counts the turns of a core by more than the noise of a probe, those that follow each other soon. Its extreme is
// the warmest or the coldest since the last turn, in quanta.
type swing struct {
	extreme float64
	falling bool
	turned  time.Duration // when it last turned
	turns   uint8
}

// swings takes in a believed reading and reports whether the probe swings as no core does.
func (s *swing) swings(at time.Duration, core float64) bool {
	by := core - s.extreme // on its way; against it, a turn
	if s.falling {
		by = -by
	}
	soon := at-s.turned <= turnTime
	switch {
	case by >= 0:
		s.extreme = core
	case by < -probeNoise:
		s.extreme, s.falling, s.turned = core, !s.falling, at
		if !soon {
			s.turns = 0
		}
		s.turns, soon = min(s.turns+1, mostTurns), true
	}
	return soon && s.turns == mostTurns
}
