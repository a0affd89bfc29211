// Package release tells which build of the program is running.
package release

import "runtime/debug"

// version is that of a release build; the release script sets it.
var version string

// Version is that of the release, or what the build knows of itself.
func Version() string {
	if version != "" {
		return version
	}
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" && info.Main.Version != "(devel)" {
		return info.Main.Version
	}
	return "development"
}
