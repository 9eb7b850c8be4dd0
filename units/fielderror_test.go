package units_test

import (
	"errors"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
)

func ExampleFieldError() {
	_, cause := units.ParseLength("4350")
	err := fmt.Errorf("my recipe: %w", units.FieldError{Field: "canner.altitude", Line: 3, Column: 15, Err: cause})
	var fault units.FieldError
	fmt.Println(errors.As(err, &fault), fault.Field, fault.Line, errors.Is(err, units.ErrSyntax))
	fmt.Println(units.FieldError{Field: "jars", Line: 2, Column: 9, Err: errors.New("it is required and missing")})
	// Output:
	// true canner.altitude 3 true
	// jars (line 2, column 9): it is required and missing
}

func TestFieldErrorSaysWhatItKnows(t *testing.T) {
	cause := errors.New("cause")
	for want, e := range map[string]units.FieldError{
		"a.b[1] (line 2, column 3): cause": {Field: "a.b[1]", Line: 2, Column: 3, Err: cause},
		"line 2, column 3: cause":          {Line: 2, Column: 3, Err: cause},
		"a: cause":                         {Field: "a", Err: cause},
		"cause":                            {Err: cause},
		"a":                                {Field: "a"},
	} {
		require.Equal(t, want, e.Error())
		require.Equal(t, e.Err, errors.Unwrap(e))
	}
	require.True(t, units.FieldError{Field: "a", Err: units.ErrRange} == units.FieldError{Field: "a", Err: units.ErrRange})
}
