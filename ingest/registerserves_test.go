package ingest

import "strings"

import "testing"

// A register has a row for each device and says what feeds it, and of amplifiers and controls what they serve: places
// that devices elsewhere hang on are rooms, and a remark below "Serves" is one. Common practice, no source.
func TestRegistersThatSayWhatDevicesServe(t *testing.T) {
	for name, k := range map[string][11]string{
		"English": {"Tag", "Item", "Location", "Setting", "Fed by", "Serves", "Amplifier", "Volume control", "Cabinet speaker", "to", "taken down 2019"},
		"German":  {"Kennung", "Gerät", "Standort", "Abgriff", "Gespeist von", "Versorgt", "Verstärker", "Lautstärkeregler", "Wandlautsprecher", "bis", ""},
		"French":  {"Repère", "Appareil", "Emplacement", "Réglage", "Alimenté par", "Dessert", "Amplificateur", "Atténuateur", "Enceinte murale", "à", "déposé en 2019"},
		"Spanish": {"Etiqueta", "Equipo", "Ubicación", "Toma", "Alimentado por", "Sirve a", "Amplificador", "Atenuador", "Altavoz de pared", "a", "retirado en 2019"},
		"Italian": {"Sigla", "Apparecchio", "Posizione", "Presa", "Alimentato da", "Serve", "Amplificatore", "Attenuatore", "Diffusore a parete", "a", "rimosso nel 2019"},
		"Dutch":   {"Code", "Apparaat", "Locatie", "Aftakking", "Gevoed door", "Bedient", "Versterker", "Volumeregelaar", "Wandluidspreker", "t/m", "verwijderd 2019"},
	} {
		row := func(cells ...string) string {
			var out strings.Builder
			out.WriteString(cells[0])
			for _, c := range cells[1:] {
				out.WriteString(" | " + c)
			}
			return out.String() + "\n"
		}
		j := wholeJob(t, row(k[0], k[1], k[2], k[3], k[4], k[5])+
			row("AM1", k[6]+", 120 W, 100 V", "Store", "", "", "Hall, ring")+
			row("VC1", k[7]+" 50 W", "Office", "", "AM1", "LS01 "+k[9]+" LS03")+
			row("LS01", k[8], "Hall", "6 W", "VC1", "")+
			row("LS02", k[8], "Hall", "6 W", "VC1", "")+
			row("LS03", k[8], "Gallery", "3 W", "VC1", "")+
			row("LS04", k[8], "Ring", "15 W", "AM1", "")+
			row("LS05", k[8], "Ring", "15 W", "AM1", k[10])+
			row("AM2", k[6]+", 60 W, 100 V", "Store", "", "", "Barn")+
			row("LS06", k[8], "Barn", "6 W", "AM2", ""))
		gone := ""
		if k[10] != "" {
			gone = " removed"
		}
		want(t, name, describe(j), []string{"LS01 1 x 6 W zone Hall control VC1 channel AM1 / 1", "LS02 1 x 6 W zone Hall control VC1 channel AM1 / 1",
			"LS03 1 x 3 W zone Gallery control VC1 channel AM1 / 1", "LS04 1 x 15 W zone Ring channel AM1 / 1", "LS05 1 x 15 W zone Ring channel AM1 / 1" + gone, "LS06 1 x 6 W zone Barn channel AM2 / 1"})
	}
}
