package main

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"

	"lineaudit/samples/book"
)

// badFiles lists what else lies in the archive, with what each is.
var badFiles = []struct{ name, kind string }{
	{"Boathouse 2.xlsx", "unreadable"},           // empty
	{"Cactus House as built.xlsx", "unreadable"}, // the copying broke off half way
	{"Rink 3 amplifiers.xlsx", "unreadable"},     // needs a password
	{"Plan of the fernery.xlsx", "unreadable"},   // a picture
	{"Price list spring.xlsx", "not-a-schedule"},
}

func writeBad(dir string) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	whole, locked := &bytes.Buffer{}, &bytes.Buffer{}
	if err := boathouse4().book.XLSX(whole, ""); err != nil {
		return err
	}
	if err := boathouse4().book.XLSX(locked, "larkmere"); err != nil {
		return err
	}
	prices, err := priceList()
	if err != nil {
		return err
	}
	picture, err := plan(320, 200)
	if err != nil {
		return err
	}
	for i, data := range [][]byte{nil, whole.Bytes()[:whole.Len()/2], locked.Bytes(), picture, prices} {
		if err := os.WriteFile(filepath.Join(dir, badFiles[i].name), data, 0o644); err != nil {
			return err
		}
	}
	return nil
}

// priceList is a workbook with nothing to audit.
func priceList() ([]byte, error) {
	var b book.Book
	s := b.Add("Prices")
	s.Put(1, 1, "Trade prices, spring")
	s.Put(3, 1, "Item", "Pack", "Price each", "From 50")
	for i, row := range [][]any{
		{"Potting compost, bag", 40, 6.2, 5.8}, {"Rowlock, bronze", 2, 14.5, 13.9}, {"Ice edger blade", 1, 220.0, 210.0},
		{"Plant label, aluminium", 500, 0.12, 0.1}, {"Skate lace, pair", 50, 1.1, 0.95}, {"Lamp, projector", 1, 310.0, 295.0},
	} {
		s.Put(4+i, 1, row...)
	}
	var out bytes.Buffer
	err := b.XLSX(&out, "")
	return out.Bytes(), err
}

// plan draws a floor plan: rooms as outlines, loudspeakers as dots.
func plan(w, h int) ([]byte, error) {
	m := image.NewPaletted(image.Rect(0, 0, w, h), color.Palette{color.White, color.Black, color.RGBA{60, 110, 160, 255}})
	for x := range w {
		for y := range h {
			switch {
			case x%(w/4) < 2 || y%(h/2) < 2:
				m.SetColorIndex(x, y, 1)
			case (x-w/8)%(w/4)*((x-w/8)%(w/4))+(y-h/4)%(h/2)*((y-h/4)%(h/2)) < 40:
				m.SetColorIndex(x, y, 2)
			}
		}
	}
	var out bytes.Buffer
	err := png.Encode(&out, m)
	return out.Bytes(), err
}
