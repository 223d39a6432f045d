package ingest
import ("testing";"context";"os";"lineaudit/ingest/grid/source";"lineaudit/ingest/layout")
func TestZZ(t *testing.T){
 l,err:=source.Find(context.Background(),[]string{os.Getenv("F")},source.Options{}); if err!=nil {t.Fatal(err)}
 for _,f:=range l.Files { b,err:=f.Read(context.Background(),source.Options{}); if err!=nil {t.Log(err);continue}
  r:=layout.Read(b,layout.Options{})
  for _,s:=range r.Sheets { for _,x:=range s.Facts { t.Logf("%s fact %q=%q key %q at %s",s.Name,x.Field,x.Text,x.Key,x.At.Cell()) }
   for _,tb:=range s.Tables { t.Logf("  table %s %v hdr %v",tb.Kind,tb.Range,tb.HeaderRows); for _,x:=range tb.Titles { t.Logf("    title %q=%q at %s",x.Field,x.Text,x.At.Cell()) }
    for _,c:=range tb.Columns { t.Logf("    col %d %q -> %s (%.2f)",c.Col,c.Header,c.Field,c.Confidence)}
    if os.Getenv("ROWS")!="" { for _,rec:=range tb.Records { t.Logf("      %v %s %s",rec.Rows,rec.Class,rec.Text); for _,x:=range rec.Sections {t.Logf("         section %q=%q",x.Field,x.Text)} } } }
   for _,o:=range s.Outside { t.Logf("  outside %s %s %s: %s",o.At.Cell(),o.Class,o.Reason,o.Text)} }
 }
}
