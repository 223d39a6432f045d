package ingest

import (
	"strings"
	"testing"
)

// The head of a printout has a date by itself, and rules stand below its headers: neither is a place. Common practice, no source.
func TestPrintouts(t *testing.T) {
	for _, date := range []string{"12-MAR-2009", "3. Mai 2011", "14 mai 2012", "2 de junio de 2015", "22/5/2014", "2014-05-22", "9 giugno 2010", "March 12, 2009"} {
		j := wholeJob(t, strings.Replace(`
GREBE TRAM DEPOT | | | | PA EQUIPMENT | PAGE 1
| | | | 100 VOLT LINES | DATE
|
LOCATION | TYPE | QTY | TAP W | TOT W | AMP
---------- | ------ | --- | ----- | ----- | ---
RUNNING SHED | HORN | 6 | 15 | 90 | 1
WASH PLANT | HORN | 2 | 10 | 20 | 1
CREW ROOM | CEILING | 4 | 3 | 12 | 2
---------- | ------ | --- | ----- | ----- |
TOTAL | | 12 | | 122
|
AMP | RATING W
1 | 240
2 | 60
`, "DATE", date, 1))
		want(t, date, describe(j), []string{"6 x 15 W zone RUNNING SHED channel 1 / 1", "2 x 10 W zone WASH PLANT channel 1 / 1", "4 x 3 W zone CREW ROOM channel 2 / 1"})
	}
}
