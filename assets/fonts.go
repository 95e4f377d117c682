package assets

// This file holds the fonts: DejaVu Sans, regular and bold, cut down to Latin,
// Greek, arrows and signs so that words and pictures are the same on every
// machine. Its licence stands beside it, in fonts/LICENCE.txt.

import _ "embed"

//go:embed fonts/regular.ttf
var regularFont []byte

//go:embed fonts/bold.ttf
var boldFont []byte

//go:embed fonts/LICENCE.txt
var fontLicence string

// FontLicence is the licence of the fonts, which goes wherever they go.
func FontLicence() string { return fontLicence }

// Font is a TrueType font, "regular" or "bold", or nil.
func Font(weight string) []byte {
	switch weight {
	case "regular":
		return regularFont
	case "bold":
		return boldFont
	}
	return nil
}
