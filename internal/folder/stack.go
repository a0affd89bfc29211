package folder

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"
)

// Layer is a folder that is laid over others.
type Layer struct {
	Owner string // the pack it is of
	Place string // where it lies in the pack, for messages: "rules/"
	Files fs.FS
}

// Stack is the built-in folder with others laid over it: a file that stands in several is that of the topmost. It is a fs.FS.
type Stack struct {
	base fs.FS
	over []Layer
}

// Over lays folders over a built-in one, each over those before it.
func Over(base fs.FS, over ...Layer) *Stack { return &Stack{base, over} }

// of gives what lies in a folder: a stack, or one that nothing is laid over.
func of(files fs.FS) *Stack {
	if s, ok := files.(*Stack); ok {
		return s
	}
	return &Stack{base: files}
}

// top gives the topmost folder that has a file, and whose it is.
func (s *Stack) top(name string) (fs.FS, Layer) {
	for _, l := range slices.Backward(s.over) {
		if _, err := fs.Stat(l.Files, name); err == nil {
			return l.Files, l
		}
	}
	return s.base, Layer{}
}

// Open opens the topmost file of this name.
func (s *Stack) Open(name string) (fs.File, error) {
	files, _ := s.top(name)
	return files.Open(name)
}

// ReadFile reads the topmost file of this name.
func (s *Stack) ReadFile(name string) ([]byte, error) {
	files, _ := s.top(name)
	return fs.ReadFile(files, name)
}

// ReadDir lists what lies in any of the folders.
func (s *Stack) ReadDir(name string) ([]fs.DirEntry, error) {
	all, err := fs.ReadDir(s.base, name)
	for _, l := range s.over {
		more, failed := fs.ReadDir(l.Files, name)
		if failed != nil {
			continue
		}
		all, err = append(all, more...), nil
	}
	slices.SortStableFunc(all, func(a, b fs.DirEntry) int { return strings.Compare(a.Name(), b.Name()) })
	return slices.CompactFunc(all, func(a, b fs.DirEntry) bool { return a.Name() == b.Name() }), err
}

// Owner tells which pack the topmost file of this name is of; "" where it is built in.
func Owner(files fs.FS, name string) string {
	_, l := of(files).top(name)
	return l.Owner
}

// Laid tells whether anything is laid over the built-in folder.
func Laid(files fs.FS) bool { return len(of(files).over) > 0 }

// File is one of several files of the same name that are laid over each other.
type File struct {
	Owner string // the pack it is of; "" where it is built in
	Name  string // for messages
	Text  []byte
}

// Wrap puts before an error which pack it is about.
func (f File) Wrap(err error) error {
	if err == nil || f.Owner == "" {
		return err
	}
	return fmt.Errorf("pack %s: %w", f.Owner, err)
}

// Each gives the file of this name of every folder that has it, the built-in one first.
func Each(files fs.FS, name string) ([]File, error) {
	s := of(files)
	var out []File
	for _, l := range append([]Layer{{Files: s.base}}, s.over...) {
		text, err := fs.ReadFile(l.Files, name)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		if err != nil {
			return nil, err
		}
		out = append(out, File{l.Owner, l.Place + name, text})
	}
	return out, nil
}
