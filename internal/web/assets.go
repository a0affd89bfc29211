package web

import (
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"io/fs"
	"mime"
	"net/http"
	"path"
)

//go:embed assets/*
var assetFiles embed.FS

// asset is a style sheet, a script or a picture of the page itself. Its address holds its version, so that a browser keeps
// it for good and still never shows an old one.
type asset struct {
	body    []byte
	kind    string
	version string
}

func loadAssets(files fs.FS) (map[string]*asset, error) {
	names, err := fs.Glob(files, "assets/*")
	if err != nil {
		return nil, err
	}
	all := map[string]*asset{}
	for _, name := range names {
		body, err := fs.ReadFile(files, name)
		if err != nil {
			return nil, err
		}
		sum := sha256.Sum256(body)
		all[path.Base(name)] = &asset{body, mime.TypeByExtension(path.Ext(name)), hex.EncodeToString(sum[:6])}
	}
	return all, nil
}

func (s *Server) asset(w http.ResponseWriter, r *http.Request) error {
	a, ok := s.assets[r.PathValue("name")]
	if !ok {
		return notFound("asset", r.PathValue("name"))
	}
	w.Header().Set("ETag", `"`+a.version+`"`)
	if r.PathValue("version") == a.version {
		w.Header().Set("Cache-Control", "public, max-age=31536000, immutable")
	}
	if r.Header.Get("If-None-Match") == `"`+a.version+`"` {
		w.WriteHeader(http.StatusNotModified)
		return nil
	}
	w.Header().Set("Content-Type", a.kind)
	_, err := w.Write(a.body)
	return err
}
