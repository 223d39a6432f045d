package xlsx

import (
	"archive/zip"
	"bytes"
	"errors"
	"net/url"
	"path"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/zipdir"
)

// An archive is the directory of a zipped workbook. Parts are found by name
// without regard to case, as the packaging standard asks (ECMA-376 part 2).
type archive struct {
	data     []byte
	lim      grid.Limits
	parts    map[string]*zip.File // by lower-case name; nil: two members share the name
	inflated int64                // bytes that opened parts declare, all together
}

// openArchive reads the directory alone, unless it is given; no member is unpacked.
func openArchive(data []byte, z *zip.Reader, lim grid.Limits) (*archive, error) {
	if lim.MaxBytes > 0 && int64(len(data)) > lim.MaxBytes {
		return nil, grid.TooLarge("%d bytes, the limit is %d", len(data), lim.MaxBytes)
	}
	var err error
	if z == nil {
		z, err = zipdir.Open(bytes.NewReader(data), int64(len(data)), lim.MaxMembers)
	}
	if errors.Is(err, zipdir.ErrTooMany) || z != nil && lim.MaxMembers > 0 && len(z.File) > lim.MaxMembers {
		return nil, grid.TooLarge("more than %d parts", lim.MaxMembers)
	}
	if err != nil {
		return nil, &grid.Unreadable{
			Reason: "the workbook is cut short or damaged: it has no directory of its parts",
			Advice: "copy or download it again; if it does not open in a spreadsheet program either, restore it from a backup",
		}
	}
	a := &archive{data: data, lim: lim, parts: make(map[string]*zip.File, len(z.File))}
	for _, f := range z.File {
		name := partName(f.Name)
		if _, twice := a.parts[name]; twice {
			f = nil
		}
		a.parts[name] = f
	}
	return a, nil
}

// partName is the key of a member: lower case, slashes, none in front.
func partName(name string) string {
	return strings.ToLower(strings.TrimLeft(strings.ReplaceAll(name, `\`, "/"), "/"))
}

func (a *archive) has(name string) bool {
	_, ok := a.parts[partName(name)]
	return ok
}

// mostEntries bounds the lists of a workbook - relationships, formats - that
// no other limit bounds. Spreadsheet programs stop at 65,490 formats.
const mostEntries = 100_000

// A rel is one relationship of a part: an identifier, a kind (the last word
// of its type, the same in both dialects of the standard) and the target part.
type rel struct{ id, kind, target string }

// relationships reads those of the named part ("" for the package itself). A
// part without any has none; that is no error.
func (a *archive) relationships(name string) ([]rel, error) {
	dir, file := path.Split(name)
	relsName := path.Join(dir, "_rels", file+".rels")
	if !a.has(relsName) {
		return nil, nil
	}
	s, err := a.open(relsName)
	if err != nil {
		return nil, err
	}
	defer s.release()
	var out []rel
	err = s.walk(func() error {
		if string(s.name) != "Relationship" {
			return nil
		}
		var r rel
		mode := ""
		for _, at := range s.attrs {
			switch string(at.name) {
			case "Id":
				r.id = at.text()
			case "Type":
				r.kind = path.Base(at.text())
			case "Target":
				r.target = at.text()
			case "TargetMode":
				mode = at.text()
			}
		}
		if mode == "External" { // links to other files and sites are never followed
			return nil
		}
		r.target = resolve(dir, r.target)
		if out = append(out, r); len(out) > mostEntries {
			return grid.TooLarge("%q lists more than %d parts", relsName, mostEntries)
		}
		return nil
	})
	return out, err
}

// resolve turns a relationship's target into a part name. A target that
// climbs out of the package resolves inside it, where there is no such part.
func resolve(dir, target string) string {
	target = strings.ReplaceAll(target, `\`, "/")
	if u, err := url.PathUnescape(target); err == nil {
		target = u
	}
	if !strings.HasPrefix(target, "/") {
		target = "/" + dir + target
	}
	return strings.TrimPrefix(path.Clean(target), "/")
}

func find(rels []rel, kind string) (target string) {
	for _, r := range rels {
		if r.kind == kind {
			return r.target
		}
	}
	return ""
}
