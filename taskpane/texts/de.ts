import { german } from '../../functions/german/index.js';
import { charts } from './charts.de.js';
import { check } from './check.de.js';
import type { Texts } from './dictionary.js';
import { entry } from './entry.de.js';
import { explain } from './explain.de.js';
import { format } from './format.de.js';
import { host } from './host.de.js';
import { open } from './open.de.js';
import { picture } from './picture.de.js';
import { save } from './save.de.js';
import { share } from './share.de.js';
import { textNumbers } from './textNumbers.de.js';
import { workbook } from './workbook.de.js';

/** Every word of the pane that no declaration holds, in German. */
export const de: Texts = {
  say: german.say,
  pane: 'Powderbook',
  tabs: { functions: 'Funktionen', check: 'Prüfen', sheets: 'Blätter', help: 'Hilfe' },
  sections: 'Teile des Fensters',
  outside:
    'Diese Seite gehört in Excel: Öffnen Sie Powderbook dort über das Menüband. Für den Browser allein gibt es workbook.html, die eingebettete Arbeitsmappe.',
  failed: (detail) => `Die Arbeitsmappe konnte das nicht ausführen: ${detail}`,
  selected: {
    above: 'Zelle und Diagramme',
    heading: 'Ausgewählte Zelle',
    none: 'Noch ist keine Zelle ausgewählt.',
    blank: 'leer',
    yes: 'WAHR',
    no: 'FALSCH',
    formula: 'Formel',
    kept: (formula) =>
      `Hier steht der letzte Wert aus der Datei: Das Gitter kann ${formula} nicht rechnen, und keine Ihrer Änderungen ändert ihn.`,
    filledBy: (address) => `Sie steht in ${address} und füllt auch diese Zelle.`,
    value: 'Wert',
    refused: 'Abgelehnt',
    noAnswer: 'Keine Antwort',
    explain: (id) => `${id} erklären`,
  },
  explain,
  picture,
  check,
  charts,
  entry,
  format,
  host,
  open,
  save,
  share,
  textNumbers,
  workbook,
  list: {
    search: 'Funktionen suchen',
    hint: 'Ein Name, ein Wort oder eine Frage: Wie lange dauert mein Lauf?',
    count: (shown, all) => `${shown} von ${all} Funktionen`,
    nothing: 'Keine Funktion passt. Versuchen Sie ein anderes Wort oder weniger Buchstaben.',
    clear: 'Alle Funktionen zeigen',
  },
  card: {
    back: 'Alle Funktionen',
    inputs: 'Eingaben',
    range: 'Woher der Bereich stammt',
    preset: (value) => `Vorgabe ${value}`,
    optional: 'darf leer bleiben',
    asGiven: 'beliebige Einheit',
    limits: (least, most) => `Grenzen ${least} bis ${most}`,
    usual: (from, to) => `üblich ${from} bis ${to}`,
    isUsual: 'üblich',
    isUnusual: 'unüblich',
    isRefused: 'abgelehnt',
    words: 'Zur Wahl',
    unfit: (word, reason) => `Nicht ${word}: ${reason}`,
    unfitOption: (word) => `${word} (passt nicht)`,
    oneALine: 'Ein Wert je Zeile.',
    method: 'Methode',
    sources: 'Quellen',
    cautions: 'Vorsicht',
  },
  result: {
    example: 'Durchgerechnetes Beispiel',
    yours: 'Mit Ihren Werten',
    table: 'Antwort als Tabelle',
    backToExample: 'Zurück zum Beispiel',
    laidOut: 'Mit den Eingaben ab Zelle A1, so wie die Schaltfläche unten sie schreibt.',
    refused: 'Abgelehnt',
    noAnswer: 'Keine Antwort (#NV)',
    incomplete: 'Eine Eingabe oben braucht einen anderen Wert.',
  },
  insert: {
    button: 'In das Blatt einfügen',
    where: 'Schreibt die Eingaben mit Bezeichnung und Einheit sowie die Formel ab der ausgewählten Zelle.',
    below: (rows, columns) =>
      `Die Antwort läuft unter den Eingaben über ${rows} × ${columns} Zellen; der Block hält sie frei.`,
    beside: (rows, columns) =>
      `Die Antwort läuft rechts neben den Eingaben über ${rows} × ${columns} Zellen; der Block hält sie frei.`,
    busy: 'Wird geschrieben …',
    done: (address) => `In ${address} geschrieben.`,
    anyway: 'Trotzdem schreiben',
    anywayHint: 'Was in diesen Zellen steht, wird dann ersetzt.',
    correct: 'Nichts wurde geschrieben: Berichtigen Sie zuerst die markierte Eingabe.',
  },
  sheets: {
    intro:
      'Fertige Blätter mit den Zahlen einer erfundenen Brauerei, die Sie durch Ihre ersetzen. Jedes wird ein neues Blatt.',
    insert: 'Einfügen',
    insertNamed: (name) => `${name} einfügen`,
    insertEmpty: 'Ohne Zahlen beginnen',
    insertEmptyNamed: (name) => `Ohne Zahlen beginnen: ${name}`,
    busy: 'Wird eingefügt …',
    done: (name) => `Das Blatt ${name} wurde eingefügt.`,
  },
  help: {
    errors: 'Was ein Fehler in einer Zelle bedeutet',
    error: {
      '#VALUE!':
        'In deutschem Excel #WERT!. Eine Eingabe wurde abgelehnt. Der Satz nennt die Eingabe, ihre Grenzen, die Einheit und den gegebenen Wert.',
      '#N/A':
        'In deutschem Excel #NV. Es gibt keine Antwort, und der Satz sagt, warum; oder die Stelle liegt außerhalb eines der Bereiche, etwa wenn eine Spalte mit 5 Werten auf eine mit 3 trifft.',
      '#BUSY!': 'Excel rechnet noch, oder die Funktionen werden noch geladen. Das vergeht von selbst.',
      '#NAME?':
        'Der Name ist nicht bekannt: Er ist falsch geschrieben, oder die Funktionen sind nicht geladen. Öffnen Sie in Excel Powderbook über das Menüband und rechnen Sie mit Strg+Alt+F9 neu. Auch wer die Datei ohne das Add-In hat, sieht das.',
      '#CALC!': 'In deutschem Excel #KALK!. Excel bekam etwas, das nicht in Zellen passt, etwa einen leeren Bereich.',
      '#SPILL!':
        'In deutschem Excel #ÜBERLAUF!. Die Antwort braucht mehrere Zellen, und in einer davon steht etwas. Leeren oder verschieben Sie sie.',
      '#DIV/0!': 'Eine Eingabezelle zeigt diesen Fehler, und die Funktion gibt ihn weiter: Sehen Sie zuerst dort nach.',
      '#NUM!':
        'In deutschem Excel #ZAHL!. Eine Eingabezelle zeigt diesen Fehler, und die Funktion gibt ihn weiter: Sehen Sie zuerst dort nach.',
      '#CYCLE!':
        'Zirkelbezug: Die Formel liest ihre eigene Antwort, unmittelbar oder über andere Zellen, oder sie liest eine solche Zelle. Lassen Sie eine davon anderswo lesen.',
      '#REF!':
        'In deutschem Excel #BEZUG!. Eine Eingabezelle zeigt diesen Fehler, und die Funktion gibt ihn weiter: Sehen Sie zuerst dort nach.',
    },
    busy: 'Warum in einer Zelle #BUSY! steht',
    busyText:
      'In deutschem Excel #BESCHÄFTIGT!. Excel rechnet Funktionen von Add-Ins neben den eigenen und zeigt das, bis sie antworten, meist weniger als eine Sekunde. Eine Kette von Zellen, die aufeinander warten, braucht an jedem Glied länger: Eine Formel über eine ganze Spalte ist schneller. Bleibt es eine Minute stehen, öffnen Sie Powderbook über das Menüband und rechnen Sie mit Strg+Alt+F9 neu. Die eingebettete Arbeitsmappe kennt das nicht.',
    loading: 'Powderbook in Excel laden',
    loadingText:
      'Excel fragt einmal nach der Datei manifest.xml. Im Web: Add-Ins, Weitere Add-Ins, Meine Add-Ins, Mein Add-In hochladen. In einer Firma verteilt es die Verwaltung über das Admin Center. Danach öffnet die Schaltfläche im Menüband dieses Fenster, und die Funktionen sind da, solange eine Arbeitsmappe offen ist; eine Arbeitsmappe mit #NAME? wurde geöffnet, bevor sie geladen waren.',
    sharing: 'Eine Arbeitsmappe weitergeben',
    sharingText:
      'Wer das Add-In nicht hat, sieht die letzten Zahlen, bis das Blatt neu gerechnet wird, und danach #NAME?. Unter „Blätter“ macht „Kopie mit Werten anlegen“ eine Kopie, die überall die Zahlen zeigt.',
    whereExcel: 'In Excel erscheint der Satz, wenn Sie auf das Zeichen neben der Zelle zeigen.',
    whereEmbedded: 'Der Satz steht oben in diesem Fenster, wenn Sie die Zelle auswählen.',
    blank: 'Leere Zellen und 0',
    blankText:
      'Eine leere Zelle zählt als 0, weil manche Arbeitsmappen sie so übergeben. Liegt 0 außerhalb der Grenzen, wird die Eingabe abgelehnt, und der Satz sagt „blank or 0“. In einem Plan fehlt ein leerer Wert, wenn sein Name keine Vorgabe hat: Einen Preis von nichts tippen Sie als 0. Eine Eingabe, die in der Formel fehlt, nimmt ihre Vorgabe an.',
    shares: 'Anteile und Prozente',
    sharesText: 'Feuchte und andere Anteile sind Brüche: Schreiben Sie 65 % oder 0,65. Die Zahl 65 wird abgelehnt.',
    limits: 'Grenzen und übliche Bereiche',
    limitsText:
      'Ein Wert außerhalb der Grenzen wird abgelehnt. Mit einem Wert außerhalb des üblichen Bereichs wird trotzdem gerechnet: Er verdient einen zweiten Blick, mehr nicht.',
    columns: 'Ganze Spalten',
    columnsText:
      'Geben Sie statt einer Zelle eine Spalte an, und die Antworten laufen daneben nach unten. Eine Formel über eine Spalte ist viel schneller als eine Spalte voller Formeln.',
    cautions: 'Vorsicht',
    about: 'Über Powderbook',
    aboutText:
      'Copyright 2026 the Powderbook contributors, unter der MIT-Lizenz. Es rechnet auf diesem Rechner und sendet nichts irgendwohin. In Excel arbeitet es über Microsofts office.js, unverändert und zu dessen eigenen Bedingungen weitergegeben; Microsoft ist für Wartung, Aktualisierung und Unterstützung von Powderbook nicht verantwortlich.',
    licences: 'Lizenzen aller seiner Teile',
  },
};
