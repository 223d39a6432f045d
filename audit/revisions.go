package audit

func supersede(results []*Result) {}
