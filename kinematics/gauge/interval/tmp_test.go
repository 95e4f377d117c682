package interval
import ("testing";"fmt";"math")
func show(n string,r Result){ var c []float64; if r.Covariance!=nil {for i:=0;i<r.Covariance.SymmetricDim();i++{c=append(c,r.Covariance.At(i,i))}}; fmt.Printf("%-34s %v it %d b %v sigma %.4g floor %v l %.6g var %.3g\n",n,r.Status,r.Iterations,r.B,r.Sigma,r.AtFloor,r.LogLikelihood,c)}
func TestTmp(t *testing.T){
 inf:=math.Inf(1)
 one:=[]float64{1}
 for _,gap:=range []float64{10,1e3,1e5,1e8}{
 show(fmt.Sprint("contradict ",gap),Fit(Problem{Unknowns:1,Sigma:1,Rows:[]Row{{X:one,Least:0,Most:1},{X:one,Least:gap,Most:gap+1}}},Settings{}))
 show(fmt.Sprint("contradict free ",gap),Fit(Problem{Unknowns:1,Sigma:1,Rows:[]Row{{X:one,Least:0,Most:1},{X:one,Least:gap,Most:gap+1}}},Settings{FreeSigma:true}))
 }
 for _,s:=range []float64{1e-4,1e-2,1,1e2,1e4,1e6}{
  p:=round(fg1); p.Sigma=s
  show(fmt.Sprint("fg1 sigma0 ",s),Fit(p,Settings{FreeSigma:true,FloorSigma:1e-6}))
  _,f:=readSurvreg(t); p=f["tobin"].problem(); p.Sigma=s
  show(fmt.Sprint("tobin sigma0 ",s),Fit(p,Settings{FreeSigma:true,FloorSigma:1e-6}))
  p=round(fg1); p.Start=[]float64{1e4*s,-1e4*s,1e4*s}; p.Sigma=s
  show(fmt.Sprint("far fg1 fixed ",s),Fit(p,Settings{}))
  show(fmt.Sprint("far fg1 free ",s),Fit(p,Settings{FreeSigma:true,FloorSigma:1e-6}))
 }
 p:=round(fg1); for i:=range p.Rows {p.Rows[i].X=append(p.Rows[i].X,0)}; p.Unknowns=4
 show("no hold",Fit(p,Settings{})); show("no hold free",Fit(p,Settings{FreeSigma:true}))
 p=round(fg1); for i:=range p.Rows {p.Rows[i].X=append(p.Rows[i].X,p.Rows[i].X[1]+p.Rows[i].X[0])}; p.Unknowns=4
 show("collinear",Fit(p,Settings{})); show("collinear free",Fit(p,Settings{FreeSigma:true}))
 q:=Problem{Unknowns:1,Sigma:1,Rows:[]Row{{X:one,Least:0,Most:inf},{X:one,Least:1,Most:inf}}}
 show("one-sided",Fit(q,Settings{})); show("one-sided free",Fit(q,Settings{FreeSigma:true}))
 q=Problem{Unknowns:1,Sigma:1,Rows:[]Row{{X:one,Least:math.Inf(-1),Most:inf}}}
 show("no limits",Fit(q,Settings{})); show("no limits free",Fit(q,Settings{FreeSigma:true}))
 show("no rows",Fit(Problem{Unknowns:1,Sigma:1},Settings{})); show("no rows free",Fit(Problem{Unknowns:1,Sigma:1},Settings{FreeSigma:true}))
 p = round([12][2]float64{})
	for i, go1 := range []float64{14, 12, 10, 7, 5, 5, 5, 7, 10, 12, 14, 15} {
		p.Rows[i].Least, p.Rows[i].Most = go1, go1+1
	}
 for _,fl:=range []float64{0,0.02,0.05,0.1,0.2,0.3}{ show(fmt.Sprint("perfect ",fl),Fit(p,Settings{FreeSigma:true,FloorSigma:fl}))}
 q=Problem{Unknowns:1,Sigma:1,Rows:[]Row{{X:one,Least:3,Most:3},{X:one,Least:3,Most:3}}}
 show("exact perfect free",Fit(q,Settings{FreeSigma:true,FloorSigma:.1}))
 for _,n:=range []float64{math.NaN(),inf}{
 q=Problem{Unknowns:1,Sigma:1,Start:[]float64{n},Rows:[]Row{{X:one,Least:3,Most:4}}}
 show("nan start",Fit(q,Settings{}))
 q=Problem{Unknowns:1,Sigma:1,Rows:[]Row{{X:[]float64{n},Least:3,Most:4}}}
 show("nan x",Fit(q,Settings{})); show("nan x free",Fit(q,Settings{FreeSigma:true}))
 q=Problem{Unknowns:1,Sigma:1,Rows:[]Row{{X:one,Least:3,Most:4,Scale:n}}}
 show("nan scale",Fit(q,Settings{}))
 q=Problem{Unknowns:1,Sigma:1,Rows:[]Row{{X:one,Least:3,Most:4},{X:one,Least:9,Most:10}}}
 show("nan floor",Fit(q,Settings{FreeSigma:true,FloorSigma:n}))
 }
 for _,sc:=range []float64{1,1e-3,1e-6,1e-9}{
 p=round(fg1); for i:=range p.Rows {p.Rows[i].X[1]*=sc}
 show(fmt.Sprint("units ",sc),Fit(p,Settings{})); show(fmt.Sprint("units free ",sc),Fit(p,Settings{FreeSigma:true}))}
}
