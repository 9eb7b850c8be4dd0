package series

import (
	"strings"
)

// column is what is known of one column.
type column struct {
	name   string // its heading as it stands, "" without
	bare   string // without the unit
	kind   kind   // what its unit measures, unknown without one
	unit   string
	clash  string // a second unit that contradicts the first
	class  class
	under  string // the cells of the further lines of headings, joined
	values []string
}

// names finds the lines of headings and what they say of each column.
func (s *sniffer) names() {
	sh := s.sheet
	top := sh.first
	if above := sh.first - 1; above >= 0 && s.isHeader(above) {
		top = above
		for top > 0 && sh.first-top < 4 && s.isFurther(top-1, top) {
			top--
		}
	}
	s.format.Header, s.format.Preamble = 0, sh.rows[sh.first].line-1
	if top < sh.first {
		s.format.Preamble = sh.rows[top].line - 1
		s.format.Header = sh.rows[sh.first-1].line - s.format.Preamble
		s.because("Header", "line %d holds the headings: %s", sh.rows[top].line, short(sh.rows[top].text))
	}
	width := sh.width
	if top < sh.first {
		width = max(width, len(sh.rows[top].cells))
		s.headings0 = sh.rows[top].raw
	}
	s.format.Cells = width
	s.cols = make([]column, width)
	for i := range s.cols {
		c := &s.cols[i]
		for r := top; r < sh.first; r++ {
			if i < len(sh.rows[r].cells) {
				if cell := sh.rows[r].cells[i]; r == top {
					c.name = cell
				} else {
					c.under += " " + cell
				}
			}
		}
		if i < len(sh.kinds) {
			c.class = sh.kinds[i]
		}
		for _, r := range sh.data {
			if cells := sh.rows[r].cells; i < len(cells) && cells[i] != "" {
				c.values = append(c.values, cells[i])
			}
		}
	}
	s.units()
	s.remarks()
}

// isHeader reports a row that can stand right above the table as its headings: about as wide, with words, and no
// time where the times are.
func (s *sniffer) isHeader(i int) bool {
	sh := s.sheet
	row := sh.rows[i]
	words := 0
	for k, cell := range row.cells {
		c := classify(cell)
		if k < len(sh.kinds) && sh.kinds[k].isTime() && c.isTime() {
			return false
		}
		if c == classText || c == classNone {
			words++
		}
	}
	if strings.HasPrefix(row.text, "#") && len(row.cells) != sh.width {
		return false
	}
	return words > 0 && len(row.cells) >= 2 && 2*len(row.cells) >= sh.width
}

// isFurther reports a row above one of headings that is one too: as wide, and no remark.
func (s *sniffer) isFurther(i, below int) bool {
	rows := s.sheet.rows
	return len(rows[i].cells) == len(rows[below].cells) && rows[i].line == rows[below].line-1 && s.isHeader(i) &&
		!strings.HasPrefix(rows[i].text, "#")
}

// units reads the units out of the headings and out of the lines below them.
func (s *sniffer) units() {
	for i := range s.cols {
		c := &s.cols[i]
		c.kind, c.unit, c.bare = unitIn(c.name)
		if c.kind == temperature {
			c.clash = otherScale(c.name, c.unit)
		}
		for _, cell := range s.furtherCells(i) {
			k, unit := kindOfWord(strings.Trim(cell, "()[] "))
			switch {
			case k == unknown:
			case c.kind == unknown:
				c.kind, c.unit, c.bare = k, unit, c.name
			case k != c.kind || unit != c.unit:
				c.clash = unit
			}
		}
	}
	for i := range s.cols { // "Temp A", "Temp B", "Temp C" are names, not units
		c := &s.cols[i]
		last := c.name[strings.LastIndexAny(c.name, " _-")+1:]
		if len(last) != 1 || c.kind != temperature {
			continue
		}
		for k := range s.cols {
			other := s.cols[k].name
			if k != i && len(other) == len(c.name) && other[:len(other)-1] == c.name[:len(c.name)-1] &&
				!strings.Contains("CFKcfk", other[len(other)-1:]) {
				c.kind, c.unit, c.bare = unknown, "", c.name
				break
			}
		}
	}
}

// furtherCells are the cells below the name of a column.
func (s *sniffer) furtherCells(i int) []string {
	var cells []string
	for r := s.sheet.first - 1; r >= 0 && s.sheet.rows[r].line > s.format.Preamble+1; r-- {
		if i < len(s.sheet.rows[r].cells) {
			cells = append(cells, s.sheet.rows[r].cells[i])
		}
	}
	return cells
}

// remarks finds the mark of lines of remarks and the line from which on the file holds nothing else.
func (s *sniffer) remarks() {
	sh := s.sheet
	for _, row := range sh.rows {
		if strings.HasPrefix(row.text, "#") && row.line > s.format.Preamble+s.format.Header {
			s.format.Comment = "#"
		}
	}
	last := 0
	for _, i := range sh.data {
		last = max(last, i)
	}
	if last+1 >= len(sh.rows) || s.stated.End != "" {
		return
	}
	text := sh.rows[last+1].text
	if leadingDigits(strings.TrimSpace(text)) > 0 || strings.HasPrefix(text, "#") {
		return
	}
	begin := text
	if i := strings.IndexAny(text, "0123456789"); i >= 3 {
		begin = text[:i]
	}
	s.format.End = begin
	s.because("End", "the table ends at line %d: %s", sh.rows[last+1].line, short(text))
}
