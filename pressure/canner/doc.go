// Package canner knows the pressure canner and one run of it: how many jars stand in it, what its gauge must show
// given its known error, how long a load takes, and whether the record of a run met its schedule. Start with Audit,
// and with Watch while the run goes on.
//
// It judges only against a process.Schedule, which is published. Geometry says what can stand in the vessel; it never
// says that a load is safe. An Audit says whether the record shows that the published steps were kept. A record
// cannot show how the jars were packed, that lids sealed, or that the fish was sound; and what it does not show
// counts as not done.
package canner
