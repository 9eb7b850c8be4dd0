package series

import (
	"fmt"
	"strings"
)

// remark reports a line that is no row of the table: nothing like a time in its time column and no number in the
// wanted one.
func (p *plan[T]) remark(cells []string) bool {
	if len(cells) == 1 && p.need > 0 && p.format.Separator != Blanks {
		return leadingDigits(cells[0]) == 0
	}
	for i := range p.timer.columns {
		if hasDigit(cells, p.timer.columns[i].index) {
			return false
		}
	}
	return !hasDigit(cells, p.value)
}

// otherHeadings looks at a remark for headings of another table: another unit of the wanted column, or the headings
// in another order. What follows would be misread. It returns the column at fault.
func (p *plan[T]) otherHeadings(cells []string) (int, error) {
	if len(cells) > p.value && p.anyOf == nil {
		k, unit, _ := unitIn(cells[p.value])
		_, stated := partsOf(p.format.Unit)
		if name, ok := spelt(kindOf[T](), stated); k == kindOf[T]() && ok && unit != name {
			return p.value, wrap(ErrUnit, "the rows before are in "+name)
		}
	}
	for i, cell := range cells {
		if i >= len(p.names) || cell == "" || cell == p.names[i] {
			continue
		}
		for _, name := range p.names {
			if name == cell {
				return i, wrap(ErrHeader, "the headings above are in another order")
			}
		}
	}
	return 0, nil
}

func hasDigit(cells []string, i int) bool {
	if i >= len(cells) {
		return false
	}
	for k := 0; k < len(cells[i]); k++ {
		if c := cells[i][k]; c >= '0' && c <= '9' {
			return true
		}
	}
	return false
}

// whole holds a row to the width of the table. Spare cells at the end must be empty. Cells at the end may be
// left out, but not the wanted one nor that after it: without a separator behind it a number may have been cut
// off.
func (p *plan[T]) whole(file *lines, cells []string, text string) ([]string, error) {
	if p.width == 0 {
		p.width = max(len(cells), p.need+1)
	}
	tooLong := len(cells) > p.width && !empty(cells[p.width:])
	if tooLong || len(cells) < p.width && (len(cells) < p.need+2 || p.format.Separator == Blanks) {
		hint := fmt.Sprintf("%d where the table has %d", len(cells), p.width)
		if tooLong && p.format.Separator == Commas {
			hint += "; a decimal mark is a point, not a comma"
		}
		return nil, LineError{Line: file.n, Text: short(text), Err: wrap(ErrRagged, hint)}
	}
	for len(cells) <= p.need {
		cells = append(cells, "")
	}
	return cells, nil
}

// unstated looks at the first row for a date, a day counter or AM and PM beside a clock that is read without
// them: five mornings would become twenty minutes. It returns the column at fault.
func (t *timer) unstated(names []string, value int, cells []string) (int, error) {
	if !t.clocked || t.counted {
		return 0, nil
	}
	var has shape
	stated := map[int]bool{value: true}
	for _, c := range t.columns {
		stated[c.index] = true
		s, _ := readStamp(cells[c.index], YearFirst)
		has |= s.shape & hasHalf
		switch c.part {
		case DateAndClock, Date, Epoch, Year, DayCount:
			has |= hasDate
		case HalfDay:
			has |= hasHalf
		}
	}
	for i, cell := range cells {
		name := ""
		if i < len(names) {
			name = strings.ToLower(names[i])
		}
		_, size := halfDay(cell)
		if !stated[i] && has&hasHalf == 0 && (size > 0 && size == len(cell) || saysHalf(name) && cell != "") {
			return i, wrap(ErrContradiction, "AM or PM beside the clock, which is not read")
		}
		if !stated[i] && has&hasHalf == 0 && saysPartOfDay(cell) {
			return i, wrap(ErrContradiction, "a half of the day beside the clock, which is not read")
		}
		if !stated[i] && has&hasDate == 0 && (saysRun(name) || saysUptime(name)) {
			return i, wrap(ErrContradiction, "a count of runs or of time beside the clock, which is not read")
		}
		if !stated[i] && has&hasDate == 0 && (saysDate(name) || isDate(cell)) {
			return i, wrap(ErrContradiction, "a date or a count of days beside the clock, which is not read")
		}
	}
	return 0, nil
}

// saysHalf reports the heading of a column of AM and PM, however its cells spell them.
func saysHalf(name string) bool {
	switch strings.Trim(name, " .:") {
	case "am/pm", "ampm", "am pm", "a/p", "ap", "meridiem":
		return true
	}
	return false
}

// saysPartOfDay reports a cell that says which half of the day a clock means, in words.
func saysPartOfDay(cell string) bool {
	switch strings.ToLower(strings.Trim(cell, " .")) {
	case "morning", "mornings", "forenoon", "noon", "midday", "afternoon", "evening", "evenings", "night", "midnight",
		"vormittag", "nachmittag", "morgen", "abend", "nacht", "matin", "soir", "mañana", "tarde", "noche":
		return true
	}
	return false
}

// saysRun reports the heading of a counter that goes on where the clock starts again.
func saysRun(name string) bool {
	switch strings.TrimSpace(strings.TrimSuffix(strings.TrimSuffix(strings.Trim(name, " .#:"), "no"), "number")) {
	case "run", "runs", "session", "cycle", "trip", "shift", "load", "reboot", "restart", "boot", "boots":
		return true
	}
	return false
}

// saysUptime reports the heading of a time since a start.
func saysUptime(name string) bool {
	return strings.HasPrefix(name, "uptime") || strings.HasPrefix(name, "up time") || strings.HasPrefix(name, "up_time")
}

// isWeekday reports the name of a day of the week, in full or cut to three letters.
func isWeekday(cell string) bool {
	cell = strings.ToLower(strings.Trim(cell, " .,"))
	for _, day := range []string{"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"} {
		if cell == day || cell == day[:3] {
			return true
		}
	}
	return false
}

func isDate(cell string) bool {
	if isWeekday(cell) {
		return true
	}
	for _, order := range []DateOrder{YearFirst, DayFirst, MonthFirst} {
		if s, ok := readStamp(cell, order); ok && s.shape&hasDate != 0 {
			return true
		}
	}
	return false
}

// saysDate reports the heading of a date or a day counter.
func saysDate(name string) bool {
	switch strings.Trim(name, " .#:") {
	case "date", "day", "days", "day no", "day number", "datum", "tag", "jour", "fecha", "dato", "weekday",
		"wochentag", "day of week", "day of the week", "dow", "night", "nights", "morning", "mornings":
		return true
	}
	return false
}

// saysRemark reports the heading of a column of remarks, an empty one included.
func saysRemark(name string) bool {
	name = strings.ToLower(strings.TrimSpace(name))
	for _, word := range []string{"note", "remark", "comment", "event", "memo", "annotation", "mark", "bemerk",
		"anmerk", "kommentar"} {
		if strings.HasPrefix(name, word) {
			return true
		}
	}
	return name == ""
}

// commaIn reports a whole number before a cell of remarks that holds digits only: "4,9" is one number with a
// decimal comma.
func commaIn(cells []string, value int) bool {
	next := value + 1
	if next >= len(cells) || cells[next] == "" || strings.IndexByte(cells[value], '.') >= 0 {
		return false
	}
	return leadingDigits(cells[next]) == len(cells[next])
}

// sameUnit holds the unit that a row bears to the one stated.
func (p *plan[T]) sameUnit(cell string) bool {
	if cell == p.format.Unit {
		return true
	}
	name, ok := spelt(kindOf[T](), cell)
	if !ok {
		return false
	}
	stated, ok := spelt(kindOf[T](), p.format.Unit)
	return ok && name == stated
}

// withoutUnit takes the unit stated off the end of a cell; another unit stays, and is refused with the cell.
func (p *plan[T]) withoutUnit(cell string) string {
	i := strings.LastIndexAny(cell, "0123456789.,") + 1
	if i > 0 && i < len(cell) && p.sameUnit(strings.TrimSpace(cell[i:])) {
		return cell[:i]
	}
	return cell
}

// anything tells a row that has something in one of the columns that may be wanted.
func (p *plan[T]) anything(cells []string) Why {
	for _, i := range p.anyOf {
		if i < len(cells) && cells[i] != "" && !saysNone(cells[i]) {
			return reading
		}
	}
	return Missing
}
