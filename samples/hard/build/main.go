// Command build writes the hard archive: schedules as twenty years of other hands made them, and the truth about each, typed by hand.
//
//	go run ./samples/hard/build -out samples/hard -soffice soffice
//
// Without -soffice the files that LibreOffice saves are left as they are. The other files come out the same, byte for byte, every time.
package main

import (
	"slices"

	"lineaudit/samples/typed"
)

// cases lists every file, in the order of the truth tables.
func cases() []typed.Case {
	return slices.Concat(gardens(), gardenTexts(), boathouses(), boathouseLists(), rinks(), rinkBooks(), planetaria(),
		german(), french(), spanish(), italian(), dutch(), strangers())
}

func main() { typed.Main("samples/hard", cases()) }
