// Package spoilage turns a temperature record into days on ice. Start with IceDays: the time in melting ice that would
// have spoiled the fish as far. Lives are the published lives of fish on ice, FindLives those that speak of one fish,
// and Age.Left what is left of one.
//
// It is of smell and taste: when fish stops being good, never that it is safe. For that hold the same record against
// coldchain.Audit.
package spoilage
