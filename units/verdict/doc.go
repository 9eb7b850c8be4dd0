// Package verdict is the one vocabulary of judgement: every Check, Audit and Watch of the library embeds a Report in its
// result. It knows no fish. A Report has a Verdict, the Findings that led to it, the worst first, and the Cautions to
// show beside it, the deciding ones first. Start with Report.Verdict and Verdict.Passes, then print each Finding with
// Finding.Text in the system of units of whoever reads it.
//
// Verdicts are numbered by severity with CannotTell, the zero value, in the middle: whatever is below zero is a pass,
// and the greater of two is the worse.
package verdict
