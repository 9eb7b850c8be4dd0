// Package form reads an example's JSON file, strictly and in the form that the library's own types have, so that every
// fault is one clear message naming the file, the line and the field. The fields are those of a Go struct, named after
// them in lower camel case (see internal/wire); a tag help:"…" says what one is, example:"…" a value where the demo has
// none.
package form

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"time"

	"example.org/lakelarder/internal/wire"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Beside is a file in the directory of the calling program's source, wherever it is run from.
func Beside(name string) string {
	_, caller, _, _ := runtime.Caller(1)
	return filepath.Join(filepath.Dir(caller), name)
}

// Read reads one JSON value into a form; an error names the file, the line, the field and what was expected.
func Read(path string, form any) error {
	data, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	err = wire.Unmarshal(bytes.TrimPrefix(data, []byte("\ufeff")), form) // some editors begin a file with it
	var field units.FieldError
	if errors.As(err, &field) {
		where := fmt.Sprintf("%s: line %d", path, field.Line)
		if field.Field != "" {
			where += ": " + field.Field
		}
		return fmt.Errorf("%s: %w", where, field.Err)
	}
	return err
}

// Clock is a time of day as a kitchen writes it, "21:05"; the empty text is one that was not written down.
type Clock struct{ units.Stated[time.Duration] }

// MarshalText writes the time as hours and minutes.
func (c Clock) MarshalText() ([]byte, error) {
	if !c.Given {
		return nil, nil
	}
	return []byte(fmt.Sprintf("%02d:%02d", c.Value/time.Hour, c.Value%time.Hour/time.Minute)), nil
}

// UnmarshalText reads hours and minutes, 00:00 to 23:59.
func (c *Clock) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*c = Clock{}
		return nil
	}
	t, err := time.Parse("15:04", string(text))
	if err != nil {
		return fmt.Errorf("%q is no clock time: expected one such as 21:05", text)
	}
	c.Stated = units.State(time.Duration(t.Hour())*time.Hour + time.Duration(t.Minute())*time.Minute)
	return nil
}

// On is the moment on the clock of a record that started at a time of day; a time before the start is of the next day.
func (c Clock) On(started Clock) units.Stated[time.Duration] {
	if !c.Given {
		return units.Stated[time.Duration]{}
	}
	at := c.Value - started.Value
	if at < 0 {
		at += 24 * time.Hour
	}
	return units.State(at)
}

// Log is one column of a logger's file: its name without the unit, its readings, and how it was read.
type Log[T series.Value] struct {
	Name   string
	Series series.Series[T]
	Rows   []series.Row
	Read   string // "read as column 2 in °F"
}

// ReadLog reads a logger's file that lies beside the form. How it is written is found from the file, after what the
// form states of its format; what neither says is an error that lists the questions and how to answer each.
func ReadLog[T series.Value](path, name, field string, stated series.Format) (Log[T], error) {
	full := filepath.Join(filepath.Dir(path), name)
	data, err := os.ReadFile(full)
	if err != nil {
		return Log[T]{}, err
	}
	proposal, err := series.Sniff[T](Head(data), stated)
	if err != nil {
		return Log[T]{}, fmt.Errorf("%s: %w", full, err)
	}
	if len(proposal.Questions) > 0 {
		return Log[T]{}, questions(path, full, field, stated, proposal)
	}
	return readAsProposed[T](full, data, proposal)
}

// ReadLogs reads every column of a logger's file that can hold the quantity, in the order of the file, as ReadLog does
// one: several probes of one logger.
func ReadLogs[T series.Value](path, name, field string, stated series.Format) ([]Log[T], error) {
	full := filepath.Join(filepath.Dir(path), name)
	data, err := os.ReadFile(full)
	if err != nil {
		return nil, err
	}
	proposal, err := series.Sniff[T](Head(data), stated)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", full, err)
	}
	if err := passedOver[T](full, Head(data), stated, proposal); err != nil {
		return nil, err
	}
	if len(proposal.Questions) == 0 || proposal.Questions[0].Ask != series.AskColumn {
		log, err := ReadLog[T](path, name, field, stated)
		return []Log[T]{log}, err
	}
	var all []Log[T]
	for _, column := range proposal.Questions[0].Choices {
		format, err := proposal.Answer(stated, series.AskColumn, column.Answer)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", full, err)
		}
		log, err := ReadLog[T](path, name, field, format)
		if err != nil {
			return nil, err
		}
		all = append(all, log)
	}
	return all, nil
}

// passedOver refuses a column that is neither read nor known to hold another quantity: a probe left out may be the
// coldest.
func passedOver[T series.Value](full string, head []byte, stated series.Format, p series.Proposal) error {
	for _, column := range p.Headings {
		isTime := false
		for _, t := range p.Format.Time {
			isTime = isTime || t.Column.Number == column.Number
		}
		format := stated
		format.Value = column
		if !isTime && !holds[T](head, format) && !holds[units.Temperature](head, format) &&
			!holds[units.Pressure](head, format) &&
			!holds[units.Mass](head, format) && !holds[units.Ratio](head, format) {
			return fmt.Errorf("%s: %v: its heading names no known unit, and a probe that is left out may be the coldest", full, column)
		}
	}
	return nil
}

// holds reports whether a column is of a quantity, by its unit.
func holds[T series.Value](head []byte, stated series.Format) bool {
	p, err := series.Sniff[T](head, stated)
	for _, q := range p.Questions {
		if q.Ask == series.AskUnit {
			return false
		}
	}
	return err == nil
}

func readAsProposed[T series.Value](full string, data []byte, proposal series.Proposal) (Log[T], error) {
	location, err := locationOf(proposal.Format.Zone)
	if err != nil {
		return Log[T]{}, fmt.Errorf("%s: %w", full, err)
	}
	log, err := series.ReadCSV[T](bytes.NewReader(data), proposal.Format, location)
	if err != nil {
		return Log[T]{}, fmt.Errorf("%s: %w", full, err)
	}
	column := proposal.Format.Value.Name
	if open := strings.LastIndex(column, " ("); open > 0 {
		column = column[:open]
	}
	read := filepath.Base(full) + " " + ReadAs(proposal.Format)
	if len(log.Rows) > 0 {
		first := log.Rows[0]
		read += fmt.Sprintf("; %d rows hold no reading, the first in line %d (%s)", len(log.Rows), first.Line,
			first.Why)
	}
	return Log[T]{Name: column, Series: log.Series, Rows: log.Rows, Read: read}, nil
}

// Head is the first lines and the last, cut at line ends: Sniff takes a mebibyte.
func Head(data []byte) []byte {
	const most = 1 << 19
	if len(data) <= 2*most {
		return data
	}
	first := data[:bytes.LastIndexByte(data[:most], '\n')+1]
	rest := data[len(data)-most:]
	return append(append([]byte{}, first...), rest[bytes.IndexByte(rest, '\n')+1:]...)
}

func locationOf(zone string) (*time.Location, error) {
	if zone == "" || zone[0] == '+' || zone[0] == '-' {
		return nil, nil
	}
	return time.LoadLocation(zone)
}

// ReadAs says on which reading of the file the answer rests.
func ReadAs(f series.Format) string {
	text := "read as "
	for i, t := range f.Time {
		if i > 0 {
			text += " and "
		}
		text += fmt.Sprintf("time in %v", t.Column)
		if t.Unit != "" {
			text += " in " + t.Unit
		}
	}
	if f.Order != 0 {
		text += ", " + f.Order.String()
	}
	return text + fmt.Sprintf(", value in %v in %s", f.Value, f.Unit)
}

// questions is the error that asks what the file does not say.
func questions(path, full, field string, stated series.Format, p series.Proposal) error {
	text := full + ": not read, for the file does not say:"
	for _, q := range p.Questions {
		text += "\n  " + q.Text
		for _, c := range q.Choices {
			text += fmt.Sprintf("\n    %s: %s", c.Answer, c.Means)
			if answered, err := p.Answer(stated, q.Ask, c.Answer); err == nil {
				if answer, err := wire.Marshal(answered); err == nil {
					text += fmt.Sprintf("\n      to answer so, set %s to %s in %s", field, answer, filepath.Base(path))
				}
			}
		}
	}
	return errors.New(text)
}
