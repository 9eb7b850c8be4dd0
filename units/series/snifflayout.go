package series

import (
	"slices"
	"strings"
)

// layout finds the separator under which most of the lines are rows of one table, and where the table begins.
func (s *sniffer) layout() error {
	start := 0
	seps := []Separator{Tabs, Semicolons, Commas, Bars, Blanks}
	if s.stated.Separator != 0 {
		seps = []Separator{s.stated.Separator}
	} else if rest := strings.TrimPrefix(strings.ToLower(s.lines[0]), "sep="); rest != strings.ToLower(s.lines[0]) {
		for _, sep := range seps {
			if sep != Blanks && strings.TrimSpace(rest) == strings.TrimSpace(string(sep.mark())) &&
				(rest == "\t") == (sep == Tabs) {
				seps, start = []Separator{sep}, 1
				s.because("Separator", "the first line says %q", short(s.lines[0]))
				break
			}
		}
	}
	for _, sep := range seps {
		sh := newSheet(s.lines, sep)
		sh.analyse(start)
		if s.sheet == nil || sh.score > s.sheet.score {
			s.sheet = sh
		}
	}
	if s.sheet == nil || s.sheet.score == 0 {
		return wrap(ErrHeader, "no table of times and numbers was found in the lines given")
	}
	s.format.Separator = s.sheet.sep
	s.because("Separator", "%d rows of %d cells parted by %v", len(s.sheet.data), s.sheet.width, s.sheet.sep)
	s.decimal()
	return nil
}

func (s *sniffer) decimal() {
	if s.stated.Decimal != 0 {
		return
	}
	commas, points := 0, 0
	for _, i := range s.sheet.data {
		for k, cell := range s.sheet.rows[i].cells {
			if k >= len(s.sheet.kinds) || s.sheet.kinds[k].isTime() {
				continue
			}
			c := classify(cell)
			if c == classComma || c == classUnit && strings.Contains(cell, ",") {
				commas++
			} else if (c == classNumber || c == classUnit) && strings.Contains(cell, ".") {
				points++
			}
		}
	}
	s.format.Decimal = DecimalPoint
	if commas > points {
		s.format.Decimal = DecimalComma
		s.because("Decimal", "%d numbers have a comma", commas)
	}
}

// mostRows bounds the work on the shape of a table: its first rows and its last.
const mostRows = 300

// analyse finds the rows of the table and what its columns hold.
func (sh *sheet) analyse(start int) {
	if start > 0 && len(sh.rows) > 0 {
		sh.rows = sh.rows[1:]
	}
	rows := make([]int, 0, 2*mostRows)
	for i := range sh.rows {
		if i < mostRows || i >= len(sh.rows)-mostRows {
			rows = append(rows, i)
		}
	}
	kinds := make(map[int][]class, len(rows))
	widths := map[int]int{}
	for _, i := range rows {
		cells := sh.rows[i].cells
		if len(cells) > mostCells {
			return
		}
		row := make([]class, len(cells))
		some := false
		for k, cell := range cells {
			row[k] = classify(cell)
			some = some || row[k].isTime() || row[k].isNumber()
		}
		kinds[i] = row
		if some && len(row) > 1 {
			widths[len(row)]++
		}
	}
	sh.columns(rows, kinds, widths)
}

// columns settles what each column holds by its rows, then which rows are of the table by its columns.
func (sh *sheet) columns(rows []int, kinds map[int][]class, widths map[int]int) {
	if commonest(widths) < 2 {
		return
	}
	sh.kinds = majority(rows, kinds, 4, func(i int) bool { return widths[len(kinds[i])] > 0 })
	times, numbers := sh.find(class.isTime), sh.find(class.isNumber)
	key := times
	if len(times) == 0 {
		if key = numbers; len(numbers) < 2 {
			return
		}
	}
	sh.rowsOf(rows, kinds, key[0], len(times) > 0)
}

// rowsOf collects the rows of the table, its width, and how much of it is understood.
func (sh *sheet) rowsOf(rows []int, kinds map[int][]class, key int, timed bool) {
	recognised, total, raw := 0, 0, map[int]int{}
	for _, i := range rows {
		row := kinds[i]
		if strings.HasPrefix(sh.rows[i].text, "#") || !sh.isData(row, key, timed) {
			continue
		}
		sh.data = append(sh.data, i)
		for _, c := range row {
			if c != classEmpty {
				total++
			}
			if c > classText {
				recognised++
			}
		}
		sh.width = max(sh.width, len(row))
		raw[sh.rows[i].raw]++
	}
	if len(sh.data) == 0 || sh.sep == Blanks && 2*recognised < total { // words between blanks are a sentence
		return
	}
	sh.width = max(key+1, min(sh.width, commonest(raw))) // a row that is longer than most is refused with its line
	sh.first = sh.data[0]
	sh.kinds = majority(sh.data, kinds, 1, func(int) bool { return true })
	sh.kinds = sh.kinds[:min(len(sh.kinds), sh.width)]
	sh.score = 1 + len(sh.data)*1000*recognised/total
	if !timed {
		sh.score = 1 + sh.score/2 // another separator may show a clock
	}
	if sh.sep == Blanks {
		sh.score = 1 + sh.score*9/10 // blanks stand beside every other separator too
	}
	if len(sh.find(class.isNumber)) == 0 {
		sh.score = 1 + sh.score/1000
	}
	for i := mostRows; i < len(sh.rows)-mostRows; i++ { // the rows between were not looked at
		sh.data = append(sh.data, i)
	}
	slices.Sort(sh.data)
}

// commonest is the width that most rows have, the greater of two.
func commonest(widths map[int]int) int {
	usual := 0
	for w, n := range widths {
		if n > widths[usual] || n == widths[usual] && w > usual {
			usual = w
		}
	}
	return usual
}

// isData reports a row of the table: a time in its column of times, or, in a table without, a number in its
// first column of numbers.
func (sh *sheet) isData(row []class, key int, timed bool) bool {
	if key >= len(row) {
		return false
	}
	if timed {
		return row[key].isTime()
	}
	return row[key].isNumber()
}

// find are the columns of a class.
func (sh *sheet) find(is func(class) bool) []int {
	var found []int
	for i, k := range sh.kinds {
		if is(k) {
			found = append(found, i)
		}
	}
	return found
}

// majority is what most of the cells of each column hold that hold anything. Words count for less while headings
// and footers may be among them.
func majority(rows []int, kinds map[int][]class, less int, counts func(int) bool) []class {
	var all []class
	for k := 0; k < mostCells; k++ {
		var n [classNone + 1]int
		seen := false
		for _, i := range rows {
			if row := kinds[i]; counts(i) && k < len(row) {
				n[row[k]]++
				seen = true
			}
		}
		if !seen {
			break
		}
		n[classText] = (n[classText] + less - 1) / less
		all = append(all, most(n))
	}
	return all
}

func most(n [classNone + 1]int) class {
	numbers := n[classNumber] + n[classComma] + n[classUnit]
	best, count := classEmpty, 0
	for _, c := range []class{classBoth, classDate, classClock, classSpan, classText} {
		if n[c] > count {
			best, count = c, n[c]
		}
	}
	if n[classSpan] > 0 && n[classSpan]+n[classClock] >= count && best != classText && best != classBoth &&
		best != classDate {
		best, count = classSpan, n[classSpan]+n[classClock]
	}
	if numbers >= count && numbers > 0 {
		best = classNumber
	}
	if best == classEmpty && n[classNone] > 0 {
		return classNone
	}
	return best
}
