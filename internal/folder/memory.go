// Package folder owns folders of files that come from outside: read within bounds into memory, from a folder or an archive,
// and laid over the built-in ones.
package folder

import (
	"bytes"
	"io"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"time"
)

// Memory is a folder held in memory: content by the path of the file. It is a fs.FS.
type Memory map[string][]byte

// Names lists the files in alphabetical order.
func (m Memory) Names() []string { return slices.Sorted(maps.Keys(m)) }

// Open opens a file or a folder.
func (m Memory) Open(name string) (fs.File, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrInvalid}
	}
	if text, ok := m[name]; ok {
		return &openFile{info{path.Base(name), int64(len(text)), 0o444}, bytes.NewReader(text)}, nil
	}
	entries := m.entries(name)
	if len(entries) == 0 && name != "." {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
	}
	return &openFolder{info{path.Base(name), 0, fs.ModeDir | 0o555}, entries}, nil
}

// ReadFile gives the content of a file.
func (m Memory) ReadFile(name string) ([]byte, error) {
	if text, ok := m[name]; ok {
		return slices.Clone(text), nil
	}
	return nil, &fs.PathError{Op: "read", Path: name, Err: fs.ErrNotExist}
}

func (m Memory) entries(name string) []fs.DirEntry {
	within := name + "/"
	if name == "." {
		within = ""
	}
	found := map[string]fs.DirEntry{}
	for file, text := range m {
		rest, ok := strings.CutPrefix(file, within)
		if !ok {
			continue
		}
		first, _, deeper := strings.Cut(rest, "/")
		one := info{first, int64(len(text)), 0o444}
		if deeper {
			one = info{first, 0, fs.ModeDir | 0o555}
		}
		found[first] = fs.FileInfoToDirEntry(one)
	}
	out := make([]fs.DirEntry, 0, len(found))
	for _, n := range slices.Sorted(maps.Keys(found)) {
		out = append(out, found[n])
	}
	return out
}

type info struct {
	name string
	size int64
	mode fs.FileMode
}

func (i info) Name() string       { return i.name }
func (i info) Size() int64        { return i.size }
func (i info) Mode() fs.FileMode  { return i.mode }
func (i info) ModTime() time.Time { return time.Time{} }
func (i info) IsDir() bool        { return i.mode.IsDir() }
func (i info) Sys() any           { return nil }

type openFile struct {
	info
	*bytes.Reader
}

func (f *openFile) Stat() (fs.FileInfo, error) { return f.info, nil }
func (f *openFile) Close() error               { return nil }
func (f *openFile) Size() int64                { return f.info.size }

type openFolder struct {
	info
	left []fs.DirEntry
}

func (f *openFolder) Stat() (fs.FileInfo, error) { return f.info, nil }
func (f *openFolder) Close() error               { return nil }
func (f *openFolder) Read([]byte) (int, error) {
	return 0, &fs.PathError{Op: "read", Path: f.name, Err: fs.ErrInvalid}
}

// ReadDir gives the next n entries, or all that are left.
func (f *openFolder) ReadDir(n int) ([]fs.DirEntry, error) {
	if n <= 0 {
		n = len(f.left)
	} else if len(f.left) == 0 {
		return nil, io.EOF
	}
	n = min(n, len(f.left))
	out := f.left[:n]
	f.left = f.left[n:]
	return out, nil
}
