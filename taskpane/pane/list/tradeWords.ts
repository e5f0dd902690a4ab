/**
 * What the trade says → the functions that answer it, in English and German, without accents. A word or a row of words
 * stands between commas. Only what the declarations themselves do not say is here.
 */
export const TRADE_WORDS: readonly (readonly [said: string, ids: readonly string[]])[] = [
  [
    'diatomaceous earth, diatomaceous, kieselguhr, kieselgur, guhr, gur, diatomeenerde, perlite, perlit',
    ['BODYFEED', 'PRECOATMASS', 'POWDERPERHL'],
  ],
  ['turbidity, turbid, trubung, haze, hazy', ['HAZEGRADE', 'FITCLARITY', 'LADDERDOSE']],
  ['ebc, ntu, ftu, fnu, asbc', ['TOUNIT', 'HAZEGRADE', 'FITCLARITY']],
  ['pvpp, tannoid, tannoids, tannin, tannins, gerbstoff, gerbstoffe', ['POLYPHENOLS', 'LADDERDOSE', 'SWAPDOSE']],
  [
    'clogging, clogged, clogs, clog, blinding, blinded, plugging, verstopfung, verstopft, verstopfen, verblockt',
    ['RISERATE', 'RISEREPORT', 'RUNLENGTH'],
  ],
  [
    `gallon, gallons, gallone, gallonen, barrel, barrels, bbl, litre, litres, liter, liters, pint, pints, pound, pounds,
    pfund, lb, lbs, ounce, ounces, unze, unzen, oz, psi, mbar, kpa, ppm, fahrenheit, celsius, °c, °f, convert,
    conversion, umrechnen, umrechnung, square feet, inch, inches, zoll`,
    ['TOUNIT'],
  ],
  ['°p, plato, degrees plato, grad plato, stammwurze, original gravity', ['TOUNIT', 'BEERVISCOSITY']],
  [
    'confidence, confidence interval, konfidenz, konfidenzintervall, vertrauen, vertrauensbereich, significant, signifikant',
    ['SAVINGSPREAD', 'COMPARERUNS', 'FITRUN'],
  ],
  [
    'claim, claims, complaint, complaints, reklamation, reklamationen, reklamieren, anspruch, anspruche, mangel',
    ['MOISTURECREDIT', 'COMPARERUNS'],
  ],
  ['currency, currencies, exchange rate, wahrung, wahrungen, wechselkurs, kurs', ['LANDEDPRICE', 'RANKQUOTES']],
  [
    'payment terms, payment, terms, early payment, zahlungsbedingungen, zahlungsziel, zahlung, skonto, rabatt',
    ['LANDEDPRICE', 'RANKQUOTES'],
  ],
  [
    `minimum order, minimum order quantity, minimum quantity, moq, mindestbestellmenge, mindestbestellung, mindestmenge,
    mindestabnahme`,
    ['YEARPOWDER', 'RANKQUOTES'],
  ],
];

const phraseOf = (said: string) =>
  new RegExp(`(?<![\\p{L}\\p{N}])${said.replaceAll(' ', '\\s+')}(?![\\p{L}\\p{N}])`, 'u');

const PHRASES = TRADE_WORDS.flatMap(([said, ids]) =>
  said.split(',').map((one) => ({ said: one.trim().replace(/\s+/g, ' '), ids })),
)
  // The longer ones first: a minimum order is more than an order.
  .sort((one, other) => other.said.length - one.said.length)
  .map(({ said, ids }) => ({ phrase: phraseOf(said), ids }));

/** The functions that the trade's words in a question lead to, one list for each of them, and what else it says. */
export function tradeWords(question: string): { readonly led: readonly (readonly string[])[]; readonly rest: string } {
  const led: (readonly string[])[] = [];
  let rest = question;
  for (const { phrase, ids } of PHRASES) {
    if (!phrase.test(rest)) continue;
    led.push(ids);
    rest = rest.replace(phrase, ' ');
  }
  return { led: [...new Set(led)], rest };
}
