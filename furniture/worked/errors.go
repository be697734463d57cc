package worked

import (
	"fmt"
	"strings"
)

// An UnknownIDError reports an id that names no rule, calculation or case topic.
type UnknownIDError struct {
	ID    string
	Among []string // what there is
}

func (e *UnknownIDError) Error() string {
	return fmt.Sprintf("there is no rule, calculation or case topic %q", e.ID)
}

// An InputError says which input cannot be used, or which one is missing.
type InputError struct {
	ID      string
	Key     string // empty where it is not about one key
	Problem string
	Want    string   // what would be right; may be empty
	Word    string   // a key or quantity that is not known
	Among   []string // those that are
	Example []string // words that work for this id
	Err     error    // what a table or formula refused, if that is the problem
}

func (e *InputError) Error() string {
	text := e.Problem
	if e.Key != "" {
		text = e.Key + ": " + text
	}
	if e.ID != "" {
		text = e.ID + ": " + text
	}
	if e.Want != "" {
		text += ": want " + e.Want
	}
	return text
}

func (e *InputError) Unwrap() error { return e.Err }

// missing reports keys that are not given, with what each stands for.
func missing(keys []key) error {
	var names, wants []string
	for _, k := range keys {
		names = append(names, k.name)
		wants = append(wants, k.sampleWord()+" ("+k.means+")")
	}
	return &InputError{Key: strings.Join(names, " and "), Problem: "not given", Want: strings.Join(wants, " and ") + " or the like"}
}
