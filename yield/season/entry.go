package season

import (
	"strings"
	"time"
	"unicode"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/verdict"
)

// Entry is one line of a ledger. Batch is the catch or the batch that it begins or concerns, by the name on its lid,
// and Count how many: fish of a catch, containers of a batch. What begins a batch states From, of which catch or batch
// it is made, how many of them were Taken for it, and its Product; a load of the canner states the verdict of its
// Audit, and fish kept their Round mass.
//
// After is the time since the heat of the load was off, where unsealed jars are dealt with on the day after: the days
// do not say whether it is within 24 h.
type Entry struct {
	Day     Day    `wire:"required"`
	Event   Event  `wire:"required"`
	Batch   string `wire:"required"`
	From    string
	Taken   int
	Count   int `wire:"required"`
	Product string
	Round   units.Mass
	Audit   units.Stated[verdict.Verdict]
	After   units.Stated[time.Duration]
}

// MarshalJSON writes the entry as an object of its fields.
func (e Entry) MarshalJSON() ([]byte, error) { return wire.Marshal(e) }

// UnmarshalJSON reads what MarshalJSON writes, strictly: anything else, a figure that is missing too, is a
// units.FieldError.
func (e *Entry) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, e) }

// longestName is of a batch or a product, in bytes.
const longestName = 60

func checkName(what, name string) error {
	switch {
	case name == "":
		return units.UnsetError{What: what}
	case len(name) > longestName || strings.TrimSpace(name) != name || strings.IndexFunc(name, unprintable) >= 0:
		reason := "expected at most 60 bytes in one line, without space around them"
		return units.ParseError{Quantity: what, Text: name, Reason: reason}
	}
	return nil
}

// unprintable reports of what no name on a lid has, such as a broken letter.
func unprintable(r rune) bool { return !unicode.IsPrint(r) || r == unicode.ReplacementChar }

// check refuses an entry that does not state what its event needs, or states what the event has not.
func (e *Entry) check() error {
	if err := e.Day.check("day"); err != nil {
		return err
	}
	if err := events.Check(e.Event); err != nil {
		return err
	}
	if err := checkName("batch", e.Batch); err != nil {
		return err
	}
	if e.Count < 1 || e.Count > most {
		return within("count", e.Count, 1, most)
	}
	if err := e.checkMade(); err != nil {
		return err
	}
	switch {
	case e.Event == Kept:
		if e.Round == 0 {
			return units.UnsetError{What: "round mass of the fish kept"}
		}
		fish := units.Mass(e.Count)
		return units.Check("round mass of the fish kept", e.Round, units.Gram*fish, min(units.Tonne, units.Tonne/10*fish))
	case e.Round != 0:
		return e.beside("round mass", e.Round.String())
	}
	return nil
}

// checkMade checks what only an entry states that begins a batch of another.
func (e *Entry) checkMade() error {
	makes := e.Event.makes()
	switch {
	case !makes && e.From != "":
		return e.beside("origin", e.From)
	case !makes && e.Product != "":
		return e.beside("product", e.Product)
	case !makes && e.Taken != 0:
		return within("fish or containers taken, of an entry that begins no batch,", e.Taken, 0, 0)
	case !e.Event.heats() && e.Audit.Given:
		return e.beside("verdict of an audit", e.Audit.Value.String())
	case !makes && e.After.Given:
		return e.beside("time since the heat was off", units.Lasting(e.After.Value))
	case !makes:
		return nil
	}
	if _, err := e.Audit.Value.MarshalText(); err != nil {
		return err
	}
	if err := checkName("origin", e.From); err != nil {
		return err
	}
	if err := checkName("product", e.Product); err != nil {
		return err
	}
	if err := within("fish or containers taken", e.Taken, 1, most); err != nil {
		return err
	}
	return units.CheckDuration("time since the heat was off", e.After.Value, 0, 400*24*time.Hour)
}

// beside is the error of a figure that an event does not have.
func (e *Entry) beside(what, got string) error {
	return units.RangeError{What: what + " beside the event " + e.Event.String(), Got: got, Low: "", High: "none"}
}
