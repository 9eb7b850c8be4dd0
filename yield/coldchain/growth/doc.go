// Package growth has models of what grows in fish: they explain why a limit is short and never make it longer. Start
// with TimeToToxin, the envelope of botulinum toxin at one temperature; ToxinShare is the same along a record.
//
// ListeriaInSeafood and ListeriaInRawSalmon are how fast Listeria grows, ListeriaRate takes a rate from one temperature
// to another. A small share or a slow rate is no permission: the limits are those of coldchain.Audit.
package growth
