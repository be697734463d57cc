package worked

import (
	"fmt"
	"strings"
)

// Inputs are the named values of a case, in the order given.
type Inputs []Input

// An Input is one named value as it was written: mattress_in and 7.
type Input struct{ Key, Text string }

// ParseInputs reads words of the form key=value. A value may hold blanks, commas and further equal signs.
func ParseInputs(words []string) (Inputs, error) {
	var in Inputs
	for _, w := range words {
		name, value, ok := strings.Cut(w, "=")
		name, value = strings.TrimSpace(name), strings.TrimSpace(value)
		if !ok || name == "" || value == "" {
			return nil, &InputError{Key: w, Problem: "is no input", Want: "key=value, such as mattress_in=7"}
		}
		in = append(in, Input{name, value})
	}
	return in, nil
}

func (i Input) String() string { return fmt.Sprintf("%s=%s", i.Key, i.Text) }
