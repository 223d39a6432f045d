package ingest

import "testing"

// Lists that follow up what was found on acceptance: what the contract has, count and watts in one cell, what was
// found, and what became of it. What the last remark sets holds. Common practice, no source.
func TestFollowedUpFindings(t *testing.T) {
	for _, c := range []struct{ head, good, back, stays string }{
		{"No. | Room | As contract | Output | Found on 02/03 | Follow-up 20/03", "ok", "set back to 6 W on 14/03", "accepted, left at 3 W"},
		{"Nr. | Raum | Laut LV | Ausgang | Befund 02.03. | Nacharbeit 20.03.", "in Ordnung", "auf 6 W zurückgestellt", "angenommen, bleibt auf 3 W"},
		{"N° | Local | Prévu au marché | Voie | Constat du 02/03 | Suite au 20/03", "conforme", "remis sur 6 W le 14/03", "accepté par le MO, restent sur 3 W"},
		{"N.º | Sala | Según contrato | Salida | Observaciones | Seguimiento", "conforme", "ajustado a 6 W", "aceptado, quedan en 3 W"},
		{"N. | Locale | Da contratto | Uscita | Riscontri | Seguito", "conforme", "riportati a 6 W", "accettato, restano a 3 W"},
		{"Nr. | Lokaal | Volgens bestek | Uitgang | Bevindingen 02/03 | Opvolging 20/03", "in orde", "teruggezet op 6 W", "aanvaard, blijven op 3 W"},
	} {
		j := wholeJob(t, "Mill museum 100 V\n|\n"+c.head+"\n1 | A | 4 x 3 W | A.1 | "+c.good+" |\n2 | B | 4 x 6 W | A.2 | 4 x 10 W | "+c.back+"\n3 | C | 4 x 6 W | B.1 | 4 x 3 W | "+c.stays+"\n4 | D | 2 x 15 W | B.2 | "+c.good+" |\n|\nA = 2 x 120 W, B = 2 x 120 W")
		want(t, c.head, describe(j), []string{"4 x 3 W zone A channel A / 1", "4 x 6 W zone B channel A / 2", "4 x 3 W zone C channel B / 1", "2 x 15 W zone D channel B / 2"})
	}
}
