package main

import (
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/yield"
	"example.org/lakelarder/yield/season"
)

// file is the day as it is written. What the household itself knows stands here; what is published does not.
type file struct {
	About    string                       `wire:"required" help:"what this is, and that it is invented if it is"`
	Place    string                       `wire:"required" help:"where"`
	Date     string                       `wire:"required" help:"day on which the work begins, as 2031-09-20"`
	Zone     string                       `wire:"required" help:"what the clock there is apart from UTC, as -06:00"`
	Altitude units.Stated[units.Length]   `help:"of the stove"`
	Caught   form.Clock                   `wire:"required" help:"when the first fish was caught; less than a day before the dock"`
	Dock     form.Clock                   `wire:"required" help:"when the work begins"`
	DoneBy   form.Clock                   `help:"by when the household wants all of it done, within a day of the dock; empty: within the two days" example:"\"22:30\""`
	Fish     int                          `wire:"required" help:"fish caught, or hoped for, 1 to 60"`
	Mass     units.Mass                   `wire:"required" help:"mean weight of a fish as caught"`
	Ice      units.Temperature            `help:"of the ice or water that the fish lies in"`
	Home     fileHome                     `wire:"required"`
	Canner   fileCanner                   `wire:"required"`
	Smoker   fileSmoker                   `help:"left out: there is none"`
	Rule     season.Rule                  `wire:"required"`
	Held     fileHeld                     `help:"what is held before today"`
	Year     fileYear                     `wire:"required"`
	Advisory units.Stated[yield.Advisory] `help:"what the agency says of this water, fish and size" example:"{\"meals\": 1, \"period\": \"168 h\"}"`
	Intake   yield.Intake                 `wire:"required"`
}

// fileHome is the people and what their hands take, which nobody publishes.
type fileHome struct {
	People int           `wire:"required" help:"who work, 1 to 6"`
	Sleep  form.Clock    `wire:"required" help:"from when they all sleep, every night"`
	Wake   form.Clock    `wire:"required" help:"until when"`
	Gut    takes         `wire:"required" help:"to bleed and gut one fish"`
	Ice    takes         `wire:"required" help:"to bed one person's fish in ice"`
	Cut    takes         `wire:"required" help:"to cut up one fish for the jars"`
	Waits  time.Duration `help:"how long cut fish may lie on ice before its jars are filled"`
	Refill takes         `wire:"required" help:"to empty, wash, fill and set in the jars of one load"`
	Fridge int           `wire:"required" help:"batches of fish that the refrigerator takes at once, in salt or cooling"`
}

// takes is how long a piece of work takes somebody.
type takes struct {
	Least time.Duration `wire:"required"`
	Most  time.Duration `wire:"required"`
}

type fileCanner struct {
	Canners int           `wire:"required" help:"how many, each with a person who stays with it"`
	Jar     process.Jar   `wire:"required" help:"size of the jars"`
	Gauge   process.Gauge `wire:"required" help:"dial or weighted"`
	Mouth   string        `wire:"required" help:"size and mouth of the jars"`
	Fill    units.Mass    `wire:"required" help:"fish in a jar"`
	HeatUp  time.Duration `help:"the longest that this canner takes to steam, where no longest is published" example:"\"40 min\""`
	Vessel  fileVessel    `wire:"required"`
	Share   units.Ratio   `help:"of a fish that is left for the jars, as weighed; left out: a planning figure" example:"\"68 %\""`
}

type fileVessel struct {
	Diameter  units.Length `wire:"required" help:"inside, where the jars stand"`
	Height    units.Length `wire:"required" help:"inside, from the bottom to the lid"`
	Rack      units.Length `help:"height of the rack under the jars"`
	Divider   units.Length `help:"thickness of the rack between two layers"`
	Capacity  units.Volume `help:"as the canner is sold"`
	Clearance units.Length `help:"room that the jars are to have across the layer"`
}

type fileSmoker struct {
	Fish     int               `help:"fish that are to be smoked, at most; the rest goes into jars"`
	Batch    int               `help:"fish that it takes at once"`
	StandBy  int               `help:"people who stay with it while it smokes; 0: somebody who is up looks in"`
	Fillet   takes             `help:"to fillet one fish"`
	LayIn    takes             `help:"to bury one batch in salt"`
	Rinse    takes             `help:"to rinse one batch and hang it"`
	TakeOut  takes             `help:"to take one batch out of the smoker and into the cold"`
	MayLie   time.Duration     `help:"how much longer than the salting time a batch may lie in salt"`
	Share    units.Ratio       `help:"of a fish that the two fillets are, as weighed; left out: a planning figure" example:"\"55 %\""`
	Thin     units.Length      `help:"of the fillets, where the thinnest is thickest"`
	Thick    units.Length      `help:"where the thickest is thickest"`
	Faces    smoke.Faces       `help:"that the heat reaches"`
	Area     units.Area        `help:"wet surface of one fish's fillets"`
	Start    units.Temperature `help:"of the fillets when they go in"`
	Water    units.Ratio       `help:"in the raw fillet"`
	Activity units.Ratio       `help:"of water, on the salted surface"`
	Fatness  brine.Fatness     `help:"fat fish or lean fish"`
	Excess   units.Ratio       `help:"dry salt that is left at the end, as a share of what the fish's water takes up"`
	Outside  units.Temperature `help:"of the air outside"`
	Humidity units.Ratio       `help:"of the air outside"`
	Stages   []smoke.Stage
}

// fileHeld is what the rule counts before today's fish.
type fileHeld struct {
	Fresh     int `help:"fish in hand that are not preserved"`
	Preserved int `help:"fish in jars, smoked and frozen"`
	Today     int `help:"fish already kept today, which fresh counts too"`
	Year      int `help:"fish kept since the first day of the year of the rule"`
}

type fileYear struct {
	People int         `wire:"required" help:"who eat"`
	Weeks  int         `wire:"required" help:"that the fish is to last"`
	Have   int         `help:"fish on the shelf for these weeks, in whole fish"`
	Canned fileProduct `wire:"required"`
	Smoked fileProduct
}

type fileProduct struct {
	Meals   units.Ratio `help:"meals a week of each person; 100 % is one"`
	Serving units.Mass  `help:"of what is served"`
	Pack    units.Mass  `help:"raw fish ready to pack that goes into one jar or bag"`
	Served  units.Ratio `help:"share of that which is eaten"`
}
