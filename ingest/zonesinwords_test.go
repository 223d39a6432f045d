package ingest

import (
	"strings"
	"testing"
)

// Records of measurements say what each output is and name its zone with words more or less than the loudspeakers do.
// Common practice, no source.
func TestMeasuredOutputsNameTheirZones(t *testing.T) {
	for _, c := range []struct {
		heads, measured string
		zones, written  [3]string
	}{
		{"Zone | Room | Type | Qty | W", "Amp / channel | Zone | Channel rating | Impedance 1 kHz",
			[3]string{"Platform 1", "Underground passage", "Hall"}, [3]string{"Platform no. 1", "Passage", "Passenger hall"}},
		{"Zone | Raum | Typ | Anzahl | W", "Verstärker / Kanal | Zone | Kanalleistung | Impedanz gemessen",
			[3]string{"Gleis 1", "Vorplatz Nord", "Halle"}, [3]string{"Gleis Nr. 1", "Vorplatz", "Halle für Reisende"}},
		{"Zone | Lieu | Type | Nbre | W", "Ampli / voie | Zone | Puissance voie | Impédance 1 kHz",
			[3]string{"Quai 1", "Passage souterrain", "Service"}, [3]string{"Quai n° 1", "Souterrain", "Locaux de service"}},
		{"Zona | Lugar | Tipo | Cantidad | W", "Amplificador / canal | Zona | Potencia canal | Impedancia medida",
			[3]string{"Andén 1", "Paso inferior", "Vestíbulo"}, [3]string{"Andén nº 1", "Paso", "Vestíbulo de viajeros"}},
		{"Zona | Luogo | Tipo | Quantità | W", "Amplificatore / canale | Zona | Potenza canale | Impedenza misurata",
			[3]string{"Binario 1", "Sottopasso", "Atrio"}, [3]string{"Binario n. 1", "Sottopasso pedonale", "Atrio viaggiatori"}},
		{"Zone | Plaats | Type | Aantal | W", "Versterker / kanaal | Zone | Vermogen kanaal | Impedantie gemeten",
			[3]string{"Perron 1", "Tunnel", "Hal"}, [3]string{"Perron nr. 1", "Tunnel reizigers", "Hal"}},
	} {
		j := wholeJob(t, c.heads+"\n"+c.zones[0]+" | east | horn | 2 | 10\n"+c.zones[1]+" | west | horn | 3 | 10\n"+c.zones[2]+" | north | horn | 4 | 10\n|\n"+
			"## Test\n"+c.measured+"\n1.1 | "+c.written[0]+" | 120 W | 480 ohm\n1.2 | "+c.written[1]+" | 60 W | 320 ohm\n2.1 | "+c.written[2]+" | 60 W | 240 ohm\n")
		want(t, c.written[0], describe(j), []string{"2 x 10 W zone " + c.zones[0] + " channel 1 / 1", "3 x 10 W zone " + c.zones[1] + " channel 1 / 2",
			"4 x 10 W zone " + c.zones[2] + " channel 2 / 1"})
		if len(j.Measurements) != 3 {
			t.Errorf("%s: %d measurements", c.written[0], len(j.Measurements))
		}
	}
}

// Words that fit several zones, a zone that another output names, other numbers, parts left out: none is taken.
func TestZonesInWordsThatFitSeveral(t *testing.T) {
	for _, c := range []struct {
		zones, written [2]string
		on             string // the outputs of the two
	}{
		{[2]string{"Ice hall", "Dance hall"}, [2]string{"Hall", "Offices"}, "- -"},
		{[2]string{"Hall", "Yard"}, [2]string{"Hall north", "Hall south"}, "- -"},
		{[2]string{"Hall", "Yard"}, [2]string{"Hall", "Entrance hall"}, "1 -"},
		{[2]string{"Platform 1", "Yard"}, [2]string{"Platform 2", "Stable yard"}, "- 2"},
		{[2]string{"Hall", "Yard"}, [2]string{"Hall except lobby", "Yard and shed"}, "- -"},
		{[2]string{"Hall A", "Hall B"}, [2]string{"Hall", "Hall C"}, "- -"},
	} {
		j := wholeJob(t, "Zone | Room | Type | Qty | W\n"+c.zones[0]+" | east | horn | 2 | 10\n"+c.zones[1]+" | west | horn | 3 | 10\n|\n"+
			"## Rack\nAmp | Output | Feeds | Max. W\nE1 | 1 | "+c.written[0]+" | 60\nE1 | 2 | "+c.written[1]+" | 60\n")
		var got []string
		for _, l := range j.Loudspeakers {
			if got = append(got, "-"); l.Channel != nil {
				got[len(got)-1] = l.Channel.Name
			} else if l.Zone != nil && len(l.Zone.Channels) > 0 {
				got[len(got)-1] = l.Zone.Channels[0].Name
			}
		}
		if s := strings.Join(got, " "); s != c.on {
			t.Errorf("%s: %s, want %s", c.written, s, c.on)
		}
	}
}
