package marked

import (
	"fmt"
	"strconv"
	"strings"

	"lineaudit/audit"
)

// grades in the order of their formats.
var grades = []audit.Grade{audit.Danger, audit.Fault, audit.Caution, audit.Unknown}

// fillColours are the fills of the grades; the note says the grade in words.
var fillColours = map[audit.Grade]string{audit.Danger: "FFF4B6AE", audit.Fault: "FFFAD7A8", audit.Caution: "FFFBF0B2", audit.Unknown: "FFDDE3E9"}

// styleOrder is the order of the children of a styles part.
var styleOrder = []string{"numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs", "tableStyles", "colors", "extLst"}

// looks are the numbers of the formats that a copy adds: a fill for each grade,
// and the cell formats of the findings sheet (0, the workbook's own, if it has
// no list of them or the list is full).
type looks struct {
	fills                           map[audit.Grade]int // conditional formats
	title, note, head, wrap, answer int
	link, number                    int
	grade                           map[audit.Grade]int
}

// maxCellFormats is how many cell formats spreadsheet programs take.
const maxCellFormats = 64000

// bareStyles is a styles part with the least that programs ask for.
func bareStyles(strict bool) string {
	return xmlHead + `<styleSheet xmlns="` + mainNamespace(strict) + `"><fonts count="1"><font><sz val="11"/><name val="Liberation Sans"/></font></fonts>` +
		`<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>` +
		`<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>` +
		`<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs></styleSheet>`
}

// addLooks adds one differential format for each grade - a conditional format
// leaves number formats and styles of the cell alone - and the cell formats of
// the findings sheet.
func (b *workbook) addLooks() (looks, error) {
	part, err := b.stylesPart()
	if err != nil {
		return looks{}, err
	}
	a := b.archive
	content, err := a.read(part)
	if err != nil {
		return looks{}, err
	}
	o, err := locate(content)
	if err != nil {
		return looks{}, fmt.Errorf("part %s: %w", part, err)
	}
	if len(o.children) == 0 {
		content = []byte(bareStyles(b.strict))
		if o, err = locate(content); err != nil {
			return looks{}, err
		}
	}
	l := looks{fills: map[audit.Grade]int{}, grade: map[audit.Grade]int{}}
	edits := l.addCellFormats(o, content)
	var text strings.Builder
	have, first := o.child("dxfs"), 0
	if have != nil {
		first = len(have.elements)
	}
	for i, g := range grades {
		l.fills[g] = first + i
		fmt.Fprintf(&text, `<%[1]sdxf><%[1]sfill><%[1]spatternFill patternType="solid"><%[1]sfgColor rgb="%[2]s"/><%[1]sbgColor rgb="%[2]s"/></%[1]spatternFill></%[1]sfill></%[1]sdxf>`, o.prefix, fillColours[g])
	}
	if have != nil {
		edits = append(edits, have.grow(o.prefix, content, len(grades), text.String())...)
	} else {
		at := o.afterLast(styleOrder, "dxfs")
		edits = append(edits, edit{at, at, fmt.Sprintf(`<%sdxfs count="%d">%s</%sdxfs>`, o.prefix, len(grades), text.String(), o.prefix)})
	}
	a.write(part, apply(content, edits))
	return l, nil
}

// stylesPart returns the name of the styles part; one is made where there is none.
func (b *workbook) stylesPart() (string, error) {
	a := b.archive
	rels, err := a.relations(b.part)
	if err != nil {
		return "", err
	}
	for _, r := range rels {
		if r.kind == "styles" && a.has(r.target) {
			return r.target, nil
		}
	}
	part := "xl/styles.xml" // where some programs look without asking
	if a.has(part) {
		part = a.free("xl/auditstyles", ".xml")
	}
	a.write(part, []byte(bareStyles(b.strict)))
	if err := a.declare("Override", "/"+part, "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"); err != nil {
		return "", err
	}
	_, err = a.relate(b.part, "styles", part, b.strict)
	return part, err
}

// addCellFormats adds the fonts, fills and cell formats of the findings sheet.
func (l *looks) addCellFormats(o *outline, content []byte) []edit {
	fonts, fills, formats := o.child("fonts"), o.child("fills"), o.child("cellXfs")
	if fonts == nil || fills == nil || formats == nil || len(fonts.elements) == 0 || len(formats.elements) == 0 || len(formats.elements) > maxCellFormats-20 {
		return nil
	}
	p := o.prefix
	font := func(size int, extra, colour string) string {
		return fmt.Sprintf(`<%[1]sfont>%[2]s<%[1]ssz val="%[3]d"/><%[1]scolor rgb="%[4]s"/><%[1]sname val="Liberation Sans"/><%[1]sfamily val="2"/></%[1]sfont>`, p, extra, size, colour)
	}
	fill := func(colour string) string {
		return fmt.Sprintf(`<%[1]sfill><%[1]spatternFill patternType="solid"><%[1]sfgColor rgb="%[2]s"/><%[1]sbgColor indexed="64"/></%[1]spatternFill></%[1]sfill>`, p, colour)
	}
	bold, under := "<"+p+"b/>", "<"+p+"u/>"
	title, body, head, soft, link := len(fonts.elements), len(fonts.elements)+1, len(fonts.elements)+2, len(fonts.elements)+3, len(fonts.elements)+4
	strong := len(fonts.elements) + 5
	newFonts := font(16, bold, "FF12343B") + font(10, "", "FF1F2933") + font(10, bold, "FFFFFFFF") + font(10, "", "FF52606D") + font(10, under, "FF0B5C8A") + font(10, bold, "FF1F2933")
	firstFill := len(fills.elements)
	var newFills strings.Builder
	newFills.WriteString(fill("FF2D5D62") + fill("FFFBF7E9"))
	for _, g := range grades {
		newFills.WriteString(fill(fillColours[g]))
	}
	var text strings.Builder
	next := len(formats.elements)
	format := func(font, fill int, align string) int {
		fmt.Fprintf(&text, `<%[1]sxf numFmtId="0" fontId="%[2]d" fillId="%[3]d" borderId="0" applyFont="1" applyFill="1" applyAlignment="1"><%[1]salignment %[4]s/></%[1]sxf>`, p, font, fill, align)
		next++
		return next - 1
	}
	const top = `vertical="top" wrapText="1"`
	l.title = format(title, 0, `vertical="center"`)
	l.note = format(soft, 0, top)
	l.head = format(head, firstFill, `vertical="center" wrapText="1"`)
	l.wrap = format(body, 0, top)
	l.link = format(link, 0, top)
	l.number = format(body, 0, `horizontal="center" vertical="top"`)
	l.answer = format(body, firstFill+1, top)
	for i, g := range grades {
		l.grade[g] = format(strong, firstFill+2+i, top)
	}
	edits := append(fonts.grow(p, content, 6, newFonts), fills.grow(p, content, 2+len(grades), newFills.String())...)
	return append(edits, formats.grow(p, content, next-len(formats.elements), text.String())...)
}

// grow returns the edits that add n elements to a counted list.
func (e *element) grow(prefix string, content []byte, n int, text string) []edit {
	total := strconv.Itoa(len(e.elements) + n)
	if e.selfEnd { // the two edits would touch the same tag
		return []edit{{e.start, e.end, fmt.Sprintf(`<%s%s count="%s">%s</%s%s>`, prefix, e.name, total, text, prefix, e.name)}}
	}
	return []edit{setAttr(content, e.start, e.inner, "count", total), e.appendTo(content, text)}
}
