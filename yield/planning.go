package yield

import "example.org/lakelarder/units/cite"

var judged = cite.Citation{Where: "judged within the range of the published shares", Basis: cite.Practice}

// The shares people plan a lake-run salmon with. Nobody published them.
var planningTable = [...]row{
	{Salmon, "lake-run", Round, Bled, percent(98), judged, noNote},
	{Salmon, "lake-run", Round, Gutted, percent(88), judged, ripeHen},
	{Salmon, "lake-run", Round, Headed, percent(75), judged, noNote},
	{Salmon, "lake-run", Round, CanningReady, percent(70), judged, noNote},
	{Salmon, "lake-run", Round, SkinOnFillet, percent(57), judged, noNote},
	{Salmon, "lake-run", Round, SkinlessFillet, percent(50), judged, noNote},
	{Salmon, "lake-run, ripe hen", Round, Gutted, judgedBetween(75, 82), judged, ripeHenJudged},
}

// PlanningDefaults returns the shares to plan a lake-run salmon with until the caller's own weighings are
// in: judged within the range of what is published, Basis Practice, never returned by Find or Shares. The
// last is for a ripe hen. The slice is the caller's own.
func PlanningDefaults() []Share {
	all := make([]Share, 0, len(planningTable))
	for _, r := range planningTable {
		s := r.share()
		s.Cautions = append(s.Cautions, notMeasured)
		all = append(all, s)
	}
	return all
}

// PlanningDefault returns the share of a round lake-run salmon to plan with at a stage: bled, gutted,
// headed, canning-ready, skin-on or skinless fillet. Judged, not published; its cautions say so. Any other
// stage is a NotPublishedError.
func PlanningDefault(stage Stage) (Share, error) {
	var stated []string
	for _, s := range PlanningDefaults() {
		if s.To == stage {
			return s, nil
		}
		stated = appendNew(stated, s.To.String())
	}
	return Share{}, NotPublishedError{Species: Salmon, Stage: stage, Missing: MissingStage, Stated: stated}
}
