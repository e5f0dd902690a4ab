import type { Texts } from './dictionary.js';

/** The words of the embedded workbook's own page, around grid and pane, in German. */
export const workbook: Texts['workbook'] = {
  loading: 'Das Gitter wird geladen. Die Funktionen sind schon zu lesen.',
  gridFailed: (detail) => `Das Gitter konnte nicht starten: ${detail}`,
  cancel: 'Abbrechen',
  close: 'Schließen',
  note: {
    menu: 'Notiz…',
    title: (address: string) => `Notiz zu ${address}`,
    save: 'Notiz speichern',
    remove: 'Notiz löschen',
  },
  saving: {
    loading: 'Die Arbeitsmappe wird geöffnet …',
    saving: 'Wird gespeichert …',
    saved: 'In diesem Browser gespeichert',
    failed:
      'Nicht gespeichert: Dieser Browser hebt für diese Seite nichts auf. Kopieren Sie vor dem Schließen, was Sie brauchen.',
    elsewhere: 'Nur zum Lesen: Ein anderer Tab hat diese Arbeitsmappe und speichert sie.',
  },
  startAfresh: {
    button: 'Neu beginnen',
    title: 'Neu beginnen?',
    text: 'Eine neue Arbeitsmappe mit dem Dosierblatt tritt an die Stelle dieser hier. Diese wird aufgehoben, und „Zurückholen“ tauscht die beiden.',
  },
  bringBack: {
    button: 'Zurückholen',
    title: 'Die Arbeitsmappe von vorher zurückholen?',
    text: 'Sie tritt an die Stelle dieser hier. Diese wird dafür aufgehoben, und „Zurückholen“ tauscht die beiden wieder.',
  },
  print: 'Drucken',
  takeOver: 'Hierher übernehmen',
  takenOver: 'Ein anderer Tab hat die Arbeitsmappe übernommen. Hier lässt sie sich nur lesen.',
  storage: 'Der Speicher des Browsers hat nicht geantwortet. Alles bleibt, wie es ist.',
  keptAside: (key) =>
    `Die gespeicherte Arbeitsmappe ließ sich nicht öffnen. Sie bleibt in diesem Browser unter „${key}“ aufgehoben, und eine neue ist offen.`,
  notKeptAside:
    'Die gespeicherte Arbeitsmappe ließ sich weder öffnen noch beiseitelegen. Eine neue ist offen, sie wird aber nicht gespeichert.',
  trialLeft:
    'Die Arbeitsmappe aus der Datei hat die Seite zu lange beschäftigt. Die vorherige ist wieder offen; darin ist nichts verloren.',
  trialCareful:
    'Der letzte Start kam nicht so weit, dass die Seite antwortete. Dieser berechnet nichts, damit Sie die Ursache beheben oder die vorherige Arbeitsmappe zurückholen können. „Berechnen“ berechnet wieder, ebenso ein neues Öffnen der Seite.',
  left: {
    formula: (where) =>
      `Die Formel in ${where} kam zu keinem Ende und wurde angehalten. Sie bleibt, wie sie ist, mit ihrer letzten Antwort, wo sie eine hatte; wird sie geändert, wird sie wieder berechnet.`,
    tooLarge: (where) =>
      `Die Formel in ${where} verlangt mehr Zellen, als auf einmal berechnet werden. Sie bleibt, wie sie ist, mit ihrer letzten Antwort, wo sie eine hatte.`,
    rules: (sheet) =>
      `Die Regeln und bedingten Formate von ${sheet} kamen zu keinem Ende und wurden angehalten. Alles andere wird berechnet.`,
    all: 'Die Arbeitsmappe beschäftigt die Berechnung zu lange; sie wurde angehalten. Formeln behalten ihre letzten Antworten, bis Sie „Berechnen“ wählen; Eingaben werden angenommen und gespeichert.',
  },
  calculation: {
    busy: { says: 'Wird berechnet …', button: 'Anhalten' },
    stopped: { says: 'Nichts wird berechnet.', button: 'Berechnen' },
  },
  printedEarly: 'Die Berechnung war noch nicht zu Ende: Zahlen können fehlen oder älter sein als die Eingaben.',
  steps: { back: 'Rückgängig', forth: 'Wiederholen' },
  parts: { heading: 'Gezeigter Teil', sheet: 'Blatt', functions: 'Funktionen', width: 'Breite der Funktionen' },
  keys: 'wechselt zwischen Blatt und Funktionen',
  tabs: {
    heading: 'Blätter',
    add: 'Neues Blatt',
    rename: 'Umbenennen',
    name: 'Name des Blatts',
    delete: 'Löschen',
    deleteTitle: (name) => `Das Blatt ${name} löschen?`,
    deleteText:
      'Was darauf steht, ist dann fort, und Formeln auf anderen Blättern, die davon lesen, zeigen einen Fehler.',
    more: 'Mehr',
    left: 'Nach links',
    right: 'Nach rechts',
    hide: 'Ausblenden',
    unhide: 'Ausgeblendetes Blatt zeigen',
    colour: 'Farbe des Reiters',
    newName: (number) => `Blatt ${number}`,
    notRenamed: (reason) => `Nicht umbenannt: ${reason}`,
    noName: 'Ein Blatt braucht einen Namen.',
    longName: (most) => `Der Name eines Blatts hat höchstens ${most} Zeichen.`,
    markInName: (marks) => `Im Namen eines Blatts darf keines der Zeichen ${marks} stehen.`,
    takenName: (name) => `Ein anderes Blatt heißt schon ${name}.`,
  },
  grid: {
    notifications: 'Mitteilungen des Gitters',
    moreNotifications: (part) => `Mitteilungen des Gitters, Teil ${part}`,
    address: 'Adresse oder Name der Zelle',
    names: 'Namen in dieser Arbeitsmappe',
  },
};
