// Package wire is the one encoder and decoder of the library: what leaves the process as JSON and comes back from it. It goes by
// reflection and knows no domain type; a type that has a JSON form calls it in one line:
//
//	func (r Report) MarshalJSON() ([]byte, error)     { return wire.Marshal(r) }
//	func (c *Claim) UnmarshalJSON(data []byte) error  { return wire.Unmarshal(data, c) }
//
// # The form
//
// A struct is an object with its exported fields in their order, named after the Go field in lower camel case (ID is id, MaxGap is
// maxGap); an embedded struct lends its fields to the one around it. A type with MarshalText is text, a time.Duration is text as
// units.Lasting prints it, a time.Time is RFC 3339. Whole numbers of a predeclared type are counts and the only numbers. Slices and
// arrays are lists, maps with text keys are objects in the order of their keys, pointers stand for what they point to, and a nested
// type that has MarshalJSON or UnmarshalJSON is asked. A units.Stated is its value where it is given. Floats, interfaces, functions, channels,
// whole numbers of a defined type without text, and structs with nothing exported are errors, so that nothing is lost in silence.
//
// An embedded struct is always read and written by its fields, whatever methods it lends: Go cannot say whether a type that embeds another with MarshalJSON
// has a MarshalJSON of its own. A type that embeds one with a text form is an error: give the field a name.
//
// # What is left out
//
// A zero value is left out, and so is a Stated that is not given. The tag `wire:"always"` writes a zero all the same (not a nil slice, map or pointer, which
// has nothing to write), `wire:"required"` says that reading fails without the field, and writes a zero that is something (0 ft, but not an
// empty word); `wire:"-"` skips the field.
//
// # Reading
//
// Reading is strict: unknown fields, a field that stands twice, null, the wrong kind of value, a count with a point, an overflow, an array of another
// length, bad UTF-8, more than one value, more than 64 levels and more than 64 MiB are each a units.FieldError that names the path, the line and the column.
package wire
