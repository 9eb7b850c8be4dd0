package series

import (
	"io"
	"strings"
	"time"

	"example.org/lakelarder/units"
)

// ReadCSV returns one column of a file as its Format says. The location is the one that Format.Zone names; nil
// where that is empty or an offset. Times count from the first row by a clock, are kept as written where they
// are counted, and must rise. Numbers are rounded once, to the quantum.
//
// A row without a reading is no reading: the gap that it leaves stands between its neighbours, and the row in
// Log.Rows. The codes of broken probes (−127, 1800, 3276.7 and 32767 °C, on either scale) are no readings.
// Whatever else is not as stated is a LineError; a Format that leaves something open is a FormatError. A line
// has at most 64 kB, a record 5,000,000 lines.
func ReadCSV[T Value](r io.Reader, format Format, location *time.Location) (Log[T], error) {
	if err := format.Check(); err != nil {
		return Log[T]{}, err
	}
	text, err := decoded(r, format.Encoding)
	if err != nil {
		return Log[T]{}, err
	}
	file := newLines(text, format.Separator)
	p, err := newPlan[T](file, format, location)
	if err != nil {
		return Log[T]{}, err
	}
	return p.read(file)
}

// read takes the rows one after the other.
func (p *plan[T]) read(file *lines) (Log[T], error) {
	var log Log[T]
	last := int64(-1)
	for {
		raw, err := file.line()
		if err == io.EOF {
			break
		}
		if err != nil {
			return Log[T]{}, err
		}
		text := string(raw)
		row, q, err := p.row(file, text, last)
		switch {
		case err != nil:
			return Log[T]{}, err
		case row.Why == reading:
			last = int64(row.At)
			log.Series.at, log.Series.q = append(log.Series.at, last), append(log.Series.q, q)
		case row.Why == other:
			log.Others++
		case row.Why != blank:
			if log.Rows = append(log.Rows, row); len(log.Rows) > mostNoValues {
				return Log[T]{}, LineError{Line: file.n, Err: wrap(ErrTooLong, "a million rows without a reading")}
			}
		}
		if p.format.Repeats == DropRepeats && row.Why != blank {
			p.before = text
		}
	}
	if len(log.Series.at) == 0 {
		return Log[T]{}, LineError{Line: max(file.n, 1), Err: wrap(ErrEmpty, "no row of the file holds one")}
	}
	if err := p.timer.zone.finish(); err != nil {
		return Log[T]{}, LineError{Line: file.n, Err: err}
	}
	log.Series.origin = p.origin().kept()
	return log, nil
}

// What a row is beside the reasons of Why.
const (
	reading Why = 0
	other   Why = 100
	blank   Why = 101
)

// row reads one line: a reading with its quanta, or why it is none.
func (p *plan[T]) row(file *lines, text string, last int64) (Row, int64, error) {
	line := file.n
	if p.ended || p.format.End != "" && strings.HasPrefix(text, p.format.End) {
		p.ended = true
		if strings.TrimSpace(text) == "" {
			return Row{Why: blank}, 0, nil
		}
		return none(line, Remark, text), 0, nil
	}
	if p.format.Comment != "" && strings.HasPrefix(text, p.format.Comment) {
		return none(line, Remark, text), 0, p.otherUnit(line, text)
	}
	if p.format.Repeats == DropRepeats && text == p.before && text != "" &&
		!p.timer.zone.once { // an hour that is repeated is no repeated row
		return none(line, Repeat, text), 0, nil
	}
	cells, err := file.split(text)
	if err != nil {
		return Row{}, 0, err
	}
	if empty(cells) {
		return Row{Why: blank}, 0, nil
	}
	if p.remark(cells) {
		if i, err := p.otherHeadings(cells); err != nil {
			return Row{}, 0, p.fault(line, i, cells, err)
		}
		if len(cells) == 1 {
			err = p.otherUnit(line, text)
		}
		return none(line, Remark, text), 0, err
	}
	if cells, err = p.whole(file, cells, text); err != nil {
		return Row{}, 0, err
	}
	if p.only >= 0 && cells[p.only] != p.format.Only.Text {
		return Row{Why: other}, 0, nil
	}
	return p.timed(line, cells, last)
}

// none is a row without a reading and without a time.
func none(line int, why Why, text string) Row {
	return Row{Line: line, Why: why, Text: strings.Clone(short(text))}
}

// timed reads the time and the value of a whole row.
func (p *plan[T]) timed(line int, cells []string, last int64) (Row, int64, error) {
	if !p.checked {
		p.checked = true
		if i, err := p.timer.unstated(p.names, p.value, cells); err != nil {
			return Row{}, 0, p.fault(line, i, cells, err)
		}
	}
	q, why, err := p.valueOf(cells)
	if err != nil {
		return Row{}, 0, p.fault(line, p.value, cells, err)
	}
	at, index, err := p.timer.at(cells)
	if why != reading {
		timed := err == nil && at >= 0
		row := Row{Line: line, Timed: timed, Why: why, Text: strings.Clone(short(cells[p.value]))}
		if timed {
			row.At = time.Duration(at)
		}
		return row, 0, nil
	}
	if err == nil {
		err = p.timer.follow(last, at)
	}
	if err != nil {
		return Row{}, 0, p.fault(line, index, cells, err)
	}
	return Row{At: time.Duration(at)}, q, nil
}

func empty(cells []string) bool {
	for _, cell := range cells {
		if cell != "" {
			return false
		}
	}
	return true
}

// valueOf returns the quanta of the wanted cell, or why it is no reading.
func (p *plan[T]) valueOf(cells []string) (int64, Why, error) {
	cell := cells[p.value]
	if p.anyOf != nil {
		return 0, p.anything(cells), nil
	}
	if cell == "" {
		return 0, Missing, nil
	}
	if p.unitColumn >= 0 && !p.sameUnit(cells[p.unitColumn]) {
		if p.missing[strings.ToLower(cell)] {
			return 0, Missing, nil
		}
		return 0, 0, wrap(ErrUnit, "the row says "+short(cells[p.unitColumn])+", and not "+p.format.Unit)
	}
	if p.codes != nil && p.codes[bare(cell)] {
		return 0, Missing, nil
	}
	number := cell
	if p.format.UnitInCells {
		number = p.withoutUnit(cell)
	}
	if p.format.Decimal == DecimalComma && strings.IndexByte(number, ',') >= 0 {
		if strings.IndexByte(number, '.') >= 0 {
			return 0, 0, wrap(ErrNotANumber, "a point beside the decimal comma; thousands are not grouped")
		}
		number = strings.Replace(number, ",", ".", 1)
	} else if p.format.Decimal == DecimalComma && strings.IndexByte(number, '.') >= 0 && isNumber(number) {
		return 0, 0, wrap(ErrNotANumber, "a decimal point where the decimal mark is a comma")
	}
	q, err := p.scale.read(number)
	if err != nil {
		if text, ok := expanded(number); ok {
			q, err = p.scale.read(text)
		}
	}
	if err != nil {
		if p.missing[strings.ToLower(cell)] {
			return 0, Missing, nil
		}
		return 0, 0, err
	}
	if isFault(p.faults, q, number) {
		return 0, Fault, nil
	}
	if p.remarks && p.format.Separator == Commas && commaIn(cells, p.value) {
		return 0, 0, wrap(ErrAmbiguous, "with the digits of the next cell it may be one number with a decimal comma")
	}
	return q, reading, nil
}

// isFault knows the numbers of broken probes of temperature.
func isFault(faults []int64, q int64, number string) bool {
	for _, f := range faults {
		if q == f {
			return true
		}
	}
	if faults == nil || !strings.HasPrefix(number, "32767") && !strings.HasPrefix(number, "-127") {
		return false
	}
	return bare(number) == "32767" || bare(number) == "-127" // on whatever scale
}

func faultsOf[T Value]() []int64 {
	if kindOf[T]() != temperature {
		return nil
	}
	var found []int64
	for _, c := range []float64{-127, 1800, 3276.7, 32767} {
		found = append(found, int64(units.Celsius(c).AboveAbsoluteZero()))
	}
	return found
}

// bare is a number without the zeros that say nothing.
func bare(cell string) string {
	cell = strings.TrimPrefix(strings.Replace(cell, ",", ".", 1), "+")
	if strings.IndexByte(cell, '.') >= 0 {
		cell = strings.TrimRight(strings.TrimRight(cell, "0"), ".")
	}
	return cell
}
