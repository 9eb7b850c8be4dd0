package series

import (
	"strings"
	"time"
)

// zone turns what a clock on a wall says into instants. In autumn an hour is passed twice: which time it is
// follows from the order of the rows, or is refused.
type zone struct {
	location *time.Location // nil for a clock that runs evenly
	last     int64          // instant of the row before
	began    bool
	wide     bool  // nothing but a later step back tells that it is the first
	once     bool  // the row before lies in the first passage of a repeated hour, and the clock has not stepped back since
	from, to int64 // instants between which the offset is known, a day inside its bounds
	offset   int64 // nanoseconds
}

// newZone resolves the zone of a Format: its name must be the location's, or an offset such as +02:00.
func newZone(name string, location *time.Location) (zone, error) {
	text := strings.TrimSpace(strings.TrimPrefix(strings.TrimPrefix(name, "UTC"), "GMT"))
	offset, ok := readOffset(text)
	switch {
	case name == "" && location == nil:
		return zone{}, nil
	case name == "":
		return zone{}, FormatError{Field: "Zone", Wants: "the name of the location given, " + location.String()}
	case text == "" || text == "Z":
		return zone{location: time.UTC}, nil
	case ok:
		return zone{location: time.FixedZone(name, int(offset))}, nil
	case location == nil:
		return zone{}, FormatError{Field: "Zone", Wants: "the location of " + short(name) + " as the reader's argument"}
	case location.String() != name:
		return zone{}, FormatError{Field: "Zone", Wants: "the location given to be " + short(name) + ", not " + location.String()}
	}
	return zone{location: location}, nil
}

// instant returns the instant of a wall clock, both in nanoseconds since 1970.
func (z *zone) instant(wall int64) (int64, error) {
	if z.location == nil {
		return wall, nil
	}
	early, late, err := z.candidates(wall)
	if err != nil {
		return 0, err
	}
	now := early
	switch {
	case early == late:
		if z.once {
			return 0, wrap(ErrAmbiguous, "the record passes the repeated hour only once, and the zone does not say which time it was")
		}
		z.once = false
	case !z.began || early > z.last:
		z.wide = z.wide && z.once || !z.began || !z.once && early-z.last >= hour
		z.once = true
	default:
		now, z.once = late, false
	}
	z.began, z.last = true, now
	return now, nil
}

// finish refuses a record that ends in a repeated hour into which it did not run from the hour before.
func (z *zone) finish() error {
	if z.once && z.wide {
		return wrap(ErrAmbiguous, "the record ends in the repeated hour, and the zone does not say which time it was")
	}
	return nil
}

// candidates are the first and the last instant at which the wall clock says so.
func (z *zone) candidates(wall int64) (early, late int64, err error) {
	if now := wall - z.offset; z.from < now && now < z.to {
		return now, now, nil
	}
	var found []int64
	for _, near := range []int64{wall - day, wall + day} {
		now := wall - z.offsetAt(near)
		if z.offsetAt(now) == wall-now {
			found = append(found, now)
		}
	}
	if len(found) == 0 {
		return 0, 0, wrap(ErrNotAClock, "the clocks of "+z.location.String()+" pass over this time")
	}
	early, late = found[0], found[len(found)-1]
	if early > late {
		early, late = late, early
	}
	if early == late {
		z.remember(early)
	}
	return early, late, nil
}

func (z *zone) offsetAt(instant int64) int64 {
	_, seconds := time.Unix(0, instant).In(z.location).Zone()
	return int64(seconds) * second
}

// remember keeps the offset of an instant for those near it.
func (z *zone) remember(instant int64) {
	start, end := time.Unix(0, instant).In(z.location).ZoneBounds()
	z.offset, z.from, z.to = z.offsetAt(instant), instant-day, instant+365*day
	if !start.IsZero() {
		z.from = start.UnixNano() + day
	}
	if !end.IsZero() {
		z.to = end.UnixNano() - day
	}
}
