package audit

import (
	_ "embed"
	"fmt"
	"slices"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

//go:embed doc/clad-aluminium.md
var cladAluminiumDoc string

// cladAluminium finds copper-clad aluminium cable.
var cladAluminium = &Rule{
	Name:  "clad-aluminium",
	Title: "a cable is copper-clad aluminium",
	Why:   "It has about one and a half times the resistance of copper of the same size, breaks at its terminals, and many codes and makers do not accept it.",
	Doc:   cladAluminiumDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 0, Unit: "cables", Source: "up to 1.55 times the resistance: glledus.com; communications cables must be copper: tritekexpress.com on the NEC; next larger size of the copper table: Bosch PRAESENSA Installation manual (German) 2019.11, p. 23"},
	},
	Silent: []string{
		"the cable says Cca: that is a fire class, no metal",
		"the cable is not installed",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "scrape a conductor: silver below copper is aluminium; feel the terminals for heat",
	Check:    checkCladAluminium,
}

func checkCladAluminium(x *Examination) error {
	c := x.circuit
	type group struct {
		name   string
		cables []*schedule.Cable
	}
	var groups []group
next:
	for _, k := range x.Job.Cables {
		if k.Status != schedule.Installed || k.Material.Value == "" {
			continue
		}
		d := c.conduit(k)
		name := d.wireName()
		for i := range groups {
			if groups[i].name == name {
				groups[i].cables = append(groups[i].cables, k)
				continue next
			}
		}
		groups = append(groups, group{name, []*schedule.Cable{k}})
	}
	for _, g := range groups {
		slices.SortStableFunc(g.cables, func(a, b *schedule.Cable) int { return a.At.Compare(b.At) })
		k := g.cables[0]
		cl := &claim{key: "wire\x1f" + g.name, place: cableName(k), zone: zoneName(k.Zone), at: placeOf(k.Material.Source, k.At), unit: "cables",
			measured: Exact(0), message: g.name, equipment: []equipment{{"cable type", g.name}}}
		for _, o := range g.cables {
			cl.pieces += x.piecesOn(o)
		}
		if metals[k.Material.Value] == line.CopperCladAluminium {
			cl.measured = Exact(float64(len(g.cables)))
			cl.message = fmt.Sprintf("%s of %s: about %s times the resistance of copper", counted(float64(len(g.cables)), "cable"), g.name, figure(cladRatio()))
		}
		if len(g.cables) > 1 {
			cl.place = fmt.Sprintf("%d cables of %s", len(g.cables), g.name)
		}
		cl.cells = func() []Evidence {
			var cells []Evidence
			for _, o := range g.cables {
				cells = appendCell(cells, o.Material.Source, "material")
			}
			return cells
		}
		x.judge(cl)
	}
	return nil
}

// cladRatio is the resistance of copper-clad aluminium over that of copper.
func cladRatio() float64 {
	clad, err := line.Conductor{AreaMM2: 1, Material: line.CopperCladAluminium}.OhmPerMetre()
	copper, err2 := line.Conductor{AreaMM2: 1}.OhmPerMetre()
	if err != nil || err2 != nil {
		return 0
	}
	return float64(int(100*clad/copper+0.5)) / 100
}
