package smoke

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

// FuzzParseWords: what is read is one of the words, in capitals or not, and says itself again; everything else is refused by name.
func FuzzParseWords(f *testing.F) {
	for _, s := range []string{"", "dry", " Cook ", "COOL", "half", "open ", "closed", "air", "Vacuum pack", "smoked", "K", "ſmoke", "unset stage", "\x00"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		bare := strings.TrimSpace(s)
		kind, err := ParseStageKind(s)
		refused(t, s, err, kind == 0)
		require.True(t, err != nil || strings.EqualFold(kind.String(), bare))

		damper, err := ParseDamper(s)
		refused(t, s, err, damper == DamperNotStated && bare != "")
		require.True(t, err != nil || bare == "" || strings.HasPrefix(damper.String(), "damper "+strings.ToLower(bare)))

		pack, err := ParsePack(s)
		refused(t, s, err, pack == PackNotStated)
		require.True(t, err != nil || strings.HasPrefix(pack.String(), strings.ToLower(bare)))
	})
}

// refused holds an error to come with no value, to be a ParseError and to name the text.
func refused(t *testing.T, s string, err error, none bool) {
	t.Helper()
	require.Equal(t, none, err != nil, "%q", s)
	if err != nil {
		var fault units.ParseError
		require.ErrorAs(t, err, &fault)
		require.Equal(t, s, fault.Text)
	}
}

func TestEveryWord(t *testing.T) {
	for want, word := range map[string]fmt.Stringer{
		"unset stage": StageKind(0), "dry": Dry, "smoke": Smoke, "cook": Cook, "glaze": Glaze, "cool": Cool, "StageKind(6)": Cool + 1,
		"damper not stated": DamperNotStated, "damper open": DamperOpen, "damper half open": DamperHalf, "damper closed": DamperClosed, "Damper(4)": DamperClosed + 1,
		"pack not stated": PackNotStated, "air pack": AirPack, "vacuum pack": VacuumPack, "Pack(3)": VacuumPack + 1,
		"unset faces": Faces(0), "both faces": BothFaces, "one face": OneFace, "Faces(3)": OneFace + 1,
		"unset method": Method(0), "hot smoke": HotSmoke, "cold smoke": ColdSmoke, "Method(3)": ColdSmoke + 1,
		"unset event": Event(0), "begin": Begin, "baste": Baste, "end": End,
		"no verdict": RecipeVerdict(0), "meets": RecipeMeets, "exceeds": RecipeExceeds, "cannot tell": RecipeCannotTell, "differs": RecipeDiffers,
		"falls short": RecipeFallsShort, "not published": RecipeNotPublished, "RecipeVerdict(7)": RecipeNotPublished + 1,
		"nothing found": RecipeKind(0), "not stated": NotStated, "short": Short, "different": Different, "over": Over, "too warm": TooWarm,
		"too long": TooLong, "RecipeKind(7)": TooLong + 1,
	} {
		require.Equal(t, want, word.String())
	}
	require.Equal(t, "unset event", (End + 1).String())
	for k := Dry; k <= Cool; k++ {
		back, err := ParseStageKind(k.String())
		require.NoError(t, err)
		require.Equal(t, k, back)
	}
	for _, p := range []Pack{AirPack, VacuumPack} {
		back, err := ParsePack(p.String())
		require.NoError(t, err)
		require.Equal(t, p, back)
	}
}
