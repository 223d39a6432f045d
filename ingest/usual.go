package ingest

// usualOutputs are the ratings that outputs of amplifiers are made for, in W:
// common practice, no source.
var usualOutputs = []float64{10, 15, 20, 30, 35, 40, 50, 60, 75, 80, 100, 120, 125, 150, 160, 180, 200, 240, 250, 300, 350, 360, 400, 480, 500, 600, 650}
