package window

// This file is a person's settings as texts by key, as a logbook keeps them for
// each mechanic. The window's size and the last boat are this machine's and not
// among them.

import (
	"encoding/json"
	"math"
	"strconv"

	"aligner/assets/words"
	"aligner/hulls/visit"
)

// own is what is a mechanic's own: how things are looked at, and the leaves and
// the rule that every visit of his begins with.
type own struct {
	settings Settings
	leaves   visit.LeafSet
	rule     visit.Rule
}

// ownNumbers are the numbers among the settings, with their bounds.
var ownNumbers = []struct {
	key         string
	least, most float64
	of          func(*Settings) *float64
}{
	{"text_size", LeastTextSize, MostTextSize, func(s *Settings) *float64 { return &s.TextSize }},
	{"exaggeration", LeastExaggeration, MostExaggeration, func(s *Settings) *float64 { return &s.Exaggeration }},
}

var ownSwitches = []struct {
	key string
	of  func(*Settings) *bool
}{
	{"metric", func(s *Settings) *bool { return &s.Metric }},
	{"looking_aft", func(s *Settings) *bool { return &s.LookingAft }},
	{"dark", func(s *Settings) *bool { return &s.Dark }},
	{"no_motion", func(s *Settings) *bool { return &s.NoMotion }},
}

// texts are all of it by key.
func (o *own) texts() map[string]string {
	all := map[string]string{"language": o.settings.Language}
	for _, n := range ownNumbers {
		all[n.key] = strconv.FormatFloat(*n.of(&o.settings), 'g', -1, 64)
	}
	for _, s := range ownSwitches {
		all[s.key] = strconv.FormatBool(*s.of(&o.settings))
	}
	for key, v := range map[string]any{"leaves": o.leaves, "rule": o.rule} {
		if data, err := json.Marshal(v); err == nil {
			all[key] = string(data)
		}
	}
	return all
}

// read takes over what of the texts can be read; the rest stays.
func (o *own) read(texts map[string]string) {
	for _, tag := range words.Languages() {
		if texts["language"] == tag {
			o.settings.Language = tag
		}
	}
	for _, n := range ownNumbers {
		if v, err := strconv.ParseFloat(texts[n.key], 64); err == nil && !math.IsNaN(v) && v >= n.least && v <= n.most {
			*n.of(&o.settings) = v
		}
	}
	for _, s := range ownSwitches {
		if v, err := strconv.ParseBool(texts[s.key]); err == nil {
			*s.of(&o.settings) = v
		}
	}
	var leaves visit.LeafSet
	if text, ok := texts["leaves"]; ok && json.Unmarshal([]byte(text), &leaves) == nil {
		o.leaves = leaves
	}
	var rule visit.Rule
	if text, ok := texts["rule"]; ok && json.Unmarshal([]byte(text), &rule) == nil {
		o.rule = rule
	}
}
