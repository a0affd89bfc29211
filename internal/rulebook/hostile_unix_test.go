//go:build unix

package rulebook_test

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"hearsay/internal/rulebook"
)

func TestLinkOutOfAPackIsRefused(t *testing.T) {
	outside := filepath.Join(t.TempDir(), "secret.yaml")
	require.NoError(t, os.WriteFile(outside, []byte("a: b\n"), 0o600))
	for name, place := range map[string]func(dir string) error{
		"link to a file": func(dir string) error { return os.Symlink(outside, filepath.Join(dir, "rules", "facts.yaml")) },
		"link to a folder": func(dir string) error {
			return os.Symlink(filepath.Dir(outside), filepath.Join(dir, "rules", "limits"))
		},
		"pipe": func(dir string) error { return syscall.Mkfifo(filepath.Join(dir, "rules", "facts.yaml"), 0o600) },
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			require.NoError(t, os.Mkdir(filepath.Join(dir, "rules"), 0o755))
			require.NoError(t, os.WriteFile(filepath.Join(dir, "pack.yaml"), []byte(head), 0o600))
			require.NoError(t, place(dir))
			root, err := os.OpenRoot(dir)
			require.NoError(t, err)
			defer root.Close()
			refused(t, func() (*rulebook.Pack, error) { return rulebook.OpenPack(root.FS(), nil) }, "rules/")
		})
	}
}
