package ingest

import "testing"

// Bills tell below an item where its pieces are: the rows below are the loudspeakers, the sum of
// the item is none. Common practice, no source.
func TestPlacesBelowTheItemsOfABill(t *testing.T) {
	for _, c := range []struct{ heads, ceiling, wall, control, total string }{
		{"Item | Unit | Description | Comment | Qty | Price", "Ceiling loudspeaker 6 W/100 V, tapped at 3 W", "Wall loudspeaker 20 W/100 V, tapped at 10 W", "Attenuator AT-1, 50 W, for workshop", "Total"},
		{"Pos. | Einheit | Beschreibung | Bemerkung | Menge | Preis", "Deckenlautsprecher 6 W/100 V, eingestellt auf 3 W", "Wandlautsprecher 20 W/100 V, eingestellt auf 10 W", "Lautstärkeregler AT-1, 50 W, für workshop", "Summe"},
		{"Poste | Unité | Désignation | Commentaire | Quantité | Prix", "Haut-parleur de plafond 6 W/100 V, réglé à 3 W", "Haut-parleur mural 20 W/100 V, réglé à 10 W", "Atténuateur AT-1 de 50 W, pour workshop", "Total"},
		{"Código | Ud | Resumen | Comentario | Medición | Precio", "Altavoz de techo 6 W/100 V, conectado en la toma de 3 W", "Altavoz de pared 20 W/100 V, conectado en la toma de 10 W", "Atenuador AT-1 de 50 W, para workshop", "Total"},
		{"Codice | U.M. | Descrizione | Note | Quantità | Prezzo", "Diffusore da soffitto 6 W/100 V, presa 3 W", "Diffusore da parete 20 W/100 V, presa 10 W", "Attenuatore AT-1 da 50 W, per workshop", "Totale"},
		{"Post | Eenheid | Omschrijving | Opmerking | Aantal | Prijs", "Plafondluidspreker 6 W/100 V, ingesteld op 3 W", "Wandluidspreker 20 W/100 V, ingesteld op 10 W", "Volumeregelaar AT-1, 50 W, voor workshop", "Totaal"},
	} {
		j := wholeJob(t, `
Slate theatre, loudspeakers, 100 V
|
`+c.heads+`
7.01 | | `+c.ceiling+` | | 14 | 38.5
 | | | Lobby | 8 |
 | | | Gallery | 6 |
7.02 | | `+c.wall+` | | 6 | 54
 | | | Workshop | 4 |
 | | | Hall 2 | 2 |
7.03 | | `+c.control+` | | 1 | 29
 | | `+c.total+` | | | 892`)
		want(t, c.heads, describe(j), []string{"8 x 3 W zone Lobby", "6 x 3 W zone Gallery", "4 x 10 W zone Workshop control AT-1", "2 x 10 W zone Hall 2"})
	}
}

// Rows below an item that do not add up to it, or say more than a place, are rows of their own.
func TestRowsBelowAnItemThatAreNoPartsOfIt(t *testing.T) {
	j := wholeJob(t, `
Slate theatre, loudspeakers, 100 V
|
Item | Description | Room | Qty
1 | Ceiling loudspeaker, tapped at 3 W | Lobby | 6
2 | Wall loudspeaker, tapped at 6 W | Hall | 4
3 | Horn, tapped at 15 W | Yard | 2`)
	want(t, "items", describe(j), []string{"6 x 3 W zone Lobby", "4 x 6 W zone Hall", "2 x 15 W zone Yard"})
}
