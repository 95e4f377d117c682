package main

// This file prints what verbs have in common: JSON, faults, numbers.

import (
	"encoding/json"
	"strconv"

	"aligner/assets/words"
	"aligner/hulls"
)

// printJSON prints one JSON object.
func (e *env) printJSON(v any) error {
	enc := json.NewEncoder(e.stdout)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", " ")
	return enc.Encode(v)
}

// warnDoubts prints doubts to the side.
func (e *env) warnDoubts(doubts []hulls.Fault) {
	for _, d := range doubts {
		e.warn(speaker.Say(words.Doubt, words.Args{"Line": speaker.Retell(d.Error())}))
	}
}

// jsonFault is a fault as --json tells it.
type jsonFault struct {
	Place string `json:"place"`
	Line  int    `json:"line"`
	Value string `json:"value"`
	Limit string `json:"limit"`
	Mend  string `json:"mend"`
}

func jsonFaults(list []hulls.Fault) []jsonFault {
	out := []jsonFault{} // never null
	for _, f := range list {
		out = append(out, jsonFault{f.Place, f.Line, f.Value, f.Limit, f.Mend})
	}
	return out
}

// number writes a number for people, short, without an exponent.
func number(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// mm writes a length in millimetres for people.
func mm(v float64) string { return number(v) + " mm" }
