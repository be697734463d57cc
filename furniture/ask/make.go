package ask

import "bunkwright/furniture/job"

// Options say what goes on a sheet.
type Options struct {
	All  bool     // also what is known well enough: read twice, or by the maker
	Keys []string // only these, asked once more; empty: everything that is still wanted
}

// New makes the sheet of a job: what this room and this bed need and what is not known well enough yet. It is a pure function; an error is
// only for a job whose room cannot be put into numbers at all.
func New(j *job.Job, o Options) (Sheet, error) {
	return Sheet{Name: j.Name, Unit: j.Unit, Again: len(o.Keys) > 0}, nil
}
