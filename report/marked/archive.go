package marked

import (
	"archive/zip"
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io"
	"path"
	"slices"
	"strings"

	"lineaudit/ingest/grid/xmltok"
)

// maxPart bounds the inflated size of a part that has to be changed.
const maxPart = 512 << 20

// An archive is the parts of a workbook: those that stay are copied as they
// are stored, those that change or are new are written afresh. Names of parts
// are compared as programs do, in any letter case and with either slash.
type archive struct {
	reader  *zip.Reader
	files   map[string]*zip.File // by key
	changed map[string][]byte    // by key
	added   []string             // names of new parts, in order
}

// key is what the name of a part is compared by.
func key(name string) string { return strings.ToLower(slashed(name)) }

func slashed(name string) string { return strings.ReplaceAll(name, "\\", "/") }

func openArchive(data []byte) (*archive, error) {
	r, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return nil, err
	}
	a := &archive{reader: r, files: map[string]*zip.File{}, changed: map[string][]byte{}}
	for _, f := range r.File {
		name := slashed(f.Name)
		if leadsOut(name) {
			return nil, fmt.Errorf("the name of its part %q leads out of it", f.Name)
		}
		if a.files[key(name)] != nil {
			return nil, fmt.Errorf("it holds the part %s twice", name)
		}
		a.files[key(name)] = f
	}
	return a, nil
}

// leadsOut reports whether the slashed name of a part would lead out of the
// folder that somebody unpacks the copy into, on whatever system.
func leadsOut(name string) bool {
	drive := len(name) > 1 && name[1] == ':'
	return drive || strings.HasPrefix(name, "/") || slices.Contains(strings.Split(name, "/"), "..")
}

// has reports whether a part exists.
func (a *archive) has(name string) bool {
	return a.files[key(name)] != nil || a.changed[key(name)] != nil
}

// read returns the content of a part as it stands now, in UTF-8.
func (a *archive) read(name string) ([]byte, error) {
	if b, ok := a.changed[key(name)]; ok {
		return b, nil
	}
	f := a.files[key(name)]
	if f == nil {
		return nil, fmt.Errorf("the part %s is missing", name)
	}
	rc, err := f.Open()
	if err != nil {
		return nil, err
	}
	defer rc.Close()
	b, err := io.ReadAll(io.LimitReader(rc, maxPart+1))
	if err != nil {
		return nil, fmt.Errorf("part %s: %w", name, err)
	}
	if len(b) > maxPart {
		return nil, fmt.Errorf("part %s is too large to be changed", name)
	}
	if b, err = xmltok.Decode(b); err != nil {
		return nil, fmt.Errorf("part %s: %w", name, err)
	}
	return declaredUTF8(b), nil
}

// declaredUTF8 replaces a declaration of another encoding, which a decoded
// part may still carry.
func declaredUTF8(b []byte) []byte {
	if !bytes.HasPrefix(b, []byte("<?xml")) {
		return b
	}
	before, after, ok := bytes.Cut(b, []byte("?>"))
	if !ok {
		return b
	}
	head := bytes.ToLower(before)
	if !bytes.Contains(head, []byte("encoding")) || bytes.Contains(head, []byte("utf-8")) {
		return b
	}
	return append([]byte(xmlHead), bytes.TrimLeft(after, "\r\n")...)
}

// write changes a part or adds a new one.
func (a *archive) write(name string, content []byte) {
	if !a.has(name) {
		a.added = append(a.added, name)
	}
	a.changed[key(name)] = content
}

// free returns the first of name1.ext, name2.ext ... that no part has.
func (a *archive) free(stem, ext string) string {
	for i := 1; ; i++ {
		if name := fmt.Sprintf("%s%d%s", stem, i, ext); !a.has(name) {
			return name
		}
	}
}

// save writes the whole workbook.
func (a *archive) save(w io.Writer) error {
	z := zip.NewWriter(w)
	for _, f := range a.reader.File {
		var err error
		if content, changed := a.changed[key(f.Name)]; changed {
			err = deflate(z, slashed(f.Name), content)
		} else {
			err = copyStored(z, f)
		}
		if err != nil {
			return err
		}
	}
	for _, name := range a.added {
		if err := deflate(z, name, a.changed[key(name)]); err != nil {
			return err
		}
	}
	return z.Close()
}

// copyStored copies a part as it is stored. Folders, which some programs write
// as parts, are written without content.
func copyStored(z *zip.Writer, f *zip.File) error {
	h := f.FileHeader
	h.Name = slashed(f.Name)
	if strings.HasSuffix(h.Name, "/") {
		_, err := z.CreateHeader(&zip.FileHeader{Name: h.Name, Method: zip.Store})
		return err
	}
	r, err := f.OpenRaw()
	if err != nil {
		return err
	}
	w, err := z.CreateRaw(&h)
	if err != nil {
		return err
	}
	_, err = io.Copy(w, r)
	return err
}

func deflate(z *zip.Writer, name string, content []byte) error {
	w, err := z.CreateHeader(&zip.FileHeader{Name: name, Method: zip.Deflate})
	if err != nil {
		return err
	}
	_, err = w.Write(content)
	return err
}

// A relation is one entry of a part's relationships.
type relation struct {
	id, kind, target string
	external         bool
}

// relsName returns the part that holds the relationships of a part.
func relsName(part string) string {
	if part == "" {
		return "_rels/.rels"
	}
	return path.Join(path.Dir(part), "_rels", path.Base(part)+".rels")
}

// relations reads the relationships of a part; a part may have none.
func (a *archive) relations(part string) ([]relation, error) {
	name := relsName(part)
	if !a.has(name) {
		return nil, nil
	}
	b, err := a.read(name)
	if err != nil {
		return nil, err
	}
	o, err := locate(b)
	if err != nil {
		return nil, fmt.Errorf("part %s: %w", name, err)
	}
	var out []relation
	for _, c := range o.children {
		r := relation{id: c.attr("Id"), kind: path.Base(c.attr("Type")), external: strings.EqualFold(c.attr("TargetMode"), "External")}
		r.target = c.attr("Target")
		if !r.external {
			r.target = slashed(r.target)
			if strings.HasPrefix(r.target, "/") {
				r.target = strings.TrimPrefix(path.Clean(r.target), "/")
			} else {
				r.target = path.Join(path.Dir(part), r.target)
			}
		}
		out = append(out, r)
	}
	return out, nil
}

// relate adds a relationship to a part and returns its id. Strict packages
// name the kinds of relationships in another namespace.
func (a *archive) relate(part, kind, target string, strict bool) (string, error) {
	have, err := a.relations(part)
	if err != nil {
		return "", err
	}
	id := ""
	for i := 1; ; i++ {
		id = fmt.Sprintf("rIdAudit%d", i)
		if !slices.ContainsFunc(have, func(r relation) bool { return r.id == id }) {
			break
		}
	}
	entry := fmt.Sprintf(`Relationship Id="%s" Type="%s/%s" Target="/%s"/>`, id, relationNamespace(strict), kind, escape(target))
	name := relsName(part)
	if !a.has(name) {
		a.write(name, []byte(xmlHead+`<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><`+entry+`</Relationships>`))
		return id, nil
	}
	b, err := a.read(name)
	if err != nil {
		return "", err
	}
	o, err := locate(b)
	if err != nil {
		return "", err
	}
	a.write(name, apply(b, []edit{o.inside(b, "<"+o.prefix+entry)}))
	return id, nil
}

// declare names the content type of a new part, or of an extension.
func (a *archive) declare(kind, name, contentType string) error {
	const list = "[Content_Types].xml"
	b, err := a.read(list)
	if err != nil {
		return err
	}
	o, err := locate(b)
	if err != nil {
		return fmt.Errorf("part %s: %w", list, err)
	}
	attr := map[string]string{"Default": "Extension", "Override": "PartName"}[kind]
	at := edit{start: -1}
	for _, c := range o.children {
		if c.name == kind && strings.EqualFold(c.attr(attr), name) {
			return nil
		}
		if c.name == kind {
			at = edit{start: c.end, end: c.end}
		}
	}
	entry := fmt.Sprintf(`<%s%s %s="%s" ContentType="%s"/>`, o.prefix, kind, attr, escape(name), contentType)
	switch {
	case at.start >= 0:
		at.text = entry
	case kind == "Default" && !o.selfEnd:
		at = edit{o.openEnd, o.openEnd, entry}
	default:
		at = o.inside(b, entry)
	}
	a.write(list, apply(b, []edit{at}))
	return nil
}

// workbookPart returns the name of the workbook part.
func (a *archive) workbookPart() (string, error) {
	rels, err := a.relations("")
	if err != nil {
		return "", err
	}
	for _, r := range rels {
		if r.kind == "officeDocument" && a.has(r.target) {
			return r.target, nil
		}
	}
	return "", errors.New("it names no workbook part")
}

// signed reports whether the package carries a digital signature, which holds
// for no copy of it.
func (a *archive) signed() bool {
	rels, err := a.relations("")
	return err == nil && slices.ContainsFunc(rels, func(r relation) bool { return r.kind == "origin" })
}

const xmlHead = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>` + "\n"

// The namespaces of the two dialects of the format.
const (
	looseMain  = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
	strictMain = "http://purl.oclc.org/ooxml/spreadsheetml/main"
	looseRel   = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
	strictRel  = "http://purl.oclc.org/ooxml/officeDocument/relationships"
)

func relationNamespace(strict bool) string {
	if strict {
		return strictRel
	}
	return looseRel
}

func mainNamespace(strict bool) string {
	if strict {
		return strictMain
	}
	return looseMain
}

func sortEdits(edits []edit) {
	slices.SortStableFunc(edits, func(x, y edit) int { return cmp.Or(cmp.Compare(x.start, y.start), cmp.Compare(x.end, y.end)) })
}
