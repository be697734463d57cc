package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"

	"bunkwright/furniture/job/jobfile"
)

// printed passes on what is printed and keeps the first error: a full disk behind it must not go unnoticed.
type printed struct {
	w   io.Writer
	err error
}

func (p *printed) Write(data []byte) (int, error) {
	n, err := p.w.Write(data)
	if p.err == nil {
		p.err = err
	}
	return n, err
}

// written makes a file in memory and then writes it whole: whatever goes wrong, what was there stays as it was.
func written(s *session, name string, write func(io.Writer) error) error {
	var data bytes.Buffer
	if err := write(&data); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	if err := jobfile.WriteWhole(name, data.Bytes()); err != nil {
		return unwritten(name, err)
	}
	_, err := fmt.Fprintln(s.out, "wrote", name)
	return err
}

// folder makes a folder and those above it.
func folder(name string) error {
	if err := os.MkdirAll(name, 0o755); err != nil {
		return unwritten(name, err)
	}
	return nil
}

// unwritten says in plain words why the system does not take a file or folder.
func unwritten(name string, err error) error {
	switch info, statErr := os.Stat(name); {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("%s: there is no folder %s\nhint: make it first, or choose another name with -o", name, filepath.Dir(name))
	case errors.Is(err, fs.ErrPermission), errors.Is(err, syscall.EROFS):
		return fmt.Errorf("%s: no permission to write it\nhint: choose a folder of your own with -o", name)
	case statErr == nil && info.IsDir():
		return fmt.Errorf("%s: is a folder, and a file is to be written\nhint: choose another name with -o", name)
	case errors.Is(err, syscall.ENOTDIR), statErr == nil && !info.IsDir():
		return fmt.Errorf("%s: a file stands where a folder is to be\nhint: choose another name with -o", name)
	}
	return fmt.Errorf("%s: cannot be written: %w", name, cause(err))
}

// cause leaves out the operation and the path, which the message names already.
func cause(err error) error {
	var path *fs.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &path):
		return path.Err
	case errors.As(err, &link):
		return link.Err
	}
	return err
}
