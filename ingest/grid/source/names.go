package source

import (
	"fmt"
	"path/filepath"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/encoding/charmap"
)

// shown makes a path fit to be seen and to be used below an output folder:
// slashes, no "..", no drive, no control characters, valid UTF-8.
func shown(name string) string {
	var parts []string
	for p := range strings.SplitSeq(strings.ReplaceAll(name, `\`, "/"), "/") {
		if p == "" || p == "." || p == ".." {
			continue
		}
		parts = append(parts, strings.Map(func(r rune) rune {
			switch {
			case r == utf8.RuneError, unicode.IsControl(r), unicode.Is(unicode.Bidi_Control, r), r == '\u2028', r == '\u2029':
				return '_'
			case r == ':':
				return '_'
			}
			return r
		}, p))
	}
	if len(parts) == 0 {
		return "_"
	}
	return strings.Join(parts, "/")
}

// memberName decodes the name of a zip member: UTF-8, else the code page of
// the system that zips come from.
func memberName(name string, legacy bool) string {
	if !legacy || utf8.ValidString(name) {
		return name
	}
	if s, err := charmap.CodePage437.NewDecoder().String(name); err == nil {
		return s
	}
	return name
}

// labels returns, for each of several paths, the shortest ending of it that
// tells them apart, for what is found under it to be named by.
func labels(paths []string) []string {
	full := make([][]string, len(paths))
	for i, p := range paths {
		if abs, err := filepath.Abs(p); err == nil {
			p = abs
		}
		full[i] = strings.Split(shown(filepath.ToSlash(p)), "/")
	}
	out := make([]string, len(paths))
	for i := range full {
		n := 1
		for n < len(full[i]) && !unique(full, i, n) {
			n++
		}
		out[i] = strings.Join(full[i][len(full[i])-n:], "/")
	}
	return out
}

func unique(full [][]string, i, n int) bool {
	mine := strings.Join(full[i][len(full[i])-n:], "/")
	for j, other := range full {
		if j != i && len(other) >= n && strings.Join(other[len(other)-n:], "/") == mine && strings.Join(other, "/") != strings.Join(full[i], "/") {
			return false
		}
	}
	return true
}

// distinct gives files that share a name different ones. They come sorted.
func distinct(files []File) {
	used := make(map[string]bool, len(files))
	for i := range files {
		name := files[i].Name
		for n := 2; used[name]; n++ {
			ext := filepath.Ext(files[i].Name)
			name = fmt.Sprintf("%s (%d)%s", strings.TrimSuffix(files[i].Name, ext), n, ext)
		}
		used[name] = true
		files[i].Name = name
	}
}
