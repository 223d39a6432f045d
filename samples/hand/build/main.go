// Command build writes the hand archive: what ordinary hands leave behind when they have documented a 70.7 or 100 V loudspeaker system,
// and the truth about each file, typed by hand.
//
//	go run ./samples/hand/build -out samples/hand -soffice soffice
//
// Without -soffice the files that LibreOffice saves are left as they are. The other files come out the same, byte for byte, every time.
package main

import (
	"slices"

	"lineaudit/samples/typed"
)

// cases lists every file, in the order of the truth tables.
func cases() []typed.Case {
	return slices.Concat(
		calderwick(), wendle(), bluestem(), coldFork(), // English
		deutsch(), quellrode(), francais(), vaubriere(), espanol(), fuentelar(), italiano(), valsolina(), nederlands(), wierdermeer(),
		markups(), continent(), long(), longContinent(), dressed(), habits(), words(), cables(), moreWords(), // all languages
		takeoffs(), lineCircuits(), surveys(), lineTests(), drawingOffices(), contractors(), joins(), worksUnderWay(),
		others())
}

func main() { typed.Main("samples/hand", cases()) }
