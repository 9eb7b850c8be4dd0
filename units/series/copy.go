package series

// Copy writes readings from number i on, counted from zero, into two slices of one length, and returns how many it
// wrote: their times in nanoseconds and their values in quanta, the whole numbers they are made of (of a temperature
// those above absolute zero). It stops at the end of the record or of the shorter slice; there are none before number
// 0. For loops over long records: a thousand readings at a time cost a tenth of At for each.
func (s Series[T]) Copy(i int, at, quanta []int64) int {
	if i < 0 || i >= len(s.at) {
		return 0
	}
	n := min(len(at), len(quanta), len(s.at)-i)
	copy(at[:n], s.at[i:])
	copy(quanta[:n], s.q[i:])
	return n
}
