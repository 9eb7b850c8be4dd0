package smoke

import (
	"strconv"

	"example.org/lakelarder/units/cite"
)

// RecipeVerdict is the outcome of Check. The zero RecipeVerdict is none.
type RecipeVerdict uint8

// The verdicts on a recipe. Where several hold, the later one goes before.
const (
	RecipeMeets        RecipeVerdict = iota + 1 // every figure that is judged is stated and within what is published
	RecipeExceeds                               // nothing falls short, something is more than published
	RecipeCannotTell                            // something that decides is left out
	RecipeDiffers                               // another figure than published, which a person must look at
	RecipeFallsShort                            // less heat or time than published, or kept warmer or longer
	RecipeNotPublished                          // no home process is published for what the recipe does
)

var recipeVerdicts = [...]string{"no verdict", "meets", "exceeds", "cannot tell", "differs", "falls short", "not published"}

// String is the verdict in words: "falls short".
func (v RecipeVerdict) String() string {
	if int(v) < len(recipeVerdicts) {
		return recipeVerdicts[v]
	}
	return "RecipeVerdict(" + strconv.Itoa(int(v)) + ")"
}

// RecipeKind is how a stated figure stands to the published one. The zero RecipeKind is none.
type RecipeKind uint8

// The kinds of recipe finding.
const (
	NotStated RecipeKind = iota + 1 // something that decides is left out
	Short                           // less than published
	Different                       // another figure than published
	Over                            // more than published, which is not better
	TooWarm                         // warmer than published
	TooLong                         // longer than published
)

var recipeKinds = [...]string{"nothing found", "not stated", "short", "different", "over", "too warm", "too long"}

// String is the kind in words: "too warm".
func (k RecipeKind) String() string {
	if int(k) < len(recipeKinds) {
		return recipeKinds[k]
	}
	return "RecipeKind(" + strconv.Itoa(int(k)) + ")"
}

// verdict is what a finding of the kind comes to.
func (k RecipeKind) verdict() RecipeVerdict {
	switch k {
	case Short, TooWarm, TooLong:
		return RecipeFallsShort
	case Different:
		return RecipeDiffers
	case NotStated:
		return RecipeCannotTell
	}
	return RecipeExceeds
}

// RecipeFinding is one figure of a recipe that is not the published one. Stated, Published and Difference are text, empty where there is nothing to
// show. Known is where the stated figure is known from, when another published rule has it, or what to do about it: else it is zero.
type RecipeFinding struct {
	What       string // "core", "hold" …
	Kind       RecipeKind
	Stated     string
	Published  string
	Difference string
	Citation   cite.Citation
	Known      cite.Caution
}

// String is the finding in one line: "core: 155.00 °F (68.33 °C) stated, 180.00 °F (82.22 °C) published, short by 25.00 °F".
func (f RecipeFinding) String() string {
	s := f.What + ": "
	if f.Stated != "" {
		s += f.Stated + " stated, "
	}
	if f.Published != "" {
		s += f.Published + " published, "
	}
	s += f.Kind.String()
	if f.Difference != "" {
		s += " by " + f.Difference
	}
	return s
}

// Assessment is what Check found. Governing is the core limit that a hot smoke is judged by. Refusal says why nothing is published when the Verdict
// is RecipeNotPublished. Jar is what CheckForJars judges by, with neither Governing nor Storage; else it is zero. Findings come with the worst
// first, and within one verdict in the order of Claim.
type Assessment struct {
	Verdict   RecipeVerdict
	Governing CoreLimit
	Storage   Storage
	Refusal   string
	Jar       JarLoss
	Findings  []RecipeFinding
}

// Cautions returns what must be shown beside the verdict. It is never empty; the slice is the caller's own.
func (a Assessment) Cautions() []cite.Caution {
	all := []cite.Caution{airIsNotCore}
	if a.Jar.Most > 0 {
		return append(append(all, forJarsOnly, lightUnseen), a.Jar.Cautions...)
	}
	if a.Governing.AtLeast.IsSet() { // a caller's own limit need not have an ID
		all = append(all, holdCautions(a.Governing)...)
	}
	return append(append(all, coldAtOnce), a.Storage.Cautions...)
}

var airIsNotCore = cite.Caution{
	Text:     "the temperature of the smoker is not that of the fish: a wet surface stays at the wet bulb, far below the air, and only a probe in the core tells",
	Citation: AirSource(),
}
