package series

import (
	"io"
	"strings"
)

// Column is one column of a record: its name without the unit, and its readings.
type Column[T Value] struct {
	Name   string
	Series Series[T]
}

// ReadColumn returns one column of a plain record, one that says everything itself: cells parted by commas,
// lines that start with # left out, then a header whose cells carry the units, as in "time (min),core (°C)". The
// column is named without its unit, exactly as written; an empty name takes the only column that T can hold.
// Columns not asked for by name may hold anything but a date or AM and PM beside a clock without. A pressure that is
// headed absolute is taken by its name only, one headed vacuum not at all, and a remark that states another unit is
// refused.
//
// Time is counted (ms, s, min, h), kept as written, or read off a clock (see the heading "clock"
// or "time (hh:mm)"): 21:05, 21:05:30, 2026-08-01 21:05:00 or RFC 3339, all rows alike; the first
// is then time zero. A record that runs past midnight needs dates. Clock times without an offset
// are taken as evenly running: leave no change to or from summer time in them.
//
// Numbers are plain decimals with a point, rounded once to the quantum or nanosecond. Every row must be whole
// and its time later than the one before, and no number the code of a broken probe. Anything else is a
// LineError. For what loggers write otherwise see Sniff and ReadCSV.
func ReadColumn[T Value](r io.Reader, column string) (Series[T], error) {
	columns, err := readColumns[T](r, func(h header) ([]heading, error) {
		return h.one(column, kindOf[T]())
	})
	if err != nil {
		return Series[T]{}, err
	}
	return columns[0].Series, nil
}

// ReadColumns returns every column that T can hold, in the order of the file, which is as for
// ReadColumn: several probes of one logger. Columns of another known unit are passed over; a heading
// that is not understood is refused rather than dropped, since a probe left out may be the coldest.
func ReadColumns[T Value](r io.Reader) ([]Column[T], error) {
	return readColumns[T](r, func(h header) ([]heading, error) { return h.all(kindOf[T]()) })
}

// readColumns reads the time column and those chosen from the header.
func readColumns[T Value](r io.Reader, choose func(header) ([]heading, error)) ([]Column[T], error) {
	text, err := decoded(r, UTF8)
	if err != nil {
		return nil, err
	}
	return plainRows[T](&plainFile{lines: newLines(text, Commas)}, choose)
}

func plainRows[T Value](file *plainFile, choose func(header) ([]heading, error)) ([]Column[T], error) {
	head, err := file.header()
	if err != nil {
		return nil, err
	}
	clock, err := head.clock()
	if err != nil {
		return nil, err
	}
	chosen, err := choose(head)
	if err != nil {
		return nil, err
	}
	body := plainBody[T]{file: file, head: head, clock: clock, chosen: chosen, values: make([][]int64,
		len(chosen)), faults: faultsOf[T]()}
	for _, h := range chosen {
		s, err := newScale[T](h.unit)
		if err != nil {
			return nil, head.fault(h, err)
		}
		body.scales = append(body.scales, s)
	}
	file.other = func(text string) error { return otherThan(kindOf[T](), chosen, text) }
	if err := file.other(file.said); err != nil {
		return nil, LineError{Line: file.saidAt, Text: short(file.said), Err: err}
	}
	if err := body.read(); err != nil {
		return nil, err
	}
	p := plan[T]{timer: body.timer}
	columns := make([]Column[T], len(chosen))
	for i, h := range chosen {
		columns[i] = Column[T]{Name: h.name, Series: Series[T]{at: body.at, q: body.values[i], origin: p.origin().kept()}}
	}
	return columns, nil
}

// plainBody are the rows under the header: the times, which the columns share, and the values of each.
type plainBody[T Value] struct {
	file   *plainFile
	head   header
	clock  heading
	chosen []heading
	scales []scale[T]
	faults []int64
	timer  timer
	at     []int64
	values [][]int64
}

func (b *plainBody[T]) read() error {
	last := int64(-1)
	for {
		cells, err := b.file.next()
		if err == io.EOF {
			break
		}
		if err != nil {
			return err
		}
		if b.at == nil {
			if err := b.begin(cells); err != nil {
				return err
			}
		}
		at, _, err := b.timer.at(cells)
		if err == nil {
			err = b.timer.follow(last, at)
		}
		if err != nil {
			return b.file.fault(b.clock, cells, err)
		}
		last, b.at = at, append(b.at, at)
		for i, h := range b.chosen {
			q, err := b.value(i, h, cells)
			if err != nil {
				return b.file.fault(h, cells, err)
			}
			b.values[i] = append(b.values[i], q)
		}
	}
	if len(b.at) == 0 {
		return LineError{Line: b.file.line, Err: wrap(ErrEmpty, "the file ends with its header")}
	}
	return nil
}

// begin sets the clock by the first row.
func (b *plainBody[T]) begin(cells []string) error {
	cell := timeCell{index: b.clock.index, part: Clock, unit: int64(timeUnits[strings.ToLower(b.clock.unit)])}
	if b.clock.kind == elapsed {
		cell.part, b.timer.counted = Elapsed, true
	} else if s, _ := readStamp(cells[cell.index], 0); s.shape&hasDate != 0 {
		cell.part = DateAndClock
	}
	b.timer.strict, b.timer.clocked, b.timer.columns = true, !b.timer.counted, []timeCell{cell}
	var names []string
	for _, h := range b.head.headings {
		names = append(names, h.name)
	}
	if i, err := b.timer.unstated(names, b.chosen[0].index, cells); err != nil {
		return b.file.fault(b.head.headings[i], cells, err)
	}
	return nil
}

func (b *plainBody[T]) value(i int, h heading, cells []string) (int64, error) {
	if cells[h.index] == "" {
		return 0, ErrMissing
	}
	q, err := b.scales[i].read(cells[h.index])
	if err != nil {
		return 0, err
	}
	if isFault(b.faults, q, cells[h.index]) {
		return 0, ErrFault
	}
	if next := h.index + 1; next < len(b.head.headings) && saysRemark(b.head.headings[next].name) &&
		commaIn(cells, h.index) {
		return 0, wrap(ErrAmbiguous, "with the digits of the next cell it may be one number with a decimal comma")
	}
	return q, nil
}
