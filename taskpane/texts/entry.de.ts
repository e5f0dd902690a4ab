import type { Texts } from './dictionary.js';

/** The words for what is typed or pasted and cannot be read, in German. */
export const entry: Texts['entry'] = {
  refused: (where, reason) => `In ${where} nicht eingetragen: ${reason}`,
  flagged: (where, typed, reason) => `${typed} steht nun in ${where}, wird aber abgelehnt werden: ${reason}`,
  unclear: (text) =>
    `${text} lässt sich auf mehr als eine Weise lesen. Trennen Sie Eingaben mit „;“ und schreiben Sie Dezimalstellen mit „,“.`,
  bothSeparators: 'Eingaben sind hier sowohl mit „;“ als auch mit „,“ getrennt. Nehmen Sie eines von beiden.',
  tooHeavy:
    'Über dieser Formel stünde das Gitter still: Sie ist zu groß, liest einen zu großen Bereich oder hat Namen, die sich selbst erklären. LAMBDA wird hier nicht berechnet.',
  noNumber: (text, decimal) => `${text} ist hier keine Zahl; das Dezimalzeichen ist „${decimal}“.`,
  perhaps: (number) => `Schreiben Sie ${number}, wenn das gemeint ist.`,
  tooFar: (rows, columns) => `Ein Blatt reicht hier bis ${rows} Zeilen und ${columns} Spalten.`,
  doesNotFit: (rows, columns) =>
    `Nicht eingefügt: ${rows} × ${columns} Zellen haben unter und neben der ausgewählten Zelle keinen Platz.`,
  pastedMark: (decimal, shownBy) =>
    `Das Eingefügte ist durchweg mit „${decimal}“ als Dezimalzeichen gelesen, denn ${shownBy} kommt darin vor.`,
  pastedOpen: (text, value, decimal) =>
    `${text} ist als ${value} gelesen: Das Dezimalzeichen ist hier „${decimal}“, und nichts sonst im Eingefügten zeigt ein anderes.`,
  pastedAsText: (texts) => `Als Text eingefügt, da nicht klar ist, welche Zahl gemeint ist: ${texts}`,
};
