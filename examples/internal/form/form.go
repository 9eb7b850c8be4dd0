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
	"reflect"
	"runtime"
	"strings"
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
	data = bytes.TrimPrefix(data, []byte("\ufeff")) // some editors begin a file with it
	if err := once(path, data); err != nil {
		return err
	}
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(form); err != nil {
		return fault(path, data, decoder, err)
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return fmt.Errorf("%s: line %d: more than one JSON value", path, line(data, decoder, nil))
	}
	return nil
}

// fault names the line, or of a field that the form does not have the line of its name, when that is there once: the decoder has read on.
func fault(path string, data []byte, decoder *json.Decoder, err error) error {
	var kind *json.UnmarshalTypeError
	name, unknown := strings.CutPrefix(err.Error(), "json: unknown field ")
	switch {
	case unknown && bytes.Count(data, []byte(name)) == 1:
		return fmt.Errorf("%s: line %d: %w", path, lineAt(data, int64(bytes.Index(data, []byte(name)))), err)
	case unknown:
		return fmt.Errorf("%s: %w", path, err)
	case errors.As(err, &kind) && kind.Type.Kind() == reflect.String:
		return fmt.Errorf("%s: line %d: %s: expected a text in quotes, not a %s", path, line(data, decoder, err), kind.Field, kind.Value)
	}
	return fmt.Errorf("%s: line %d: %w", path, line(data, decoder, err), err)
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
	} else if errors.Is(err, io.ErrUnexpectedEOF) {
		offset = int64(len(data))
	}
	return lineAt(data, offset)
}

func lineAt(data []byte, offset int64) int {
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
