package marked

import (
	"bytes"
	"errors"
	"fmt"
	"path"
	"regexp"
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/report"
)

// noteAuthor is the name that notes of ours carry.
const noteAuthor = "lineaudit"

// maxNotes is how many cells of one sheet get a note; more would make the
// workbook slow to open. Further cells have their colour alone.
const maxNotes = 20_000

// addNotes puts the texts of the marks into the notes of a sheet, the nth: a
// cell that has a note keeps it and ours stands below; a cell with a threaded
// comment is left alone. It returns the element that the sheet needs, if any.
func (b *workbook) addNotes(n int, s sheet, o *outline, marks []mark) (string, error) {
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
	skip, err := threadedCells(a, threads)
	if err != nil {
		return "", err
	}
	marks = marks[:min(len(marks), maxNotes)]
	shapes, err := b.writeComments(s, comments, drawing == "", marks, skip)
	if err != nil || len(shapes) == 0 {
		return "", err
	}
	if drawing != "" {
		return "", addShapes(a, drawing, shapes)
	}
	drawing = a.free("xl/drawings/auditNotes", ".vml")
	a.write(drawing, fmt.Appendf(nil, `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">`+
		`<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="%d"/></o:shapelayout><!-- _x0000_s%d --></xml>`, n+1, (n+1)*1024))
	if err := addShapes(a, drawing, shapes); err != nil {
		return "", err
	}
	if err := a.declare("Default", "vml", "application/vnd.openxmlformats-officedocument.vmlDrawing"); err != nil {
		return "", err
	}
	id, err := a.relate(s.part, "vmlDrawing", drawing, b.strict)
	if err != nil {
		return "", err
	}
	return fmt.Sprintf(`<%slegacyDrawing%s/>`, o.prefix, o.idAttr(b.strict, id)), nil
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

// writeComments writes the texts and returns the marks that need a new note
// shape; those are all notes of the sheet when bare, that is, when none has one.
func (b *workbook) writeComments(s sheet, part string, bare bool, marks []mark, skip map[string]bool) ([]mark, error) {
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
	var shapes []mark
	had := map[string]*element{}
	for i := range list.elements {
		e := &list.elements[i]
		had[strings.ToUpper(e.attr("ref"))] = e
		if row, col, err := grid.ParseA1(e.attr("ref")); bare && err == nil {
			shapes = append(shapes, mark{row: row, col: col})
		}
	}
	var text strings.Builder
	for _, m := range marks {
		name := cellName(m.row, m.col)
		if skip[name] {
			continue
		}
		if e := had[name]; e != nil {
			more, err := extend(content, e, p, m.text)
			if err != nil {
				return nil, fmt.Errorf("the note on %s: %w", name, err)
			}
			edits = append(edits, more)
			continue
		}
		fmt.Fprintf(&text, `<%[1]scomment ref="%[2]s" authorId="%[3]d"><%[1]stext>%[4]s</%[1]stext></%[1]scomment>`, p, name, author, noteRun(p, m.text))
		shapes = append(shapes, m)
	}
	edits = append(edits, list.appendTo(content, text.String()))
	a.write(part, apply(content, edits))
	return shapes, nil
}

// noteRun is a piece of a note's text in small type.
func noteRun(p, text string) string {
	return fmt.Sprintf(`<%[1]sr><%[1]srPr><%[1]ssz val="9"/><%[1]srFont val="Liberation Sans"/><%[1]sfamily val="2"/></%[1]srPr><%[1]st xml:space="preserve">%[2]s</%[1]st></%[1]sr>`, p, cellText(text))
}

// extend returns the edit that puts a text below the text of a note.
func extend(content []byte, e *element, p, text string) (edit, error) {
	run := noteRun(p, "\n"+text)
	if e.selfEnd {
		return edit{}, errors.New("it has no text")
	}
	if at := bytes.LastIndex(content[e.inner:e.end], []byte("</"+p+"text>")); at >= 0 {
		// what a note of one style carries beside its runs comes behind them
		inner := content[e.inner : e.inner+at]
		for _, tail := range []string{"<" + p + "rPh", "<" + p + "phoneticPr"} {
			if i := bytes.Index(inner, []byte(tail)); i >= 0 {
				at = min(at, i)
			}
		}
		return edit{e.inner + at, e.inner + at, run}, nil
	}
	for _, empty := range []string{"<" + p + "text/>", "<" + p + "text />"} {
		if at := bytes.Index(content[e.inner:e.end], []byte(empty)); at >= 0 {
			return edit{e.inner + at, e.inner + at + len(empty), "<" + p + "text>" + run + "</" + p + "text>"}, nil
		}
	}
	return edit{}, errors.New("it has no text")
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
		fmt.Fprintf(&text, `<v:shape%s id="_x0000_s%d" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto">`+
			`<v:fill color2="#ffffe1"/><v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>`+
			`<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>%s</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>%d</x:Row><x:Column>%d</x:Column></x:ClientData></v:shape>`,
			ns, next+i, anchor(m), m.row-1, m.col-1)
	}
	a.write(part, bytes.Join([][]byte{content[:end], []byte(text.String()), content[end:]}, nil))
	return nil
}

// anchor says which cells a note lies over when it is shown: right of its own
// cell, four columns wide, high enough for its text, inside the sheet.
func anchor(m mark) string {
	const width, height = 4, 24
	lines := min(2+report.Lines(m.text, 40), height)
	left := min(m.col, maxSheetCols-width-1)
	top := min(max(0, m.row-2), maxSheetRows-height-1)
	return fmt.Sprintf("%d, 15, %d, 2, %d, 31, %d, 4", left, top, left+width, top+lines)
}

// The size of a sheet.
const (
	maxSheetRows = 1_048_576
	maxSheetCols = 16_384
)
