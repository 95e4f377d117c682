package window

// This file is whose settings are used: one mechanic's of the logbook, or
// nobody's in particular, which the program's preferences keep.

import (
	"fyne.io/fyne/v2"

	"aligner/assets/words"
	"aligner/hulls/logbook"
	"aligner/hulls/visit"
)

// mechanicKey and the following are preferences: who was at work last, and what
// is nobody's in particular.
const (
	mechanicKey = "mechanic"
	leavesKey   = "leaves"
	ruleKey     = "rule"
)

// mechanic is who is at work.
type mechanic struct {
	name   string // "": nobody in particular
	leaves visit.LeafSet
	rule   visit.Rule
	kept   map[string]string // as the logbook has it
}

// ownBook is the logbook that mechanics' settings are in, or nil.
func (w *Window) ownBook() *logbook.Book {
	if w.keeper == nil {
		return nil
	}
	if b, err := w.keeper.Book(); err == nil {
		return b
	}
	return nil
}

// mechanics are the names the logbook knows.
func (w *Window) mechanics() []string {
	if b := w.ownBook(); b != nil {
		if names, err := b.Mechanics(); err == nil {
			return names
		}
	}
	return nil
}

// lastMechanic goes on with the settings used last.
func (w *Window) lastMechanic() {
	w.who = mechanic{}
	o := own{settings: w.settings}
	o.read(map[string]string{leavesKey: w.prefs.String(leavesKey), ruleKey: w.prefs.String(ruleKey)})
	w.who.leaves, w.who.rule = o.leaves, o.rule
	if name := w.prefs.String(mechanicKey); name != "" {
		w.useMechanic(name)
	}
}

// useMechanic keeps the settings of who was at work and takes another's; a name
// that is new begins with the settings on the screen. "" is nobody in particular.
func (w *Window) useMechanic(name string) {
	w.keepSettings()
	w.prefs.SetString(mechanicKey, name)
	if name == "" {
		w.settings = Load(w.prefs)
		w.lastMechanic()
		w.settingsChanged()
		return
	}
	b := w.ownBook()
	if b == nil {
		return
	}
	texts, err := b.Settings(name)
	if err != nil {
		w.tell(w.told(err))
		return
	}
	o := own{settings: w.settings, leaves: w.who.leaves, rule: w.who.rule}
	o.read(texts)
	w.settings = o.settings
	w.who = mechanic{name: name, leaves: o.leaves, rule: o.rule, kept: texts}
	w.keepSettings() // a new name is entered
	w.settingsChanged()
}

// settingsChanged shows everything as the settings now want it.
func (w *Window) settingsChanged() {
	w.build()
	w.update()
	if w.page == nil {
		w.win.Canvas().Focus(w.picture)
	}
}

// keepSettings puts the settings where they belong. What cannot be kept is no
// reason to stop.
func (w *Window) keepSettings() {
	o := own{w.settings, w.who.leaves, w.who.rule}
	if o.settings.Language == w.askedLanguage { // for this time only
		o.settings.Language = w.keptLanguage
	}
	texts := o.texts()
	if w.who.name == "" {
		o.settings.Save(w.prefs)
		w.prefs.SetString(leavesKey, texts[leavesKey])
		w.prefs.SetString(ruleKey, texts[ruleKey])
		return
	}
	w.settings.SaveOfMachine(w.prefs)
	b := w.ownBook()
	if b == nil || !b.Writable() {
		return
	}
	for key, value := range texts {
		if w.who.kept[key] == value {
			continue
		}
		if err := b.Set(w.who.name, key, value); err != nil {
			w.trouble = w.speaker.Say(words.NotKept, words.Args{"Why": w.told(err)})
			return
		}
		if w.who.kept == nil {
			w.who.kept = map[string]string{}
		}
		w.who.kept[key] = value
	}
}

// begun puts the mechanic's own leaves and rule into a visit just begun.
func (w *Window) begun(p past) error {
	v := p.Now().Visit
	if len(v.Leaves.Leaves) == 0 && len(w.who.leaves.Leaves) > 0 {
		if err := p.Do(&visit.SetLeaves{Leaves: w.who.leaves}); err != nil {
			return err
		}
	}
	if v.Rule == (visit.Rule{}) && w.who.rule != (visit.Rule{}) {
		return p.Do(&visit.SetRule{Rule: w.who.rule})
	}
	return nil
}

// takeAsOwn makes the leaves and the rule of the visit those of every visit to
// come.
func (w *Window) takeAsOwn() {
	v := w.history.Now().Visit
	w.who.leaves, w.who.rule = v.Leaves, v.Rule
	w.keepSettings()
	w.update()
}

// mechanicName is who is at work, in words.
func (w *Window) mechanicName() string {
	if w.who.name == "" {
		return w.speaker.Say(words.MechanicNobody, nil)
	}
	return w.who.name
}

// mechanicItem is the menu's line of who is at work.
func (w *Window) mechanicItem() *fyne.MenuItem {
	return fyne.NewMenuItem(w.speaker.Say(words.MechanicMenu, words.Args{"Name": w.mechanicName()}), w.askMechanic)
}
