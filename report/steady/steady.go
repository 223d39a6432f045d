// Package steady writes workbooks of the workbook library so that the same
// content is the same bytes every time: the library writes the parts of a
// package, and the list of their types, in no fixed order.
package steady

import (
	"archive/zip"
	"bufio"
	"cmp"
	"encoding/xml"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/report/scratch"
)

const contentTypes = "[Content_Types].xml"

// Write writes the workbook with its parts in order. Later are the rows of
// sheets, by name, that were not written to them yet; it may be nil.
func Write(w io.Writer, f *excelize.File, later map[string]Rows) (err error) {
	tmp, err := scratch.New("lineaudit-*.xlsx")
	if err != nil {
		return err
	}
	defer func() {
		if gone := tmp.Close(); err == nil {
			err = gone
		}
	}()
	parts := map[string]Rows{}
	for id, name := range f.GetSheetMap() {
		if rows := later[name]; rows != nil {
			parts[sheetPart(id)] = rows
		}
	}
	unordered := bufio.NewWriterSize(tmp, 1<<16)
	f.SetZipWriter(func(io.Writer) excelize.ZipWriter { return &splicer{Writer: zip.NewWriter(unordered), later: parts} })
	if _, err := f.WriteTo(io.Discard); err != nil {
		return err
	}
	if err := unordered.Flush(); err != nil {
		return err
	}
	size, err := tmp.Seek(0, io.SeekEnd)
	if err != nil {
		return err
	}
	r, err := zip.NewReader(tmp, size)
	if err != nil {
		return err
	}
	slices.SortStableFunc(r.File, func(x, y *zip.File) int { return cmp.Or(place(x.Name)-place(y.Name), cmp.Compare(x.Name, y.Name)) })
	z := zip.NewWriter(w)
	for _, member := range r.File {
		if member.Name != contentTypes {
			if err := z.Copy(member); err != nil {
				return err
			}
			continue
		}
		if err := sorted(z, member); err != nil {
			return err
		}
	}
	return z.Close()
}

// place puts the content types and relationships of the package in front, where readers look first.
func place(name string) int {
	switch name {
	case contentTypes:
		return 0
	case "_rels/.rels":
		return 1
	}
	return 2
}

// types is the content of the part.
type types struct {
	XMLName  xml.Name `xml:"http://schemas.openxmlformats.org/package/2006/content-types Types"`
	Defaults []struct {
		Extension   string `xml:"Extension,attr"`
		ContentType string `xml:"ContentType,attr"`
	} `xml:"Default"`
	Overrides []struct {
		PartName    string `xml:"PartName,attr"`
		ContentType string `xml:"ContentType,attr"`
	} `xml:"Override"`
}

// sorted writes the content types in the order of their names.
func sorted(z *zip.Writer, member *zip.File) error {
	rc, err := member.Open()
	if err != nil {
		return err
	}
	defer rc.Close()
	var t types
	if err := xml.NewDecoder(rc).Decode(&t); err != nil {
		return fmt.Errorf("%s: %w", contentTypes, err)
	}
	var lines []string
	for _, d := range t.Defaults {
		lines = append(lines, fmt.Sprintf(`<Default Extension="%s" ContentType="%s"/>`, escape(d.Extension), escape(d.ContentType)))
	}
	slices.Sort(lines)
	n := len(lines)
	for _, o := range t.Overrides {
		lines = append(lines, fmt.Sprintf(`<Override PartName="%s" ContentType="%s"/>`, escape(o.PartName), escape(o.ContentType)))
	}
	slices.Sort(lines[n:])
	w, err := z.Create(contentTypes)
	if err != nil {
		return err
	}
	_, err = io.WriteString(w, xml.Header+`<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">`+strings.Join(lines, "")+`</Types>`)
	return err
}

func escape(s string) string {
	var b strings.Builder
	xml.EscapeText(&b, []byte(s))
	return b.String()
}
