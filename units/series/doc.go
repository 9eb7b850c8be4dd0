// Package series holds readings over time, as a logger or a scale records them: rising times since
// the start of the record, each with a temperature, a pressure, a mass or a ratio. It answers how
// long a value was held at or above a limit, how long it stayed beyond one, when it got there and
// where the longest gap is. It knows nothing of fish.
//
// Between two readings the value runs in a straight line. That is an assumption the longer the gap
// the bolder, so LongestGap belongs beside every answer. Times where a line crosses a limit are
// computed in integers and rounded to the nanosecond towards the safe side: time held rounds down,
// time exposed rounds up.
//
// Files come in by two doors. ReadColumn and ReadColumns take a plain record that says everything
// itself. ReadCSV takes whatever a logger writes as a Format says, plain data that Sniff proposes from
// the file's own lines; what those leave open is a Question for a person, and nothing is guessed.
//
// A Series is never changed once made; Append and Slice return new ones. Running is the same sum
// for live use, one reading at a time.
package series
