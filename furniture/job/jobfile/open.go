package jobfile

import (
	"errors"
	"io"
	"io/fs"
	"os"
)

// Open reads a job file. The error is a *ReadError for whatever keeps it from being read, also what the system says.
func Open(path string) (*File, error) {
	data, err := read(path)
	if err != nil {
		return nil, err
	}
	return Load(data, path)
}

// read returns the bytes of a file that is not too large to be a job.
func read(path string) ([]byte, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	defer f.Close()
	info, err := f.Stat()
	switch {
	case err != nil:
		return nil, unreadable(path, err)
	case info.IsDir():
		return nil, &ReadError{Name: path, Complaints: []Complaint{{Have: "a folder", Want: "the name of a job file, such as attic.toml"}}}
	case info.Size() > MaxSize:
		return nil, tooLarge(path, info.Size())
	}
	data, err := io.ReadAll(io.LimitReader(f, MaxSize+1)) // what is no plain file may be longer than it says
	if err != nil {
		return nil, unreadable(path, err)
	}
	return data, nil
}

// unreadable says in plain words why the system does not give a file.
func unreadable(path string, err error) *ReadError {
	c := Complaint{Have: "cannot be read: " + cause(err)}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		c = Complaint{Have: "no such file", Want: "check the name and the folder"}
	case errors.Is(err, fs.ErrPermission):
		c = Complaint{Have: "no permission to read it", Want: "ask its owner, or copy it to a folder of your own"}
	}
	return &ReadError{Name: path, Complaints: []Complaint{c}, Err: err}
}

// cause leaves out the operation and the path, which the message names already.
func cause(err error) string {
	if perr := (*fs.PathError)(nil); errors.As(err, &perr) {
		return perr.Err.Error()
	}
	return err.Error()
}
