package text

import (
	"encoding/csv"
	"errors"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/japanese"
	"golang.org/x/text/encoding/unicode"

	"lineaudit/ingest/grid"
)

// cells lays a sheet out as rows of texts; rows that are not there are nil.
func cells(book *grid.Book) [][]string {
	var out [][]string
	for _, r := range book.Sheets[0].Rows {
		for len(out) < r.Number {
			out = append(out, nil)
		}
		for c := range r.Cells() {
			for len(out[r.Number-1]) < c.Col {
				out[r.Number-1] = append(out[r.Number-1], "")
			}
			out[r.Number-1][c.Col-1] = c.Text
		}
	}
	return out
}

func same(a, b [][]string) bool {
	return slices.EqualFunc(a, b, func(x, y []string) bool { return slices.Equal(x, y) })
}

// An archive holds text files of many encodings: the one that is named is for
// those that are not plainly UTF-8.
func TestNamedEncodingLeavesUTF8Alone(t *testing.T) {
	for _, tt := range []struct{ name, data, encoding, want string }{
		{"iso-8859-2", "Zone,Tap\nB\xf3r\xf3w,5\n", "iso-8859-2", "Bórów"},
		{"UTF-8 beside it", "Zone,Tap\nBórów,5\n", "iso-8859-2", "Bórów"},
		{"an encoding of ASCII bytes alone", "Zone,Tap\n\x1b$B25\x1b(B,5\n", "iso-2022-jp", "乙"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, err := Read("job.csv", []byte(tt.data), grid.DefaultLimits(), tt.encoding)
			if err != nil {
				t.Fatal(err)
			}
			if got := b.Sheets[0].Rows[1].At(0).Text; got != tt.want {
				t.Errorf("read %q, want %q", got, tt.want)
			}
		})
	}
}

func TestRead(t *testing.T) {
	for _, tt := range []struct {
		name, in string
		want     [][]string
	}{
		{"commas", "Zone,Tap\nOrangery,5\n", [][]string{{"Zone", "Tap"}, {"Orangery", "5"}}},
		{"semicolons and decimal commas", "Zone;Länge\nFoyer;35,5\nPier;12\n", [][]string{{"Zone", "Länge"}, {"Foyer", "35,5"}, {"Pier", "12"}}},
		{"tabs", "Zone\tTap, W\nPier\t5,0\n", [][]string{{"Zone", "Tap, W"}, {"Pier", "5,0"}}},
		{"bars", "Zone|Tap\nPier|5\n", [][]string{{"Zone", "Tap"}, {"Pier", "5"}}},
		{"separator line is not shown", "sep=;\r\nZone;a,b\r\nPier;5\r\n", [][]string{{"Zone", "a,b"}, {"Pier", "5"}}},
		{"separator line in quotes", "\"SEP=|\"\nZone|a,b;c,d\n", [][]string{{"Zone", "a,b;c,d"}}},
		{"no delimiter", "Zone\nPier\n", [][]string{{"Zone"}, {"Pier"}}},
		{"empty lines count", "a,b\n\n\nc,d\n", [][]string{{"a", "b"}, nil, nil, {"c", "d"}}},
		{"lines of delimiters count", "a,b\n,\n,,\nc,d", [][]string{{"a", "b"}, nil, nil, {"c", "d"}}},
		{"lone carriage returns", "a,b\rc,d\re,f", [][]string{{"a", "b"}, {"c", "d"}, {"e", "f"}}},
		{"line end inside quotes", "a,\"b\r\nc\",d\ne,f,g\n", [][]string{{"a", "b\nc", "d"}, {"e", "f", "g"}}},
		{"doubled quotes", `"6.5"" ceiling",5` + "\n" + `"a ""b"" c",6`, [][]string{{`6.5" ceiling`, "5"}, {`a "b" c`, "6"}}},
		{"lists in cells are no columns", "Zone,Tags\nPier,LS-1;LS-2;LS-3\nSlip,LS-4;LS-5;LS-6\n", [][]string{{"Zone", "Tags"}, {"Pier", "LS-1;LS-2;LS-3"}, {"Slip", "LS-4;LS-5;LS-6"}}},
		{"commas in texts are no columns", "Zone;Place\nPier; roof (3, 4, 5)\nSlip; wall (6, 7, 8)\n", [][]string{{"Zone", "Place"}, {"Pier", " roof (3, 4, 5)"}, {"Slip", " wall (6, 7, 8)"}}},
		{"decimal commas in every row", "Zone;Tap\nPier;7,5\nSlip;2,5\n", [][]string{{"Zone", "Tap"}, {"Pier", "7,5"}, {"Slip", "2,5"}}},
		{"delimiter inside quotes", "\"a, b\",5\n\"c, d\",6\n", [][]string{{"a, b", "5"}, {"c, d", "6"}}},
		{"blanks stay", " a , b\u00a0\n c ,d ", [][]string{{" a ", " b\u00a0"}, {" c ", "d "}}},
		{"inch mark", "Model,Tap\nCeiling 6.5\",5\nCeiling 8\" deep,10\n", [][]string{{"Model", "Tap"}, {"Ceiling 6.5\"", "5"}, {"Ceiling 8\" deep", "10"}}},
		{"inch mark in quotes, not doubled", "Model,Tap\n\"6.5\" ceiling\",5\n\"8\" ceiling\",10\nx,1\n", [][]string{{"Model", "Tap"}, {`6.5" ceiling`, "5"}, {`8" ceiling`, "10"}, {"x", "1"}}},
		{"inch mark at the end in quotes, not doubled", "Model,Tap\n\"ceiling 6.5\"\",5\nx,1\n", [][]string{{"Model", "Tap"}, {`ceiling 6.5"`, "5"}, {"x", "1"}}},
		{"quoted word in front", "Room,Tap\n\"Main\" hall,5\n\"Annex\" hall,10\n", [][]string{{"Room", "Tap"}, {`"Main" hall`, "5"}, {`"Annex" hall`, "10"}}},
		{"quote never closed", "Room,Tap\n\"Main hall,5\nPier,10\n", [][]string{{"Room", "Tap"}, {`"Main hall`, "5"}, {"Pier", "10"}}},
		{"ditto marks", "Zone,Tap,Run\nPier,5,1\n\",10,2\n\",20,3\n\",5,4\n", [][]string{{"Zone", "Tap", "Run"}, {"Pier", "5", "1"}, {`"`, "10", "2"}, {`"`, "20", "3"}, {`"`, "5", "4"}}},
		{"ditto marks side by side", "Zone,Tap,V\nPier,5,70\n\",\",\"\n\",\",70\nBoathouse,1,2\n", [][]string{{"Zone", "Tap", "V"}, {"Pier", "5", "70"}, {`"`, `"`, `"`}, {`"`, `"`, "70"}, {"Boathouse", "1", "2"}}},
		{"a quoted delimiter is no ditto mark", "a,\",\",c\nd,\",\",f\ng,h,i\n", [][]string{{"a", ",", "c"}, {"d", ",", "f"}, {"g", "h", "i"}}},
		{"text forced by an exporter", "Tag,Tap\n=\"0012\",5\n\"=\"\"0013\"\"\",6\n=\"a\"&\"b\",7\n", [][]string{{"Tag", "Tap"}, {"0012", "5"}, {"0013", "6"}, {`="a"&"b"`, "7"}}},
		{"lists in quotes", "Tag,Tap,Remarks\n" + strings.Repeat(`LS-1,5,"`+strings.Repeat("3 x 5; ", 20)+"\"\n", 3), [][]string{{"Tag", "Tap", "Remarks"}, {"LS-1", "5", strings.Repeat("3 x 5; ", 20)}, {"LS-1", "5", strings.Repeat("3 x 5; ", 20)}, {"LS-1", "5", strings.Repeat("3 x 5; ", 20)}}},
		{"ragged", "Title\nZone,Tap,V\nPier,5,70\nBoathouse,10,70\n,15\n", [][]string{{"Title"}, {"Zone", "Tap", "V"}, {"Pier", "5", "70"}, {"Boathouse", "10", "70"}, {"", "15"}}},
		{"end mark of old systems", "a,b\r\nc,d\r\n\x1a", [][]string{{"a", "b"}, {"c", "d"}}},
		{"blank behind a closing quote", "\"a\" ,\"b\"\n\"c\",\"d\" \n", [][]string{{"a", "b"}, {"c", "d"}}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			book, err := Read("jobs/pier.csv", []byte(tt.in), grid.DefaultLimits(), "")
			if err != nil {
				t.Fatal(err)
			}
			if got := cells(book); !same(got, tt.want) {
				t.Errorf("got  %q\nwant %q", got, tt.want)
			}
			if s := book.Sheets[0]; s.Name != "pier" || book.Format != grid.Text {
				t.Errorf("sheet %q, format %q", s.Name, book.Format)
			}
		})
	}
}

// The same table in the encodings that programs of twenty years wrote.
func TestEncodings(t *testing.T) {
	const western = "Zone;Raum;Länge (m);Ø mm²;Leistung\nFoyer;Empfang;35,5;1,5 mm²;6 W\nGroße Küche;Süd;12;2,5;½ W\nCafé – “Été”;étage 1;8;±3 dB;10 W\n"
	const polish = "Strefa;Pomieszczenie;Moc\nHol;Główne wejście;6 W\nKuchnia;Łazienka;3 W\n"
	const japaneseText = "ゾーン,部屋,電力\nロビー,玄関ホール,6 W\n厨房,二階,3 W\n"
	encode := func(text string, e interface{ String(string) (string, error) }) string {
		t.Helper()
		out, err := e.String(text)
		if err != nil {
			t.Fatal(err)
		}
		return out
	}
	latin1 := strings.NewReplacer("–", "-", "“", "'", "”", "'").Replace(western)
	for _, tt := range []struct {
		name, data, encoding, want string
		note                       string
	}{
		{"UTF-8", western, "", western, ""},
		{"UTF-8 with a mark", "\ufeff" + western, "", western, ""},
		{"UTF-16 little-endian with a mark", encode(western, unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewEncoder()), "", western, ""},
		{"UTF-16 big-endian with a mark", encode(western, unicode.UTF16(unicode.BigEndian, unicode.UseBOM).NewEncoder()), "", western, ""},
		{"UTF-16 little-endian", encode(western, unicode.UTF16(unicode.LittleEndian, unicode.IgnoreBOM).NewEncoder()), "", western, "UTF-16"},
		{"UTF-16 big-endian", encode(western, unicode.UTF16(unicode.BigEndian, unicode.IgnoreBOM).NewEncoder()), "", western, "UTF-16"},
		{"Windows-1252", encode(western, charmap.Windows1252.NewEncoder()), "", western, "Windows-1252"},
		{"ISO-8859-1", encode(latin1, charmap.ISO8859_1.NewEncoder()), "", latin1, "Windows-1252"},
		{"Windows-1250, named", encode(polish, charmap.Windows1250.NewEncoder()), "windows-1250", polish, "as asked"},
		{"code page 850, named by IANA", encode("Größe;½ W;1,5 mm²\n", charmap.CodePage850.NewEncoder()), "IBM850", "Größe;½ W;1,5 mm²\n", "as asked"},
		{"Macintosh, named", encode("Größe;Café – “Été”\n", charmap.Macintosh.NewEncoder()), "macintosh", "Größe;Café – “Été”\n", "as asked"},
		{"Shift-JIS, named", encode(japaneseText, japanese.ShiftJIS.NewEncoder()), "Shift_JIS", japaneseText, "as asked"},
		{"a mark counts more than a name", "\ufeff" + western, "windows-1250", western, ""},
		{"cut inside a character", western + "Ende;x;\xc3", "", western + "Ende;x;", "cut short"},
		{"UTF-8 with one bad byte", western + "Ende;\xff;x\n", "", western + "Ende;\uFFFD;x\n", "but for some bytes"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got, notes, err := decode([]byte(tt.data), tt.encoding)
			if err != nil {
				t.Fatal(err)
			}
			if got != tt.want {
				t.Errorf("got  %q\nwant %q", got, tt.want)
			}
			if all := strings.Join(notes, "; "); !strings.Contains(all, tt.note) || tt.note == "" && all != "" {
				t.Errorf("the notes are %q, want %q", all, tt.note)
			}
		})
	}
	if _, err := Read("x.csv", []byte("a,b"), grid.DefaultLimits(), "klingon"); !errors.Is(err, ErrEncoding) {
		t.Errorf("an unknown encoding gives %v", err)
	}
}

func TestRefused(t *testing.T) {
	lim := grid.DefaultLimits()
	lim.MaxCells, lim.MaxRows, lim.MaxText, lim.MaxCellText, lim.MaxBytes = 1000, 500, 20_000, 5_000, 100_000
	for name, in := range map[string]string{
		"zero bytes":    "a,b\nc,\x00d\n" + strings.Repeat("a,b\n", 20),
		"control bytes": strings.Repeat("a\x01\x02,b\n", 20),
		"cells":         strings.Repeat("1,2,3,4,5,6,7,8\n", 130),
		"rows":          strings.Repeat("1\n", 501),
		"columns":       strings.Repeat(",", 16384) + "x",
		"text":          strings.Repeat(strings.Repeat("x", 4000)+",b\n", 6),
		"cell text":     strings.Repeat("x", 5001),
		"bytes":         strings.Repeat("\n", 100_001),
	} {
		_, err := Read("x.csv", []byte(in), lim, "")
		var u *grid.Unreadable
		if !errors.As(err, &u) || u.Advice == "" {
			t.Errorf("%s: the error is %v", name, err)
		}
	}
	told := errors.New("enough")
	lim = grid.DefaultLimits()
	lim.Stop = func() error { return told }
	if _, err := Read("x.csv", []byte(strings.Repeat("a,b\n", 5000)), lim, ""); !errors.Is(err, told) {
		t.Errorf("told to stop it says %v", err)
	}
}

// Stray quotes are counted in a note that names the first.
func TestStrayQuotesAreNoted(t *testing.T) {
	book, err := Read("x.csv", []byte("Model,Tap\nPier,\"6.5\" deep\n\"Main\" hall,5\n"), grid.DefaultLimits(), "")
	if err != nil {
		t.Fatal(err)
	}
	if len(book.Notes) != 1 || book.Notes[0].Row != 2 || book.Notes[0].Col != 2 || !strings.HasPrefix(book.Notes[0].Text, "2 cells") {
		t.Errorf("notes %+v, want one on B2 about 2 cells", book.Notes)
	}
}

// strict returns what the standard reader makes of a text that it accepts,
// with one delimiter, and whether it does.
func strict(in string, delimiter byte) ([][]string, bool) {
	r := csv.NewReader(strings.NewReader(in))
	r.Comma, r.FieldsPerRecord = rune(delimiter), -1
	all, err := r.ReadAll()
	return all, err == nil
}

// What the rules of RFC 4180 allow is read as the standard reader reads it.
func FuzzSplitter(f *testing.F) {
	for _, s := range []string{"a,b\nc,d\n", "\"a\",\"b\"\"c\"\n", "\"a\nb\",c\r\nd", "6.5\",5\n", "\",5\nx,\"", ",,\n\n\"\"", "\"a\" b,c", "a\rb"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, in string) {
		if !utf8.ValidString(in) {
			return
		}
		for _, d := range []byte(",;\t|") {
			for _, dittos := range []bool{false, true} {
				s := splitter{text: in, delimiter: d, dittos: dittos}
				var got [][]string
				size := 0
				for {
					fields, ok := s.next(nil)
					if !ok {
						break
					}
					for _, f := range fields {
						size += len(f)
					}
					if !(len(fields) == 1 && fields[0] == "") {
						got = append(got, fields)
					}
				}
				if size > len(in) {
					t.Fatalf("%d bytes came of %d", size, len(in))
				}
				want, ok := strict(in, d)
				if dittos || !ok || strings.Contains(in, "\r") { // a lone \r ends a line here, not there
					continue
				}
				want = slices.DeleteFunc(want, func(r []string) bool { return len(r) == 1 && r[0] == "" })
				if !same(got, want) {
					t.Fatalf("%q cut at %q:\ngot  %q\nwant %q", in, d, got, want)
				}
			}
		}
	})
}

// Any bytes are read into a sound sheet or refused.
func FuzzRead(f *testing.F) {
	f.Add([]byte("a,b\nc,d\n"), "")
	f.Add([]byte("\xff\xfea\x00,\x00"), "")
	f.Add([]byte("sep=;\na;b\n"), "windows-1250")
	f.Add([]byte("\"\n\",\"\n\""), "")
	f.Fuzz(func(t *testing.T, data []byte, encoding string) {
		book, err := Read("x.csv", data, grid.DefaultLimits(), encoding)
		if err != nil {
			var u *grid.Unreadable
			if !errors.As(err, &u) && !errors.Is(err, ErrEncoding) {
				t.Fatalf("the error is %T %v", err, err)
			}
			return
		}
		last := 0
		for _, r := range book.Sheets[0].Rows {
			if r.Number <= last || r.Len() == 0 {
				t.Fatalf("row %d behind row %d", r.Number, last)
			}
			last = r.Number
			col := 0
			for c := range r.Cells() {
				if c.Col <= col || c.Text == "" || c.Kind != grid.String || !utf8.ValidString(c.Text) {
					t.Fatalf("%+v behind column %d", *c.Cell, col)
				}
				col = c.Col
			}
		}
	})
}

// A short table with more lines of notes below it, which nothing cuts, or commas cut.
func TestNotesBelowAShortTable(t *testing.T) {
	rows := strings.Repeat("Hall;4;6;A1\n", 5)
	for _, notes := range []string{strings.Repeat("A1 feeds the hall and the stairs\n", 20), strings.Repeat("A1 feeds hall, stairs and yard\nVC1 is for the hall\nAll at 100 V, copper, as found\n", 7)} {
		if d := findDelimiter("Where;Qty;W;Output\n" + rows + notes); d != ';' {
			t.Errorf("cut at %q", d)
		}
	}
}
