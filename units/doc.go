// Package units holds the quantities that every other package speaks in. A value is a whole
// number of a quantum so small, and so chosen, that its metric and its kitchen readings are both
// whole: two routes to one figure give one value, so 2000*Foot == 609_600*Millimetre and
// Fahrenheit(212) == Celsius(100) hold as equality. Decimals and floats live at the edge (Of,
// OfFloat, In, Float); integers are inside.
//
// Every quantity but Temperature is a defined int64 whose units are constants of the type, so
// 3*units.Pound and 11*units.PSI are values and +, -, <, == work. Temperature is a point on a
// scale, a small struct whose zero value means "not set"; TemperatureChange is the difference of
// two. Arithmetic that could pass int64 goes through Sum, Times and Prorate, which refuse it.
//
// All of them print and parse themselves ("2,000 ft", "1 lb 6 oz", "½ cup", "-18C") and travel as
// text in JSON: the bare integer never leaves the process, so the quantum may change without
// breaking anyone's files.
//
// What a person types into a form goes through ReadTyped, which understands spellings, words and any dash or quotation mark,
// refuses what may mean two things with the choices, and returns the text that the strict Parse functions read.
//
// Unit definitions: NIST Special Publication 811, appendix B, and NIST Handbook 44, appendix C.
package units
