package main

import (
	"errors"
	"fmt"
	"strings"

	"example.org/lakelarder/brine"
	"example.org/lakelarder/examples/internal/form"
	"example.org/lakelarder/internal/word"
	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

// file is a recipe as it is written, in the words of the library's claims. What is left out is not stated.
type file struct {
	About   string         `wire:"required" help:"what this recipe is, and that it is invented if it is"`
	Title   string         `wire:"required" help:"its name"`
	Process *process.Claim `help:"the process in jars; left out where there are none"`
	Cure    *fileCure      `help:"the salting"`
	Smoke   *fileSmoke     `help:"the smoking and what comes after it"`
}

// fileCure is a cure. What the smoking makes of the fish it need not repeat.
type fileCure struct {
	brine.Claim
	SaltName string `help:"of a salt by volume, where it is a weighed and published one" example:"\"table salt\""`
}

// fileSmoke is a smoking, what it is for, and the rule that it is held against where that is not the strictest.
type fileSmoke struct {
	smoke.Claim
	For  purpose           `help:"eating or jars"`
	Rule smoke.CoreLimitID `help:"a home rule for the core, if not the strictest" example:"\"HOT-160-PNW\""`
}

// purpose is what fish is smoked for. The zero purpose is not stated.
type purpose uint8

const (
	eating purpose = iota + 1
	jars
)

var purposes = word.List[purpose]{What: "purpose", Words: []string{"eating", "jars"}}

func (p purpose) MarshalText() ([]byte, error)     { return purposes.Marshal(p) }
func (p *purpose) UnmarshalText(text []byte) error { return purposes.Unmarshal(text, p) }

// recipe is what the file says, understood; a part that it does not have is nil.
type recipe struct {
	file
	limit smoke.CoreLimit // that the smoking is held against
}

// load reads a recipe; an error names the file and the field or the line.
func load(path string) (recipe, error) {
	r := recipe{limit: smoke.DefaultCoreLimit()}
	if err := form.Read(path, &r.file); err != nil {
		return recipe{}, err
	}
	if err := r.understand(); err != nil {
		return recipe{}, fmt.Errorf("%s: %w", path, err)
	}
	return r, nil
}

func (r *recipe) understand() error {
	if r.Process == nil && r.Cure == nil && r.Smoke == nil {
		return errors.New("expected at least one of process, cure and smoke")
	}
	for _, step := range []func() error{r.understandSmoke, r.understandCure} {
		if err := step(); err != nil {
			return err
		}
	}
	return nil
}

// understandSmoke finds the rule, and says in the claim what the fish is for.
func (r *recipe) understandSmoke() (err error) {
	s := r.Smoke
	if s == nil {
		return nil
	}
	if s.ForJars && s.For == eating {
		return errors.New("smoke.forJars: the fish is smoked for eating")
	}
	if s.ForJars {
		s.For = jars
	}
	s.ForJars = r.forJars()
	if s.Rule == 0 {
		return nil
	}
	// No recipe passes by a rule of the trade, which goes with measured salt and recorded cold, or by one from memory.
	if r.limit, err = smoke.FindCoreLimit(s.Rule); err == nil && (!r.limit.Home || r.limit.Citation.Unverified()) {
		err = fmt.Errorf("%s is not a home rule that was read in print: expected one such as HOT-160-PNW, or none "+
			"for the strictest", s.Rule)
	}
	if err != nil {
		return fmt.Errorf("smoke.rule: %w", err)
	}
	return nil
}

// understandCure finds the salt, and lets the smoking say what becomes of the fish: one recipe says it once.
func (r *recipe) understandCure() error {
	c := r.Cure
	if c == nil {
		return nil
	}
	salt, err := brine.FindIngredient(strings.TrimSpace(c.SaltName))
	switch {
	case c.SaltName == "" || errors.Is(err, units.ErrUnknown): // a salt without a weight, which the check says
	case err != nil:
		return fmt.Errorf("cure.saltName: %w", err)
	default:
		if err := once("cure.saltAs", &c.SaltAs, salt); err != nil {
			return err
		}
	}
	if c.ForJars && !r.forJars() {
		return errors.New("cure.forJars: the recipe does not say so of the fish that it smokes")
	}
	c.ForJars = r.forJars()
	if r.Smoke == nil {
		return nil
	}
	smoked, _ := brine.ParseSmoking(r.Smoke.Smoking.String()) // the words are the same, and "not stated" is none of them
	pack, _ := brine.ParsePack(r.Smoke.Pack.String())
	if err := once("cure.smoked", &c.Smoked, smoked); err != nil {
		return err
	}
	if err := once("cure.pack", &c.Pack, pack); err != nil {
		return err
	}
	return once("cure.loss", &c.Loss, r.Smoke.Loss)
}

// once takes over what is stated elsewhere, and refuses another figure beside it.
func once[T comparable](what string, here *T, there T) error {
	var none T
	switch {
	case there == none || *here == there:
	case *here == none:
		*here = there
	default:
		return fmt.Errorf("%s: stated elsewhere too, and otherwise", what)
	}
	return nil
}

// jarsOfSmoked reports whether the jars hold smoked fish.
func (r recipe) jarsOfSmoked() bool {
	return r.Process != nil && r.Process.Product == process.SmokedFish
}

// forJars reports whether the fish is smoked to go into the jars: jars of smoked fish say so themselves.
func (r recipe) forJars() bool {
	if r.Smoke != nil && r.Smoke.For != 0 {
		return r.Smoke.For == jars
	}
	return r.jarsOfSmoked()
}
