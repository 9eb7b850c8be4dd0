package series

import (
	"fmt"
	"strings"
	"time"
)

// plan is what a Format comes to for one file: column by column, ready for its rows.
type plan[T Value] struct {
	format     Format
	names      []string // of the columns, none without a header
	width      int      // cells of a row, 0 before the first
	need       int      // the last cell that must be there
	timer      timer
	scale      scale[T]
	value      int
	unitColumn int // -1 for none
	only       int // -1 for all rows
	missing    map[string]bool
	codes      map[string]bool
	faults     []int64
	remarks    bool // the column after the wanted one holds remarks
	checked    bool // the first row was looked at for times that are not stated
	ended      bool
	anyOf      []int  // for Sniff: a row is a reading that has something in one of these columns
	before     string // the line before
	headerLine int
}

// newPlan reads the file up to its first row and resolves the columns.
func newPlan[T Value](file *lines, f Format, location *time.Location) (*plan[T], error) {
	p := &plan[T]{format: f, headerLine: f.Preamble + 1, width: f.Cells, unitColumn: -1, only: -1,
		faults: faultsOf[T](), missing: map[string]bool{}}
	if err := p.header(file); err != nil {
		return nil, err
	}
	var err error
	if p.timer.zone, err = newZone(f.Zone, location); err != nil {
		return nil, err
	}
	if err := p.columns(); err != nil {
		return nil, err
	}
	if p.scale, err = newScale[T](f.Unit); err != nil {
		return nil, LineError{Line: p.headerLine, Column: short(f.Value.Name), Text: short(f.Unit), Err: err}
	}
	for _, text := range f.Missing {
		p.missing[strings.ToLower(text)] = true
		if isNumber(strings.Replace(text, ",", ".", 1)) {
			if p.codes == nil {
				p.codes = map[string]bool{}
			}
			p.codes[bare(text)] = true
		}
	}
	next := p.value + 1
	p.remarks = f.Header > 0 && (next >= len(p.names) || saysRemark(p.names[next]))
	return p, nil
}

// header passes over the preamble and takes the names from the first line of headings.
func (p *plan[T]) header(file *lines) error {
	if err := file.skip(p.format.Preamble); err != nil {
		return p.noHeader(file, err)
	}
	for i := 0; i < p.format.Header; i++ {
		raw, err := file.line()
		if err != nil {
			return p.noHeader(file, err)
		}
		cells, err := file.split(string(raw))
		if err != nil {
			return err
		}
		if i == 0 {
			p.names, p.headerLine = append([]string(nil), cells...), file.n
			for len(p.names) > 0 && p.names[len(p.names)-1] == "" {
				p.names = p.names[:len(p.names)-1]
			}
		}
	}
	if p.width == 0 {
		p.width = len(p.names)
	}
	return nil
}

func (p *plan[T]) noHeader(file *lines, err error) error {
	if _, ok := err.(LineError); ok {
		return err
	}
	return LineError{Line: max(file.n, 1), Err: wrap(ErrEmpty, "the file ends before its first row")}
}

// columns finds the index of every column that the Format names.
func (p *plan[T]) columns() (err error) {
	if p.value, err = p.find(p.format.Value); err != nil {
		return err
	}
	if _, vacuum := saysReference(p.name(p.value)); vacuum && kindOf[T]() == pressure {
		return LineError{Line: p.headerLine, Column: p.name(p.value), Err: wrap(ErrUnit, "a vacuum counts downward from the pressure of the air")}
	}
	p.need = p.value
	if h := p.format.UnitColumn; !h.isZero() {
		if p.unitColumn, err = p.find(h); err != nil {
			return err
		}
	}
	if h := p.format.Only.Column; !h.isZero() {
		if p.only, err = p.find(h); err != nil {
			return err
		}
	}
	t := &p.timer
	t.order, t.comma = p.format.Order, p.format.Decimal == DecimalComma
	for _, c := range ordered(p.format.Time) {
		index, err := p.find(c.Column)
		if err != nil {
			return err
		}
		if index == p.value {
			return FormatError{Field: "Value", Wants: "another column than the time"}
		}
		cell := timeCell{index: index, name: p.name(index), part: c.Part, unit: int64(timeUnit(c.Unit))}
		if c.Part == Second {
			cell.unit = second
		}
		if c.Part == Elapsed || c.Part == ElapsedClock {
			t.counted = true
		} else {
			t.clocked = true
		}
		t.columns = append(t.columns, cell)
		p.need = max(p.need, index)
	}
	p.need = max(p.need, p.unitColumn, p.only)
	return nil
}

// ordered puts the parts of a time into the order in which they are read: AM or PM after its clock, the day
// after its month and year.
func ordered(columns []TimeColumn) []TimeColumn {
	var sorted []TimeColumn
	for part := DateAndClock; part <= ElapsedClock; part++ {
		for _, c := range columns {
			rank := c.Part
			switch c.Part { // the clock before its half of the day
			case HalfDay:
				rank = ElapsedClock
			case ElapsedClock:
				rank = HalfDay
			}
			if rank == part {
				sorted = append(sorted, c)
			}
		}
	}
	return sorted
}

// find returns the index of a column.
func (p *plan[T]) find(h Heading) (int, error) {
	if h.Name == "" {
		return h.Number - 1, nil
	}
	found := -1
	for _, same := range []func(string) bool{
		func(name string) bool { return name == h.Name },
		func(name string) bool { _, _, bare := unitIn(name); return bare == h.Name },
	} {
		for i, name := range p.names {
			if !same(name) || h.Number > 0 && h.Number != i+1 {
				continue
			}
			if found >= 0 {
				return 0, p.headingFault(h, "two columns of that name")
			}
			found = i
		}
		if found >= 0 {
			return found, nil
		}
	}
	return 0, p.headingFault(h, "no column of that name")
}

func (p *plan[T]) headingFault(h Heading, hint string) error {
	if h.Number > 0 {
		hint += fmt.Sprintf(" at %d", h.Number)
	}
	return LineError{Line: p.headerLine, Column: short(h.Name), Err: wrap(ErrHeader, hint+"; "+listed(p.names))}
}

// listed shows the headings found, cut to what an error may repeat.
func listed(names []string) string {
	if len(names) == 0 {
		return "the file has no headings"
	}
	var b strings.Builder
	b.WriteString("the headings are ")
	for i, name := range names {
		if i > 0 {
			b.WriteString(", ")
		}
		if i == 12 {
			fmt.Fprintf(&b, "and %d more", len(names)-i)
			break
		}
		fmt.Fprintf(&b, "%q", short(name))
	}
	return b.String()
}

// name is a column in errors.
func (p *plan[T]) name(index int) string {
	if index < len(p.names) && p.names[index] != "" {
		return short(p.names[index])
	}
	return fmt.Sprint(index + 1)
}

func (p *plan[T]) fault(line, index int, cells []string, err error) error {
	return LineError{Line: line, Column: p.name(index), Text: strings.Clone(short(cells[index])), Err: err}
}
