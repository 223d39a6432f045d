package report

import (
	"crypto/sha256"
	"fmt"
	"path"
	"strings"
	"unicode"
)

// MarkedNames returns, for each file, the path of its marked copy inside the
// output folder: an .xlsx or .xlsm below "marked" that every system can hold,
// never outside it. No two are the same, in any letter case.
func MarkedNames(files []string) []string {
	taken := map[string]bool{}
	out := make([]string, len(files))
	for i, f := range files {
		name := markedName(f)
		ext := path.Ext(name)
		for n := 2; taken[strings.ToLower(name)]; n++ {
			name = fmt.Sprintf("%s %d%s", strings.TrimSuffix(markedName(f), ext), n, ext)
		}
		taken[strings.ToLower(name)] = true
		out[i] = name
	}
	return out
}

// The lengths that all systems and most programs take: a name alone, and a
// path with room for the folder that it lies in.
const (
	longestName = 120
	longestPath = 200
)

func markedName(file string) string {
	clean := path.Clean("/" + strings.ReplaceAll(file, "\\", "/"))
	ext := strings.ToLower(path.Ext(clean))
	if ext == ".xlsx" || ext == ".xlsm" {
		clean = clean[:len(clean)-len(ext)]
	} else {
		ext = ".xlsx"
	}
	parts := strings.Split(strings.TrimPrefix(clean, "/"), "/")
	for i, p := range parts {
		parts[i] = portable(p)
	}
	name := strings.Join(parts, "/")
	if len(name) > longestPath { // a long road of folders gives way to a number of its own
		name = shortSum(name) + "/" + parts[len(parts)-1]
	}
	return "marked/" + name + ext
}

// portable makes a name that every system takes for a file or a folder.
func portable(name string) string {
	name = strings.Map(func(r rune) rune {
		switch {
		case strings.ContainsRune(`<>:"|?*`, r):
			return '-'
		case !unicode.IsGraphic(r) || r == unicode.ReplacementChar:
			return -1
		}
		return r
	}, name)
	name = strings.TrimRight(strings.TrimSpace(name), ". ")
	if name == "" {
		name = "unnamed"
	}
	stem, _, _ := strings.Cut(strings.ToUpper(name), ".")
	stem = strings.TrimSpace(stem)
	switch stem {
	case "CON", "PRN", "AUX", "NUL":
		name = "_" + name
	}
	if len(stem) == 4 && (stem[:3] == "COM" || stem[:3] == "LPT") && unicode.IsDigit(rune(stem[3])) {
		name = "_" + name
	}
	if len(name) > longestName {
		sum := shortSum(name)
		cut := longestName - 13
		for cut > 0 && name[cut]&0xC0 == 0x80 { // not inside a letter
			cut--
		}
		name = strings.TrimRight(name[:cut], ". ") + " " + sum
	}
	return name
}

// shortSum is a number of its own for a text.
func shortSum(s string) string { return fmt.Sprintf("%x", sha256.Sum256([]byte(s)))[:12] }
