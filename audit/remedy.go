package audit

func (x *Examination) remedy(r *Result) {}
