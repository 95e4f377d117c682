package fields_test

// Whatever is set, nothing panics, a refusal is one line, and what is taken can be
// written and read again as a draft.

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"aligner/assets"
	"aligner/hulls"
	"aligner/hulls/fields"
	"aligner/hulls/visit/builtin"
)

func FuzzSet(f *testing.F) {
	for i := range assets.HullNames() {
		f.Add(uint8(i), "/mounts/0/kind", 0.0, "solid")
		f.Add(uint8(i), "/mounts/3/at_mm/2", -1e9, "")
		f.Add(uint8(i), "/stuffing_box/offset_mm/1", math.NaN(), "")
		f.Add(uint8(i), "/name", 0.0, "\x00\u202e")
		f.Add(uint8(i), "/shaft/material", 0.0, "UNS C46400")
		f.Add(uint8(i), "/coupling/bolts/count", 5.0, "x")
		f.Add(uint8(i), "/tolerance", 1.0, "x")
	}
	f.Fuzz(func(t *testing.T, which uint8, pointer string, number float64, text string) {
		names := assets.HullNames()
		h := builtin.Hull(t, names[int(which)%len(names)])
		next, err := fields.Set(h, pointer, fields.Value{Number: number, Text: text})
		if err != nil {
			if line := err.Error(); line == "" || strings.ContainsAny(line, "\n\r\x1b") {
				t.Fatalf("not one line: %q", line)
			}
			return
		}
		for _, usual := range []bool{false, true} {
			if usual {
				if next, err = fields.TakeUsual(next, pointer); err != nil {
					return
				}
			}
			back, err := hulls.ParseDraft(hulls.Encode(next), "draft")
			if err != nil || !reflect.DeepEqual(back, next) {
				t.Fatalf("%s = %v, %q does not come back: %v", pointer, number, text, err)
			}
		}
	})
}
