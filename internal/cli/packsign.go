package cli

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"
)

func (a *app) packSign() *cobra.Command {
	var keyFile string
	c := &cobra.Command{
		Use:   "sign DIR --key PRIVATE.pem",
		Short: "Sign a pack, so that a change of it shows",
		Long: `Sign writes .signatures.json into the folder of the pack: a token over the hashes of all its
files, in the form in which Open Policy Agent signs its bundles. The key is the private one
in PEM form (ECDSA, Ed25519 or RSA), or a file with a shared secret of at least 32 letters.
Those who use the pack get the public key:

  openssl genpkey -algorithm EC -pkeyopt ec_paramgen_curve:P-256 -out private.pem
  openssl pkey -in private.pem -pubout -out public.pem`,
		Example: `  hearsay pack sign heron-county --key private.pem
  hearsay --pack heron-county --pack-key public.pem review job.yaml`,
		Args: cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if keyFile == "" {
				return badInput{fmt.Errorf("give the key to sign with: --key PRIVATE.pem")}
			}
			key, err := readKey(keyFile)
			if err != nil {
				return err
			}
			p, err := openPack(args[0], nil)
			if err != nil {
				return err
			}
			text, err := key.Sign(p.Files)
			if err != nil {
				return badInput{fmt.Errorf("%s: %w", keyFile, err)}
			}
			file := filepath.Join(args[0], ".signatures.json")
			if err := os.WriteFile(file, append(text, '\n'), 0o644); err != nil {
				return badInput{fmt.Errorf("%w: sign the folder of the pack, then archive it", err)}
			}
			fmt.Fprintf(a.out, "%s: written, over %d files\n", file, len(p.Files))
			return a.sayMade()
		},
	}
	c.Flags().StringVar(&keyFile, "key", "", "`file` of the private key, or of the shared secret")
	return c
}

func (a *app) packArchive() *cobra.Command {
	return &cobra.Command{
		Use:     "archive DIR FILE.tar.gz",
		Short:   "Write a pack as one file, its signature included",
		Example: "  hearsay pack archive heron-county heron-county.tar.gz",
		Args:    cobra.ExactArgs(2),
		RunE: func(_ *cobra.Command, args []string) error {
			p, err := openPack(args[0], nil)
			if err != nil {
				return err
			}
			var out bytes.Buffer
			if err := p.Files.Tar(&out); err != nil {
				return err
			}
			if err := os.WriteFile(args[1], out.Bytes(), 0o644); err != nil {
				return badInput{fmt.Errorf("%w: name a file that can be written", err)}
			}
			fmt.Fprintf(a.out, "%s: written, %d files\n", args[1], len(p.Files))
			return a.sayMade()
		},
	}
}
