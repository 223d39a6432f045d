package answer

import (
	"encoding/csv"
	"errors"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
)

// Write writes the answer to dir, one CSV a table, with the columns of the
// audit's own tables (and a few more behind them), so that the two can be
// laid side by side. dir is made if it is missing.
func (a *Archive) Write(dir string) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	return errors.Join(
		a.writeDevices(dir), a.writeLoads(dir), a.writeLines(dir), a.writeFindings(dir), a.writeRest(dir))
}

func (a *Archive) writeDevices(dir string) error {
	rows := [][]string{split("file,sheet,rows,job,zone,tag,model,count,tap_w,tap_v,line_v,control,amplifier,channel,status,room,low_ohm,excluded,cell")}
	for _, l := range a.Loudspeakers {
		rows = append(rows, []string{l.File, l.Sheet, l.Rows, l.Job, l.Zone, l.Tag, l.Model, strconv.Itoa(l.Count),
			number(l.TapW), volts(l.TapV), volts(l.LineV), l.Control, l.Amplifier, l.Channel, l.Status,
			l.Room, positive(l.LowOhm), mark(l.Excluded), l.Cell})
	}
	return writeCSV(dir, "loudspeakers.csv", rows)
}

func (a *Archive) writeLoads(dir string) error {
	zones := [][]string{split("file,job,zone,loudspeakers,load_w,expected_ohm")}
	for _, z := range a.Zones {
		zones = append(zones, []string{z.File, z.Job, z.Zone, strconv.Itoa(z.Loudspeakers), number(z.LoadW), ohms(z.LineV, z.LoadW)})
	}
	channels := [][]string{split("file,job,amplifier,channel,line_v,rated_w,load_w,load_pct,free_w,expected_ohm,sheet,cell")}
	for _, c := range a.Channels {
		channels = append(channels, []string{c.File, c.Job, c.Amplifier, c.Channel, volts(c.LineV), number(c.RatedW), number(c.LoadW),
			number(100 * c.LoadW / c.RatedW), number(c.RatedW - c.LoadW), ohms(c.LineV, c.LoadW), c.Sheet, c.Cell})
	}
	amplifiers := [][]string{split("file,job,amplifier,model,rated_w,load_w,sheet,cell")}
	for _, f := range a.Amplifiers {
		amplifiers = append(amplifiers, []string{f.File, f.Job, f.Amplifier, f.Model, number(f.RatedW), number(f.LoadW), f.Sheet, f.Cell})
	}
	controls := [][]string{split("file,job,control,zone,rated_w,load_w,load_pct,free_w,expected_ohm,rated_v,upstream,sheet,cell")}
	for _, c := range a.Controls {
		controls = append(controls, []string{c.File, c.Job, c.Control, c.Zone, number(c.RatedW), number(c.LoadW),
			number(100 * c.LoadW / c.RatedW), number(c.RatedW - c.LoadW), ohms(c.LineV, c.LoadW), volts(c.RatedV), c.Upstream, c.Sheet, c.Cell})
	}
	return errors.Join(writeCSV(dir, "zones.csv", zones), writeCSV(dir, "channels.csv", channels),
		writeCSV(dir, "amplifiers.csv", amplifiers), writeCSV(dir, "controls.csv", controls))
}

func (a *Archive) writeLines(dir string) error {
	rows := [][]string{split("file,job,line,zone,length_m,area_mm2,material,load_w,line_v,loop_ohm,loss_far_db,loss_even_db,loss_worst_db,segments,sheet,cell")}
	for _, l := range a.Lines {
		rows = append(rows, []string{l.File, l.Job, l.Line, l.Zone, number(l.LengthM), number(l.AreaMM2), l.Material, number(l.LoadW),
			volts(l.LineV), number(l.LoopOhm), number(l.FarDB), number(l.EvenDB), number(l.WorstDB), strconv.Itoa(max(1, len(l.Chain))), l.Sheet, l.Cell})
	}
	return writeCSV(dir, "lines.csv", rows)
}

func (a *Archive) writeFindings(dir string) error {
	rows := [][]string{split("file,job,rule,grade,place,sheet,cell,measured,limit,unit,measured_low,measured_high")}
	for _, f := range a.Faults {
		rows = append(rows, []string{f.File, f.Job, f.Rule, f.Grade, f.Place, f.Sheet, f.Cell,
			number(f.Measured), number(f.Limit), f.Unit, number(f.Low), number(f.High)})
	}
	return writeCSV(dir, "findings.csv", rows)
}

func (a *Archive) writeRest(dir string) error {
	files := [][]string{split("file,kind,job,site,revision,superseded,layout,units,language,noise,faulty")}
	for _, f := range a.Files {
		files = append(files, []string{f.File, f.Kind, f.Job, f.Site, f.Revision, mark(f.Superseded),
			f.Layout, f.Units, f.Language, strconv.Itoa(f.Noise), mark(f.Faulty)})
	}
	left := [][]string{split("file,sheet,row,kind,text")}
	for _, r := range a.Rows {
		left = append(left, []string{r.File, r.Sheet, strconv.Itoa(r.Row), r.Kind, r.Text})
	}
	names := [][]string{split("file,job,kind,name,forms")}
	for _, n := range a.Names {
		names = append(names, []string{n.File, n.Job, n.Kind, n.Name, strings.Join(n.Forms, "|")})
	}
	return errors.Join(writeCSV(dir, "files.csv", files), writeCSV(dir, "rows.csv", left), writeCSV(dir, "names.csv", names))
}

func split(s string) []string { return strings.Split(s, ",") }

// number writes a value to 9 significant digits, an unknown one as a blank.
func number(f float64) string {
	if math.IsNaN(f) || math.IsInf(f, 0) {
		return ""
	}
	return strconv.FormatFloat(round9(f), 'f', -1, 64)
}

func round9(f float64) float64 {
	r, err := strconv.ParseFloat(strconv.FormatFloat(f, 'g', 9, 64), 64)
	if err != nil {
		return f
	}
	return r
}

// volts writes a line voltage as people say it: 70.7, not 70.7107.
func volts(v float64) string {
	if Class(v) != v || math.Abs(v-Class(70)) < 1e-9 {
		return "70.7"
	}
	return positive(v)
}

func positive(f float64) string {
	if !(f > 0) {
		return ""
	}
	return number(f)
}

// ohms returns the impedance of loadW on a line of v volts.
func ohms(v, loadW float64) string {
	if !(loadW > 0) {
		return ""
	}
	return number(Class(v) * Class(v) / loadW)
}

func mark(b bool) string {
	if b {
		return "yes"
	}
	return ""
}

func writeCSV(dir, name string, rows [][]string) error {
	f, err := os.Create(filepath.Join(dir, name))
	if err != nil {
		return err
	}
	w := csv.NewWriter(f)
	return errors.Join(w.WriteAll(rows), f.Close())
}
