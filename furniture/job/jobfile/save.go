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
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real
	}
	if err := replace(path, data); err != nil {
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

// write makes a file under another name, brings it to the disk and then gives it its own name.
func write(path string, data []byte, perm fs.FileMode, exactly bool) (err error) {
	f, err := create(path, perm)
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			os.Remove(f.Name())
		}
	}()
	_, err = f.Write(data)
	if err == nil && exactly {
		err = f.Chmod(perm)
	}
	if err == nil {
		err = f.Sync()
	}
	if closing := f.Close(); err == nil {
		err = closing
	}
	if err == nil {
		err = os.Rename(f.Name(), path)
	}
	if err == nil {
		syncFolder(filepath.Dir(path))
	}
	return err
}

// create opens a new file beside path under a name that nothing has.
func create(path string, perm fs.FileMode) (*os.File, error) {
	dir, base := filepath.Split(path)
	for n := 0; ; n++ {
		name := fmt.Sprintf("%s.%s.%d.new", dir, base, n)
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, perm)
		if err == nil || n == 99 || !errors.Is(err, fs.ErrExist) {
			return f, err
		}
	}
}

// syncFolder brings the new name to the disk too. Some systems cannot; the file itself is safe by then.
func syncFolder(dir string) {
	if d, err := os.Open(dir); err == nil {
		d.Sync()
		d.Close()
	}
}
