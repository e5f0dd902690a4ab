import type { Texts } from './dictionary.js';

/** The words of the pictures, in German. */
export const picture: Texts['picture'] = {
  reading: 'Die Formel wird gelesen …',
  unknown: {
    function: (what) =>
      `Kein Bild: ${what} rechnet nur die Arbeitsmappe. Setzen Sie es in eine eigene Zelle und verweisen Sie auf diese.`,
    reference: (what) =>
      `Kein Bild: Das Fenster kann ${what} nicht folgen. Verweisen Sie auf einfache Zellen oder Namen.`,
    operator: (what) =>
      `Kein Bild: „${what}“ rechnet nur die Arbeitsmappe. Setzen Sie es in eine eigene Zelle und verweisen Sie auf diese.`,
    missing: (what) => `Kein Bild: ${what} gibt es in der Arbeitsmappe nicht.`,
  },
  refused: (id) => `Kein Bild zu ${id}:`,
  table: 'Die Zahlen als Tabelle',
  copy: 'Bild kopieren',
  savePng: 'Als PNG sichern',
  saveSvg: 'Als SVG sichern',
  copied: 'Das Bild ist in der Zwischenablage.',
  copiedText: 'Dieser Browser nimmt keine Bilder: Das Bild ist als SVG-Text in der Zwischenablage.',
  notCopied: 'Die Zwischenablage ist von hier aus nicht erreichbar. Sichern Sie das Bild stattdessen.',
  saved: (name) => `${name} geht in Ihre Downloads.`,
  drawn: (shown, all) => `${shown} von ${all} Punkten sind gezeichnet; angepasst wird an alle.`,
  per: (amount, unit) => `${amount} je ${unit}`,
  residual: 'Abweichung',
  measured: 'Gemessen',
  fitted: 'Angepasst',
  fit: {
    title: 'Daten und Anpassung',
    residuals: 'Darunter: was die Anpassung von jedem Punkt übrig lässt.',
    quality: (rSquared) => `R² ist ${rSquared}.`,
  },
  run: {
    title: 'Druck und Kuchen während der Filtration',
    summary: (from, to, volume, time) =>
      `Der Druckabfall steigt von ${from} auf ${to} über ${volume}, das sind ${time}.`,
    ends: {
      pressure: 'Die Druckgrenze beendet den Lauf.',
      'cake space': 'Der Kuchenraum beendet den Lauf.',
      'run limit': 'Die Laufgrenze beendet den Lauf.',
      several: (names) => `Zugleich beenden den Lauf: ${names}.`,
    },
    end: {
      pressure: 'Druckgrenze',
      'cake space': 'Kuchenraum',
      'run limit': 'Laufgrenze',
    },
    limit: (value) => `Grenze ${value}`,
    space: (value) => `Kuchenraum ${value}`,
    endsHere: (what) => `Ende: ${what}`,
    permeabilities:
      'Nimmt gleichbleibenden Durchfluss, gleichbleibendes Bier und einen Kuchen an, dessen Durchlässigkeit aus seinen Teilen folgt. Das ist ein Modell: Trauen Sie ihm so weit, wie seine Durchlässigkeiten an Ihre eigenen Läufe angepasst sind (FITFEED).',
    resistance:
      'Nimmt gleichbleibenden Durchfluss und gleichbleibendes Bier an. Der Kuchenwiderstand gilt für die Pulvermischung, das Bier und den Filter, an denen er bestimmt wurde, und für nichts sonst.',
  },
  feed: {
    title: 'Kosten, Druckanstieg und Lauf über der Dosage',
    summary: (best, cost, run) =>
      `Die geringsten Kosten sind ${cost} bei einer Dosage von ${best}; der Lauf beträgt dann ${run}.`,
    today: (feed, cost) => `Die heutige Dosage von ${feed} kostet ${cost}.`,
    atLeast: 'Das ist die geringste erlaubte Dosage: Die Klarheit bestimmt sie, nicht der Preis.',
    atMost: 'Das ist die höchste erlaubte Dosage: Die Kosten fallen dort noch.',
    best: (feed) => `am günstigsten ${feed}`,
    now: (feed) => `heute ${feed}`,
    note: 'Wägt allein die Kosten: Die Klarheit kann mehr verlangen. Dahinter steht ein Modell des Kuchens: Trauen Sie ihm so weit, wie seine Durchlässigkeiten an Ihre eigenen Läufe angepasst sind (FITFEED), und nahe den gefahrenen Dosagen.',
  },
  saving: {
    title: 'Wohin das Geld geht',
    sets: ['Heutiger Plan', 'Vorgeschlagener Plan'],
    saves: (perHl, perYear) => `Der vorgeschlagene Plan spart ${perHl}, das sind ${perYear} im Jahr.`,
    costs: (perHl, perYear) => `Der vorgeschlagene Plan kostet ${perHl} mehr, das sind ${perYear} im Jahr.`,
    cheaper: (items) => `Billiger: ${items}.`,
    dearer: (items) => `Teurer: ${items}.`,
    less: (amount) => `${amount} im Jahr weniger`,
    more: (amount) => `${amount} im Jahr mehr`,
    note: 'Jeder Plan ist auf seinen eigenen Lauf gerechnet. Die Ersparnis ist so gut wie Durchlässigkeiten, Dosagen und Preise in beiden Spalten: Das Modell erfindet keine und beweist keine.',
  },
  spread: {
    title: 'Wie sicher die Ersparnis ist',
    summary: (p10, p50, p90) =>
      `Die Hälfte der Ziehungen spart mehr als ${p50} im Jahr; eine von zehn weniger als ${p10}, eine von zehn mehr als ${p90}.`,
    chance: (share, error) => `In ${share} von ihnen spart der vorgeschlagene Plan (Standardfehler ${error}).`,
    missing: (count, all) => `${count} von ${all} Ziehungen haben keinen Lauf und sind ausgelassen.`,
    mark: (name, value) => `${name} ${value}`,
    saving: 'Ersparnis im Jahr',
    share: 'Anteil der Ziehungen',
    from: 'Von',
    to: 'Bis',
    some: (shown, all) => `Die Säulen zählen die ersten ${shown} von ${all} Ziehungen, die Marken alle.`,
    note: 'Die Streuung ist die der Enden in den Spalten, jedes aus einem Dreieck mit der Spitze in der Mitte gezogen: Sie ist so gut wie diese Enden und an nichts angepasst.',
  },
  sensitivity: {
    title: 'Was die Kosten am meisten bewegt',
    sets: ['Am unteren Ende', 'Am oberen Ende'],
    ends: (low, high) => `${low} bis ${high}`,
    noRun: (ends) => `${ends}: an einem Ende kein Lauf`,
    none: 'kein Lauf',
    middle: (cost) => `Mit jedem Wert in der Mitte seiner Enden betragen die Kosten ${cost}.`,
    widest: (label) => `${label} bewegt sie am meisten.`,
    some: (shown, all) => `Gezeichnet sind die breitesten ${shown} von ${all} Zeilen.`,
    idle: (count) => `${count} Zeilen mit zwei Enden bewirken nichts und sind ausgelassen.`,
    note: 'Jeweils ein Wert, die anderen in der Mitte: Was zwei zusammen bewirken, zeigt sich nicht. Die Balken sind so gut wie die gegebenen Enden.',
  },
  fitRun: {
    summary: (rows, start, rise) =>
      `${rows} Ablesungen. Der angepasste Druckabfall beginnt bei ${start} und steigt um ${rise}.`,
    note: 'An die Zeilen dieses Protokolls nach kleinsten Quadraten angepasst. Nimmt gleichbleibenden Durchfluss, gleichbleibendes Bier und einen starren Kuchen an; der Widerstand gilt für diese Pulvermischung, dieses Bier und diesen Filter.',
  },
  ladder: {
    summary: (start, plateau, largest) =>
      `Die angepasste Trübung fällt von ${start} ohne Dosage gegen einen Boden von ${plateau}. Die größte versuchte Dosage ist ${largest}.`,
    plateau: (value) => `Boden ${value}`,
    note: 'An diese Dosagen in diesem Bier angepasst. Die Kurve ist ein Modell: Jenseits der größten versuchten Dosage ist sie geraten.',
  },
  leaf: {
    time: 'Zeit je Filtrat',
    summary: (resistance, medium) =>
      `Zeit je Filtrat über dem Filtrat. Die Gerade ergibt einen Kuchenwiderstand von ${resistance} und einen Mediumwiderstand von ${medium}.`,
    note: 'An diesen Blatttest nach kleinsten Quadraten angepasst. Bei einem kompressiblen Kuchen gilt er nur bei diesem Druck.',
  },
  compression: {
    ratio: 'Gemessen durch angepasst',
    summary: (exponent, resistance) =>
      `Beide Achsen sind logarithmisch. Der Widerstand bei 1 bar ist ${resistance}; er wächst mit dem Druck hoch ${exponent}.`,
    note: 'Ein Potenzgesetz, an die Logarithmen angepasst. Trauen Sie ihm nicht über die geprüften Drücke hinaus.',
  },
};
