package marked

import (
	"bytes"
	"errors"
	"fmt"
	"path"
	"regexp"
	"strconv"
	"strings"
)

// noteAuthor is the name that notes of ours carry.
const noteAuthor = "lineaudit"

// addNotes puts the texts of the marks into the notes of a sheet: a cell that
// has a note keeps it and ours stands below; a cell with a threaded comment is
// left alone. It returns the element that the sheet needs, if any.
func (b *workbook) addNotes(s sheet, o *outline, marks []mark) (string, error) {
	a := b.archive
	rels, err := a.relations(s.part)
	if err != nil {
		return "", err
	}
	var comments, drawing, threads string
	for _, r := range rels {
		switch {
		case r.kind == "comments" && a.has(r.target):
			comments = r.target
		case r.kind == "threadedComment":
			threads = r.target
		}
	}
	if e := o.child("legacyDrawing"); e != nil {
		for _, r := range rels {
			if r.id == e.attr("id") && a.has(r.target) {
				drawing = r.target
			}
		}
		if drawing == "" {
			return "", errors.New("its drawing of notes is missing")
		}
	}
	if comments != "" && drawing == "" {
		return "", errors.New("its notes have no drawing")
	}
	skip, err := threadedCells(a, threads)
	if err != nil {
		return "", err
	}
	fresh, err := b.writeComments(s, comments, marks, skip)
	if err != nil || len(fresh) == 0 {
		return "", err
	}
	if drawing != "" {
		return "", addShapes(a, drawing, fresh)
	}
	drawing = a.free("xl/drawings/auditNotes", ".vml")
	a.write(drawing, []byte(`<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">`+
		`<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout></xml>`))
	if err := addShapes(a, drawing, fresh); err != nil {
		return "", err
	}
	if err := a.declare("Default", "vml", "application/vnd.openxmlformats-officedocument.vmlDrawing"); err != nil {
		return "", err
	}
	id, err := a.relate(s.part, "vmlDrawing", drawing, b.strict)
	if err != nil {
		return "", err
	}
	return fmt.Sprintf(`<%slegacyDrawing xmlns:audit="%s" audit:id="%s"/>`, o.prefix, relationNamespace(b.strict), id), nil
}

// threadedCells lists the cells of a sheet that hold a threaded comment.
func threadedCells(a *archive, part string) (map[string]bool, error) {
	cells := map[string]bool{}
	if part == "" || !a.has(part) {
		return cells, nil
	}
	content, err := a.read(part)
	if err != nil {
		return nil, err
	}
	o, err := locate(content)
	if err != nil {
		return nil, fmt.Errorf("part %s: %w", part, err)
	}
	for _, c := range o.children {
		cells[strings.ToUpper(c.attr("ref"))] = true
	}
	return cells, nil
}

// writeComments writes the texts and returns the marks that need a new note shape.
func (b *workbook) writeComments(s sheet, part string, marks []mark, skip map[string]bool) ([]mark, error) {
	a := b.archive
	if part == "" {
		part = a.free("xl/auditComments", ".xml")
		a.write(part, []byte(xmlHead+`<comments xmlns="`+mainNamespace(b.strict)+`"><authors></authors><commentList></commentList></comments>`))
		if err := a.declare("Override", "/"+part, "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml"); err != nil {
			return nil, err
		}
		if _, err := a.relate(s.part, "comments", part, b.strict); err != nil {
			return nil, err
		}
	}
	content, err := a.read(part)
	if err != nil {
		return nil, err
	}
	o, err := locate(content)
	if err != nil {
		return nil, fmt.Errorf("part %s: %w", part, err)
	}
	authors, list := o.child("authors"), o.child("commentList")
	if authors == nil || list == nil {
		return nil, fmt.Errorf("part %s is not a list of notes", part)
	}
	p := o.prefix
	author := len(authors.elements)
	edits := []edit{authors.appendTo(content, fmt.Sprintf("<%sauthor>%s</%sauthor>", p, noteAuthor, p))}
	var fresh []mark
	var text strings.Builder
	for _, m := range marks {
		name := cellName(m.row, m.col)
		if skip[name] {
			continue
		}
		if e := noteOf(list, name); e != nil {
			at := bytes.LastIndex(content[e.inner:e.end], []byte("</"+p+"text>"))
			if e.selfEnd || at < 0 {
				return nil, fmt.Errorf("the note on %s has no text", name)
			}
			at += e.inner
			edits = append(edits, edit{at, at, fmt.Sprintf(`<%[1]sr><%[1]st xml:space="preserve">%[2]s</%[1]st></%[1]sr>`, p, escape("\n"+m.text))})
			continue
		}
		fmt.Fprintf(&text, `<%[1]scomment ref="%[2]s" authorId="%[3]d"><%[1]stext><%[1]sr><%[1]st xml:space="preserve">%[4]s</%[1]st></%[1]sr></%[1]stext></%[1]scomment>`,
			p, name, author, escape(m.text))
		fresh = append(fresh, m)
	}
	edits = append(edits, list.appendTo(content, text.String()))
	a.write(part, apply(content, edits))
	return fresh, nil
}

// noteOf returns the note of a cell, or nil.
func noteOf(list *element, name string) *element {
	for i := range list.elements {
		if strings.EqualFold(list.elements[i].attr("ref"), name) {
			return &list.elements[i]
		}
	}
	return nil
}

var shapeNumber = regexp.MustCompile(`_x0000_s(\d+)`)

// addShapes adds a hidden note shape for each mark to a drawing of notes. The
// drawing is a dialect of its own that is often no well-formed XML, so only
// its end is looked for.
func addShapes(a *archive, part string, marks []mark) error {
	content, err := a.read(part)
	if err != nil {
		return err
	}
	end := bytes.LastIndex(content, []byte("</xml>"))
	if end < 0 {
		return fmt.Errorf("the drawing %s has no end", path.Base(part))
	}
	next := 1025
	for _, m := range shapeNumber.FindAllSubmatch(content, -1) {
		if n, err := strconv.Atoi(string(m[1])); err == nil && n < 1<<30 {
			next = max(next, n+1)
		}
	}
	const ns = ` xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"`
	var text strings.Builder
	if !bytes.Contains(content, []byte(`id="_x0000_t202"`)) {
		text.WriteString(`<v:shapetype` + ns + ` id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>`)
	}
	for i, m := range marks {
		lines := 3 + len(m.text)/34
		fmt.Fprintf(&text, `<v:shape%s id="_x0000_s%d" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto">`+
			`<v:fill color2="#ffffe1"/><v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>`+
			`<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>%d, 15, %d, 2, %d, 31, %d, 4</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>%d</x:Row><x:Column>%d</x:Column></x:ClientData></v:shape>`,
			ns, next+i, m.col, max(0, m.row-2), m.col+4, max(0, m.row-2)+min(lines, 20), m.row-1, m.col-1)
	}
	var out bytes.Buffer
	out.Write(content[:end])
	out.WriteString(text.String())
	out.Write(content[end:])
	a.write(part, out.Bytes())
	return nil
}
