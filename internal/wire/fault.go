package wire

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.org/lakelarder/units"
)

// problem is what is wrong with a text; it is a units.ErrSyntax.
type problem string

func (p problem) Error() string { return string(p) }

// Is reports whether target is units.ErrSyntax.
func (p problem) Is(target error) bool { return target == units.ErrSyntax }

// fault is an error on its way out: each level puts its name before the path.
type fault struct {
	path string
	at   int // byte offset
	err  error
}

func (f *fault) Error() string { return f.path + ": " + f.err.Error() }

func wrong(at int, format string, args ...any) error {
	return &fault{at: at, err: problem(fmt.Sprintf(format, args...))}
}

// under puts a name or an index before the path of a fault.
func under(err error, name string) error {
	f, ok := err.(*fault)
	if !ok {
		f = &fault{err: err}
	}
	f.path = joined(name, f.path)
	return f
}

func joined(name, path string) string {
	if path == "" || path[0] == '[' {
		return name + path
	}
	return name + "." + path
}

func indexed(i int) string { return "[" + strconv.Itoa(i) + "]" }

// named is a key as a path shows it: quoted where a dot or a blank would mislead.
func named(key string) string {
	if key == "" || strings.ContainsAny(key, ".[] \"\n\t") || !utf8.ValidString(key) {
		return "[" + strconv.Quote(shortened(key)) + "]"
	}
	return shortened(key)
}

// shortened cuts what an error repeats to what it can bear.
func shortened(s string) string {
	const most = 80
	if len(s) <= most {
		return s
	}
	return strings.ToValidUTF8(s[:most], "") + "..."
}

// from takes over the error of a type's own form, whose text began at offset at.
func from(err error, data []byte, at int) error {
	inner, ok := err.(units.FieldError)
	if !ok {
		return &fault{at: at, err: err}
	}
	return &fault{path: inner.Field, at: at + offset(data[at:], inner.Line, inner.Column), err: inner.Err}
}

// read is the error of reading data.
func read(err error, data []byte) error {
	f, ok := err.(*fault)
	if !ok {
		return err
	}
	line, column := place(data, f.at)
	return units.FieldError{Field: f.path, Line: line, Column: column, Err: f.err}
}

// written is the error of writing.
func written(err error) error {
	f, ok := err.(*fault)
	if !ok {
		return units.FieldError{Err: err}
	}
	return units.FieldError{Field: f.path, Err: f.err}
}

// place is the line and the column of an offset, both counted from 1, columns in characters.
func place(data []byte, at int) (line, column int) {
	before := data[:min(at, len(data))]
	start := bytes.LastIndexByte(before, '\n') + 1
	return 1 + bytes.Count(before, []byte("\n")), 1 + utf8.RuneCount(before[start:])
}

// offset is what place undoes.
func offset(data []byte, line, column int) int {
	at := 0
	for ; line > 1; line-- {
		at += bytes.IndexByte(data[at:], '\n') + 1
	}
	for ; column > 1 && at < len(data); column-- {
		_, size := utf8.DecodeRune(data[at:])
		at += size
	}
	return at
}
