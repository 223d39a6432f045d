package ingest

import (
	_ "embed"
	"encoding/csv"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
)

// wordData are the words that say something of a row, a length or a sum
// beyond what a field's value says, by class and language. From memory.
//
//go:embed words.csv
var wordData string

// A wordList is the folded words of one class.
type wordList []string

// in reports whether the folded text holds one of the words.
func (l wordList) in(folded string) bool {
	for _, w := range l {
		if i := strings.Index(folded, w); i >= 0 && apart(folded, i, i+len(w)) {
			return true
		}
	}
	return false
}

// begins reports whether the folded text begins with one of the words.
func (l wordList) begins(folded string) bool {
	for _, w := range l {
		if strings.HasPrefix(folded, w) && apart(folded, 0, len(w)) {
			return true
		}
	}
	return false
}

// ahead is the longest of the words that the folded text begins with, "" if none.
func (l wordList) ahead(folded string) string {
	best := ""
	for _, w := range l {
		if len(w) > len(best) && strings.HasPrefix(folded, w) && apart(folded, 0, len(w)) {
			best = w
		}
	}
	return best
}

// apart reports whether s[i:j] is not a piece of a longer word.
func apart(s string, i, j int) bool {
	letter := func(c byte) bool { return c >= 'a' && c <= 'z' || c >= 0x80 }
	return (i == 0 || !letter(s[i-1])) && (j == len(s) || !letter(s[j]))
}

var (
	wordClasses       = readWords()
	remoteWords       = wordClasses["remote"]
	leadsToWords      = wordClasses["leads to"]  // between an output and its line
	causeWords        = wordClasses["cause"]     // begin what tells when or why something went: "when the pool went"
	ownPlaceWords     = wordClasses["own place"] // for what each room has of its own, as a door
	dateLinkWords     = wordClasses["date link"]
	timeToldWords     = wordClasses["time told"]
	itWasWords        = wordClasses["it was"]
	jobKeyWords       = wordClasses["job key"]
	stereoWords       = wordClasses["stereo"]
	loopWords         = wordClasses["loop"]
	previousWords     = wordClasses["previous"]
	rackWords         = wordClasses["rack"]
	wholeWords        = wordClasses["whole"]
	musicWords        = wordClasses["music"]
	pagingWords       = wordClasses["paging"]
	rackEnds          = wordClasses["rackend"]
	sparesWords       = wordList(wordClasses["spares"])
	subWords          = wordClasses["sub"]
	grandWords        = wordClasses["grand"]
	subTotalWords     = wordClasses["sub total"]
	outputsWords      = wordClasses["outputs"]
	oneOutputWords    = wordClasses["one output"]
	regulateWords     = wordClasses["regulates"]
	servesWords       = wordClasses["serves"]
	allWords          = wordClasses["all places"]
	outputWords       = wordClasses["output"]
	modelWords        = wordClasses["model"]
	offWords          = wordClasses["off"]
	loadWords         = wordClasses["loaded"]
	mixerWords        = wordClasses["mixer"]
	piecesWords       = wordClasses["pieces"] // that a number counts
	documentWords     = wordClasses["document"]
	clientWords       = wordClasses["client"]
	articleWords      = wordClasses["article"]
	onTheWords        = wordClasses["on the"] // prepositions that hold an article
	copulaWords       = wordClasses["copula"]
	beingWords        = wordClasses["being"]   // between a thing and its state
	belongsWords      = wordClasses["belongs"] // "outputs of A1"
	outWords          = wordClasses["out"]     // whole cells of states
	outdatedWords     = wordClasses["outdated"]
	outdatedEnds      = wordClasses["outdated end"] // what ends with them is outdated
	aboveWords        = wordClasses["above"]
	ofWhichWords      = wordClasses["of which"]
	onlyWords         = wordClasses["only"]
	noteWords         = wordClasses["note"]
	seeWords          = wordClasses["see"]
	whereWords        = wordClasses["where"]
	asWords           = wordClasses["as"]
	onwardWords       = wordClasses["onward"]
	withWords         = wordClasses["with"]
	exceptWords       = wordClasses["except"]
	everyWords        = wordClasses["every"]
	pointingWords     = wordClasses["pointing"] // in front of a place that stands for its control: "those of the hall"
	optionalWords     = wordClasses["optional"] // over what is offered and not counted
	viaWords          = wordClasses["via"]
	assetClassWords   = wordClasses["asset class"] // heads of columns of classes of assets
	pastWords         = wordClasses["past"]
	orderingWords     = wordClasses["ordering"] // said of lists of what is to be bought
	thereWords        = wordClasses["there"]    // said over answers: whether a part is there
	worksWords        = wordClasses["works"]    // said over answers: whether a part does its work
	subjectWords      = wordClasses["subject"]
	restWords         = wordClasses["rest"]
	revisionMarkWords = wordClasses["revision mark"] // in front of the letter or number of a revision
	cablesWords       = wordClasses["cables"]        // said of all that follow
	hangsWords        = wordClasses["hangs"]         // what loudspeakers do on outputs
	loudspeakersWords = wordClasses["loudspeakers"]  // any of them, of no kind
	alsoWords         = wordClasses["also"]
	volumeByWords     = wordClasses["volume by"]      // between a loudspeaker and the control that sets it: "volume by RG1 at the desk"
	onItsWords        = wordClasses["on its"]         // between a loudspeaker and the control that it shares: "on the same knob"
	sameWords         = wordClasses["same"]           // in front of what two rows share
	markedWords       = wordClasses["marked"]         // said of a thing's tag, in front of it
	frameWords        = wordClasses["frame"]          // for an amplifier with all its outputs
	showsWords        = wordClasses["it shows"]       // said of what is written on a thing, in front of it
	unmarkedWords     = wordClasses["says nothing"]   // said of a thing that shows no figure
	feedingWords      = wordClasses["feeding"]        // between an amplifier and its places
	drivesWords       = wordClasses["drives"]         // those that are said of no control
	pieceWords        = wordClasses["piece"]          // of a device, without which it still works
	occasionWords     = wordClasses["occasion"]       // in front of the occasion on which something went
	whenWords         = wordList(wordClasses["when"]) // in front of when or why something went: "when the stage was built"
	togetherWords     = wordClasses["together"]       // behind places that share something
	groundFloorWords  = wordClasses["ground floor"]
	firstFloorWords   = wordClasses["first floor"]
	secondFloorWords  = wordClasses["second floor"]
	thirdFloorWords   = wordClasses["third floor"]
	upperFloorWords   = wordClasses["upper floor"] // whichever is above the ground, or one with a number
	lowerFloorWords   = wordClasses["lower floor"]
	smallWords        = wordClasses["small word"] // within names of places, which they do not tell apart
	levelWords        = wordClasses["level"]      // for floors that have numbers
)

// Whether texts have words of a class, as is asked of many.
var (
	saysSub           = remember.New(8192, func(s string, _ int) bool { return subWords.in(join.Fold(s)) })
	speaksOfAmplifier = remember.New(8192, func(s string, _ int) bool { return notation.SpeaksOfAmplifier(s) })
	saysOutput        = remember.New(8192, func(s string, _ int) bool { return outputWords.in(join.Fold(s)) })
)

// reachWords are what a header says of the lengths below it: loops or one way, and
// from where to where.
type reachWords struct{ loop, previous, rack, whole bool }

var saysReach = remember.New(1024, func(header string, _ int) reachWords {
	words := join.Fold(header)
	return reachWords{loopWords.in(words), previousWords.in(words), rackWords.in(words), wholeWords.in(words)}
})

// readWords reads the data, which is part of the program: an error in it is a
// broken invariant.
func readWords() map[string]wordList {
	rows, err := csv.NewReader(strings.NewReader(wordData)).ReadAll()
	if err != nil {
		panic(err)
	}
	out := make(map[string]wordList)
	for _, r := range rows[1:] {
		for w := range strings.SplitSeq(r[2], "|") {
			out[r[0]] = append(out[r[0]], join.Fold(w))
		}
	}
	return out
}
