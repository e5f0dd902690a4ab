import type { Texts } from './dictionary.js';

/** The words of the check of a whole sheet, in German. */
export const check: Texts['check'] = {
  intro:
    'Liest jede POWDER-Formel und nennt abgelehnte und unübliche Eingaben, Zellen mit Fehlern, Zahlen, die als Text dastehen, und Zahlen, die einen zweiten Blick verdienen. Geändert wird nichts.',
  scope: 'Was geprüft wird',
  sheet: 'Dieses Blatt',
  workbook: 'Alle Blätter',
  start: 'Jetzt prüfen',
  cancel: 'Abbrechen',
  reading: 'Die Blätter werden gelesen …',
  progress: (share) => `Geprüft: ${share}`,
  progressName: 'Fortschritt der Prüfung',
  cancelled: 'Die Prüfung wurde abgebrochen.',
  done: (formulas, findings) => `Geprüfte POWDER-Formeln: ${formulas}. Anzusehen: ${findings}.`,
  noFormulas: 'Hier steht keine POWDER-Formel.',
  fine: 'Nichts anzusehen: Jede Eingabe ist üblich, und keine Zelle zeigt einen Fehler.',
  kinds: {
    refused: 'Abgelehnte Eingaben',
    error: 'Zellen mit einem Fehler',
    percentage: 'Anteile, die nach Prozent aussehen',
    dose: 'Gaben, die einander widersprechen',
    text: 'Zahlen, die als Text dastehen',
    unusual: 'Unübliche Eingaben',
    constant: 'Dieselbe Zahl in viele Formeln getippt',
  },
  dose: (value, other, place) => `Hier ${value}, aber ${other} in ${place}.`,
  constant: (value, count) =>
    `${value} steht getippt in ${count} Formeln. In einer eigenen Zelle ließe sich der Wert an einer Stelle ändern.`,
  text: (count) => `Texte, die wie Zahlen aussehen: ${count}. Formeln rechnen nicht damit.`,
  goThere: (place) => `Zu ${place} gehen`,
  more: (count) => `und ${count} weitere; die Liste auf einem Blatt hat sie alle`,
  toSheet: 'Liste auf ein eigenes Blatt schreiben',
  listed: 'Die Liste steht auf einem neuen Blatt, das jetzt offen ist.',
  list: {
    name: 'Prüfung',
    title: 'Was die Prüfung fand',
    summary: 'Die Liste dessen, was einen Blick verdient.',
    kind: 'Art',
    sheet: 'Blatt',
    cell: 'Zelle',
    subject: 'Worum es geht',
    sentence: 'Was damit ist',
  },
};
