package report

// This file takes out of the logbook what goes onto paper beside a visit: its
// photos and the boat's past.

import (
	"aligner/hulls/logbook"
	"aligner/report/history"
)

// Kept are the photos of a visit and the past of its boat.
func Kept(b *logbook.Book, id logbook.VisitID) (photos []Photo, past *history.Past, err error) {
	list, err := b.Photos(id)
	if err != nil {
		return nil, nil, err
	}
	for _, p := range list {
		data, err := b.PhotoJPEG(p.ID)
		if err != nil {
			return nil, nil, err
		}
		photos = append(photos, Photo{JPEG: data, Caption: p.Caption})
	}
	hull, err := b.HullOf(id)
	if err != nil {
		return nil, nil, err
	}
	if past, err = history.Of(b, hull); err != nil {
		return nil, nil, err
	}
	for i, e := range past.Entries { // what came after it is not this visit's
		if e.Number == int64(id) {
			past.Entries = past.Entries[:i+1]
			break
		}
	}
	return photos, past, nil
}
