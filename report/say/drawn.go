package say

// This file gives drawn pictures their words in a person's language.

import (
	"aligner/assets/words"
	"aligner/scene"
	"aligner/scene/faces"
)

// Faces are the words on the faces close up.
func Faces(s words.Speaker) faces.Words {
	say := func(id words.ID) string { return s.Say(id, nil) }
	return faces.Words{
		SeenForward: say(words.SeenForward), SeenAft: say(words.SeenAft),
		Port:          say(words.FacesPort),
		Starboard:     say(words.FacesStarboard),
		Top:           say(words.FacesTop),
		Bottom:        say(words.FacesBottom),
		Thou:          say(words.FacesThou),
		MM:            say(words.FacesMM),
		Spread:        say(words.FacesSpread),
		OpensAt:       say(words.FacesOpensAt),
		Parallel:      say(words.FacesParallel),
		OpensHere:     say(words.FacesOpensHere),
		Touches:       say(words.FacesTouches),
		Tightest:      say(words.FacesTightest),
		TouchAllRound: say(words.FacesTouchAllRound),
		AllRound:      say(words.FacesAllRound),
		Hanging:       say(words.FacesHanging),
		NoGap:         say(words.FacesNoGap),
		Bolted:        say(words.FacesBolted),
		DrawnFlat:     say(words.FacesDrawnFlat),
		InCoupling:    say(words.FacesInCoupling),
		OuterRing:     say(words.FacesOuterRing),
		FromAbove:     say(words.FacesFromAbove),
		FromPort:      say(words.FacesFromPort),
		GapTimes:      say(words.FacesGapTimes),
		NotToScale:    say(words.FacesNotToScale),
		EngineSide:    say(words.FacesEngineSide),
		ShaftSide:     say(words.FacesShaftSide),
		AsGauged:      say(words.FacesAsGauged),
		Planned:       say(words.FacesPlanned),
		AsGaugedFlat:  say(words.FacesAsGaugedFlat),
		PlannedFlat:   say(words.FacesPlannedFlat),
		RunOut:        say(words.FacesRunOut),
		MarksKey:      say(words.FacesMarksKey),
		MarksLessKey:  say(words.FacesMarksLessKey),
		OddKey:        say(words.FacesOddKey),
		UnusedKey:     say(words.FacesUnusedKey),
		NextAt:        say(words.FacesNextAt),
	}
}

// Marks are the words in the picture of the drive line.
func Marks(s words.Speaker) scene.Words {
	return scene.Words{Port: s.Say(words.FacesPort, nil), Starboard: s.Say(words.FacesStarboard, nil),
		Fore: s.Say(words.MarkFore, nil), Aft: s.Say(words.MarkAft, nil), Part: s.Part}
}
