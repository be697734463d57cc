package ask

import ("testing";"fmt";"bunkwright/samples";"bunkwright/furniture/job/jobfile")
func TestDump(t *testing.T){
 for _,n:=range []string{"half-measured.toml","town-house.toml"}{
 data,_:=samples.Files.ReadFile(n)
 f,err:=jobfile.Load(data,n); if err!=nil{t.Fatal(err)}
 s,err:=New(&f.Job,Options{}); if err!=nil{t.Fatal(err)}
 fmt.Println("=====",n,s.Job,s.Version,len(s.Cards())); fmt.Println(s.Start)
 for _,g:=range s.Groups{ fmt.Println("##",g.Title,"-",g.Lead); for _,c:=range g.Cards{ fmt.Printf("%d %s | %s | from %s to %s | hook %s | other %s | %v %v\n",c.Number,c.Key,c.Title,c.From,c.To,c.Hook,c.Other,c.Kind,c.Words)}}
 }
}
