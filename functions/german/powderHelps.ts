/** What each input is: powders, stabilisers, feed. */
export const powderHelps: Readonly<Record<string, string>> = {
  'Powder as it stands: with its water.': 'Pulver, wie es ist: mit seinem Wasser.',
  'Water in the powder, share of the mass as it stands (wet basis). Write 65 % or 0.65.':
    'Wasser im Pulver, Anteil an der Masse, wie sie ist (auf die feuchte Masse bezogen). 65 % oder 0,65 schreiben.',
  'Solids without any water.': 'Feststoffe ohne jedes Wasser.',
  'A mass or a dose in any unit; the answer has the same unit.':
    'Eine Masse oder Dosis in beliebiger Einheit; die Antwort hat dieselbe.',
  'Moisture of the amount given (wet basis). Write 65 % or 0.65.':
    'Feuchte der gegebenen Menge (auf die feuchte Masse bezogen). 65 % oder 0,65 schreiben.',
  'Moisture that the answer is to have (wet basis).':
    'Feuchte, die die Antwort haben soll (auf die feuchte Masse bezogen).',
  'Sample before drying, with the dish if the tare is given.':
    'Probe vor dem Trocknen, mit der Schale, wenn die Tara angegeben ist.',
  'The same after drying to constant mass.': 'Dasselbe nach dem Trocknen bis zur Massenkonstanz.',
  'The empty dish; 0 if it was tared away.': 'Die leere Schale; 0, wenn sie austariert wurde.',
  'Water for each kg of dry solids (dry basis).': 'Wasser je kg trockener Feststoffe (auf die Trockenmasse bezogen).',
  'Per kg as bought, in the currency of your sheet.': 'Je kg im Anlieferungszustand, in der Währung Ihrer Tabelle.',
  'Moisture in the contract (wet basis).': 'Feuchte laut Vertrag (auf die feuchte Masse bezogen).',
  'Moisture of your sample (wet basis).': 'Feuchte Ihrer Probe (auf die feuchte Masse bezogen).',
  'Present dose as bought; away from 65, 5 or 1 % moisture, correct it by SAMESOLIDS first.':
    'Jetzige Dosis im Anlieferungszustand; bei anderer Feuchte als 65, 5 oder 1 % zuerst mit SAMESOLIDS umrechnen.',
  'The present stabiliser.': 'Das jetzige Stabilisierungsmittel.',
  'The stabiliser to change to; adsorptive is a filter aid that also takes up haze protein.':
    'Das Stabilisierungsmittel, zu dem gewechselt wird; adsorptive ist ein Filterhilfsmittel, das auch Trübungseiweiß bindet.',
  'Where in the factor range: 0 is its low end (as is a blank cell), 1 its high end.':
    'Wo im Bereich der Faktoren: 0 ist das untere Ende (wie eine leere Zelle), 1 das obere.',
  'Beer through the filter.': 'Bier durch den Filter.',
  'How long the stabiliser stays in the beer before the filter takes it out.':
    'Wie lange das Stabilisierungsmittel im Bier bleibt, bis der Filter es herausnimmt.',
  'Beer volume that the buffer tank holds while beer runs through it.':
    'Biervolumen, das der Puffertank hält, während Bier hindurchläuft.',
  'One stabiliser at several doses in the same beer, in any order; best from 0 up to more than you mean to use.':
    'Ein Stabilisierungsmittel in mehreren Dosen im selben Bier, in beliebiger Folge; am besten von 0 bis über das, was Sie einsetzen wollen.',
  'Haze of each dose after forcing or chilling, all by one method.':
    'Trübung jeder Dosis nach Forcieren oder Kühlen, alle nach einer Methode.',
  'Haze to reach, by the method of the ladder.': 'Trübung, die erreicht werden soll, nach der Methode der Dosisreihe.',
  'Days at 40 or 60 °C, each followed by a day at 0 °C, until the haze has risen by 2 EBC.':
    'Tage bei 40 oder 60 °C, auf jeden folgt ein Tag bei 0 °C, bis die Trübung um 2 EBC gestiegen ist.',
  'Days at 20 °C for each warm day, found on this beer. There is no figure that serves every beer: the rule of a month for a warm day is common practice without a standard.':
    'Tage bei 20 °C je Warmtag, an diesem Bier gefunden. Keine Zahl gilt für jedes Bier: die Regel von einem Monat je Warmtag ist gängige Praxis ohne Norm.',
  'Time in store at the first temperature.': 'Lagerzeit bei der ersten Temperatur.',
  'At which these days were spent.': 'Bei der diese Tage verbracht wurden.',
  'At which the equal time is looked for.': 'Für die die gleichwertige Zeit gesucht wird.',
  'How many times faster the beer ages at 10 °C more.': 'Wievielmal schneller das Bier bei 10 °C mehr altert.',
  'Powder as bought for each hL of beer.': 'Pulver im Anlieferungszustand je hL Bier.',
  'As SO₂. In the powder as bought, from the certificate of analysis or your own laboratory.':
    'Als SO₂. Im Pulver, wie geliefert, laut Analysenzertifikat oder eigenem Labor.',
  'Total SO₂ of the finished beer: what the yeast made and what was added, together.':
    'Gesamtes SO₂ des fertigen Biers: was die Hefe bildete und was zugesetzt wurde, zusammen.',
  'Where the beer is sold.': 'Wo das Bier verkauft wird.',
  'Of each powder as bought; the precoat as its share per hL of the run.':
    'Von jedem Pulver im Anlieferungszustand; die Voranschwemmung mit ihrem Anteil je hL des Laufs.',
  'Of one metal. In the powder as bought, from the certificate of analysis or your own laboratory.':
    'Von einem Metall. Im Pulver, wie geliefert, laut Analysenzertifikat oder eigenem Labor.',
  'Area of all septa together.': 'Fläche aller Stützschichten zusammen.',
  'Powder on each m² of septum, all coats together.': 'Pulver je m² Stützschicht, alle Schichten zusammen.',
  'Dry solids on each m² of septum, precoat included.':
    'Trockene Feststoffe je m² Stützschicht, Voranschwemmung eingeschlossen.',
  'Dry solids in each m³ of wet cake.': 'Trockene Feststoffe je m³ nassem Kuchen.',
  'Half the outer diameter of a candle; 0 (as is a blank cell) for a flat septum.':
    'Halber Außendurchmesser einer Kerze; 0 (wie eine leere Zelle) für eine ebene Stützschicht.',
  'Depth of the cake, precoat included. Where cakes face each other, half the gap at most.':
    'Dicke des Kuchens mit der Voranschwemmung. Wo Kuchen einander gegenüberliegen, höchstens der halbe Abstand.',
  'Put into the tank beside the powder.': 'Mit dem Pulver in den Tank gegeben.',
  'Of the grains themselves, without the air between them: not the bulk density.':
    'Der Körner selbst, ohne die Luft dazwischen: nicht die Schüttdichte.',
  'Powder in each litre of finished slurry, in the dosing tank.': 'Pulver je Liter fertiger Suspension im Dosiertank.',
  'Filter aid dosed into the beer during the run, for each hL of beer.':
    'Filterhilfsmittel, das während des Laufs ins Bier dosiert wird, je hL Bier.',
  'Slurry that the dosing pump delivers.': 'Suspension, die die Dosierpumpe fördert.',
  'Slurry that the pump can draw before the tank must be made up again.':
    'Suspension, die die Pumpe ziehen kann, bevor neu angesetzt werden muss.',
  'Yeast cells in the beer at the filter inlet.': 'Hefezellen im Bier vor dem Filter.',
  'Dry mass of one cell; well-fed brewing yeast is heavier than the preset.':
    'Trockenmasse einer Zelle; gut genährte Brauhefe ist schwerer als die Vorgabe.',
  'Dry haze, trub and gel that each hL brings, yeast apart.': 'Trockener Trub, Trübung und Gel je hL, ohne Hefe.',
  'Dry yeast and haze that each hL of beer brings to the cake.':
    'Trockene Hefe und Trübung, die jeder hL Bier auf den Kuchen bringt.',
  'Share of the stabiliser that leaves with the yeast before the beer comes to the filter.':
    'Anteil des Stabilisierungsmittels, der mit der Hefe geht, bevor das Bier zum Filter kommt.',
  'Share of the new powder that works as a filter aid: 0 for a gel, up to 1 for a powder as open as the body feed. A trial decides.':
    'Anteil des neuen Pulvers, der als Filterhilfsmittel wirkt: 0 für ein Gel, bis 1 für ein Pulver, so offen wie die laufende Dosage. Ein Versuch entscheidet.',
  'Below which the cake blinds or the beer is not clear (FITCLARITY), whatever the stabiliser does.':
    'Darunter verlegt der Kuchen oder wird das Bier nicht blank (FITCLARITY), was auch das Stabilisierungsmittel tut.',
  'it removes polyphenol, not protein, so no factor leads from or to it.':
    'Es entfernt Polyphenol, kein Eiweiß; daher führt kein Faktor von ihm oder zu ihm.',
  'Haze to reach: adds its dose, and between which doses it lies.':
    'Zu erreichende Trübung: fügt ihre Dosis hinzu und zwischen welchen Dosen sie liegt.',
  'Chance that the dose is enough: 50 % is the best guess, 90 % stays on the safe side by as much as the ladder is unsure.':
    'Chance, dass die Dosis reicht: 50 % ist die beste Schätzung, 90 % bleibt um so viel auf der sicheren Seite, wie die Leiter unsicher ist.',
  'A column of plan labels that all beers share, in any order; those of each beer’s own figures may be left out and are not read.':
    'Eine Spalte von Bezeichnungen, die alle Biere gemeinsam haben, in beliebiger Folge; die der eigenen Werte jedes Biers können fehlen und werden nicht gelesen.',
  'A column of values beside the labels: what all beers share.':
    'Eine Spalte von Werten neben den Bezeichnungen: was alle Biere gemeinsam haben.',
  'An item of FILTRATIONCOST, or Total; a row of items beside a column of beers makes a table.':
    'Ein Posten von FILTRATIONCOST, oder Total; eine Zeile von Posten neben einer Spalte von Bieren gibt eine Tabelle.',
  'Dry yeast and haze that each hL of beer brings to the cake; never 0. SOLIDSLOAD reckons it from a cell count.':
    'Trockene Hefe und Trübung, die jeder hL Bier in den Kuchen bringt; nie 0. SOLIDSLOAD berechnet es aus einer Zellzahl.',
  'As bought, for each hL of beer; 0 where none is used.':
    'Im Anlieferungszustand, je hL Bier; 0, wo keins gebraucht wird.',
};
