package layout
import ("testing";"fmt";"os")
func TestTry2(t *testing.T){
 b,_:=os.ReadFile("/tmp/scratch/layout/draw.txt")
  r:=Read(bookOf(draw("Sheet1",string(b))),Options{})
  fmt.Println(show(r))
}
