// Package smoke answers for the smokehouse: what its moist air allows (Air), how fast water leaves the fish (Evaporate, DryPellicle, FallingRates,
// LossForWaterPhaseSalt), how a schedule runs and how the core warms in it (Schedule, WarmCore), whether a record of the core met a published
// hold (CheckHold, WatchHold) and then cooled as published (CheckCooling), how the fish is kept (Keep, CheckJarLoss) and whether a recipe falls short
// of all that (Check).
//
// Two kinds of answer never mix. The rules (CoreLimits, CoolingRules, StorageRules, ChamberRules) are published, each with its citation, and
// the stricter one that was read is the default. The models of drying and warming are computed: they plan, as ranges, and decide nothing.
//
// The core is what counts. Air, even an oven's, never proves it: a wet surface stays near the wet bulb of the air around it, which is why a stage
// below that ceiling is refused. Heat is one of three legs; water phase salt and cold storage are the others, and spores of
// Clostridium botulinum survive all of these temperatures. Pasteurise sets the record beside what kills Listeria in moist food as an explanation alone.
package smoke
