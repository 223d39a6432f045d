package numfmt

// A name is a month or a day of the week, in full and abbreviated.
type name struct{ long, short string }

func (n name) shown(short bool) string {
	if short {
		return n.short
	}
	return n.long
}

type calendar struct {
	months [12]name
	days   [7]name // from Sunday
}

// names returns the calendar of a primary language number (the low ten bits
// of a Windows language code); English for one that is not listed. Names and
// abbreviations are those of the Unicode CLDR, from memory.
func names(language int) *calendar {
	switch language {
	case 0x07:
		return &german
	case 0x0c:
		return &french
	case 0x0a:
		return &spanish
	case 0x10:
		return &italian
	case 0x13:
		return &dutch
	}
	return &english
}

var english = calendar{
	months: [12]name{{"January", "Jan"}, {"February", "Feb"}, {"March", "Mar"}, {"April", "Apr"}, {"May", "May"}, {"June", "Jun"},
		{"July", "Jul"}, {"August", "Aug"}, {"September", "Sep"}, {"October", "Oct"}, {"November", "Nov"}, {"December", "Dec"}},
	days: [7]name{{"Sunday", "Sun"}, {"Monday", "Mon"}, {"Tuesday", "Tue"}, {"Wednesday", "Wed"}, {"Thursday", "Thu"}, {"Friday", "Fri"}, {"Saturday", "Sat"}},
}

var german = calendar{
	months: [12]name{{"Januar", "Jan"}, {"Februar", "Feb"}, {"März", "Mrz"}, {"April", "Apr"}, {"Mai", "Mai"}, {"Juni", "Jun"},
		{"Juli", "Jul"}, {"August", "Aug"}, {"September", "Sep"}, {"Oktober", "Okt"}, {"November", "Nov"}, {"Dezember", "Dez"}},
	days: [7]name{{"Sonntag", "So"}, {"Montag", "Mo"}, {"Dienstag", "Di"}, {"Mittwoch", "Mi"}, {"Donnerstag", "Do"}, {"Freitag", "Fr"}, {"Samstag", "Sa"}},
}

var french = calendar{
	months: [12]name{{"janvier", "janv"}, {"février", "févr"}, {"mars", "mars"}, {"avril", "avr"}, {"mai", "mai"}, {"juin", "juin"},
		{"juillet", "juil"}, {"août", "août"}, {"septembre", "sept"}, {"octobre", "oct"}, {"novembre", "nov"}, {"décembre", "déc"}},
	days: [7]name{{"dimanche", "dim"}, {"lundi", "lun"}, {"mardi", "mar"}, {"mercredi", "mer"}, {"jeudi", "jeu"}, {"vendredi", "ven"}, {"samedi", "sam"}},
}

var spanish = calendar{
	months: [12]name{{"enero", "ene"}, {"febrero", "feb"}, {"marzo", "mar"}, {"abril", "abr"}, {"mayo", "may"}, {"junio", "jun"},
		{"julio", "jul"}, {"agosto", "ago"}, {"septiembre", "sep"}, {"octubre", "oct"}, {"noviembre", "nov"}, {"diciembre", "dic"}},
	days: [7]name{{"domingo", "dom"}, {"lunes", "lun"}, {"martes", "mar"}, {"miércoles", "mié"}, {"jueves", "jue"}, {"viernes", "vie"}, {"sábado", "sáb"}},
}

var italian = calendar{
	months: [12]name{{"gennaio", "gen"}, {"febbraio", "feb"}, {"marzo", "mar"}, {"aprile", "apr"}, {"maggio", "mag"}, {"giugno", "giu"},
		{"luglio", "lug"}, {"agosto", "ago"}, {"settembre", "set"}, {"ottobre", "ott"}, {"novembre", "nov"}, {"dicembre", "dic"}},
	days: [7]name{{"domenica", "dom"}, {"lunedì", "lun"}, {"martedì", "mar"}, {"mercoledì", "mer"}, {"giovedì", "gio"}, {"venerdì", "ven"}, {"sabato", "sab"}},
}

var dutch = calendar{
	months: [12]name{{"januari", "jan"}, {"februari", "feb"}, {"maart", "mrt"}, {"april", "apr"}, {"mei", "mei"}, {"juni", "jun"},
		{"juli", "jul"}, {"augustus", "aug"}, {"september", "sep"}, {"oktober", "okt"}, {"november", "nov"}, {"december", "dec"}},
	days: [7]name{{"zondag", "zo"}, {"maandag", "ma"}, {"dinsdag", "di"}, {"woensdag", "wo"}, {"donderdag", "do"}, {"vrijdag", "vr"}, {"zaterdag", "za"}},
}
