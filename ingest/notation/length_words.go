package notation

// lengthAmongWords reads the only length among words without meaning, "40 m
// NYM above ceiling", with the doubt SplitRead. Any other figure, a word that
// denies and one for a roll of cable leave the text unread.
func lengthAmongWords(text string, style Style) (Length, bool) {
	l := Length{Times: 1, Doubts: SplitRead}
	tokens := lex(text, style)
	passed := 0
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		if _, _, ok := words("stock").at(tokens, i); ok {
			return Length{}, false
		}
		switch {
		case t.kind == figureToken:
			if l.Unit != UnitUnknown || t.figure.bad || !(t.figure.value > 0) {
				return Length{}, false
			}
			factor, n, ok := unitAt(tokens, i+1, metreUnits.class)
			l.Unit = Metre
			if !ok {
				factor, n, ok = unitAt(tokens, i+1, footUnits.class)
				l.Unit = Foot
			}
			if !ok || inCode(tokens, i, i+1+n) {
				return Length{}, false
			}
			l.Low = t.figure.value * factor
			l.High = l.Low
			l.Doubts |= t.figure.doubts
			i += n
		case isNegation(t):
			return Length{}, false
		case t.kind == wordToken:
			passed++
		case t.kind == markToken && !(t.is("(") || t.is(")") || t.is(",") || t.is(".") || t.is(":") || t.is("-") || t.is("/")):
			return Length{}, false
		}
	}
	return l, l.Unit != UnitUnknown && passed <= mostPassedOver && l.High <= MaxLength
}
