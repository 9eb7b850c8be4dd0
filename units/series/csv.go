package series

import "io"

// Column is one column of a record: its name without the unit, and its readings.
type Column[T Value] struct {
	Name   string
	Series Series[T]
}

// ReadCSV returns one column of a record as a logger or a person writes it: cells parted by
// commas, lines that start with # left out, then a header whose cells carry the units, as in
// "time (min),core (°C)". The column is named without its unit, exactly as written; an empty name
// takes the only column that T can hold. Columns not asked for by name may hold anything.
//
// Time is counted (ms, s, min, h), kept as written, or read off a clock (see the heading "clock"
// or "time (hh:mm)"): 21:05, 21:05:30, 2026-08-01 21:05:00 or RFC 3339, all rows alike; the first
// is then time zero. A record that runs past midnight needs dates. Clock times without an offset
// are taken as evenly running: leave no change to or from summer time in them.
//
// Numbers are plain decimals with a point, rounded once to the quantum or nanosecond. Every row
// must be whole and its time later than the one before. Anything else is a LineError.
func ReadCSV[T Value](r io.Reader, column string) (Series[T], error) {
	columns, err := readColumns[T](r, func(h header) ([]heading, error) {
		return h.one(column, kindOf[T]())
	})
	if err != nil {
		return Series[T]{}, err
	}
	return columns[0].Series, nil
}

// ReadAllCSV returns every column that T can hold, in the order of the file, which is as for
// ReadCSV: several probes of one logger. Columns of another known unit are passed over; a heading
// that is not understood is refused rather than dropped, since a probe left out may be the coldest.
func ReadAllCSV[T Value](r io.Reader) ([]Column[T], error) {
	return readColumns[T](r, func(h header) ([]heading, error) { return h.all(kindOf[T]()) })
}

// readColumns reads the time column and those chosen from the header.
func readColumns[T Value](r io.Reader, choose func(header) ([]heading, error)) ([]Column[T], error) {
	file, err := newRows(r)
	if err != nil {
		return nil, err
	}
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
	at, values, err := readRows[T](file, clock, chosen)
	if err != nil {
		return nil, err
	}
	columns := make([]Column[T], len(chosen))
	for i, h := range chosen {
		columns[i] = Column[T]{Name: h.name, Series: Series[T]{at: at, q: values[i]}}
	}
	return columns, nil
}

// readRows returns the times, which the columns share, and the values of each.
func readRows[T Value](file *rows, clock clock, chosen []heading) (at []int64, values [][]int64, err error) {
	values = make([][]int64, len(chosen))
	for {
		cells, err := file.next()
		if err == io.EOF {
			break
		}
		if err != nil {
			return nil, nil, err
		}
		t, err := clock.read(cells[clock.heading.index])
		if err != nil {
			return nil, nil, file.fault(clock.heading, cells, err)
		}
		at = append(at, t)
		for i, h := range chosen {
			q, err := number[T](cells[h.index], h.unit)
			if err != nil {
				return nil, nil, file.fault(h, cells, err)
			}
			values[i] = append(values[i], q)
		}
	}
	if len(at) == 0 {
		return nil, nil, LineError{Line: file.line, Err: wrap(ErrEmpty, "the file ends with its header")}
	}
	return at, values, nil
}
