package ods

import "lineaudit/ingest/grid/xmltok"

// readDataStyle reads a number format.
func (s *styles) readDataStyle(r *xmltok.Reader, t xmltok.Token) error {
	return r.Skip()
}
