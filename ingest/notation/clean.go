package notation

// Clean normalises the characters of a cell.
func Clean(s string) string { return s }
