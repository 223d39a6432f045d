package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
)

// A builder makes one job of the tables that belong to it. It works in three
// passes: what each row is; which names there are and which of them name one
// thing; and the parts themselves. The order of rows changes nothing but the
// order of the parts.
type builder struct {
	*account
	job           *schedule.Job
	opts          *Options
	tables        []*table
	facts         []layout.Fact              // what the title blocks say, in reading order
	said          []said                     // what sentences say of amplifiers
	loose         []said                     // of two amplifiers or more that no row names
	circuits      map[string]map[string]bool // lines that rows hang on an amplifier, by its key ("" if none is named); nil until asked for
	linesRunOn    bool                       // these lines are numbered on from amplifier to amplifier; set with circuits
	outdatedAlone *bool                      // see standAlone; nil until asked for
	looseIDs      map[string]bool            // outputs that rows name without an amplifier; nil until asked for
	bare          []bareRating               // what sentences rate by name and watts alone
	spoken        []spoken                   // the texts outside the tables
	lineRows      map[string][]*row          // see rowsByLine
	outside       []layout.Outside           // the rows that belong to no table
	routes        []route                    // what they say of places and outputs
	billFeeds     []billFeed                 // what stands beside amplifiers that bills describe
	carried       []carried                  // what they say of controls
	controlLines  [][]spoken                 // the lines of lists of controls below titles
	controlPlaces [][]spoken                 // lines of a place and a power below such titles
	spokenLines   []spokenLine               // what rows of cells say of the cables of lines
	ampsOfLines   map[string][]string        // see lineAmps; nil until asked for
	units         lengthEvidence

	zoneNames, ampNames, controlNames *join.Set
	zones                             map[string]*schedule.Zone
	amps                              map[string]*schedule.Amplifier
	controls                          map[string]*schedule.Control
	channels                          map[channelKey]*schedule.Channel
	speakers                          map[string][]*schedule.Loudspeaker // by key of each single tag
	types                             map[string]*typeEntry
	dir                               directory
	places                            places
	legend                            map[string]schedule.Status // by code in brackets
	notes                             map[string]spoken          // by number
	noted                             map[string]bool            // see isNoted

	ampsOf         map[string][]string         // channel key -> keys of the amplifiers that have such a channel
	letters        map[channelKey]string       // a lettered channel of an amplifier with numbered ones
	zoneKeys       map[string]map[string]bool  // of the zones that rows name, by sheet; see namesZone
	unnamedAmps    map[schedule.Ref]unnamedAmp // by the cells of their titles
	tapsAtVolts    []tapsAtVolts               // of rows whose line voltage was not known when they were read
	zonesOnAmps    map[string][]string         // amplifier key -> its zones in turn; see outputOfZone
	stoodIn        []*schedule.Control         // controls without tags that listed ones have replaced somewhere; see dropStandIns
	itemRows       map[string][]*row           // rows of loudspeakers by item; see rowsByItem
	roomNumbers    map[string][]*row           // rows of loudspeakers by the number of their room; nil until asked for
	slots          map[string]int              // amplifier key -> number of its channels, when stated
	channelRated   map[*schedule.Channel][]ratedSeen
	ampRated       map[*schedule.Amplifier][]ratedSeen // ratings of each of its channels
	frameRated     map[*schedule.Amplifier][]ratedSeen
	beside         map[*schedule.Amplifier][]ratedSeen // ratings written behind their names
	frames         []frameCell                         // ratings of amplifiers in rows of their outputs
	controlRated   map[*schedule.Control][]ratedSeen
	ampLine        map[*schedule.Amplifier]schedule.Quantity[schedule.Volts] // for all channels of an amplifier
	saidLine       map[*schedule.Amplifier]float64                           // in V, as sentences say; known before rows are read
	ampTitle       []ratedSeen                                               // said for all channels in a title block
	blocks         []ratedBlock                                              // said in the title block of a sheet
	controlTitle   []ratedSeen                                               // said for all controls
	cableTitle     *schedule.Cable                                           // a size said for all cables
	cableExcept    []sizeOf                                                  // and for those of some lines or places
	claims         claims
	pending        []pendingTap
	origin         map[*schedule.Loudspeaker]*row
	modelColumns   map[*column]bool      // control columns that hold models, not tags
	whereHung      map[string]*hungWhere // see oneInEach; nil until asked for
	parents        []parentText
	onChannel      []channelControl
	mergedControls map[*column]map[schedule.Ref]bool      // cells of controls that are merged over several rows
	standElsewhere map[columnOfPlaces]bool                // columns that say where controls can be reached, not what they carry
	zonesListed    map[*schedule.Channel][]*schedule.Zone // that rows of outputs name
	roomSpeakers   map[string]*schedule.Loudspeaker       // by room, nil where there are several; nil until asked for
	looseTags      map[string][]*schedule.Loudspeaker     // tags without the word for a loudspeaker; nil until asked for

	speaks     map[*row]*row           // which row tells the control of which; see speaker and forget
	feedsUnder map[tableField][]string // see feedKeys and forget

	sharing  bool // while the control of a row is looked up for another that refers to it
	lookOnly bool // while a row that does not count is worked out: create nothing
}

// A channelKey names a channel: keys of its amplifier ("" if none) and of itself.
type channelKey struct{ amp, channel string }

// A ratedSeen is a rating as read, before it is known which line voltage it
// has to hold for.
type ratedSeen struct {
	outputs []notation.RatedOutput
	at      seen
}

// A pendingTap is a tap whose watts need something that is known later: the
// line voltage, or the rated power.
type pendingTap struct {
	l *schedule.Loudspeaker
	t tapped
}

// A channelControl is a control that all of a channel hangs behind, or all of the zones that
// its row names, where others hang on the channel too.
type channelControl struct {
	channel *schedule.Channel
	control *schedule.Control
	zones   []*schedule.Zone
}

// A parentText is what a schedule says feeds a control.
type parentText struct {
	control *schedule.Control
	by      seen
}

func newBuilder(file string, opts *Options, p *part) *builder {
	tables := p.tables
	return &builder{account: newAccount(), job: &schedule.Job{File: file}, opts: opts, tables: tables, facts: p.facts, said: slices.Clone(p.said), spoken: p.spoken, outside: p.outside,
		zoneNames: join.NewSet(join.Zone), ampNames: join.NewSet(join.Amplifier), controlNames: join.NewSet(join.Control),
		zones: make(map[string]*schedule.Zone), amps: make(map[string]*schedule.Amplifier), controls: make(map[string]*schedule.Control),
		channels: make(map[channelKey]*schedule.Channel), mergedControls: make(map[*column]map[schedule.Ref]bool), zonesListed: make(map[*schedule.Channel][]*schedule.Zone), speakers: make(map[string][]*schedule.Loudspeaker), types: make(map[string]*typeEntry),
		ampsOf: make(map[string][]string), letters: make(map[channelKey]string), slots: make(map[string]int),
		channelRated: make(map[*schedule.Channel][]ratedSeen), ampRated: make(map[*schedule.Amplifier][]ratedSeen),
		frameRated: make(map[*schedule.Amplifier][]ratedSeen), controlRated: make(map[*schedule.Control][]ratedSeen),
		saidLine: make(map[*schedule.Amplifier]float64), origin: make(map[*schedule.Loudspeaker]*row), modelColumns: make(map[*column]bool),
		speaks: make(map[*row]*row), feedsUnder: make(map[tableField][]string)}
}

// build makes the job.
func (b *builder) build() *schedule.Job {
	b.outdatedSheets()
	b.findControlsBelow()
	b.cableBooks()
	b.outputsOfCables()
	b.itemsWithLetters()
	b.zonesAsOutputs()
	b.outputTables()
	b.bareTitles()
	b.stateTitles()
	b.ampSections()
	b.titlesBeside()
	b.firstSections()
	b.linesInTitles()
	b.nameSections()
	b.fedSheets()
	b.sheetZones()
	b.sheetAmps()
	b.findUnnamedAmps()
	b.gatherLegend()
	b.gatherNotes()
	b.keepEarlierStates()
	b.settleTaps()
	for _, t := range b.tables {
		for _, r := range t.rows {
			b.opts.watch.Step()
			b.classify(r)
		}
	}
	b.otherClasses()
	b.ordersAside()
	b.partsOfRows()
	b.ratingsOfEach()
	b.sparesFeedNothing()
	b.sentenceRows()
	b.zonesOfOutputs()
	b.demoteSummaries()
	b.gatherDirectory()
	b.gatherPlaces()
	b.linesFed()
	b.each(measurementRow, b.lineAhead)
	b.hearNames()
	b.routesOfAmps()
	b.routesOfBills()
	b.controlsBelow()
	b.hearRoutes()
	b.saidStates()
	b.gatherLengthUnits()
	b.collectNames()
	b.jobFacts()
	b.hearCableNotes()
	b.each(typeRow, b.addType)
	b.each(amplifierRow, b.addAmplifier)
	b.each(channelRow, b.addChannel)
	b.each(zoneRow, b.addZone)
	b.each(controlRow, b.addControl)
	b.each(loudspeakerRow, b.addLoudspeakers)
	b.nearEnds()
	b.nearPlaces()
	b.zoneGroups()
	b.each(channelRow, b.addChannelCable)
	b.each(amplifierRow, b.addChannelCable)
	b.each(cableRow, b.addCable)
	b.each(measurementRow, b.addMeasurement)
	b.applyRoutes()
	b.zonesInTurn()
	b.titledCables()
	b.hangOnOnly()
	b.applySaid()
	b.zonesOfWays()
	b.applyBlocks()
	b.oneFrame()
	b.ampsByLetters()
	b.oneAmpOfOutputs()
	b.link()
	b.billedCables()
	b.leaveOut()
	b.totals()
	b.describeTables()
	b.prune()
	b.askUnhung()
	b.askUnheard()
	b.askUnheardOutputs()
	b.askUnheardRemarks()
	b.askRatingsAdrift()
	b.askUncounted()
	b.askMoreOutputs()
	b.job.Assumptions = b.assumptions()
	b.job.Refused = b.refused()
	b.job.Questions = b.asked()
	return b.job
}

// each calls do for every row of a kind that counts.
func (b *builder) each(kind deviceKind, do func(*row)) {
	b.forget()
	for _, t := range b.tables {
		for _, r := range t.rows {
			b.opts.watch.Step()
			if r.kind == kind && r.out == "" {
				do(r)
			}
		}
	}
}

// classify decides what a row is and whether it counts.
func (b *builder) classify(r *row) {
	switch r.Class {
	case layout.Device:
		if r.isTitle {
			r.out, r.reason = schedule.TitleRow, "a title"
			return
		}
		r.kind = kindOf(r)
		r.status = b.statusOf(r)
		if r.kind == loudspeakerRow && b.isBilledCable(r) {
			r.billed, r.out, r.reason = true, schedule.EmptyRow, "a cable by the metre"
		}
		switch {
		case r.t.SheetHidden:
			r.out, r.reason = schedule.HiddenRow, "on a hidden sheet"
		case r.t.outdated:
			r.out, r.reason = schedule.OutdatedRow, "on a sheet that says it is no longer valid"
			if r.t.replaced {
				r.reason = "on a sheet of an earlier revision"
			}
		}
	case layout.Struck:
		r.kind, r.out = kindOf(r), schedule.StruckRow
	case layout.Hidden:
		r.kind, r.out = kindOf(r), schedule.HiddenRow
	default:
		r.out = rowKinds[r.Class]
		if r.out == "" {
			r.out = schedule.NotUnderstood
		}
	}
	if r.out != "" && r.reason == "" {
		r.reason = r.Reason
	}
	if r.out != "" && r.reason == "" {
		r.reason = string(r.out)
	}
}

// rowKinds are the reasons that the layout of a sheet gives.
var rowKinds = map[layout.Class]schedule.RowKind{
	layout.Title: schedule.TitleRow, layout.Header: schedule.HeaderRow, layout.UnitsRow: schedule.UnitRow,
	layout.Total: schedule.TotalRow, layout.Note: schedule.NoteRow, layout.NoDevice: schedule.EmptyRow, layout.Unclear: schedule.NotUnderstood,
}
