/** What each input is: cake, plan, cost, laboratory. */
export const cakeHelps: Readonly<Record<string, string>> = {
  'Of the water.': 'Des Wassers.',
  'Of the beer at the filter.': 'Des Biers am Filter.',
  'Dynamic viscosity of the beer measured at 20 °C.': 'Dynamische Viskosität des Biers, bei 20 °C gemessen.',
  'Fitted from your own logs, or measured: a clean powder’s rated figure holds only for the clean powder.':
    'Aus eigenen Protokollen angepasst oder gemessen: der Nennwert eines reinen Pulvers gilt nur für das reine Pulver.',
  'Specific resistance of the cake as it forms, with yeast and haze in it; where it is compressible, at 1 bar.':
    'Spezifischer Widerstand des Kuchens, wie er entsteht, mit Hefe und Trübung darin; wo er kompressibel ist, bei 1 bar.',
  'Dry mass, dose or percent, in any one unit: only the proportions count.':
    'Trockenmasse, Dosis oder Prozent in einer Einheit: nur die Verhältnisse zählen.',
  'One for each share, from your own fits.': 'Eine je Anteil, aus eigenen Anpassungen.',
  'Of the whole cake, from a run log.': 'Des ganzen Kuchens, aus einem Laufprotokoll.',
  'Of the part that is looked for. Dry mass, dose or percent, in any one unit: only the proportions count.':
    'Des gesuchten Teils. Trockenmasse, Dosis oder Prozent in einer Einheit: nur die Verhältnisse zählen.',
  'Volume that ran through while the time was taken, with the cake fully formed and covered.':
    'Volumen, das während der Zeit hindurchlief, bei fertigem und bedecktem Kuchen.',
  'How long that volume took.': 'Wie lange dieses Volumen brauchte.',
  'Area of the cake across the flow.': 'Fläche des Kuchens quer zur Strömung.',
  'Depth of the cake after the test.': 'Dicke des Kuchens nach dem Test.',
  'Held across the cake during the test; the support’s own pressure drop must be negligible.':
    'Während des Tests über den Kuchen gehalten; der Druckabfall des Trägers selbst muss vernachlässigbar sein.',
  'Of the test liquid at its temperature; for water see WATERVISCOSITY.':
    'Der Prüfflüssigkeit bei ihrer Temperatur; für Wasser siehe WATERVISCOSITY.',
  'Flow over the area of the septum.': 'Durchfluss je Fläche der Stützschicht.',
  'Of the beer at filter temperature, not the laboratory’s at 20 °C.':
    'Des Biers bei Filtertemperatur, nicht der Laborwert bei 20 °C.',
  'Of what carries the cake: septum and precoat, where the load does not count the precoat.':
    'Dessen, was den Kuchen trägt: Stützschicht und Voranschwemmung, wo die Auflage die Voranschwemmung nicht zählt.',
  'Exponent by which the resistance grows with the pressure drop over the cake (FITCAKE, FITCOMPRESSION); 0 for a rigid cake.':
    'Exponent, mit dem der Widerstand mit dem Druckabfall über den Kuchen wächst (FITCAKE, FITCOMPRESSION); 0 für einen starren Kuchen.',
  'Dry solids in each m³ of wet cake. Needed with a septum radius, and only there.':
    'Trockene Feststoffe je m³ nassem Kuchen. Nur mit einem Radius der Kerze nötig.',
  'Time of each reading in hours, in any order. Times of day are fractions of a day: multiply them by 24.':
    'Zeit jedes Messwerts in Stunden, in beliebiger Folge. Uhrzeiten sind Teile eines Tages: mit 24 malnehmen.',
  'Inlet less outlet, row by row.': 'Eingang minus Ausgang, Zeile für Zeile.',
  'Beer filtered since the run began, row by row, in any order.':
    'Seit Beginn des Laufs filtriertes Bier, Zeile für Zeile, in beliebiger Folge.',
  'Through the filter, held through the run.': 'Durch den Filter, über den Lauf gehalten.',
  'Dry solids that each hL lays on the cake: CAKESOLIDS reckons them.':
    'Trockene Feststoffe, die jeder hL auf den Kuchen legt: CAKESOLIDS rechnet sie aus.',
  'On each m² of septum before the run, dry; it matters on a round septum only.':
    'Je m² Stützschicht vor dem Lauf, trocken; zählt nur auf einer runden Stützschicht.',
  'Since the filtrate began to run, row by row.': 'Seit das Filtrat zu laufen begann, Zeile für Zeile.',
  'Collected until then, row by row.': 'Bis dahin aufgefangen, Zeile für Zeile.',
  'Wetted area of the leaf, all sides together.': 'Benetzte Fläche des Blatts, alle Seiten zusammen.',
  'Pressure drop over cake and cloth, held through the test.':
    'Druckabfall über Kuchen und Tuch, über den Test gehalten.',
  'Of the filtrate at the test’s temperature.': 'Des Filtrats bei der Temperatur des Tests.',
  'Dry solids in the cake for each L of filtrate, not of suspension.':
    'Trockene Feststoffe im Kuchen je L Filtrat, nicht je L Suspension.',
  'Pressure drop over the cake in each test.': 'Druckabfall über den Kuchen in jedem Test.',
  'Cake resistance that each test gave (FITLEAF).': 'Kuchenwiderstand, den jeder Test ergab (FITLEAF).',
  'Dry solids in each hL of beer. Of body feed as bought, less its moisture.':
    'Trockene Feststoffe je hL Bier. Von der laufenden Dosage im Anlieferungszustand ohne ihre Feuchte.',
  'Mean pressure rise of each run (FITRUN, FITCAKES; RISERATE on a flat septum only).':
    'Mittlerer Druckanstieg jedes Laufs (FITRUN, FITCAKES; RISERATE nur auf ebener Stützschicht).',
  'Dry solids in each hL of beer. What reaches the filter of the stabiliser, less its moisture.':
    'Trockene Feststoffe je hL Bier. Was vom Stabilisierungsmittel den Filter erreicht, ohne seine Feuchte.',
  'Of the stabiliser in the cake (PARTPERMEABILITY); needed wherever stabiliser is dosed.':
    'Des Stabilisierungsmittels im Kuchen (PARTPERMEABILITY); nötig, wo Stabilisierungsmittel dosiert wird.',
  'A column of plan labels, in any order; blank ones are skipped.':
    'Eine Spalte mit Bezeichnungen des Plans, in beliebiger Folge; leere werden übergangen.',
  'A column of values beside the labels, one plan.': 'Eine Spalte mit Werten neben den Bezeichnungen, ein Plan.',
  'Rows of the curve, both ends included.': 'Zeilen der Kurve, beide Enden eingeschlossen.',
  'The least that your beer’s clarity allows (FITCLARITY); the plan’s Least body feed for clarity counts where it is higher.':
    'Das Kleinste, das die Klarheit Ihres Biers zulässt (FITCLARITY); wo sie höher liegt, zählt „Least body feed for clarity“ des Plans.',
  'The most that you would dose.': 'Das Größte, das Sie dosieren würden.',
  'Beer that one run should give.': 'Bier, das ein Lauf geben soll.',
  'A column of values beside the labels: the plan as it runs today.':
    'Eine Spalte mit Werten neben den Bezeichnungen: der Plan, wie er heute läuft.',
  'A column of values beside the labels: the plan as it might run.':
    'Eine Spalte mit Werten neben den Bezeichnungen: der Plan, wie er laufen könnte.',
  'A column of values beside the labels: the low end of each label, or its one value.':
    'Eine Spalte mit Werten neben den Bezeichnungen: das untere Ende jeder Größe oder ihr einer Wert.',
  'A column of values beside the labels: the high end of each label, or its one value.':
    'Eine Spalte mit Werten neben den Bezeichnungen: das obere Ende jeder Größe oder ihr einer Wert.',
  'Pairs of plans that are drawn. Ten times as many take ten times as long and make the figures about three times as sharp.':
    'Paare von Plänen, die gezogen werden. Zehnmal so viele dauern zehnmal so lang und machen die Werte etwa dreimal so scharf.',
  'A whole number that picks the random numbers: the same seed gives the same answer, another one shows how much is chance.':
    'Eine ganze Zahl, die die Zufallszahlen wählt: dieselbe gibt dieselbe Antwort, eine andere zeigt, wie viel Zufall ist.',
  'A column of values beside the labels: the low end of each, or its one value.':
    'Eine Spalte mit Werten neben den Bezeichnungen: das untere Ende jeder oder ihr einer Wert.',
  'A column of values beside the labels: the high end of each, or the same value.':
    'Eine Spalte mit Werten neben den Bezeichnungen: das obere Ende jeder oder derselbe Wert.',
  'Powder laid before the run, all coats together.':
    'Pulver, das vor dem Lauf angeschwemmt wird, alle Schichten zusammen.',
  'Beer filtered in one run.': 'In einem Lauf filtriertes Bier.',
  'Price of one bag, big bag or pallet on the list, before discount.':
    'Listenpreis eines Sacks, Big Bags oder einer Palette, vor Rabatt.',
  'Powder in that pack, with its water.': 'Pulver in diesem Gebinde, mit seinem Wasser.',
  'For each kg delivered, insurance and handling with it.':
    'Je geliefertem kg, Versicherung und Umschlag eingeschlossen.',
  'Share taken off the pack price. Write 5 % or 0.05.':
    'Anteil, der vom Preis des Gebindes abgeht. 5 % oder 0,05 schreiben.',
  'Share of the price of the goods after discount; Duty on says whether of the freight, too.':
    'Anteil am Warenpreis nach Rabatt; „Zoll auf“ sagt, ob auch an der Fracht.',
  'Whether the freight bears duty, too, as in the usual customs value with freight and insurance to the border: ask your forwarder.':
    'Ob auch die Fracht Zoll trägt, wie im üblichen Zollwert mit Fracht und Versicherung bis zur Grenze: Fragen Sie Ihren Spediteur.',
  'For each kg, where the prices are without it: one for all offers, or one each.':
    'Je kg, wo die Preise ohne sie sind: eine für alle Angebote oder je eine.',
  'Share of the price, where the prices are without it: one for all offers, or one each. Write 5 % or 0.05.':
    'Anteil am Preis, wo die Preise ohne ihn sind: einer für alle Angebote oder je einer. 5 % oder 0,05 schreiben.',
  'Share that never serves: torn bags, damp powder, dust, what stays in the big bag.':
    'Anteil, der nie dient: gerissene Säcke, feuchtes Pulver, Staub, Rest im Big Bag.',
  'One for each offer; a name that is missing stays empty, and a row that is blank throughout is passed over.':
    'Einer je Angebot; ein fehlender Name bleibt leer, und eine durchweg leere Zeile wird übergangen.',
  'Per kg as bought, landed (LANDEDPRICE), one for each offer. No price is an offer not yet made, so 0 is refused.':
    'Je kg im Anlieferungszustand, frei Lager (LANDEDPRICE), einer je Angebot. Kein Preis ist ein noch nicht gemachtes Angebot, daher wird 0 abgelehnt.',
  'Of each powder as bought (wet basis). Write 65 % or 0.65.':
    'Von jedem Pulver im Anlieferungszustand (auf die feuchte Masse bezogen). 65 % oder 0,65 schreiben.',
  'Dry powder for each hL. One cell serves all offers of one kind. Across kinds give each its own, at equal effect on your beer (LADDERDOSE, then DRYMASS): equal dry mass is not equal effect.':
    'Trockenes Pulver je hL. Eine Zelle dient allen Angeboten einer Art. Über Arten hinweg jedem die eigene, bei gleicher Wirkung auf Ihr Bier (LADDERDOSE, dann DRYMASS): gleiche Trockenmasse ist nicht gleiche Wirkung.',
  'Precoat, body feed and stabiliser on the filter, without their water (DRYMASS).':
    'Voranschwemmung, laufende Dosage und Stabilisierungsmittel auf dem Filter, ohne ihr Wasser (DRYMASS).',
  'Share of dry solids in the cake as it is discharged and weighed.':
    'Anteil trockener Feststoffe im Kuchen, wie er ausgetragen und gewogen wird.',
  'Dry yeast and haze that the filter held back.': 'Trockene Hefe und Trübung, die der Filter zurückhielt.',
  'As it is weighed when it leaves, wet.': 'Wie er beim Abgang gewogen wird, nass.',
  'Per t of wet spent cake.': 'Je t nassem Altkuchen.',
  'What one haul carries; 0 (as is a blank cell) where hauls are in the price.':
    'Was eine Abfuhr fasst; 0 (wie eine leere Zelle), wo die Abfuhr im Preis steckt.',
  'For each load, full or not.': 'Je Ladung, voll oder nicht.',
  'Beer that this filter runs in a year.': 'Bier, das dieser Filter im Jahr filtriert.',
  'Powder as bought for each hL, its share of the precoat included (POWDERPERHL).':
    'Pulver im Anlieferungszustand je hL, ihr Anteil der Voranschwemmung eingeschlossen (POWDERPERHL).',
  'All that the present way costs for each hL of beer.': 'Alles, was der jetzige Weg je hL Bier kostet.',
  'What the new way costs for each hL besides the new powder; 0 where there is nothing else.':
    'Was der neue Weg je hL außer dem neuen Pulver kostet; 0, wo sonst nichts ist.',
  'Of the new powder as bought, for each hL of beer.': 'Vom neuen Pulver im Anlieferungszustand, je hL Bier.',
  'The figure to convert.': 'Der Wert, der umgerechnet wird.',
  'Unit of the value, as units are written: hL, m³ or m3, g/hL, psi.':
    'Einheit des Werts, wie Einheiten geschrieben werden: hL, m³ oder m3, g/hL, psi.',
  'Unit of the answer. A barrel is named in full: US beer barrel or UK barrel.':
    'Einheit der Antwort. Ein Barrel wird ausgeschrieben: US beer barrel oder UK barrel.',
  'By a haze meter, at the angle and temperature of your own method.':
    'Mit einem Trübungsmessgerät, beim Winkel und der Temperatur Ihrer Methode.',
  'At 600 nm in a cell of 1 cm, blank taken off.': 'Bei 600 nm in einer Küvette von 1 cm, Blindwert abgezogen.',
  '1 for a sample of 10 mL, 2 for 5 mL.': '1 für 10 mL Probe, 2 für 5 mL.',
  'In breathing air, each as measured.': 'In der Atemluft, jede wie gemessen.',
  'How long each concentration lasted. Time without exposure need not be given.':
    'Wie lange jede Konzentration dauerte. Zeit ohne Belastung braucht nicht angegeben zu werden.',
  'Of each substance, averaged over 8 hours.': 'Jedes Stoffs, über 8 Stunden gemittelt.',
  'Of each substance in turn, over 8 hours, as your country sets it.':
    'Jedes Stoffs der Reihe nach, über 8 Stunden, wie Ihr Land ihn setzt.',
  'Its id, with or without POWDER. in front.': 'Ihre Kennung, mit oder ohne POWDER. davor.',
  'The input’s label, or a plan’s label; its case does not matter.':
    'Die Bezeichnung der Eingabe oder eines Plans; Groß- und Kleinschreibung zählen nicht.',
  'The value to judge, in the unit of the input.': 'Der Wert, der beurteilt wird, in der Einheit der Eingabe.',
  'Dry solids that each hL lays on the cake: CAKESOLIDS reckons them. One for all rows of the log, or one each.':
    'Trockene Feststoffe, die jeder hL auf den Kuchen legt: CAKESOLIDS berechnet sie. Einer für alle Zeilen des Protokolls oder je einer.',
  'Number of the run to which each row belongs: all logs stand below one another.':
    'Nummer des Laufs, zu dem jede Zeile gehört: Alle Protokolle stehen untereinander.',
  'Through the filter: one for all rows, or one each; held through a run.':
    'Durch den Filter: einer für alle Zeilen oder je einer; über einen Lauf gehalten.',
  'Hours of beer at the last reading of the rise. Needed on a candle, where the rise falls off, and for a compressible cake, where it grows; elsewhere not read.':
    'Stunden Bier beim letzten Messwert des Anstiegs. Nötig auf einer Kerze, wo der Anstieg nachlässt, und bei kompressiblem Kuchen, wo er wächst; sonst nicht gelesen.',
  'Standard error as a share, alike in all runs, as of an unsure cell mass (SOLIDSLOAD). What differs from run to run shows as scatter without it. A plan with the very beer solids of these runs hardly feels it: both permeabilities are then off together.':
    'Standardfehler als Anteil, in allen Läufen gleich, wie bei unsicherer Zellmasse (SOLIDSLOAD). Was von Lauf zu Lauf abweicht, zeigt sich auch ohne ihn als Streuung. Ein Plan mit denselben Bierfeststoffen wie diese Läufe spürt ihn kaum: beide Durchlässigkeiten liegen dann gemeinsam daneben.',
  'Hours of beer at the first reading of the rise; 0 (as is a blank cell) from the first beer on.':
    'Stunden Bier beim ersten Messwert des Anstiegs; 0 (wie eine leere Zelle) vom ersten Bier an.',
  'Exponent of the run logs (FITCAKES); the permeabilities are then those at 1 bar. 0 for a rigid cake.':
    'Exponent der Laufprotokolle (FITCAKES); die Permeabilitäten sind dann die bei 1 bar. 0 für einen starren Kuchen.',
  'Dry, and not counted in the load: what lies under the cake on a round septum, where it widens the cake. Its own pressure drop belongs to the medium.':
    'Trocken und in der Auflage nicht gezählt: was auf runder Stützschicht unter dem Kuchen liegt und ihn weiter macht. Sein eigener Druckabfall gehört zum Filtermittel.',
  'Of the runs that the permeabilities were fitted on; 0 (as is a blank cell) where you do not say.':
    'Der Läufe, an die die Permeabilitäten angepasst wurden; 0 (wie eine leere Zelle), wenn Sie nichts angeben.',
};
