import type { Texts } from './dictionary.js';

/** The words for saving the workbook as an .xlsx file, in German. */
export const save: Texts['save'] = {
  button: 'Als .xlsx speichern',
  busy: 'Wird geschrieben…',
  file: 'Powderbook',
  tooLarge: (reason) =>
    `Die Datei ist dem Browser übergeben, aber diese Seite würde sie nicht wieder öffnen: ${reason} Excel öffnet sie. Ihre Arbeitsmappe hier ist, wie sie war.`,
  valuesFile: (name) => `${name} (Werte)`,
  confirm: 'Speichern',
  title: 'Was soll die Datei enthalten?',
  ways: {
    formulas: {
      label: 'Die Arbeitsmappe mit allen Formeln',
      sentence: 'Für Excel mit Powderbook, und um sie hier wieder zu öffnen.',
    },
    values: {
      label: 'Die Arbeitsmappe mit Werten anstelle der Formeln von Powderbook',
      sentence:
        'Für alle ohne Powderbook, in jedem Tabellenprogramm: seine Ergebnisse stehen als Zahlen, alle anderen Formeln rechnen weiter.',
    },
    sheet: {
      label: 'Nur das gezeigte Blatt, auf dieselbe Weise',
      sentence: 'Was es aus anderen Blättern liest, steht ebenfalls als Zahl.',
    },
  },
  saved: {
    formulas:
      'Die Datei ist dem Browser übergeben, der sie bei seinen Downloads ablegt. Ihre Formeln rechnen in Excel mit Powderbook. Ohne es zeigt Excel die letzten Ergebnisse, bis es neu rechnet; andere Programme zeigen #NAME?, wo ein Ergebnis mehrere Zellen füllt. Für sie speichern Sie mit Werten.',
    values:
      'Die Datei ist dem Browser übergeben, der sie bei seinen Downloads ablegt. Die Ergebnisse von Powderbook stehen darin als Zahlen, die nicht folgen, wenn sich andere ändern; die Formeln von Tabellenprogrammen sind weiter Formeln.',
  },
  coloursLeft:
    'Für einen Filter nach mehreren Farben zugleich ist in einer solchen Datei kein Platz: Seine Zeilen sind dort ausgeblendet, aber wonach er fragt, bleibt nicht erhalten.',
  failed: 'Es wurde keine Datei geschrieben. Die Arbeitsmappe ist, wie sie war.',
};
