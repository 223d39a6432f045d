package layout

import "regexp"

// reWrittenDate is a date that stands by itself in the head of a printout: "12-MAR-2009", "3. Mai 2011", "2014-05-22",
// "22/5/2014". It is no place.
var reWrittenDate = regexp.MustCompile(`(?i)^(?:\d{1,2}[-./ ]{0,2}(?:de |d['’])?` + monthStems + `\pL{0,7}\.?[-./, ]{0,2}(?:de |del )?(?:(?:19|20)?\d\d)|` +
	monthStems + `\pL{0,7}\.? \d{1,2}, ?(?:19|20)\d\d|(?:19|20)\d\d([-./])\d{1,2}[-./]\d{1,2}|\d{1,2}[-./]\d{1,2}[-./](?:19|20)\d\d|\d\d\.\d\d\.\d\d)$`)

// monthStems are the first letters of the months in the six languages.
const monthStems = `(?:jan|ene|gen|f[eé]b|f[eé]v|mar|mär|mrz|maa|mrt|apr|avr|abr|may|mai|mag|mei|jun|juin|giu|jul|juil|lug|aug|ao[uû]|ago|sep|set|oct|okt|ott|nov|dec|déc|dez|dic)`
