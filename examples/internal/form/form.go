// Package form reads an example's JSON file so that every fault is one clear message naming the field or the line.
package form

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
)

// Beside is a file in the directory of the calling program's source, wherever it is run from.
func Beside(name string) string {
	_, caller, _, _ := runtime.Caller(1)
	return filepath.Join(filepath.Dir(caller), name)
}

// Read decodes one JSON value with no field that the form does not have and none that stands twice; an error names the file and the line.
func Read(path string, form any) error {
	data, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	if err := once(path, data); err != nil {
		return err
	}
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(form); err != nil {
		return fmt.Errorf("%s: line %d: %w", path, line(data, decoder, err), err)
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return fmt.Errorf("%s: line %d: more than one JSON value", path, line(data, decoder, nil))
	}
	return nil
}

// line is the line that the decoder stood at.
func line(data []byte, decoder *json.Decoder, err error) int {
	offset := decoder.InputOffset()
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	if errors.As(err, &syntax) {
		offset = syntax.Offset
	} else if errors.As(err, &kind) {
		offset = kind.Offset
	}
	return 1 + bytes.Count(data[:min(offset, int64(len(data)))], []byte("\n"))
}

// Log reads a logger's file that lies beside the form; an error names it.
func Log[T any](path, name string, read func(io.Reader) (T, error)) (T, error) {
	var none T
	f, err := os.Open(filepath.Join(filepath.Dir(path), name))
	if err != nil {
		return none, err
	}
	defer f.Close()
	log, err := read(f)
	if err != nil {
		return none, fmt.Errorf("%s: %w", f.Name(), err)
	}
	return log, nil
}

// Fields takes field after field and keeps the first fault.
type Fields struct{ Err error }

// Field parses one text of the form; a fault is kept with the field's name.
func Field[T any](f *Fields, name, text string, parse func(string) (T, error)) T {
	v, err := parse(text)
	if err != nil && f.Err == nil {
		f.Err = fmt.Errorf("%s: %w", name, err)
	}
	return v
}

// Require keeps a problem of a field unless ok.
func (f *Fields) Require(ok bool, name, problem string) {
	if !ok && f.Err == nil {
		f.Err = fmt.Errorf("%s: %s", name, problem)
	}
}
