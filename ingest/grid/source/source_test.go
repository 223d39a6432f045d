package source

import (
	"archive/zip"
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"hash/crc32"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"runtime"
	"strings"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/text"
)

const table = "Zone,Tap\nOrangery,5\nPier,10\n"

// workbook makes a small .xlsx.
func workbook(tb testing.TB) []byte {
	tb.Helper()
	f := excelize.NewFile()
	defer f.Close()
	if err := f.SetSheetRow("Sheet1", "A1", &[]any{"Zone", "Tap", 7.5}); err != nil {
		tb.Fatal(err)
	}
	var out bytes.Buffer
	if err := f.Write(&out); err != nil {
		tb.Fatal(err)
	}
	return out.Bytes()
}

type member struct {
	name string
	data []byte
}

func zipped(tb testing.TB, members ...member) []byte {
	tb.Helper()
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	for _, m := range members {
		w, err := z.Create(m.name)
		if err != nil {
			tb.Fatal(err)
		}
		if _, err := w.Write(m.data); err != nil {
			tb.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		tb.Fatal(err)
	}
	return out.Bytes()
}

func write(tb testing.TB, path string, data []byte) {
	tb.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		tb.Fatal(err)
	}
	if err := os.WriteFile(path, data, 0o644); err != nil {
		tb.Fatal(err)
	}
}

func names(l *Listing) (files, skipped []string) {
	for _, f := range l.Files {
		files = append(files, f.Name)
	}
	for _, s := range l.Skipped {
		skipped = append(skipped, s.Name+": "+s.Reason)
	}
	return files, skipped
}

func mustFind(tb testing.TB, opt Options, paths ...string) *Listing {
	tb.Helper()
	l, err := Find(context.Background(), paths, opt)
	if err != nil {
		tb.Fatal(err)
	}
	return l
}

func want(tb testing.TB, what string, got, want []string) {
	tb.Helper()
	if !reflect.DeepEqual(got, want) {
		tb.Errorf("%s:\ngot  %q\nwant %q", what, got, want)
	}
}

// What an earlier run wrote is no schedule of the archive, wherever it was
// written to; what lies beside it is, and so is what is named itself.
func TestResultsOfAnEarlierRunAreLeftOut(t *testing.T) {
	root := t.TempDir()
	for _, name := range []string{"rink.csv", "zones.csv", "jobs/pier.csv", "jobs/out/zones.csv", "jobs/out/marked/pier.csv.xlsx", "jobs/out/late.csv"} {
		write(t, filepath.Join(root, filepath.FromSlash(name)), []byte(table))
	}
	const list = ".results"
	write(t, filepath.Join(root, list), []byte("zones.csv gone.csv"))
	write(t, filepath.Join(root, "jobs", "out", list), []byte("zones.csv marked/pier.csv.xlsx"))
	inner := zipped(t, member{list, []byte("zones.csv")}, member{"zones.csv", []byte(table)}, member{"pier.csv", []byte(table)})
	write(t, filepath.Join(root, "all.zip"), zipped(t, member{"zones.csv", []byte(table)}, member{"Gew\x84chse\\" + list, []byte("zones.csv marked/pier.csv.xlsx")},
		member{"Gew\x84chse\\zones.csv", []byte(table)}, member{"Gew\x84chse\\marked\\pier.csv.xlsx", []byte(table)}, member{"inner.zip", inner}))
	opt := Options{Results: func(read func(string) ([]byte, error)) []string {
		b, _ := read(list)
		return strings.Fields(string(b))
	}}
	l := mustFind(t, opt, root)
	files, _ := names(l)
	want(t, "files", files, []string{"all.zip/inner.zip/pier.csv", "all.zip/zones.csv", "jobs/out/late.csv", "jobs/pier.csv", "rink.csv"})
	if got := []Results{{".", 1}, {"all.zip/Gewächse", 2}, {"all.zip/inner.zip", 1}, {"jobs/out", 2}}; !reflect.DeepEqual(l.Results, got) {
		t.Errorf("results %v, want %v", l.Results, got)
	}
	files, _ = names(mustFind(t, opt, filepath.Join(root, "jobs", "out", "marked")))
	want(t, "files of a folder that is named", files, []string{"pier.csv.xlsx"})
}

func TestFind(t *testing.T) {
	root := t.TempDir()
	for _, name := range []string{"b/rink.csv", "a/orangery.xlsx", "a/orangery 2.csv", ".hidden", ".git/config", "a/~$orangery.xlsx", "a/._orangery.xlsx", "a/.~lock.orangery.ods#", "__MACOSX/x", "Thumbs.db", "z.pdf"} {
		write(t, filepath.Join(root, filepath.FromSlash(name)), []byte(table))
	}
	inner := zipped(t, member{"deep/boathouse.csv", []byte(table)})
	write(t, filepath.Join(root, "jobs.zip"), zipped(t,
		member{"pier.csv", []byte(table)}, member{"../../evil.csv", []byte(table)}, member{"/abs.csv", []byte(table)}, member{`C:\old\rink.csv`, []byte(table)}, member{"b\x01\n.csv", []byte(table)},
		member{"__MACOSX/._pier.csv", []byte(table)}, member{"folder/", nil}, member{"x/.secret/y.csv", []byte(table)}, member{"inner.zip", inner}, member{"plan.xlsx", workbook(t)}, member{"pier.csv", []byte("a,b\n")}))
	write(t, filepath.Join(root, "workbook named zip.zip"), workbook(t))

	l := mustFind(t, Options{}, root)
	files, skipped := names(l)
	want(t, "files", files, []string{
		"a/orangery 2.csv", "a/orangery.xlsx", "b/rink.csv",
		"jobs.zip/C_/old/rink.csv", "jobs.zip/abs.csv", "jobs.zip/b__.csv", "jobs.zip/evil.csv", "jobs.zip/inner.zip/deep/boathouse.csv", "jobs.zip/pier.csv", "jobs.zip/pier (2).csv", "jobs.zip/plan.xlsx",
		"workbook named zip.zip", "z.pdf",
	})
	if len(skipped) != 9 {
		t.Errorf("skipped %q, want 9", skipped)
	}
	for _, f := range l.Files {
		if _, err := f.Read(context.Background(), Options{}); err != nil {
			t.Errorf("%s: %v", f.Name, err)
		}
		if (f.Path == "") != strings.HasPrefix(f.Name, "jobs.zip/") {
			t.Errorf("%s lies at %q", f.Name, f.Path)
		}
	}

	again, _ := names(mustFind(t, Options{}, root))
	want(t, "found again", again, files)

	some, _ := names(mustFind(t, Options{Exclude: []string{filepath.Join(root, "jobs.zip"), filepath.Join(root, "a")}}, root))
	want(t, "with exclusions", some, []string{"b/rink.csv", "workbook named zip.zip", "z.pdf"})

	one, _ := names(mustFind(t, Options{}, filepath.Join(root, "b", "rink.csv")))
	want(t, "one file", one, []string{"rink.csv"})

	two, _ := names(mustFind(t, Options{}, filepath.Join(root, "b"), filepath.Join(root, "a", "orangery.xlsx"), filepath.Join(root, "b", "rink.csv")))
	want(t, "several paths, one file twice", two, []string{"b/rink.csv", "orangery.xlsx"})

	write(t, filepath.Join(root, "c", "b", "rink.csv"), []byte(table))
	twins, _ := names(mustFind(t, Options{}, filepath.Join(root, "b"), filepath.Join(root, "c", "b")))
	want(t, "folders of one name", twins, []string{filepath.Base(root) + "/b/rink.csv", "c/b/rink.csv"})

	if _, err := Find(context.Background(), []string{filepath.Join(root, "nowhere")}, Options{}); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("a path that is not there gives %v", err)
	}
	cancelled, cancel := context.WithCancel(context.Background())
	cancel()
	if _, err := Find(cancelled, []string{root}, Options{}); !errors.Is(err, context.Canceled) {
		t.Errorf("cancelled it gives %v", err)
	}
}

// Links are followed once, loops and dead ends end.
func TestLinks(t *testing.T) {
	root := t.TempDir()
	write(t, filepath.Join(root, "real", "rink.csv"), []byte(table))
	outside := t.TempDir()
	write(t, filepath.Join(outside, "pier.csv"), []byte(table))
	for name, target := range map[string]string{"a": "real", "loop": ".", "real/up": "..", "self": "self", "dead": "nowhere", "out": outside, "file.csv": "real/rink.csv", "other.csv": filepath.Join(outside, "pier.csv")} {
		if err := os.Symlink(target, filepath.Join(root, name)); err != nil {
			t.Skip(err)
		}
	}
	l := mustFind(t, Options{}, root)
	files, _ := names(l)
	want(t, "files", files, []string{"dead", "file.csv", "other.csv", "self"})
	for _, f := range l.Files {
		_, err := f.Read(context.Background(), Options{})
		if (err != nil) != (f.Name == "dead" || f.Name == "self") {
			t.Errorf("%s: %v", f.Name, err)
		}
	}
}

// What a file is, its bytes say; what cannot be read, a reason and advice.
func TestParse(t *testing.T) {
	book := workbook(t)
	wide := func(s string) (out string) {
		for i := range len(s) {
			out += s[i:i+1] + "\x00"
		}
		return out
	}
	compound := "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + strings.Repeat("\x00", 504)
	for _, tt := range []struct {
		name, file string
		data       string
		format     grid.Format // "" if it is to be refused
		words      string
		foreign    bool
	}{
		{"workbook", "a.xlsx", string(book), grid.XLSX, "", false},
		{"workbook with another name", "a.csv", string(book), grid.XLSX, "", false},
		{"text named as a workbook", "a.xlsx", table, grid.Text, "", false},
		{"text without an ending", "README", "Read me first\nall of it\n", grid.Text, "", false},
		{"list whose first column is ID", "a.csv", "ID;Power;Zone\nLS-1;5;Pier\nC;10;Pier\n", grid.Text, "", false},
		{"list whose first column is MZ", "a.csv", "MZ,Power\n1,5\n", grid.Text, "", false},
		{"list of air conditioners", "a.csv", "AC10,Power\n1,5\n", grid.Text, "", false},
		{"web page named as a workbook", "a.xls", "<html><body><table><tr><td>Zone</td><td>5</td></tr></table></body></html>", grid.HTML, "", false},
		{"empty", "a.xlsx", "", "", "empty", false},
		{"zeros", "a.xlsx", strings.Repeat("\x00", 4096), "", "zero bytes", false},
		{"workbook cut short", "a.xlsx", string(book[:len(book)-200]), "", "cut short", false},
		{"workbook cut in half", "a.xlsx", string(book[:len(book)/2]), "", "cut short", false},
		{"protected", "a.xlsx", compound + wide("EncryptionInfo") + "\x00\x00", "", "password", false},
		{"picture named as a workbook", "a.xlsx", "\x89PNG\r\n\x1a\n" + strings.Repeat("\x00", 100), "", "picture", false},
		{"picture", "a.png", "\x89PNG\r\n\x1a\n" + strings.Repeat("\x00", 100), "", "picture", true},
		{"bitmap", "a.bmp", "BM" + strings.Repeat("\x00", 100), "", "picture", true},
		{"PDF", "plan.pdf", "%PDF-1.7\n", "", "PDF", true},
		{"PDF named as a table", "plan.csv", "%PDF-1.7\n", "", "PDF", false},
		{"Word document", "a.docx", string(zipped(t, member{"[Content_Types].xml", nil}, member{"word/document.xml", nil})), "", "Word", true},
		{"old Word document", "a.doc", compound + wide("WordDocument") + "\x00\x00", "", "Word", true},
		{"drawing", "a.dwg", "AC1032\x00\x00", "", "CAD", true},
		{"gzip", "a.csv.gz", "\x1f\x8b\x08", "", "gzip", false},
		{"OpenDocument text", "a.odt", string(zipped(t, member{"mimetype", []byte("application/vnd.oasis.opendocument.text")})), "", "OpenDocument text", true},
		{"binary workbook without LibreOffice", "a.xlsb", string(zipped(t, member{"[Content_Types].xml", nil}, member{"xl/workbook.bin", nil})), "", "no reader", false},
		{"SYLK without LibreOffice", "a.slk", "ID;PWXL;N;E\nC;Y1;X1;K5\nE\n", "", "no reader", false},
		{"DIF without LibreOffice", "a.dif", "TABLE\r\n0,1\r\n\"x\"\r\nVECTORS\r\n0,2\r\n", "", "no reader", false},
		{"Excel 4", "a.xls", "\x09\x04\x06\x00\x00\x00\x10\x00\x00\x00", "", "Excel 2, 3 or 4", false},
		{"junk", "a.csv", strings.Repeat("\x01\x02\x03\xfe", 50), "", "neither", false},
		{"junk of another trade", "a.dat", strings.Repeat("\x01\x02\x03\xfe", 50), "", "neither", true},
		{"one byte", "a.xlsx", "x", grid.Text, "", false},
		{"lock file under another name", "a.xlsx", "\x05Clerk" + strings.Repeat(" ", 49) + wide("\x05Clerk") + strings.Repeat("\x00", 98), "", "neither", false},
		{"companion of a Macintosh", "a.xlsx", "\x00\x05\x16\x07\x00\x02\x00\x00Mac OS X        ", "", "Macintosh", false},
		{"zip of nothing", "a.xlsx", string(zipped(t)), "", "a zip", false},
		{"zip of a text", "a.xlsx", string(zipped(t, member{"a.txt", []byte("x")})), "", "a zip", false},
		{"zip without directory", "a.zip", "PK\x03\x04" + strings.Repeat("x", 100), "", "zip", false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got, err := Parse(context.Background(), tt.file, []byte(tt.data), Options{Soffice: func() string { return "" }})
			if tt.format != "" {
				if err != nil {
					t.Fatal(err)
				}
				sum := sha256.Sum256([]byte(tt.data))
				if got.Format != tt.format || got.File != tt.file || got.Size != int64(len(tt.data)) || got.SHA256 != hex.EncodeToString(sum[:]) || len(got.Sheets) == 0 {
					t.Errorf("it is %q %q of %d bytes, %d sheets", got.Format, got.File, got.Size, len(got.Sheets))
				}
				if s := Sniff([]byte(tt.data)); s != tt.format {
					t.Errorf("Sniff says %q, want %q", s, tt.format)
				}
				return
			}
			var u *grid.Unreadable
			if !errors.As(err, &u) {
				t.Fatalf("the error is %v", err)
			}
			if !strings.Contains(u.Reason, tt.words) || u.Foreign != tt.foreign || u.Advice == "" {
				t.Errorf("reason %q, advice %q, foreign %v", u.Reason, u.Advice, u.Foreign)
			}
		})
	}
}

// The zip around a file may be damaged, locked or a bomb.
func TestZipMembers(t *testing.T) {
	raw := func(h zip.FileHeader, data string) []byte {
		var out bytes.Buffer
		z := zip.NewWriter(&out)
		w, err := z.CreateRaw(&h)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := w.Write([]byte(data)); err != nil {
			t.Fatal(err)
		}
		if err := z.Close(); err != nil {
			t.Fatal(err)
		}
		return out.Bytes()
	}
	sum, n := crc32.ChecksumIEEE([]byte(table)), uint64(len(table))
	bomb := zipped(t, member{"a.csv", bytes.Repeat([]byte("1,2\n"), 3<<20)})
	nest := zipped(t, member{"deepest.csv", []byte(table)})
	for range 4 {
		nest = zipped(t, member{"nest.zip", nest})
	}
	huge := zip.FileHeader{Name: "a.csv", Method: zip.Deflate, CompressedSize64: n, UncompressedSize64: 1 << 40}
	for name, tt := range map[string]struct {
		data  []byte
		words string
	}{
		"sound":          {raw(zip.FileHeader{Name: "a.csv", CRC32: sum, CompressedSize64: n, UncompressedSize64: n}, table), ""},
		"wrong checksum": {raw(zip.FileHeader{Name: "a.csv", CRC32: sum + 1, CompressedSize64: n, UncompressedSize64: n}, table), "damaged in its zip"},
		"wrong size":     {raw(zip.FileHeader{Name: "a.csv", Method: zip.Deflate, CRC32: sum, CompressedSize64: n, UncompressedSize64: n}, table), "damaged in its zip"},
		"locked":         {raw(zip.FileHeader{Name: "a.csv", Flags: 1, CRC32: sum, CompressedSize64: n, UncompressedSize64: n}, table), "password"},
		"packed oddly":   {raw(zip.FileHeader{Name: "a.csv", Method: 14, CRC32: sum, CompressedSize64: n, UncompressedSize64: n}, table), "packed"},
		"bomb":           {bomb, "times its size"},
		"huge":           {raw(huge, table), "times its size"},
		"nested":         {nest, "a zip in a zip"},
		"cut":            {bomb[:len(bomb)/2], "cut short"},
	} {
		t.Run(name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "jobs.zip")
			write(t, path, tt.data)
			l := mustFind(t, Options{}, path)
			if len(l.Files) != 1 {
				t.Fatalf("%d files", len(l.Files))
			}
			_, err := l.Files[0].Read(context.Background(), Options{})
			var u *grid.Unreadable
			switch {
			case tt.words == "" && err != nil:
				t.Error(err)
			case tt.words != "" && (!errors.As(err, &u) || !strings.Contains(u.Reason, tt.words) || u.Advice == ""):
				t.Errorf("the error is %v, want %q", err, tt.words)
			}
		})
	}
}

// Many readers at once share the zip; the file is closed after the last.
func TestMembersAtOnce(t *testing.T) {
	path := filepath.Join(t.TempDir(), "jobs.zip")
	var members []member
	for i := range 40 {
		members = append(members, member{fmt.Sprintf("%02d.csv", i), fmt.Appendf(nil, "Zone,Tap\n%d,%d\n", i, i)})
	}
	write(t, path, zipped(t, members...))
	l := mustFind(t, Options{}, path)
	results := make(chan error)
	for i, f := range l.Files {
		go func() {
			book, err := f.Read(context.Background(), Options{})
			if err == nil && book.Sheets[0].Rows[1].At(0).Text != fmt.Sprint(i) {
				err = fmt.Errorf("%s holds %+v", f.Name, book.Sheets[0].Rows[1])
			}
			results <- err
		}()
	}
	for range l.Files {
		if err := <-results; err != nil {
			t.Error(err)
		}
	}
	if runtime.GOOS == "linux" {
		open, err := os.ReadDir("/proc/self/fd")
		if err != nil {
			t.Skip(err)
		}
		for _, fd := range open {
			if target, _ := os.Readlink("/proc/self/fd/" + fd.Name()); target == path {
				t.Error("the zip is still open")
			}
		}
	}
}

func TestLimitsAndTime(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.csv")
	write(t, path, []byte(strings.Repeat("a,b\n", 100_000)))
	f := mustFind(t, Options{}, path).Files[0]
	lim := grid.DefaultLimits()
	lim.MaxBytes = 1000
	var u *grid.Unreadable
	if _, err := f.Read(context.Background(), Options{Limits: lim}); !errors.As(err, &u) || !strings.Contains(u.Reason, "too large") {
		t.Errorf("past the limit it gives %v", err)
	}
	if _, err := f.Read(context.Background(), Options{TimeLimit: time.Nanosecond}); !errors.As(err, &u) || !strings.Contains(u.Reason, "given up") {
		t.Errorf("past the time it gives %v", err)
	}
	cancelled, cancel := context.WithCancel(context.Background())
	cancel()
	if _, err := f.Read(cancelled, Options{}); !errors.Is(err, context.Canceled) {
		t.Errorf("cancelled it gives %v", err)
	}
	if _, err := f.Read(context.Background(), Options{Encoding: "klingon"}); !errors.Is(err, text.ErrEncoding) {
		t.Errorf("an unknown encoding gives %v", err)
	}
}

// Reading leaves a file as it was, and works where it may not be written.
func TestInputsAreLeftAlone(t *testing.T) {
	root := t.TempDir()
	path := filepath.Join(root, "a.xlsx")
	write(t, path, workbook(t))
	if err := os.Chmod(path, 0o444); err != nil {
		t.Fatal(err)
	}
	before, err := os.Stat(path)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range mustFind(t, Options{}, root).Files {
		if _, err := f.Read(context.Background(), Options{}); err != nil {
			t.Error(err)
		}
	}
	after, err := os.Stat(path)
	if err != nil {
		t.Fatal(err)
	}
	if !after.ModTime().Equal(before.ModTime()) || after.Size() != before.Size() || after.Mode() != before.Mode() {
		t.Error("the file has changed")
	}
	if entries, _ := os.ReadDir(root); len(entries) != 1 {
		t.Errorf("the folder holds %v", entries)
	}
}

// A SYLK table is read through LibreOffice, in a folder that is gone afterwards.
func TestConvert(t *testing.T) {
	if _, err := exec.LookPath("soffice"); err != nil {
		t.Skip("no soffice")
	}
	if testing.Short() {
		t.Skip("starts LibreOffice")
	}
	temp := t.TempDir()
	t.Setenv("TMPDIR", temp)
	book, err := Parse(context.Background(), "a.slk", []byte("ID;PWXL;N;E\r\nC;Y1;X1;K\"Zone\"\r\nC;Y2;X2;K7.5\r\nE\r\n"), Options{})
	if err != nil {
		t.Fatal(err)
	}
	if !book.Converted || book.Format != grid.Other || len(book.Notes) == 0 {
		t.Errorf("converted %v, format %q, notes %v", book.Converted, book.Format, book.Notes)
	}
	rows := book.Sheets[0].Rows
	if len(rows) != 2 || rows[0].Cell(1).Text != "Zone" || rows[1].Cell(2).Number != 7.5 {
		t.Errorf("rows %+v", rows)
	}
	left, err := filepath.Glob(filepath.Join(temp, "lineaudit-convert-*"))
	if err != nil || len(left) > 0 {
		t.Errorf("left behind: %v %v", left, err)
	}
}

// Any bytes end in a book or a reason.
func FuzzParse(f *testing.F) {
	f.Add([]byte(table))
	f.Add(workbook(f))
	f.Add(zipped(f, member{"a.csv", []byte(table)}))
	f.Add([]byte("<table><tr><td>1"))
	f.Add([]byte("\x09\x08\x10\x00\x00\x06\x05\x00"))
	f.Fuzz(func(t *testing.T, data []byte) {
		book, err := Parse(context.Background(), "a.dat", data, Options{Soffice: func() string { return "" }, TimeLimit: 10 * time.Second})
		var u *grid.Unreadable
		switch {
		case err == nil && (book == nil || book.SHA256 == ""):
			t.Error("no book and no error")
		case err != nil && !errors.As(err, &u):
			t.Errorf("the error is %T %v", err, err)
		case err != nil && strings.Contains(u.Reason, "broke off ("):
			t.Errorf("a reader panicked: %v", err)
		}
	})
}
