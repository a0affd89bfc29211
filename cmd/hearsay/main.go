// Command hearsay answers claims about concrete and reviews jobs before they are placed.
package main

import (
	"os"

	"hearsay/internal/cli"
)

func main() {
	os.Exit(cli.Main(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
