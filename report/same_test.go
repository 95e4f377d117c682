package report

// The same input and date give the same bytes, on another day and in another
// process as well: where bytes hung on the order of a map, a process of its own
// shows it.

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	"os"
	"os/exec"
	"strings"
	"testing"

	"aligner/assets/words"
	"aligner/report/paper"
	"aligner/report/say"
)

// sums are the SHA-256 of every kind of sheet of one visit, on both papers, in
// both languages and units.
func sums(t testing.TB) string {
	d := document(t, "hogging")
	in := worked(t, d)
	photos := []Photo{photo(t, 60), photo(t, 120), photo(t, 180)} // all of one size
	var list []string
	for _, kind := range Kinds {
		for _, size := range []paper.Size{paper.A4, paper.Letter} {
			for _, language := range words.Languages() {
				german := language == "de"
				o := Options{Kind: kind, Size: size, Speaker: words.In(language), Units: say.Units{Metric: german, DecimalComma: german},
					Today: "2026-05-14", Program: "aligner", Photos: photos, Quick: true}
				pdf, err := PDF(in, o)
				if err != nil {
					t.Fatal(err)
				}
				list = append(list, fmt.Sprintf("%s %s %s %x", kind, size, language, sha256.Sum256(pdf)))
			}
		}
	}
	return strings.Join(list, "\n")
}

func photo(t testing.TB, grey uint8) Photo {
	img := image.NewGray(image.Rect(0, 0, 320, 240))
	for i := range img.Pix {
		img.Pix[i] = grey + uint8(i%7)
	}
	img.Set(1, 1, color.White)
	var data bytes.Buffer
	if err := jpeg.Encode(&data, img, nil); err != nil {
		t.Fatal(err)
	}
	return Photo{JPEG: data.Bytes(), Caption: fmt.Sprintf("grey %d", grey)}
}

// ownProcess tells the test below that it is the one that is started.
const ownProcess = "ALIGNER_TEST_SUMS"

func TestSameBytesInEveryProcess(t *testing.T) {
	if os.Getenv(ownProcess) != "" {
		fmt.Println("sums\n" + sums(t) + "\nend")
		return
	}
	here := sums(t)
	if again := sums(t); again != here {
		t.Errorf("made twice, not the same:\n%s\n%s", here, again)
	}
	for range 2 {
		c := exec.Command(os.Args[0], "-test.run", "^TestSameBytesInEveryProcess$")
		c.Env = append(os.Environ(), ownProcess+"=1")
		out, err := c.Output()
		if err != nil {
			t.Fatal(err)
		}
		_, there, _ := strings.Cut(string(out), "sums\n")
		there, _, _ = strings.Cut(there, "\nend")
		if there != here {
			t.Errorf("another process made:\n%s\nnot\n%s", there, here)
		}
	}
}
