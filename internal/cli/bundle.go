package cli

import (
	"bytes"
	"fmt"
	"os"

	"github.com/spf13/cobra"

	"hearsay/internal/rulebook"
)

func (a *app) bundleCommand() *cobra.Command {
	var keyFile string
	c := &cobra.Command{
		Use:   "bundle FILE.tar.gz",
		Short: "Write the rulebook as a standard bundle of Open Policy Agent",
		Long: `Bundle writes the rules, limits and a manifest with roots and revision as a standard
bundle, which any stock Open Policy Agent loads. Its input is what
"hearsay facts --figures JOB.yaml" prints. With --key it is signed, in the way of Open
Policy Agent. "hearsay serve --rulebook URL" takes its rulebook from such a bundle.`,
		Example: `  hearsay bundle rulebook.tar.gz
  opa run --server --bundle rulebook.tar.gz
  hearsay bundle rulebook.tar.gz --key private.pem
  opa run --server --bundle rulebook.tar.gz --verification-key public.pem --signing-alg ES256`,
		Args: cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			var key *rulebook.Key
			if keyFile != "" {
				if key, err = readKey(keyFile); err != nil {
					return err
				}
			}
			var out bytes.Buffer
			if err := book.WriteBundle(&out, key); err != nil {
				return badInput{err}
			}
			if err := os.WriteFile(args[0], out.Bytes(), 0o644); err != nil {
				return badInput{fmt.Errorf("%w: name a file that can be written", err)}
			}
			fmt.Fprintf(a.err, "%s: revision %s, %d practices\n", args[0], book.Revision(), len(book.Practices()))
			fmt.Fprintln(a.err, book.Made().Line())
			return nil
		},
	}
	c.Flags().StringVar(&keyFile, "key", "", "`file` of the private key to sign it with")
	return c
}
