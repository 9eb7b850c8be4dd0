// Package smoke answers for the smokehouse: how fast water leaves the fish (DryPellicle, FallingRates,
// LossForWaterPhaseSalt), how a schedule runs and how the core warms in it (Schedule, WarmCore), whether a record of the
// core met a published hold (AuditHold, WatchHold) and then cooled as published (AuditCooling), how the fish is kept
// (FindStorage) and whether a recipe does all that (Check). The air of the smoker has a room of its own, moistair.
//
// Start with Check for a recipe, AuditHold for a record and Schedule.Plan for a plan. Two kinds of answer never mix. The
// rules (CoreLimits, CoolingRules, StorageRules, ChamberRules) are published, each with its citation, and the stricter
// one that was read is the default. The models of drying and warming are computed: they plan, as ranges, and decide nothing.
//
// The core is what counts. Air, even an oven's, never proves it: a wet surface stays near the wet bulb of the air around
// it, which is why a stage below that ceiling is refused. Heat is one of three legs; water phase salt and cold storage are
// the others, and spores of Clostridium botulinum survive all of these temperatures. Pasteurise sets the record beside
// what kills Listeria in moist food, as an explanation only.
package smoke
