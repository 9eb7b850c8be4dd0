// Package word gives the enumerations of the library their words, written and read alike everywhere. An enumeration is a
// uint8 whose zero is not stated; its four methods are one line each:
//
//	var jars = word.List[Jar]{What: "jar", Words: []string{"half-pint", "pint"}}
//
//	func (j Jar) String() string                   { return jars.Of(j) }
//	func ParseJar(s string) (Jar, error)           { return jars.Parse(s) }
//	func (j Jar) MarshalText() ([]byte, error)     { return jars.Marshal(j) }
//	func (j *Jar) UnmarshalText(text []byte) error { return jars.Unmarshal(text, j) }
package word
