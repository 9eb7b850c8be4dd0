package series

import (
	"strconv"
	"strings"
)

// epochsAgree holds columns of seconds since 1970 against the dates beside them: they may be apart by the offset of a
// zone, the same in all rows but for an hour of summer time and the minute to which a clock is written.
func (s *sniffer) epochsAgree() error {
	if s.asks(AskTime) || s.asks(AskDateOrder) || !s.dated() {
		return nil
	}
	at, _ := s.moments(s.format.Order)
	zero, ok := s.firstMoment()
	if !ok || len(at) == 0 || len(at) != len(s.sheet.data) {
		return nil
	}
	for i := range s.cols {
		unit := s.epoch(i)
		if unit == "" || s.isTime(i) {
			continue
		}
		first, seen := int64(0), false
		for k, r := range s.sheet.data {
			cells := s.sheet.rows[r].cells
			if i >= len(cells) || cells[i] == "" {
				continue
			}
			x, err := strconv.ParseFloat(strings.Replace(cells[i], ",", ".", 1), 64)
			if err != nil {
				continue
			}
			off := int64(x)/map[string]int64{"s": 1, "ms": 1e3, "us": 1e6}[unit] - (zero + at[k] - at[0])
			if !seen {
				first, seen = off, true
			}
			if apart := max(off-first, first-off); apart > 60 && (apart < 3600-60 || apart > 3600+60) || off > 13*3600 || off < -15*3600 {
				return LineError{Line: s.sheet.rows[r].line, Column: short(s.cols[i].name), Text: short(cells[i]),
					Err: wrap(ErrContradiction, "the seconds since 1970 are not those of the date beside them")}
			}
		}
	}
	return nil
}

// dated reports a time that is read from a date.
func (s *sniffer) dated() bool {
	for _, t := range s.format.Time {
		if t.Part == DateAndClock || t.Part == Date {
			return true
		}
	}
	return false
}
