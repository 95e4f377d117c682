package logbook

// This file turns photos upright. A camera writes the picture as its sensor lay
// and says beside it, in the tag Orientation of Exif (CIPA DC-008, which is TIFF
// 6.0 within a JPEG's APP1 segment), how to turn it.

import (
	"bytes"
	"encoding/binary"
	"image"
)

// The marks of a JPEG and the tag, by those standards.
const (
	jpegStart      = 0xffd8
	jpegAPP1       = 0xffe1
	jpegScan       = 0xffda
	tagOrientation = 0x0112
	typeShort      = 3
)

// orientation is 1 to 8 as Exif has it; 1, upright, where nothing is said.
func orientation(data []byte) int {
	if len(data) < 4 || binary.BigEndian.Uint16(data) != jpegStart {
		return 1
	}
	for rest := data[2:]; len(rest) >= 4; {
		mark, size := binary.BigEndian.Uint16(rest), int(binary.BigEndian.Uint16(rest[2:]))+2
		if mark>>8 != 0xff || mark == jpegScan || size < 4 || size > len(rest) {
			break
		}
		if body, ok := bytes.CutPrefix(rest[4:size], []byte("Exif\x00\x00")); ok && mark == jpegAPP1 {
			return orientationOf(body)
		}
		rest = rest[size:]
	}
	return 1
}

// orientationOf looks through the first directory of a TIFF.
func orientationOf(tiff []byte) int {
	var order binary.ByteOrder = binary.BigEndian
	if bytes.HasPrefix(tiff, []byte("II")) {
		order = binary.LittleEndian
	}
	const header, entry = 8, 12
	if len(tiff) < header {
		return 1
	}
	at := int64(order.Uint32(tiff[4:]))
	if at+2 > int64(len(tiff)) {
		return 1
	}
	entries := tiff[at+2:]
	for range order.Uint16(tiff[at:]) {
		if len(entries) < entry {
			break
		}
		if order.Uint16(entries) == tagOrientation && order.Uint16(entries[2:]) == typeShort {
			if o := int(order.Uint16(entries[8:])); o >= 1 && o <= 8 {
				return o
			}
		}
		entries = entries[entry:]
	}
	return 1
}

// upright undoes an orientation: its name says where the picture's first row and
// first column belong.
//
//	1 top, left      2 top, right     3 bottom, right  4 bottom, left
//	5 left, top      6 right, top     7 right, bottom  8 left, bottom
func upright(img *image.RGBA, orientation int) *image.RGBA {
	if orientation <= 1 || orientation > 8 {
		return img
	}
	w, h := img.Rect.Dx(), img.Rect.Dy()
	size := image.Rect(0, 0, w, h)
	if orientation >= 5 {
		size = image.Rect(0, 0, h, w)
	}
	out := image.NewRGBA(size)
	for y := range h {
		for x := range w {
			to := [...]image.Point{
				2: {w - 1 - x, y}, 3: {w - 1 - x, h - 1 - y}, 4: {x, h - 1 - y},
				5: {y, x}, 6: {h - 1 - y, x}, 7: {h - 1 - y, w - 1 - x}, 8: {y, w - 1 - x},
			}[orientation]
			out.SetRGBA(to.X, to.Y, img.RGBAAt(x, y))
		}
	}
	return out
}
