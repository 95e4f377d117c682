package drawn

// This file is a hand that only looks: it turns the view, and its keys are somebody
// else's.

import (
	"fyne.io/fyne/v2"

	"aligner/scene"
)

// Onlooker is a Hand for pictures without handles.
type Onlooker struct {
	Key  func(*fyne.KeyEvent)
	Rune func(rune)
}

var _ Hand = Onlooker{}

// TakeHandle does nothing, as the others: there are no handles.
func (Onlooker) TakeHandle(scene.HandleID) {}

// MoveHandle does nothing.
func (Onlooker) MoveHandle(scene.HandleID, float64, bool) {}

// LeaveHandle does nothing.
func (Onlooker) LeaveHandle() {}

// Touched leaves the keyboard where it is.
func (Onlooker) Touched() {}

// PictureKey hands a key on.
func (o Onlooker) PictureKey(k *fyne.KeyEvent) { o.Key(k) }

// PictureRune hands a letter on.
func (o Onlooker) PictureRune(r rune) { o.Rune(r) }
