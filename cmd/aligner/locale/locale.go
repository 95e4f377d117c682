// Package locale gives the process a language that the window's library can
// read before that library looks for one: it complains on stderr of the C
// locale, where verbs have only their own one line to say.
//
// Packages are initialised in the order of their import paths as far as their
// imports allow, and this one needs only the standard library.
package locale

import (
	"os"
	"strings"
)

func init() {
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		switch v := os.Getenv(name); {
		case v == "C" || v == "POSIX" || strings.HasPrefix(v, "C."):
			os.Setenv(name, "en_US.UTF-8")
		case name == "LANG" && v == "":
			os.Setenv(name, "en_US.UTF-8")
		}
	}
}
