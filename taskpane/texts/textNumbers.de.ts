import type { Texts } from './dictionary.js';

/** The words for texts that look like numbers, in German. */
export const textNumbers: Texts['textNumbers'] = {
  looks: 'Das sieht wie eine Zahl aus, ist aber ein Text: Formeln rechnen nicht damit.',
  turn: 'In Zahlen umwandeln',
  turnThere: (place) => `In Zahlen umwandeln: ${place}`,
  turned: (count, place) => `In Zahlen umgewandelte Texte: ${count}, in ${place}. „Rückgängig“ nimmt es zurück.`,
  shownBy: (text) => `Das Dezimalzeichen wurde ${text} entnommen.`,
  left: (count) => `Texte geblieben, da sich darin keine Zahl lesen lässt: ${count}.`,
};
