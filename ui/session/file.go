package session

import (
	"errors"
	"io/fs"
	"os"
	"time"

	"bunkwright/furniture/job/jobfile"
)

// ErrNoFile reports that a job has no file yet to be saved to.
var ErrNoFile = errors.New("the job has no file yet")

// ErrChangedOnDisk reports that somebody else wrote the file since it was read or saved.
var ErrChangedOnDisk = errors.New("the file was changed by another program")

// stamp tells two states of a file apart.
type stamp struct {
	size int64
	when time.Time
}

func stampOf(path string) stamp {
	info, err := os.Stat(path)
	if err != nil {
		return stamp{}
	}
	return stamp{info.Size(), info.ModTime()}
}

// Open reads a job file and makes it the open job. The error is a *jobfile.ReadError; the job that was open then stays.
func (s *Session) Open(path string) error {
	at := stampOf(path)
	f, err := jobfile.Open(path)
	if err != nil {
		return err
	}
	s.replace(&f.Job, path)
	s.saved, s.disk, s.lines = s.job, at, f.Line
	s.changed()
	return nil
}

// Save writes the job to its file. It returns ErrNoFile where there is none, and ErrChangedOnDisk where another program wrote it
// meanwhile; SaveAs to the same path then overwrites it.
func (s *Session) Save() error {
	switch {
	case s.path == "":
		return ErrNoFile
	case s.ChangedOnDisk():
		return ErrChangedOnDisk
	}
	return s.SaveAs(s.path)
}

// SaveAs writes the job to a file, which becomes its own. Where that fails the old file is whole and the job still unsaved.
func (s *Session) SaveAs(path string) error {
	if err := jobfile.Save(path, s.job); err != nil {
		return err
	}
	s.dropRecovery()
	if path != s.path {
		s.claimFor(path)
	}
	s.path, s.saved, s.disk = path, s.job, stampOf(path)
	s.Settle()
	s.changed()
	return nil
}

// ChangedOnDisk tells whether the file is not what it was when it was last read or saved, or is gone.
func (s *Session) ChangedOnDisk() bool {
	return s.path != "" && s.saved != nil && stampOf(s.path) != s.disk
}

// Gone tells whether the file of the job is no longer there.
func (s *Session) Gone() bool {
	_, err := os.Stat(s.path)
	return s.path != "" && errors.Is(err, fs.ErrNotExist)
}
