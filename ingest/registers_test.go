package ingest

import (
	"fmt"
	"testing"

	"lineaudit/ingest/layout"
)

func TestPlacesOfJobsAreSites(t *testing.T) {
	register := "job number | room | zone | quantity | tap[W]\nM1 | %s | Quay | 4 | 15\nM1 | %s | Hangar | 4 | 6\nM2 | Ice rink | Rink | 6 | 30\nM2 | Ice rink | Stand | 8 | 10"
	for _, tt := range []struct {
		name, second, site string
	}{
		{"one place a job", "Boathouse", "Boathouse"},
		{"rooms of a job", "Loft", "M1"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			jobs := jobsOf(&Options{}, draw(layout.Loudspeakers, "Works", fmt.Sprintf(register, "Boathouse", tt.second)))
			if len(jobs) != 2 || jobs[0].Site.Value != tt.site {
				t.Errorf("%d jobs, the first at %q, want %q", len(jobs), jobs[0].Site.Value, tt.site)
			}
		})
	}
}

// A register of assets rates each of its devices in one column, names what each hangs
// on, and says in a remark which output that is.
func TestRegisterOfAssets(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "Assets", `
		tag: Asset | kind: Class | amplifier: Parent asset | room | control rating: Rating | tap[W] | notes
		P1 | Amplifier | | Plant | 2 x 120 | | batteries new
		P2 | Volume control | P1 | Sauna | 12 | | Channel 2
		P3 | Loudspeaker | P1 | Pool | 30 | 15 | Channel 1 - bracket rusty
		P4 | Loudspeaker | P2 | Sauna | 6 | 3 |`))
	want(t, "loudspeakers", describe(j), []string{"P3 1 x 15 W zone Pool channel P1 / 1", "P4 1 x 3 W zone Sauna control P2 channel P1 / 2"})
	if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "12" {
		t.Errorf("controls %+v", j.Controls)
	}
	for _, c := range j.Channels {
		if show(c.Rated) != "120" {
			t.Errorf("%s rated %s", c.Label(), show(c.Rated))
		}
	}
}

// Characteristics and their values stand in pairs of columns; the names are no zones.
func TestNamesOfCharacteristicsAreNoZones(t *testing.T) {
	tb := draw(layout.Loudspeakers, "E", `
		tag: Equipment | description | zone: Characteristic 1 | tap: Value 1
		1002 | Loudspeaker | TAP | 15 W
		1003 | Loudspeaker | TAP | 15 W`)
	tb.Columns[2].Confidence = 0.3 // by its cells alone
	j := jobOf(t, tb)
	want(t, "loudspeakers", describe(j), []string{"1002 1 x 15 W", "1003 1 x 15 W"})
}

// Codes that stand for one site each number the jobs of a register, in its lists of
// equipment too; several buildings of a site do not. Common practice, no source.
func TestCodesOfSites(t *testing.T) {
	jobs := wholeJobs(`
## Speakers
Building | Site | Zone | Room | Speaker | Qty | Tap W | Amp | Output
PR-4 | Fern House | 1 | Hall | Ceiling | 4 | 6 | A1 | 1
PR-4 | Fern House | 1 | Shop | Ceiling | 2 | 3 | A1 | 1
PR-9 | Mill Rink | 1 | Ice | Horn | 6 | 15 | A1 | 1
PR-9 | Mill Rink | 1 | Stand | Horn | 2 | 15 | A1 | 1
## Amps
Building | Amp | Output | Power W | Line V
PR-4 | A1 | 1 | 60 | 100
PR-9 | A1 | 1 | 240 | 100`)
	var got []string
	for _, j := range jobs {
		got = append(got, j.Number.Value+" "+j.Site.Value+": "+joinAll(ratedOutputs(j)))
	}
	want(t, "jobs", got, []string{"PR-4 Fern House: A1 / 1 60 W", "PR-9 Mill Rink: A1 / 1 240 W"})
	for _, j := range wholeJobs(`
Building | Site | Zone | Room | Speaker | Qty | Tap W | Amp | Output
B1 | Fern House | 1 | Hall | Ceiling | 4 | 6 | A1 | 1
B2 | Fern House | 1 | Shop | Ceiling | 2 | 3 | A1 | 1
B1 | Mill Rink | 1 | Ice | Horn | 6 | 15 | A1 | 1
B2 | Mill Rink | 1 | Stand | Horn | 2 | 15 | A1 | 1`) {
		if j.Number.Had() {
			t.Errorf("the building %s is taken for a job", j.Number.Value)
		}
	}
}

// Codes below a header for sites number the jobs of a register where the names of the sites stand
// beside them; a column of amplifiers that only rates them gives the rating of the only one. Common practice, no source.
func TestRegisterThatRatesAmplifiers(t *testing.T) {
	for _, head := range []string{"Site code | Site | Area | Qty | Tap W | Amp", "Obj.-Nr. | Objekt | Raum | Anz. | W pro Stk. | Verstärker",
		"Objectnr | Object | Ruimte | Aantal | W per stuk | Versterker"} {
		jobs := wholeJobs(head + `
41 | Fern House | Hall | 4 | 6 | 60 W
41 | Fern House | Shop | 2 | 3 | 60 W
42 | Mill Rink | Ice | 6 | 15 | 240 W
42 | Mill Rink | Stand | 2 | 15 | 240 W`)
		var got []string
		for _, j := range jobs {
			got = append(got, j.Number.Value+" "+j.Site.Value+": "+joinAll(ratedOutputs(j)))
			if len(takenAs(j)) == 0 {
				t.Errorf("%s: nothing said aloud", head)
			}
		}
		want(t, head, got, []string{"41 Fern House: 60 W / 1 60 W", "42 Mill Rink: 240 W / 1 240 W"})
	}
}

// Numbers of objects stand for jobs where each is one place, in several rows: whatever the header says, no device
// has one number with others. Numbers of buildings are none. Common practice, no source.
func TestNumbersOfSites(t *testing.T) {
	for _, c := range []struct {
		number, place string
		jobs          int
	}{
		{"Obj.-Nr.", "Objekt", 2}, {"Site no.", "Site", 2}, {"Nr.", "Object", 2}, {"N.", "Impianto", 2}, {"Nr.", "Gebäude", 1},
	} {
		jobs := wholeJobs(`
All systems 100 V
|
` + c.number + " | " + c.place + ` | Raum | Anz. | W | Verstärker
N-03 | Fern library | Hall | 6 | 3 | V1
N-03 | Fern library | Loft | 4 | 1.5 | V1
N-07 | Ice hall | Rink | 8 | 15 | V1
N-07 | Ice hall | Stand | 6 | 6 | V2`)
		if len(jobs) != c.jobs {
			t.Errorf("%s, %s: %d jobs, want %d", c.number, c.place, len(jobs), c.jobs)
		}
	}
}

// A register of contracts has a client for each; its amplifiers and controls are those of the contract, and so is
// the voltage of its lines. Common practice, no source.
func TestRegisterOfContracts(t *testing.T) {
	for _, head := range []string{
		"Contract | Client | Room | Speakers | Mounting | Tap (W) | Line | Amp | Output | Output W | Volume control",
		"Vertrag | Kunde | Raum | Lautsprecher | Montage | Stufe (W) | Linie | Verstärker | Ausgang | Ausgang W | Regler",
		"Marché | Client | Local | Haut-parleurs | Pose | Prise (W) | Ligne | Ampli | Sortie | W sortie | Atténuateur",
		"Contrato | Cliente | Lugar | Parlantes | Montaje | Toma (W) | Línea | Ampli | Salida | W salida | Control de volumen",
		"Contratto | Committente | Locale | Diffusori | Montaggio | Presa (W) | Linea | Finale | Uscita | W uscita | Regolatore",
		"Contract | Opdrachtgever | Ruimte | Luidsprekers | Montage | Aftakking (W) | Lijn | Versterker | Uitgang | W uitgang | Regelaar",
		"Kw. | Client | Room | Speakers | Mounting | Tap (W) | Line | Amp | Output | Output W | Volume control",
	} {
		jobs := wholeJobs(head + `
K-211 | Alder school | Hall | 6 | ceiling | 5 | 70 V | A | 1 | 120 |
K-211 | Alder school | Office | 2 | ceiling | 2.5 | 70 V | A | 1 | 120 | VC1 (10 W)
K-214 | River pool | Pool | 4 | wall | 15 | 100 V | A | 1 | 60 |
K-214 | River pool | Stand | 6 | wall | 6 | 100 V | A | 1 | 60 | VC1 (60 W)`)
		var got []string
		for _, j := range jobs {
			got = append(got, j.Number.Value+" "+j.Site.Value+": "+joinAll(ratedOutputs(j))+", "+controlsOf(j)+", "+show(j.LineVolts))
		}
		want(t, head, got, []string{"K-211 Alder school: A / 1 120 W, VC1 10 W x1, 70", "K-214 River pool: A / 1 60 W, VC1 60 W x1, 100"})
	}
}
