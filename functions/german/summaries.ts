/** What each function gives. */
export const summaries: Readonly<Record<string, string>> = {
  'Dry solids in a powder of known moisture.': 'Trockenmasse in einem Pulver bekannter Feuchte.',
  'Powder as bought that holds a given dry mass.':
    'Pulver im Anlieferungszustand, das eine gegebene Trockenmasse enthält.',
  'The amount at another moisture that holds the same dry solids.':
    'Die Menge bei anderer Feuchte, die dieselbe Trockenmasse enthält.',
  'Moisture of a powder from its loss on drying.': 'Feuchte eines Pulvers aus dem Trocknungsverlust.',
  'Water per dry mass from moisture on the wet basis.':
    'Wasser je Trockenmasse aus der Feuchte, die auf die feuchte Masse bezogen ist.',
  'Moisture on the wet basis from water per dry mass.':
    'Feuchte, auf die feuchte Masse bezogen, aus dem Wasser je Trockenmasse.',
  'What a powder costs per kg of its dry solids.': 'Was ein Pulver je kg Trockenmasse kostet.',
  'Money that a delivery moister than agreed is worth less.':
    'Geld, um das eine Lieferung weniger wert ist, die feuchter ist als vereinbart.',
  'Dose of another kind of stabiliser that should do the same work.':
    'Dosis einer anderen Art Stabilisierungsmittel, die dasselbe leisten sollte.',
  'Low end, middle and high end of the dose after a swap of stabiliser.':
    'Unteres Ende, Mitte und oberes Ende der Dosis nach einem Wechsel des Stabilisierungsmittels.',
  'Buffer tank that gives a stabiliser its contact time.':
    'Puffertank, der einem Stabilisierungsmittel seine Kontaktzeit gibt.',
  'Mean contact time that a buffer tank gives.': 'Mittlere Kontaktzeit, die ein Puffertank gibt.',
  'Curve through a dose ladder: haze without dose, plateau, and how fast the haze falls.':
    'Kurve durch eine Dosisreihe: Trübung ohne Dosis, Restwert, und wie schnell die Trübung fällt.',
  'Dose that brings the haze down to a target, from a dose ladder.':
    'Dosis, die die Trübung auf ein Ziel senkt, aus einer Dosisreihe.',
  'Haze-free life at 20 °C from a forcing test in warm days.':
    'Trübungsfreie Haltbarkeit bei 20 °C aus einem Forciertest in Warmtagen.',
  'Storage time at another temperature that ages a beer as much.':
    'Lagerzeit bei anderer Temperatur, die ein Bier ebenso altern lässt.',
  'The most sulphite that a powder can bring into the beer.':
    'Das meiste Sulfit, das ein Pulver ins Bier bringen kann.',
  'Whether a beer’s total sulphite must be declared on the label.':
    'Ob das gesamte Sulfit eines Biers auf dem Etikett anzugeben ist.',
  'The most of a metal that all powders together can bring into the beer.':
    'Das meiste eines Metalls, das alle Pulver zusammen ins Bier bringen können.',
  'Powder for a precoat of a given load.': 'Pulver für eine Voranschwemmung gegebener Auflage.',
  'Depth of a cake of a given load, on a flat septum or a candle.':
    'Dicke eines Kuchens gegebener Auflage, auf ebener Stützschicht oder Kerze.',
  'Load of a cake of a given depth, on a flat septum or a candle.':
    'Auflage eines Kuchens gegebener Dicke, auf ebener Stützschicht oder Kerze.',
  'Strength of a slurry made of powder and water.': 'Konzentration einer Suspension aus Pulver und Wasser.',
  'Water for a slurry of a given strength.': 'Wasser für eine Suspension gegebener Konzentration.',
  'Powder that must go into the beer each hour.': 'Pulver, das in jeder Stunde ins Bier muss.',
  'Dosing pump setting for a dose.': 'Einstellung der Dosierpumpe für eine Dosis.',
  'Dose that a pump setting really gives.': 'Dosis, die eine Pumpeneinstellung wirklich gibt.',
  'Hours that a full slurry tank lasts.': 'Stunden, die ein voller Dosiertank reicht.',
  'Dry solids that the beer itself brings to the filter.':
    'Trockene Feststoffe, die das Bier selbst zum Filter bringt.',
  'Dry solids that each hL of beer lays on the cake.': 'Trockene Feststoffe, die jeder hL Bier auf den Kuchen legt.',
  'Body feed that remains when a new stabiliser does part of its work.':
    'Laufende Dosage, die bleibt, wenn ein neues Stabilisierungsmittel einen Teil ihrer Arbeit tut.',
  'Viscosity of water at a temperature.': 'Viskosität von Wasser bei einer Temperatur.',
  'Density of water at a temperature.': 'Dichte von Wasser bei einer Temperatur.',
  'Approximate viscosity of beer at filter temperature, from the laboratory’s figure at 20 °C. Below 20 °C it reads low.':
    'Ungefähre Viskosität des Biers bei Filtertemperatur aus dem Laborwert bei 20 °C. Unter 20 °C fällt sie zu niedrig aus.',
  'Specific cake resistance from permeability and cake density.':
    'Spezifischer Kuchenwiderstand aus Permeabilität und Kuchendichte.',
  'Permeability from specific cake resistance and cake density.':
    'Permeabilität aus spezifischem Kuchenwiderstand und Kuchendichte.',
  'Permeability of a cake mixed of several parts.':
    'Permeabilität eines Kuchens, der aus mehreren Teilen gemischt ist.',
  'Permeability of one part of a mixed cake, from that of the mix and of the other parts.':
    'Permeabilität eines Teils eines gemischten Kuchens aus der des Gemischs und der übrigen Teile.',
  'Permeability of a powder from a bench filtration through a cake of known depth.':
    'Permeabilität eines Pulvers aus einer Laborfiltration durch einen Kuchen bekannter Dicke.',
  'Pressure drop over a cake of a given load and what carries it.':
    'Druckabfall über einen Kuchen gegebener Auflage und das, was ihn trägt.',
  'Pressure rise of a run that one bad reading does not move.':
    'Druckanstieg eines Laufs, den ein einzelner schlechter Messwert nicht verschiebt.',
  'Cake resistance and start pressure from the log of a run at constant flow.':
    'Kuchenwiderstand und Anfangsdruck aus dem Protokoll eines Laufs bei gleichbleibendem Durchfluss.',
  'Cake and medium resistance from a leaf test at constant pressure.':
    'Widerstand von Kuchen und Filtermittel aus einem Blatttest bei gleichbleibendem Druck.',
  'How cake resistance grows with pressure, from tests at several pressures.':
    'Wie der Kuchenwiderstand mit dem Druck wächst, aus Tests bei mehreren Drücken.',
  'Permeability of filter aid and beer solids, from runs at several body feeds.':
    'Permeabilität von Filterhilfsmittel und Bierfeststoffen aus Läufen mit mehreren Dosagen.',
  'Pressure rise at a body feed, from the permeabilities of the parts.':
    'Druckanstieg bei einer laufenden Dosage aus den Permeabilitäten der Teile.',
  'Beer until the first limit of a run.': 'Bier bis zur ersten Grenze eines Laufs.',
  'A run from its start to what ends it.': 'Ein Lauf vom Anfang bis zu dem, was ihn beendet.',
  'Pressure drop and cake load over a run.': 'Druckabfall und Kuchenauflage über einen Lauf.',
  'What filtration costs, item by item, per hL and per year, and what a year takes.':
    'Was die Filtration kostet, Posten für Posten, je hL und je Jahr, und was ein Jahr verbraucht.',
  'The body feed of least cost per hL.': 'Die laufende Dosage mit den geringsten Kosten je hL.',
  'Run, pressure rise and cost over a span of body feeds.':
    'Lauf, Druckanstieg und Kosten über einen Bereich laufender Dosagen.',
  'Least and most body feed that reach a run of so many hL.':
    'Kleinste und größte laufende Dosage, die einen Lauf von so vielen hL erreichen.',
  'The price of the proposed stabiliser at which both plans cost the same per hL.':
    'Der Preis des vorgesehenen Stabilisierungsmittels, bei dem beide Pläne je hL gleich viel kosten.',
  'Two plans side by side, item by item, and what the proposed one saves.':
    'Zwei Pläne nebeneinander, Posten für Posten, und was der vorgesehene spart.',
  'How sure a year’s saving is where figures of both plans are only known between a low and a high end.':
    'Wie sicher die Ersparnis eines Jahres ist, wenn Werte beider Pläne nur zwischen zwei Enden bekannt sind.',
  'How far each uncertain label moves the cost per hL, widest first.':
    'Wie weit jede unsichere Größe die Kosten je hL verschiebt, die weiteste zuerst.',
  'Beside each label of a plan: usual, unusual or refused.':
    'Neben jeder Größe eines Plans: usual (üblich), unusual (unüblich) oder refused (abgelehnt).',
  'Cost of a powder for each hL of beer.': 'Kosten eines Pulvers je hL Bier.',
  'All powder for each hL of beer, precoat and body feed together.':
    'Alles Pulver je hL Bier, Voranschwemmung und laufende Dosage zusammen.',
  'What a kg of powder costs once it lies usable in the store.':
    'Was ein kg Pulver kostet, das brauchbar im Lager liegt.',
  'Offers of powder side by side, cheapest per hL first.':
    'Angebote für Pulver nebeneinander, das günstigste je hL zuerst.',
  'Wet spent cake from the dry solids that went into it.':
    'Nasser Altkuchen aus den trockenen Feststoffen, die hineingingen.',
  'What it costs to be rid of spent cake, hauls included.':
    'Was es kostet, Altkuchen loszuwerden, Abfuhr eingeschlossen.',
  'Powder that a year’s beer takes.': 'Pulver, das das Bier eines Jahres braucht.',
  'Filter runs that a year’s beer takes.': 'Filterläufe, die das Bier eines Jahres braucht.',
  'The price at which a new powder costs as much per hL as the present way.':
    'Der Preis, zu dem ein neues Pulver je hL so viel kostet wie der jetzige Weg.',
  'A value in another unit of the same kind.': 'Ein Wert in einer anderen Einheit derselben Art.',
  'What a haze reading looks like to the eye.': 'Wie eine gemessene Trübung für das Auge aussieht.',
  'Total polyphenols of a beer from the absorbance at 600 nm.':
    'Gesamtpolyphenole eines Biers aus der Extinktion bei 600 nm.',
  'Average concentration over 8 hours from the parts of a shift.':
    'Mittlere Konzentration über 8 Stunden aus den Teilen einer Schicht.',
  'Sum of the shares of several limits; above 1 is over the limit.':
    'Summe der Anteile an mehreren Grenzwerten; über 1 ist über der Grenze.',
  'The limits and the usual range of an input, with its unit.':
    'Die Grenzen und der übliche Bereich einer Eingabe, mit ihrer Einheit.',
  'Whether a value is usual, unusual or refused as an input of a function.':
    'Ob ein Wert als Eingabe einer Funktion üblich, unüblich oder abgelehnt ist.',
  'Resistance at 1 bar and compressibility of the cake, from the log of one run at constant flow.':
    'Widerstand bei 1 bar und Kompressibilität des Kuchens aus dem Protokoll eines Laufs bei gleichbleibendem Durchfluss.',
  'One compressibility for the cakes of several run logs, and each run’s resistance at 1 bar.':
    'Eine Kompressibilität für die Kuchen mehrerer Laufprotokolle, und der Widerstand jedes Laufs bei 1 bar.',
  'Whether repeated runs of two powders differ, by how much, and how many more runs would settle it.':
    'Ob sich wiederholte Läufe zweier Pulver unterscheiden, um wie viel, und wie viele weitere Läufe es klären würden.',
  'How many runs of an old and a new powder a trial takes, in which order, and what it shows after each pair.':
    'Wie viele Läufe mit altem und neuem Pulver ein Versuch braucht, in welcher Folge, und was er nach jedem Paar zeigt.',
  'Beer until the first limit of a run, for each of several beers on the same filter.':
    'Bier bis zur ersten Grenze eines Laufs, für jedes von mehreren Bieren auf demselben Filter.',
  'What filtration costs per hL, for each of several beers on the same filter, whole or by item.':
    'Was die Filtration je hL kostet, für jedes von mehreren Bieren auf demselben Filter, im Ganzen oder nach Posten.',
  'How far each uncertain label moves a year’s saving, widest first.':
    'Wie weit jede unsichere Bezeichnung die Ersparnis eines Jahres bewegt, die weiteste zuerst.',
  'Pressure rise of a run that one bad reading does not move, with its error.':
    'Druckanstieg eines Laufs, den ein falscher Messwert nicht bewegt, mit seinem Fehler.',
  'How outlet haze falls with the body feed, and the least feed that keeps a limit.':
    'Wie die Trübung am Auslauf mit der laufenden Dosage fällt, und die kleinste Dosage, die eine Grenze einhält.',
  'Body feed in proportion to what the beer brings, between a least and a most.':
    'Laufende Dosage im Verhältnis zu dem, was das Bier bringt, zwischen einem Kleinsten und einem Größten.',
  'A run through steps: tank bottoms, several beers, or a body feed that is changed, and where it ends.':
    'Ein Lauf in Schritten: Tankböden, mehrere Biere oder eine geänderte laufende Dosage, und wo er endet.',
};
