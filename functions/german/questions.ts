/** The question that each function answers. */
export const questions: Readonly<Record<string, string>> = {
  'How much dry powder is in this delivery?': 'Wie viel trockenes Pulver ist in dieser Lieferung?',
  'How much of the moist powder must I weigh to get this much dry powder?':
    'Wie viel feuchtes Pulver muss ich für so viel trockenes abwiegen?',
  'What is the same dose at another moisture?': 'Was ist dieselbe Dosis bei anderer Feuchte?',
  'How moist is this sample?': 'Wie feucht ist diese Probe?',
  'How many kg of water come with each kg of dry powder?': 'Wie viele kg Wasser kommen mit jedem kg trockenem Pulver?',
  'What moisture is this many kg of water per kg of dry powder?':
    'Welche Feuchte sind so viele kg Wasser je kg trockenem Pulver?',
  'Which of two quotes is cheaper once the water is taken out?':
    'Welches von zwei Angeboten ist billiger, wenn man das Wasser herausrechnet?',
  'The delivery was moister than agreed: what does the supplier owe?':
    'Die Lieferung war feuchter als vereinbart: Was schuldet der Lieferant?',
  'How much of the other stabiliser replaces the present dose?':
    'Wie viel vom anderen Stabilisierungsmittel ersetzt die jetzige Dosis?',
  'Between which doses should a trial of the other stabiliser run?':
    'Zwischen welchen Dosen sollte ein Versuch mit dem anderen Stabilisierungsmittel laufen?',
  'How large must the buffer tank before the filter be?': 'Wie groß muss der Puffertank vor dem Filter sein?',
  'How long does the stabiliser stay in the beer?': 'Wie lange bleibt das Stabilisierungsmittel im Bier?',
  'What does a dose ladder say about this stabiliser in this beer?':
    'Was sagt eine Dosisreihe über dieses Stabilisierungsmittel in diesem Bier?',
  'How much of this stabiliser does this beer need?': 'Wie viel von diesem Stabilisierungsmittel braucht dieses Bier?',
  'The forcing test lasted so many warm days: how long does the beer stay clear?':
    'Der Forciertest hielt so viele Warmtage: Wie lange bleibt das Bier blank?',
  'So many days at this temperature equal how many at another?':
    'So viele Tage bei dieser Temperatur sind wie viele bei einer anderen?',
  'How much SO₂ can this powder add to the beer at worst?':
    'Wie viel SO₂ kann dieses Pulver schlimmstenfalls ins Bier bringen?',
  'Do I have to declare sulphites?': 'Muss ich Sulfite angeben?',
  'How much iron, arsenic or lead can the powders add to the beer at worst?':
    'Wie viel Eisen, Arsen oder Blei können die Pulver schlimmstenfalls ins Bier bringen?',
  'How much powder does the precoat take?': 'Wie viel Pulver braucht die Voranschwemmung?',
  'How thick does the cake get?': 'Wie dick wird der Kuchen?',
  'How much cake does the space between the septa hold?': 'Wie viel Kuchen fasst der Raum zwischen den Stützschichten?',
  'So much powder in so much water: how strong is the slurry?':
    'So viel Pulver in so viel Wasser: Wie stark ist die Suspension?',
  'How much water goes to this powder?': 'Wie viel Wasser gehört zu diesem Pulver?',
  'How many kg of body feed does an hour take?': 'Wie viele kg laufende Dosage braucht eine Stunde?',
  'To how many L/h do I set the dosing pump?': 'Auf wie viele L/h stelle ich die Dosierpumpe?',
  'What dose does the pump give at this setting?': 'Welche Dosis gibt die Pumpe bei dieser Einstellung?',
  'When must the next slurry be made up?': 'Wann muss die nächste Suspension angesetzt werden?',
  'The cell count is known: how much solids does the beer bring to the cake?':
    'Die Zellzahl ist bekannt: Wie viel Feststoff bringt das Bier auf den Kuchen?',
  'How much dry cake does a hL make?': 'Wie viel trockenen Kuchen macht ein hL?',
  'The new stabiliser is a filter aid too: how much body feed can I save?':
    'Das neue Stabilisierungsmittel ist auch Filterhilfsmittel: Wie viel laufende Dosage kann ich sparen?',
  'How viscous is the water of a precoat circulation or a test?':
    'Wie zäh ist das Wasser eines Voranschwemmkreislaufs oder eines Tests?',
  'What does a m³ of this water weigh?': 'Was wiegt ein m³ dieses Wassers?',
  'The laboratory measured at 20 °C: how viscous is the beer, about, at the filter?':
    'Das Labor hat bei 20 °C gemessen: Wie zäh ist das Bier ungefähr am Filter?',
  'Which cake resistance belongs to this permeability?': 'Welcher Kuchenwiderstand gehört zu dieser Permeabilität?',
  'Which permeability belongs to this cake resistance?': 'Welche Permeabilität gehört zu diesem Kuchenwiderstand?',
  'How permeable is a cake of these powders and beer solids?':
    'Wie durchlässig ist ein Kuchen aus diesen Pulvern und Bierfeststoffen?',
  'How permeable are the beer solids, or a new stabiliser, on their own?':
    'Wie durchlässig sind die Bierfeststoffe oder ein neues Stabilisierungsmittel für sich?',
  'Does this lot of powder let through what the last one did?':
    'Lässt diese Charge Pulver so viel durch wie die letzte?',
  'What pressure drop does this cake take at this flow?':
    'Welchen Druckabfall macht dieser Kuchen bei diesem Durchfluss?',
  'How fast does the pressure rise?': 'Wie schnell steigt der Druck?',
  'What does my trial log say about cake and precoat?': 'Was sagt mein Protokoll über Kuchen und Voranschwemmung?',
  'How do cake and cloth resist, by my leaf test?': 'Wie widerstehen Kuchen und Tuch nach meinem Blatttest?',
  'How compressible is my cake?': 'Wie kompressibel ist mein Kuchen?',
  'How permeable are filter aid and beer solids in my cake?':
    'Wie durchlässig sind Filterhilfsmittel und Bierfeststoffe in meinem Kuchen?',
  'How fast does the pressure rise at this body feed?': 'Wie schnell steigt der Druck bei dieser laufenden Dosage?',
  'How many hL does a run give?': 'Wie viele hL gibt ein Lauf?',
  'How long does a run last, and what ends it?': 'Wie lange hält ein Lauf (Standzeit), und was beendet ihn?',
  'How does the pressure rise through the run?': 'Wie steigt der Druck über den Lauf?',
  'What does filtration cost, and where does the money go?': 'Was kostet die Filtration, und wohin geht das Geld?',
  'Which body feed filters at the least cost?': 'Welche laufende Dosage filtriert am günstigsten?',
  'How do run and cost change with the body feed?': 'Wie ändern sich Lauf und Kosten mit der laufenden Dosage?',
  'Which body feed makes a run this long?': 'Welche laufende Dosage macht einen Lauf so lang?',
  'What may the new stabiliser cost at most?': 'Was darf das neue Stabilisierungsmittel höchstens kosten?',
  'Where does the saving come from, and what gets dearer?': 'Woher kommt die Ersparnis, und was wird teurer?',
  'How sure is the saving?': 'Wie sicher ist die Ersparnis?',
  'Which of my guesses matters most?': 'Welche meiner Annahmen zählt am meisten?',
  'Does every figure of my plan make sense?': 'Ist jeder Wert meines Plans sinnvoll?',
  'What does this powder cost per hL?': 'Was kostet dieses Pulver je hL?',
  'How much powder does a hL take in all?': 'Wie viel Pulver braucht ein hL insgesamt?',
  'What does a usable kg cost with discount, duty, freight and loss?':
    'Was kostet ein brauchbares kg mit Rabatt, Zoll, Fracht und Verlust?',
  'Which offer is the cheapest once water and dose are counted?':
    'Welches Angebot ist das günstigste, wenn Wasser und Dosis zählen?',
  'How much spent cake must be taken away?': 'Wie viel Altkuchen muss abgefahren werden?',
  'What does the disposal of this spent cake cost?': 'Was kostet die Entsorgung dieses Altkuchens?',
  'How much powder must I buy in a year?': 'Wie viel Pulver muss ich im Jahr kaufen?',
  'How many runs does a year take?': 'Wie viele Läufe braucht ein Jahr?',
  'What may the new powder cost at most?': 'Was darf das neue Pulver höchstens kosten?',
  'What is this figure in the units of my sheet?': 'Was ist dieser Wert in den Einheiten meiner Tabelle?',
  'Does a drinker see this haze?': 'Sieht ein Gast diese Trübung?',
  'How much polyphenol does this absorbance mean?': 'Wie viel Polyphenol bedeutet diese Extinktion?',
  'How much dust did a worker breathe, averaged over the shift?':
    'Wie viel Staub hat jemand im Mittel der Schicht eingeatmet?',
  'Several dusts at once: are they too much together?': 'Mehrere Stäube zugleich: Sind sie zusammen zu viel?',
  'Within which limits may this input lie, and what is usual?':
    'In welchen Grenzen darf diese Eingabe liegen, und was ist üblich?',
  'Is this figure within its safe range?': 'Liegt dieser Wert in seinem sicheren Bereich?',
  'How compressible is my cake, by the log of a run?':
    'Wie kompressibel ist mein Kuchen nach dem Protokoll eines Laufs?',
  'How compressible are the cakes of all my runs together?':
    'Wie kompressibel sind die Kuchen aller meiner Läufe zusammen?',
  'Is the new powder really better, or do runs just differ?':
    'Ist das neue Pulver wirklich besser, oder unterscheiden sich Läufe eben?',
  'How many runs, and in which order, to see a difference of so many percent?':
    'Wie viele Läufe, in welcher Folge, um einen Unterschied von so viel Prozent zu erkennen?',
  'How many hL does a run of each beer give?': 'Wie viele hL bringt ein Lauf mit jedem Bier?',
  'Which of my beers is dear to filter, and why?': 'Welches meiner Biere ist teuer zu filtrieren, und warum?',
  'Which of my guesses moves the saving most?': 'Welche meiner Schätzungen bewegt die Ersparnis am meisten?',
  'How fast does the pressure rise, and how sure is that?': 'Wie schnell steigt der Druck, und wie sicher ist das?',
  'How little body feed keeps my beer clear?': 'Wie wenig laufende Dosage hält mein Bier klar?',
  'The beer gets murkier: how much body feed keeps the cake as open?':
    'Das Bier wird trüber: Wie viel laufende Dosage hält den Kuchen so offen?',
  'How far does a run get when the beer changes on the way?':
    'Wie weit kommt ein Lauf, wenn sich das Bier unterwegs ändert?',
};
