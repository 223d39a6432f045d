package xlsx

import (
	"strconv"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
)

// A style is what matters of a cell's format.
type style struct {
	format  *numfmt.Format
	extra   grid.Shared // its code, as cells hold it
	general bool
	date    bool
	strike  bool
}

var plainStyle = style{format: numfmt.Compile(""), general: true}

// readStyles returns the cell formats in the order in which cells number them.
func readStyles(s *scanner) ([]style, error) {
	type xf struct{ format, font int }
	var (
		codes   = map[int]string{}
		struck  []bool
		xfs     []xf
		section string
	)
	number := func(name string) int {
		v, _ := s.attribute(name)
		n, err := strconv.Atoi(v)
		if err != nil || n < 0 {
			return 0
		}
		return n
	}
	err := s.walk(func() error {
		switch s.depth() {
		case 1:
			if string(s.name) != "styleSheet" {
				return errOdd
			}
		case 2:
			section = string(s.name)
		case 3:
			switch name := string(s.name); {
			case section == "numFmts" && name == "numFmt":
				if codes[number("numFmtId")], _ = s.attribute("formatCode"); len(codes) > mostEntries {
					return grid.TooLarge("more than %d number formats", mostEntries)
				}
			case section == "fonts" && name == "font":
				if struck = append(struck, false); len(struck) > mostEntries {
					return grid.TooLarge("more than %d fonts", mostEntries)
				}
			case section == "cellXfs" && name == "xf":
				if xfs = append(xfs, xf{format: number("numFmtId"), font: number("fontId")}); len(xfs) > mostEntries {
					return grid.TooLarge("more than %d formats", mostEntries)
				}
			}
		case 4:
			if section == "fonts" && string(s.name) == "strike" && len(struck) > 0 {
				v, set := s.attribute("val")
				struck[len(struck)-1] = !set || v == "1" || v == "true"
			}
		}
		return nil
	})
	if err != nil {
		return nil, err
	}
	compiled := map[int]style{}
	out := make([]style, len(xfs))
	for i, x := range xfs {
		st, ok := compiled[x.format]
		if !ok {
			code, own := codes[x.format]
			if !own {
				code = numfmt.Builtin(x.format)
			}
			f := numfmt.Compile(code)
			st = style{format: f, extra: grid.Extra{Format: f.Code()}.Share(), general: f.IsGeneral(), date: f.IsDate()}
			compiled[x.format] = st
		}
		st.strike = x.font < len(struck) && struck[x.font]
		out[i] = st
	}
	return out, nil
}
