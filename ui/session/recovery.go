package session

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
)

// RecoverEvery is how often a recovery copy is written while a job is unsaved: what a crash can cost.
const RecoverEvery = 5 * time.Second

// recovery is the copy of an unsaved job on the disk.
type recovery struct {
	job  *job.Job // what it holds
	path string
	at   time.Time
}

// unnamed is the name of the recovery copy of a job that has no file.
const unnamed = "unnamed"

// RecoveryPath names the copy that is kept of an unsaved job: attic.unsaved.toml beside attic.toml, attic.unsaved-2.toml where another
// window had that open first, or in the folder of the session where the job has no file; "" where there is none.
func (s *Session) RecoveryPath() string {
	first, second := recoveryPaths(s.path, s.options.Folder)
	if s.Alone() {
		return first
	}
	return second
}

func recoveryPaths(path, folder string) (first, second string) {
	switch {
	case path != "":
		path = strings.TrimSuffix(path, filepath.Ext(path))
	case folder != "":
		path = filepath.Join(folder, unnamed)
	default:
		return "", ""
	}
	return path + ".unsaved.toml", path + ".unsaved-2.toml"
}

// Tick keeps the recovery copy up to date; the window calls it every second or so. It returns what kept it from being written.
func (s *Session) Tick() error {
	path, now := s.RecoveryPath(), s.options.Now()
	switch {
	case path == "" || s.job == nil || s.recovery.job == s.job:
		return nil
	case s.path == "" && s.UndoName() == "": // nothing was done to it yet
		return nil
	case !s.Unsaved():
		s.dropRecovery()
		return nil
	case now.Sub(s.recovery.at) < RecoverEvery:
		return nil
	}
	s.recovery = recovery{s.job, path, now}
	return jobfile.WriteWhole(path, jobfile.Encode(s.job))
}

// dropRecovery takes the copy away: what it held is saved, or was given up.
func (s *Session) dropRecovery() {
	if s.recovery.path != "" {
		os.Remove(s.recovery.path)
	}
	s.recovery = recovery{}
}

// Close gives up what is not saved.
func (s *Session) Close() {
	s.runs.cancelAll()
	s.dropRecovery()
	s.claim.free()
}

// Lost returns the newest recovery copy that a session which did not end well left for a file, or for a job without one (path ""), where
// it is newer than that file.
func Lost(path, folder string) (copyPath string, ok bool) {
	newest := time.Time{}
	if own, err := os.Stat(path); path != "" && err == nil {
		newest = own.ModTime()
	}
	first, second := recoveryPaths(path, folder)
	for _, at := range []string{first, second} {
		if kept, err := os.Stat(at); at != "" && err == nil && kept.ModTime().After(newest) {
			copyPath, newest = at, kept.ModTime()
		}
	}
	return copyPath, copyPath != ""
}

// Recover opens the recovery copy of a file as the unsaved state of that file. It returns fs.ErrNotExist where there is none.
func (s *Session) Recover(path string) error {
	at, ok := Lost(path, s.options.Folder)
	if !ok {
		return fs.ErrNotExist
	}
	f, err := jobfile.Open(at)
	if err != nil {
		return err
	}
	s.replace(&f.Job, path)
	if path != "" {
		s.saved, s.disk = &job.Job{}, stampOf(path) // not what is open, so that it counts as unsaved
	}
	s.recovery = recovery{s.job, at, s.options.Now()}
	s.changed()
	return nil
}
