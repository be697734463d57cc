package jobfile

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"bunkwright/furniture/job"
)

// ErrNotReadBack reports a job that would not come back from its file as it is; such a file is not written.
var ErrNotReadBack = errors.New("the job would not read back as it is")

// Save writes a job to a file so that no moment leaves the folder without a whole one: to a new file beside it, which then takes its
// name. What stood there before is kept as name.previous.toml. Permissions stay. A job that has not changed is not written again.
func Save(path string, j *job.Job) error {
	data := Encode(j)
	if err := readsBack(data, j); err != nil {
		return fmt.Errorf("save %s: %w", path, err)
	}
	if err := replace(realPath(path), data); err != nil {
		return fmt.Errorf("save %s: %w", path, err)
	}
	return nil
}

// readsBack makes sure that what is written can be opened again.
func readsBack(data []byte, j *job.Job) error {
	f, err := Load(data, "the text of the job")
	if err != nil {
		return errors.Join(ErrNotReadBack, err)
	}
	if again := Encode(&f.Job); !bytes.Equal(again, data) {
		return ErrNotReadBack
	}
	return nil
}

func replace(path string, data []byte) error {
	perm := fs.FileMode(0o666) // the system takes off what its user wants off
	old, err := os.ReadFile(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return write(path, data, perm, false)
	case err != nil:
		return err
	case bytes.Equal(old, data):
		return nil
	}
	info, err := os.Stat(path)
	if err != nil {
		return err
	}
	if err := write(Previous(path), old, info.Mode().Perm(), true); err != nil {
		return err
	}
	return write(path, data, info.Mode().Perm(), true)
}

// Previous names the file that keeps the version before the last save: attic.previous.toml beside attic.toml.
func Previous(path string) string {
	return strings.TrimSuffix(path, filepath.Ext(path)) + ".previous.toml"
}
