package window

// This file is what F1 says of a stage, and the list of what to bring: pages to
// be read.

import (
	"strings"

	"aligner/assets/words"
	"aligner/cmd/aligner/page"
	"aligner/cmd/aligner/reader"
	"aligner/report/job"
)

// keyHelp is one key and the sentence of what it does.
type keyHelp struct {
	key  string
	does words.ID
}

// stageHelp are the keys of a stage, beside those that always hold.
var stageHelp = [stages][]keyHelp{
	stageTry: {{"1 \u2026 6", words.HelpKeyMount}, {"\u2191 \u2193", words.HelpKeyNut}, {"\u2190 \u2192", words.HelpKeySlide}, {"0", words.HelpKeyDrawn},
		{"a", words.HelpKeyAfloat}},
	stageBegin: {{"Tab", words.HelpKeyTab}, {"\u2190 \u2192", words.HelpKeyChoice}, {"Enter", words.HelpKeyTake}},
	stageLook:  {{"y  z  k", words.HelpKeyFound}, {"\u2191 \u2193", words.HelpKeyCheck}, {"Enter", words.HelpKeyNote}},
	stageGauge: {{"12 3/4", words.HelpKeyCall}, {"3/4", words.HelpKeyCallHere}, {"3   0", words.HelpKeyCallOne}, {"3+4/8", words.HelpKeyCallStack},
		{"# \u2026", words.HelpKeyCallNote}, {"@46", words.HelpKeyCallRadius}, {"\u2191 \u2193", words.HelpKeyPick}, {"Ctrl+Del", words.HelpKeyOut}, {"PgUp PgDn", words.HelpKeyKind},
		{"Ctrl+V", words.HelpKeyPaste}, {"Tab", words.HelpKeyTab}},
	stageMove: {{"y", words.HelpKeyTick}, {"q", words.HelpKeyOther}, {"k", words.HelpKeyStuck}, {"z", words.HelpKeyTried},
		{"1 \u2026 6", words.HelpKeyMount}, {"\u2191 \u2193", words.HelpKeyNut}, {"\u2190 \u2192", words.HelpKeySlide}},
	stageFasten:   {{"y", words.HelpKeyTick}, {"q", words.HelpKeyGaugeHere}, {"k", words.HelpKeyWay}, {"z", words.HelpKeyTorque}},
	stageHandOver: {{"y", words.HelpKeyHandOver}, {"q", words.HelpKeyPaper}, {"k", words.HelpKeyMarked}, {"z", words.HelpKeyNoteOver}},
}

// alwaysHelp are the keys that hold at every stage; those after them want the
// picture to have the keyboard.
var (
	alwaysHelp = []keyHelp{{"F1", words.HelpKeyHelp}, {"F2 \u2026 F8", words.HelpKeyStage}, {"Esc", words.HelpKeyEscape}, {"Ctrl+Z  Ctrl+Y", words.HelpKeyUndo},
		{"Ctrl+R", words.HelpKeyCopy}, {"Ctrl+Shift+R", words.HelpKeyRows},
		{string(boatsFunctionKey), words.HelpKeyBoats}, {string(pastKey), words.HelpKeyPast}, {string(troublesKey), words.HelpKeyTroubles},
		{string(whysKey), words.HelpKeyWhys}, {"Ctrl+" + string(counterKey), words.HelpKeyCounter}, {"Ctrl+" + string(lessonsKey), words.HelpKeyLessons}}
	pictureHelp = []keyHelp{{"PgUp PgDn", words.HelpKeyScroll}, {"i l g n j o r", words.HelpKeyLetters}, {"w p t b h v e c m s", words.HelpKeyViews}, {"+ \u2212", words.HelpKeyTimes},
		{"f", words.HelpKeyFlip}, {"u", words.HelpKeyUnits}, {"x", words.HelpKeyStill}}
)

// stageHelpWords are what is to be done at each stage.
var stageHelpWords = [stages][]words.ID{
	stageTry: {words.HelpTry, words.HelpTry2}, stageBegin: {words.HelpBegin, words.HelpBegin2}, stageLook: {words.HelpLook, words.HelpLook2, words.HelpLook3},
	stageGauge: {words.HelpGauge, words.HelpGauge2, words.HelpGauge3, words.HelpGauge4, words.HelpGauge5},
	stageMove:  {words.HelpMove}, stageFasten: {words.HelpFasten}, stageHandOver: {words.HelpHandOver},
}

// jobStages are the job's, for what can hurt at each.
var jobStages = map[stage]job.Stage{stageBegin: job.LookingOver, stageLook: job.LookingOver, stageGauge: job.Gauging,
	stageMove: job.Moving, stageFasten: job.Fastening, stageHandOver: job.HandingOver}

// keyName writes keys as they stand on a keyboard of the language.
func keyName(s words.Speaker, keys string) string {
	return strings.NewReplacer("Ctrl", s.Say(words.KeyCtrl, nil), "Shift", s.Say(words.KeyShift, nil), "Del", s.Say(words.KeyDel, nil),
		"Enter", s.Say(words.KeyEnter, nil), "PgUp", s.Say(words.KeyPageUp, nil), "PgDn", s.Say(words.KeyPageDown, nil)).Replace(keys)
}

// showHelp turns to what is said of the present stage.
func (w *Window) showHelp() {
	at := w.stage
	w.turnTo(func(d page.Desk) page.Page {
		say := func(id words.ID) string { return d.Speaker.Say(id, nil) }
		var what []reader.Line
		for _, id := range stageHelpWords[at] {
			what = append(what, reader.Line{Text: say(id)})
		}
		keys := func(list []keyHelp) (lines []reader.Line) {
			for _, k := range list {
				lines = append(lines, reader.Line{Key: keyName(d.Speaker, k.key), Text: say(k.does)})
			}
			return lines
		}
		parts := []reader.Part{{Lines: what}}
		if stage, ok := jobStages[at]; ok {
			doc := w.history.Now()
			p := reader.Part{Heading: say(words.HelpCautions)}
			for _, c := range job.Cautions(stage, doc.Visit.State.Afloat()) {
				p.Lines = append(p.Lines, reader.Line{Text: c.Text.Say(d.Speaker, d.Looks.Units), From: w.from(c.Sources)})
			}
			parts = append(parts, p)
		}
		if len(stageHelp[at]) > 0 {
			parts = append(parts, reader.Part{Heading: say(words.HelpKeysHere), Lines: keys(stageHelp[at])})
		}
		parts = append(parts, reader.Part{Heading: say(words.HelpKeysAlways), Lines: keys(alwaysHelp)},
			reader.Part{Heading: say(words.HelpKeysPicture), Lines: keys(pictureHelp)})
		return reader.New(d, d.Speaker.Say(words.HelpTitle, words.Args{"Stage": say(stageNames[at])}), parts)
	})
}

// showBring turns to the list of what to bring, by stage.
func (w *Window) showBring() {
	w.turnTo(func(d page.Desk) page.Page {
		doc := w.history.Now()
		var parts []reader.Part
		for _, item := range job.Bring(&doc.Hull, &doc.Visit, doc.Visit.Bolts.Maker.NM()) {
			name := item.Stage.Name().Say(d.Speaker, d.Looks.Units)
			if n := len(parts); n == 0 || parts[n-1].Heading != name {
				parts = append(parts, reader.Part{Heading: name})
			}
			p := &parts[len(parts)-1]
			p.Lines = append(p.Lines, reader.Line{Text: item.Text.Say(d.Speaker, d.Looks.Units), From: w.from(item.Sources)})
		}
		return reader.New(d, d.Speaker.Say(words.BringTitle, words.Args{"Hull": doc.Hull.Name}), parts)
	})
}
