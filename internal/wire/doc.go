// Package wire is the one encoder and decoder of the library: what leaves the process as JSON and comes back from it.
// It goes by reflection and knows no domain type; a type that has a JSON form calls it in one line:
//
//	func (r Report) MarshalJSON() ([]byte, error)    { return wire.Marshal(r) }
//	func (c *Claim) UnmarshalJSON(data []byte) error { return wire.Unmarshal(data, c) }
//
// # The form
//
// A struct is an object with its exported fields in their order, named after the Go field in lower camel case (ID is
// id, MaxGap is maxGap); an embedded struct lends its fields to the one around it. A type with MarshalText is text, a
// time.Duration is text as units.Lasting prints it, a time.Time is RFC 3339. Whole numbers of a predeclared type are
// counts and the only numbers. Slices and arrays are lists, maps with text keys are objects in the order of their keys,
// pointers stand for what they point to, and a nested type that has MarshalJSON or UnmarshalJSON is asked. A
// units.Stated is its value.
//
// Nothing is lost in silence: floats, interfaces, functions, whole numbers of a defined type without text, structs with
// nothing exported and two fields of one name are errors.
//
// An embedded struct is always read and written by its fields, whatever methods it lends: reflection cannot say whether
// a type that embeds another with MarshalJSON has a MarshalJSON of its own. So a type that embeds one with MarshalJSON
// is written by its fields too, and embedding a type with a text form is an error: give the field a name.
//
// # What is left out
//
// A zero value is left out, and so is a Stated that is not given. An empty slice or map is not nil, and is written. A
// list or map has no place for nothing: a nil slice or map in it is written as empty, a nil pointer in it is an error.
//
// A tag changes this for one field. `wire:"always"` writes a zero all the same, but not a nil slice, map or pointer.
// `wire:"required"` says that reading fails without the field, and writes a zero that is something: 0 ft, but not an
// empty word. `wire:"partial"` on a struct takes it by its fields, and asks for none of those that it requires: what was
// asked, as far as it was asked. `wire:"-"` skips the field, and it is lost.
//
// # Reading
//
// Reading is strict. Unknown fields, a field that stands twice, a missing or blank required one, null, the wrong kind
// of value, a count with a point, an overflow, an array of another length, bad UTF-8, more than one value, more than 64
// levels and more than 64 MiB are each a units.FieldError that names the path, the line and the column.
package wire
