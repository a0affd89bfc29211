package folder

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"
)

// Bounds are what a folder from outside may hold at most, so that a hostile one gets an error and does no harm.
type Bounds struct {
	Files int   // how many
	File  int64 // bytes of one
	Bytes int64 // of all together
	Depth int   // names in a path
}

// tally counts what was read against the bounds.
type tally struct {
	Bounds
	files int
	bytes int64
}

func (t *tally) add(name string, size int64) error {
	t.files, t.bytes = t.files+1, t.bytes+size
	switch {
	case t.files > t.Files:
		return fmt.Errorf("it holds more than %d files: split it", t.Files)
	case size > t.File:
		return fmt.Errorf("%s is too large: a file may have %d KB", name, t.File>>10)
	case t.bytes > t.Bytes:
		return fmt.Errorf("it is too large: all files together may have %d KB", t.Bytes>>10)
	case strings.Count(name, "/")+1 > t.Depth:
		return fmt.Errorf("%s lies too deep: a path may have %d names", name, t.Depth)
	}
	return nil
}

// Wanted says whether a file or a folder is read at all, by its path.
type Wanted func(name string) bool

// Read reads the wanted files of a folder into memory. It fails where they break the bounds, and on anything that is neither a
// folder nor a plain file: a link could lead out of the folder, a pipe could wait for ever.
func Read(files fs.FS, wanted Wanted, most Bounds) (Memory, error) {
	out, t := Memory{}, &tally{Bounds: most}
	err := fs.WalkDir(files, ".", func(name string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case name == ".":
			return nil
		case !wanted(name) && d.IsDir():
			return fs.SkipDir
		case !wanted(name):
			return nil
		case d.IsDir():
			if strings.Count(name, "/")+1 >= most.Depth {
				return fmt.Errorf("%s lies too deep: a path may have %d names", name, most.Depth)
			}
			return nil
		case d.Type()&fs.ModeSymlink != 0:
			return fmt.Errorf("%s is a link: put the file itself there", name)
		case !d.Type().IsRegular():
			return fmt.Errorf("%s is no plain file: take it out", name)
		}
		text, err := readFile(files, name, most.File)
		if err != nil {
			return err
		}
		out[name] = text
		return t.add(name, int64(len(text)))
	})
	if err != nil {
		return nil, err
	}
	return out, nil
}

func readFile(files fs.FS, name string, most int64) ([]byte, error) {
	f, err := files.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, most+1)) // a byte too many is an error of the tally
}

// cleanName checks the name of an entry of an archive: below the archive's root, written the one way.
func cleanName(name string) (string, error) {
	clean := strings.TrimPrefix(strings.TrimPrefix(name, "./"), "/")
	if strings.ContainsAny(clean, "\\:\x00") || !fs.ValidPath(clean) || path.Clean(clean) != clean {
		return "", fmt.Errorf("the archive names %q, which could lead out of it", name)
	}
	return clean, nil
}

var errNotArchive = errors.New("it is no .tar.gz archive")
