package main

import (
	"errors"
	"fmt"
	"time"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/pressure/canner"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
	"example.org/lakelarder/yield"
)

// file is the season as it is written.
type file struct {
	About        string                     `wire:"required" help:"what this season is, and that it is invented if it is"`
	Place        string                     `wire:"required"`
	Altitude     units.Stated[units.Length] `wire:"required" help:"of the stove"`
	Households   int                        `wire:"required"`
	People       int                        `wire:"required" help:"of all households"`
	Serving      units.Mass                 `wire:"required" help:"for the count of what is left to eat"`
	Canner       fileCanner                 `wire:"required"`
	PackPerJar   units.Mass                 `wire:"required" help:"raw fish in a jar"`
	Fish         []fish                     `wire:"required"`
	Smoker       []fileSmoker               `help:"how many of a species, the largest first, go to the smoker"`
	Weighed      []weighed                  `help:"shares of the whole fish that the households weighed"`
	Cure         fileCure                   `wire:"required"`
	SmokingLoss  fileRange                  `wire:"required"`
	CoreLimit    smoke.CoreLimitID          `wire:"required" help:"the rule for the core that the households chose"`
	CoreLog      string                     `wire:"required" help:"a CSV file beside this one, a column for each probe"`
	CoreFormat   series.Format              `wire:"partial" help:"how it is written, as far as it does not say so itself" example:"{\"order\": \"day first\"}"`
	CoolerLog    string                     `wire:"required" help:"a CSV file beside this one"`
	CoolerFormat series.Format              `wire:"partial" help:"how it is written, as far as it does not say so itself" example:"{\"order\": \"day first\"}"`
	Run          fileRun                    `wire:"required"`
	Year         fileYear                   `wire:"required"`
}

type fileCanner struct {
	Gauge       process.Gauge `wire:"required" help:"dial or weighted"`
	Jar         process.Jar   `wire:"required"`
	JarsPerLoad int           `wire:"required"`
}

type fish struct {
	Species yield.Species `wire:"required"`
	Mass    units.Mass    `wire:"required" help:"whole"`
}

type fileSmoker struct {
	Species yield.Species `wire:"required"`
	Largest int           `wire:"required"`
}

type weighed struct {
	Species yield.Species `wire:"required"`
	Stage   yield.Stage   `wire:"required"`
	Share   units.Ratio   `wire:"required"`
}

type fileCure struct {
	SaltToFish units.Ratio `wire:"required" help:"by weight"`
	SaltParts  int64       `wire:"required" help:"of the mix, by weight" example:"1"`
	SugarParts int64       `help:"of the mix, by weight" example:"2"`
	Salt       string      `wire:"required" help:"a salt with a published weight"`
	Sugar      string      `wire:"required" help:"a sugar with a published weight"`
}

type fileRange struct {
	Low  units.Ratio `wire:"required"`
	High units.Ratio `wire:"required"`
}

// fileRun is the households' canner and one run of it.
type fileRun struct {
	Log       string        `wire:"required" help:"the steam, a CSV file beside this one"`
	Format    series.Format `wire:"partial" help:"how it is written, as far as it does not say so itself" example:"{\"order\": \"day first\"}"`
	MaxGap    time.Duration `wire:"required" help:"longest pause between readings across which a straight line is believed"`
	Marks     canner.Marks  `help:"moments since the start of the record"`
	Vessel    canner.Vessel `wire:"required"`
	JarSize   string        `wire:"required"`
	Clearance units.Length  `wire:"required" help:"across a layer of jars"`
}

// season is what the file says, understood.
type season struct {
	file
	mix         brine.Mix
	salt, sugar brine.Ingredient
	limit       smoke.CoreLimit
	jarSize     canner.JarSize
	core        []form.Log[units.Temperature]
	cooler      form.Log[units.Temperature]
	steam       form.Log[units.Temperature]
	year        year
}

// load reads the season and its logs, which lie beside it; an error names the file and the field or line.
func load(path string) (season, error) {
	var s season
	if err := form.Read(path, &s.file); err != nil {
		return season{}, err
	}
	if err := s.understand(); err != nil {
		return season{}, fmt.Errorf("%s: %w", path, err)
	}
	var err error
	if s.core, err = form.ReadLogs[units.Temperature](path, s.CoreLog, "coreFormat", s.CoreFormat); err != nil {
		return season{}, err
	}
	if s.cooler, err = form.ReadLog[units.Temperature](path, s.CoolerLog, "coolerFormat", s.CoolerFormat); err != nil {
		return season{}, err
	}
	s.steam, err = form.ReadLog[units.Temperature](path, s.Run.Log, "run.format", s.Run.Format)
	return s, err
}

func (s *season) understand() (err error) {
	for _, c := range []struct {
		name  string
		above bool
		wants string
	}{
		{"households", s.Households > 0, "a number above 0"}, {"people", s.People > 0, "a number above 0"},
		{"canner.jarsPerLoad", s.Canner.JarsPerLoad > 0, "a number above 0"}, {"fish", len(s.Fish) > 0, "at least one"},
		{"serving", s.Serving > 0, "more than 0 g"}, {"packPerJar", s.PackPerJar > 0, "more than 0 g"},
	} {
		if !c.above {
			return fmt.Errorf("%s: expected %s", c.name, c.wants)
		}
	}
	if err := s.understandFish(); err != nil {
		return err
	}
	if s.Cure.SaltParts <= 0 || s.Cure.SugarParts < 0 {
		return errors.New("cure: expected salt parts above 0 and sugar parts of 0 or more")
	}
	s.mix = brine.Mix{Salt: s.Cure.SaltParts, Sugar: s.Cure.SugarParts}
	if s.salt, err = brine.FindIngredient(s.Cure.Salt); err != nil {
		return fmt.Errorf("cure.salt: %w", err)
	}
	if s.sugar, err = brine.FindIngredient(s.Cure.Sugar); err != nil {
		return fmt.Errorf("cure.sugar: %w", err)
	}
	if s.SmokingLoss.Low > s.SmokingLoss.High {
		return errors.New("smokingLoss: low must not be above high")
	}
	if s.limit, err = smoke.FindCoreLimit(s.CoreLimit); err != nil {
		return fmt.Errorf("coreLimit: %w", err)
	}
	if s.jarSize, err = canner.FindJarSize(s.Run.JarSize); err != nil {
		return fmt.Errorf("run.jarSize: %w", err)
	}
	s.year, err = s.Year.understand(s.Canner)
	return err
}

func (s *season) understandFish() error {
	caught := map[yield.Species]int{}
	for i, one := range s.Fish {
		if one.Mass <= 0 {
			return fmt.Errorf("fish[%d].mass: expected more than 0 g", i)
		}
		caught[one.Species]++
	}
	for i, one := range s.Smoker {
		if one.Largest < 0 || one.Largest > caught[one.Species] {
			return fmt.Errorf("smoker[%d].largest: %d of %s for the smoker, but %d caught", i, one.Largest, one.Species,
				caught[one.Species])
		}
	}
	return nil
}

// toSmoker is how many of a species go to the smoker.
func (s season) toSmoker(species yield.Species) (n int) {
	for _, one := range s.Smoker {
		if one.Species == species {
			n = one.Largest
		}
	}
	return n
}

// ownShare is the share that the households weighed.
func (s season) ownShare(species yield.Species, stage yield.Stage) (share units.Ratio, known bool) {
	for _, w := range s.Weighed {
		if w.Species == species && w.Stage == stage {
			share, known = w.Share, true
		}
	}
	return share, known
}
