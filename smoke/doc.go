// Package smoke answers for the hot end of the smokehouse: which core temperatures publications ask for, and whether
// a record of the core met one of them, for long enough and without a break.
//
// The core is what counts. Air, even an oven's, never proves it: a wet surface stays near the wet bulb of the
// air around it. Heat is one of three legs; water phase salt and cold storage are the others, and spores of
// Clostridium botulinum survive all of these temperatures. No log reduction is computed here from a core record.
package smoke
