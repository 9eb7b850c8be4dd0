package units

// Stated is a figure that may be stated or left out, as in a recipe or a log. The zero value is left out; State
// makes one that is stated, so that an altitude of 0 ft and no altitude are two things. Comparable as T is.
type Stated[T comparable] struct {
	Value T
	Given bool
}

// State returns a figure that is stated.
func State[T comparable](value T) Stated[T] { return Stated[T]{Value: value, Given: true} }
