package conformance

import (
	"strconv"
	"strings"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

type record = series.Series[units.Temperature]

var seriesExempt = map[string]string{
	"TemperatureCodes": "hands out a table", "ReadingError.Unwrap": faults, "LineError.Unwrap": faults, "FormatError.Is": faults, "Format.Check": faults,
	"Series.Origin": build, "Series.WithOrigin": build, "Proposal.Answer": build, "Running.Limit": build,
}

func seriesGrid(r *results) {
	limits := degrees(30, 130, 33)
	for _, of := range scrawls(r, 30, -20, 160, 10*time.Minute) {
		s := of.(record)
		own := these(of)
		r.sweep("New", series.New[units.Temperature], these(s.Readings()))
		askGrid(r, own)
		limitGrid(r, own, limits)
		span := s.Span()
		first, _ := s.First()
		at := these(first.At+span/3, first.At+span/2+7, first.At+span)
		r.sweep("Series.ValueAt", record.ValueAt, own, at)
		r.sweep("Series.Slice", record.Slice, own, at[:1], at)
		later := r.sweep("Series.Shift", record.Shift, own, these(span+time.Hour))
		r.sweep("Series.Join", record.Join, own, later)
		r.sweep("Series.Equal", record.Equal, own, later)
		r.sweep("Series.Append", record.Append, own, these(series.Reading[units.Temperature]{At: first.At + span + time.Minute, Value: tenths(71)}))
		r.sweep("Stretch.Length", series.Stretch.Length, these(s.LongestGap()))
		doubtGrid(r, s)
		runningGrid(r, s)
	}
	r.sweep("Beyond", series.Beyond[units.Temperature], stepped(1, 600, 77, time.Second), degrees(50, 90, 13), degrees(10, 40, 13), these(tenths(44)))
	a, b := series.Reading[units.Temperature]{At: time.Minute, Value: tenths(37)}, series.Reading[units.Temperature]{At: 11 * time.Minute, Value: tenths(94)}
	r.sweep("Along", series.Along[units.Temperature], these(a), these(b), stepped(60, 660, 47, time.Second))
	fileGrid(r)
}

func askGrid(r *results, s []any) {
	var times, quanta [20]int64
	n := s[0].(record).Copy(2, times[:], quanta[:])
	r.add("Series.Copy", nil, []any{n, times, quanta}, s[0])
	r.sweep("Series.Len", record.Len, s)
	r.sweep("Series.At", record.At, s, these(0, 3, 1_000))
	r.sweep("Series.Readings", record.Readings, s)
	r.sweep("Series.First", record.First, s)
	r.sweep("Series.Last", record.Last, s)
	r.sweep("Series.Span", record.Span, s)
	r.sweep("Series.Min", record.Min, s)
	r.sweep("Series.Max", record.Max, s)
	r.sweep("Series.Extent", record.Extent, s)
	r.sweep("Series.LongestGap", record.LongestGap, s)
}

func limitGrid(r *results, s, limits []any) {
	r.sweep("Series.AtOrAbove", record.AtOrAbove, s, limits)
	r.sweep("Series.Above", record.Above, s, limits)
	r.sweep("Series.AtOrBelow", record.AtOrBelow, s, limits)
	r.sweep("Series.Below", record.Below, s, limits)
	r.sweep("Series.Between", record.Between, s, these(tenths(40)), these(tenths(100)))
	r.sweep("Series.LongestAtOrAbove", record.LongestAtOrAbove, s, limits)
	r.sweep("Series.LongestAtOrBelow", record.LongestAtOrBelow, s, limits)
	r.sweep("Series.FirstAtOrAbove", record.FirstAtOrAbove, s, limits)
	r.sweep("Series.FirstAtOrBelow", record.FirstAtOrBelow, s, limits)
	r.sweep("Series.FirstAbove", record.FirstAbove, s, limits)
	r.sweep("Series.FirstBelow", record.FirstBelow, s, limits)
}

func doubtGrid(r *results, s record) {
	believable := series.Believable[units.Temperature]{}
	doubts, err := s.Doubts(believable)
	r.add("Series.Doubts", err, one(doubts), s)
	left, n := s.Without(doubts)
	r.add("Series.Without", nil, []any{left, n}, s)
	watched, err := series.WatchDoubts(believable)
	r.add("WatchDoubts", err, nil)
	var more []series.Doubt[units.Temperature]
	var all int
	for _, reading := range s.Readings() {
		watched, more, err = watched.Next(reading)
		all += len(more)
	}
	r.add("Doubting.Next", err, one(all), s)
}

func runningGrid(r *results, s record) {
	running, err := series.Watch(tenths(71))
	r.add("Watch", err, one(running.Total()), s)
	for _, reading := range s.Readings() {
		running, err = running.Next(reading)
	}
	last, ok := running.Last()
	r.add("Running.Next", err, one(running.Total()), s)
	r.add("Running.Len", nil, one(running.Len()), s)
	r.add("Running.Last", nil, []any{last, ok}, s)
	r.add("Running.Total", nil, one(running.Total()), s)
	r.add("Running.Current", nil, one(running.Current()), s)
	r.add("Running.Longest", nil, one(running.Longest()), s)
	r.add("Running.LongestGap", nil, one(running.LongestGap()), s)
}

// fileGrid reads invented files of a logger.
func fileGrid(r *results) {
	for seed := int64(1); seed < 20; seed++ {
		var file strings.Builder
		file.WriteString("time,Temperature (°F)\n")
		for i := int64(0); i < 30+seed; i++ {
			file.WriteString("2031-06-0" + strconv.FormatInt(1+seed%9, 10) + " 1" + strconv.FormatInt(i/60, 10) + ":" + strconv.FormatInt(10+i%50, 10) + ":00," +
				strconv.FormatInt(30+(i*seed)%41, 10) + "." + strconv.FormatInt((i*7+seed)%10, 10) + "\n")
		}
		proposal, err := series.Sniff[units.Temperature]([]byte(file.String()), series.Format{})
		r.add("Sniff", err, one(len(proposal.Questions)), seed)
		proposal.Format.Zone = "UTC"
		log, err := series.ReadCSV[units.Temperature](strings.NewReader(file.String()), proposal.Format, time.UTC)
		r.add("ReadCSV", err, one(log.Series), seed)
		r.add("Log.Dropouts", nil, one(log.Dropouts()), seed)
		clock, err := log.Series.TimeOfDay(10*time.Hour + 21*time.Minute)
		r.add("Series.TimeOfDay", err, one(clock), seed)
	}
	plain := "time (min),core (°C),air (°C)\n0,4.5,20.25\n7,9.75,60\n15,33.3,65.5\n"
	columns, err := series.ReadColumns[units.Temperature](strings.NewReader(plain))
	require.NoError(r.t, err)
	r.add("ReadColumns", err, one(len(columns)))
	s, err := series.ReadColumn[units.Temperature](strings.NewReader(plain), "core")
	r.add("ReadColumn", err, one(s))
}
