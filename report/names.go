package report

import (
	"crypto/sha256"
	"fmt"
	"path"
	"regexp"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// MarkedNames returns, for each file, the path of its marked copy inside the
// output folder: an .xlsx or .xlsm below "marked" that every system can hold,
// never outside it. No two are the same, in any letter case.
func MarkedNames(files []string) []string {
	taken := map[string]kindOfName{}
	out := make([]string, len(files))
	for i, f := range files {
		name := markedName(f)
		if underFile(name, taken) { // a folder that is called like a copy
			name = "marked/" + shortSum(f) + "/" + path.Base(name)
		}
		ext := path.Ext(name)
		for stem, n := strings.TrimSuffix(name, ext), 2; taken[alike(name)] != free; n++ {
			name = fmt.Sprintf("%s %d%s", stem, n, ext)
		}
		taken[alike(name)] = aFile
		for dir := path.Dir(name); dir != "."; dir = path.Dir(dir) {
			taken[alike(dir)] = aFolder
		}
		out[i] = name
	}
	return out
}

// A kindOfName says what a path already stands for.
type kindOfName uint8

const (
	free kindOfName = iota
	aFile
	aFolder
)

// underFile reports whether a folder of the path has the name of a file.
func underFile(name string, taken map[string]kindOfName) bool {
	for dir := path.Dir(name); dir != "."; dir = path.Dir(dir) {
		if taken[alike(dir)] == aFile {
			return true
		}
	}
	return false
}

// alike is the same for names that some system takes for one: letters are large
// or small, and accents are a part of their letter or follow it.
func alike(name string) string { return strings.ToLower(norm.NFC.String(name)) }

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

// reserved are the names that Windows keeps for devices, whatever their ending.
var reserved = regexp.MustCompile(`^(CON|PRN|AUX|NUL|CONIN\$|CONOUT\$|(COM|LPT)[0-9¹²³])$`)

// portable makes a name that every system takes for a file or a folder.
func portable(name string) string {
	name = strings.Map(func(r rune) rune {
		switch {
		case strings.ContainsRune(`<>:"|?*`, r), strings.ContainsRune("#%[]", r): // the latter mean something in links, or in names of workbooks
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
	if reserved.MatchString(stem) {
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
