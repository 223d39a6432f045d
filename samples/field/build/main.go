// Command build writes the field archive: schedules of many further hands, and the truth about each, typed by hand.
//
//	go run ./samples/field/build -out samples/field -soffice soffice
//
// Without -soffice the files that LibreOffice saves are left as they are. The other files come out the same, byte for byte, every time.
package main

import (
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// cases lists every file, in the order of the truth tables.
func cases() []typed.Case {
	return slices.Concat(
		britain(), america(), germany(), austria(), france(), belgium(), spain(), italy(), netherlands(), insurer(),
		oldHand, consultant, dutch, italian, french, spanish, german, apprentice, caretaker, database, estimator, commissioning,
		subcontractor, retired, integrator, inspector, alarmDesigner, dataKeeper, more,
		planner, facilities, electrician, broadcaster, belgian, austrian, ticino, catalan, canadian, twoRevisions, maintenance, clerks,
		soundTester, soundConsultant, soundIntegrator, soundEvacuation, soundService, soundDrawings, soundBills, soundPanels, soundBooks,
		surveys, offices, tradesmen, drawers, trustOfficers,
		rackSheets, formalSchedules, assetExports, roomBills, tapRecords, elektromeister, chefDeChantier, mantenedores, installatore, installateur,
		callouts, riggers, ingenieure, bureau, instaladores, tecnici, onderhoud, takeoffs, estates, assistant, schweizer, exhall,
		foremen, managers, draftsmen, soleTraders, siteEngineers, electriciens, techniciens,
		hauswarte, fachplaner, monteurs, jefesDeObra, geometri, foreignContractors,
		installers, registrars, heizungsbauer, jardiniers, projectleiders, encargados,
		commissioner, ballparks, hausmeister, syndic, concejalia, gemeente,
		officeBooks, siteBooks, textLists, angebote, verzeichnisse, releves, grenzen, staten, recintos, impiantiLocali, organisations,
		caretakers, inspectors, metiers, beheer, hausUndAmt, hallenUndObras, tecnicosYPeritos, geometriECustodi,
		contracts, insurers, grundschulen, bibliotecas,
		siteHands, commonwealth, handwerker, alps, maitrise, regies, vakmensen, bestekken, laymen, pliegos, cantieri,
		firmsEnglish, firmsGerman, firmsFrench, firmsSpanish, firmsItalian, firmsDutch,
		layoutsEnglish, layoutsGerman, layoutsFrench, layoutsSpanish, layoutsItalian, layoutsDutch,
		tradesOffices, tradesService, tradesGerman, tradesItalian, tradesFrench1, tradesFrench2, tradesSpanish1, tradesSpanish2, tradesDutch1, tradesDutch2,
		sundryDutch, sundryEnglish, sundryFrench, sundryGerman, sundryGerman2, sundryItalian, sundrySpanish,
		desksAlps, desksAmerica, desksBritain, desksGermany, desksItaly, tripsEs, tripsFr, tripsNl,
		plainDutch, plainEnglish, plainFrench, plainGerman, plainItalian, plainSpanish,
		ledgersEnglish, ledgersGerman, ledgersFrench, ledgersSpanish, ledgersItalian, ledgersDutch,
		bindersEnglish, bindersGerman, bindersFrench, bindersSpanish, bindersItalian, bindersDutch,
		branchesEnglish, branchesGerman, branchesFrench, branchesSpanish, branchesItalian, branchesDutch,
		errandsEnglish, errandsGerman, errandsFrench, errandsSpanish, errandsItalian, errandsDutch,
		filingsEnglish, filingsGerman, filingsFrench, filingsSpanish, filingsItalian, filingsDutch,
		dossiersEnglish, dossiersGerman, dossiersFrench, dossiersSpanish, dossiersItalian, dossiersDutch,
		patternsEnglish, patternsGerman, patternsFrench, patternsSpanish, patternsItalian, patternsDutch,
		tonguesEnglish, tonguesGerman, tonguesFrench, tonguesSpanish, tonguesItalian, tonguesDutch)
}

// sheets returns a workbook of sheets told as name, block, name, block.
func sheets(told ...string) func() *excelize.File {
	return func() *excelize.File {
		p := typed.NewBook(told[0])
		p.Put("A1", told[1])
		for i := 2; i < len(told); i += 2 {
			p = p.Sheet(told[i])
			p.Put("A1", told[i+1])
		}
		return p.File
	}
}

// text returns a DOS text file; tabs are written as →.
func text(s string) func() []byte {
	return func() []byte { return typed.Windows1252(typed.DOS(strings.ReplaceAll(s, "→", "\t"))) }
}

func main() { typed.Main("samples/field", cases()) }
