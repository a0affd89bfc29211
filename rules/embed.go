// Package rules carries what the trade knows as data: facts, sources, limits and practices.
package rules

import "embed"

// Files holds the whole rulebook as it stands in this folder, tests included.
//
//go:embed *.yaml limits */*.rego
var Files embed.FS
