package folder

import (
	"archive/tar"
	"bufio"
	"compress/gzip"
	"errors"
	"fmt"
	"io"
	"strings"
	"time"
)

// headers is what the entries of an archive may take beside their content, each.
const headers = 4 << 10

// Untar reads the wanted files of a .tar.gz archive into memory. It fails where they break the bounds, where the archive
// unpacks to more than the bounds allow, wanted or not, on names that lead out of it, on links and on names that stand twice.
func Untar(r io.Reader, wanted Wanted, most Bounds) (Memory, error) {
	zipped, err := gzip.NewReader(bufio.NewReader(r))
	if err != nil {
		return nil, errNotArchive
	}
	bounded := &io.LimitedReader{R: zipped, N: most.Bytes + int64(most.Files)*headers}
	archive := tar.NewReader(bounded)
	out, t := Memory{}, &tally{Bounds: most}
	for {
		h, err := archive.Next()
		if errors.Is(err, io.EOF) && bounded.N > 0 {
			return out, nil
		}
		if err != nil {
			return nil, unreadable(err, bounded, most)
		}
		if h.Typeflag == tar.TypeDir || h.Typeflag == tar.TypeXGlobalHeader {
			continue
		}
		name, err := cleanName(strings.TrimSuffix(h.Name, "/"))
		if err != nil {
			return nil, err
		}
		if h.Typeflag != tar.TypeReg {
			return nil, fmt.Errorf("%s is no plain file: take it out of the archive", name)
		}
		if _, twice := out[name]; twice {
			return nil, fmt.Errorf("%s stands twice in the archive", name)
		}
		if !wanted(name) {
			continue
		}
		if err := t.add(name, h.Size); err != nil {
			return nil, err
		}
		text, err := io.ReadAll(archive)
		if err != nil {
			return nil, unreadable(err, bounded, most)
		}
		out[name] = text
	}
}

func unreadable(err error, left *io.LimitedReader, most Bounds) error {
	if left.N <= 0 {
		return fmt.Errorf("it unpacks to too much: all files together may have %d KB", most.Bytes>>10)
	}
	return fmt.Errorf("the archive cannot be read: %w", err)
}

// Tar writes the folder as a .tar.gz archive. The same folder gives the same bytes.
func (m Memory) Tar(w io.Writer) error {
	zipped := gzip.NewWriter(w)
	archive := tar.NewWriter(zipped)
	for _, name := range m.Names() {
		h := &tar.Header{Typeflag: tar.TypeReg, Name: name, Size: int64(len(m[name])), Mode: 0o644, ModTime: time.Unix(0, 0), Format: tar.FormatUSTAR}
		if err := archive.WriteHeader(h); err != nil {
			return err
		}
		if _, err := archive.Write(m[name]); err != nil {
			return err
		}
	}
	if err := archive.Close(); err != nil {
		return err
	}
	return zipped.Close()
}
