package sheet

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// Table prints rows in columns that are as wide as their widest cell: the first to the left, the others to the right.
func (s *Sheet) Table(rows ...[]string) {
	var widths []int
	for _, row := range rows {
		for i, cell := range row {
			if i == len(widths) {
				widths = append(widths, 0)
			}
			widths[i] = max(widths[i], utf8.RuneCountInString(cell))
		}
	}
	for _, row := range rows {
		var line strings.Builder
		for i, cell := range row {
			space := strings.Repeat(" ", widths[i]-utf8.RuneCountInString(cell))
			if i == 0 {
				line.WriteString(cell + space)
				continue
			}
			line.WriteString("  " + space + cell)
		}
		fmt.Fprintln(s.W, strings.TrimRight(line.String(), " "))
	}
}
