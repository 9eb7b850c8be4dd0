package series

import "time"

// Log is what ReadCSV found in a file: the readings, and the rows that hold none.
type Log[T Value] struct {
	Series Series[T]
	Rows   []Row // in the order of the file
	Others int   // rows that the Format's Only left out
}

// Row is a row without a reading. Line counts from 1; At is its time in the record, where Timed; Text is the
// cell, or the line of a remark, cut to 60 bytes.
type Row struct {
	Line  int
	At    time.Duration
	Timed bool
	Why   Why
	Text  string
}

// Dropouts returns the stretches between two readings in which a row of the record says that there was none:
// missing values and fault codes, in order. The same gaps are in LongestGap by their length; here they are by
// their cause, however short the gap.
func (l Log[T]) Dropouts() []Stretch {
	var found []Stretch
	i := 0
	for _, row := range l.Rows {
		if !row.Timed || row.Why != Missing && row.Why != Fault {
			continue
		}
		for i < len(l.Series.at) && l.Series.at[i] <= int64(row.At) {
			i++
		}
		if i == 0 || i == len(l.Series.at) || l.Series.at[i-1] == int64(row.At) {
			continue // before the first reading, after the last, or beside one
		}
		gap := Stretch{time.Duration(l.Series.at[i-1]), time.Duration(l.Series.at[i])}
		if n := len(found); n == 0 || found[n-1] != gap {
			found = append(found, gap)
		}
	}
	return found
}
