package main

// This file is the verb visits photo: photos attached to a visit of the logbook.

import (
	"aligner/assets/words"
	"aligner/hulls/logbook"
)

type visitsPhotoCmd struct {
	Visit   string   `arg:"" help:"${help_entry}"`
	Files   []string `arg:"" name:"file" help:"${help_photo_file}"`
	Caption string   `placeholder:"WORDS" help:"${help_photo_caption}"`
	JSON    bool     `name:"json" help:"${help_json}"`
}

// photoJSON is one photo in --json.
type photoJSON struct {
	Number   logbook.PhotoID `json:"number"`
	Caption  string          `json:"caption"`
	WidthPX  int             `json:"width_px"`
	HeightPX int             `json:"height_px"`
	Bytes    int             `json:"bytes"`
}

// Run attaches photos; those before one that is refused stay.
func (c *visitsPhotoCmd) Run(e *env) error {
	return withLogbook(logbook.Write, func(b *logbook.Book) error {
		id, d, err := findVisit(b, c.Visit)
		if err != nil {
			return err
		}
		for _, path := range c.Files {
			if _, err := b.AddPhotoFile(id, path, c.Caption); err != nil {
				return err
			}
		}
		photos, err := b.Photos(id)
		if err != nil {
			return err
		}
		if c.JSON {
			list := []photoJSON{}
			for _, p := range photos {
				list = append(list, photoJSON{p.ID, p.Caption, p.WidthPX, p.HeightPX, p.Bytes})
			}
			return e.printJSON(map[string]any{"visit": id, "photos": list})
		}
		e.say(words.PhotoKept, words.Args{"Photos": speaker.Say(words.LogbookPhotos, words.Args{"Count": len(photos)}), "Number": id, "Name": d.Hull.Name})
		return nil
	})
}
