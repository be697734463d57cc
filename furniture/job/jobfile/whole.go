package jobfile

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// WriteWhole writes a file so that no moment leaves half of one under its name: to a new file beside it, which then takes the name. What
// may not be written to is left alone, and so are the permissions of what is there.
func WriteWhole(path string, data []byte) error {
	path = realPath(path)
	perm, exactly := fs.FileMode(0o666), false // the system takes off what its user wants off
	if f, err := os.OpenFile(path, os.O_WRONLY, 0); err == nil {
		info, err := f.Stat()
		f.Close()
		if err != nil {
			return err
		}
		perm, exactly = info.Mode().Perm(), true
	} else if !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return write(path, data, perm, exactly)
}

// realPath follows links, so that what they lead to is written and not they.
func realPath(path string) string {
	if real, err := filepath.EvalSymlinks(path); err == nil {
		return real
	}
	return path
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
