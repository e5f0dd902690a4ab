/** The families, and what each is about. */
export const families: Readonly<Record<string, string>> = {
  Moisture: 'Feuchte',
  'Water in powders: what is dry, what is bought, what is owed.':
    'Wasser in Pulvern: was trocken ist, was gekauft wird, was geschuldet ist.',
  Stabiliser: 'Stabilisierung',
  'Which stabiliser, how much of it, how long it needs and what it leaves behind.':
    'Welches Stabilisierungsmittel, wie viel davon, wie lange es braucht und was es zurücklässt.',
  Feed: 'Dosage',
  'Precoat, body feed, slurry tank and dosing pump, and the solids that reach the cake.':
    'Voranschwemmung, laufende Dosage, Dosiertank und Dosierpumpe, und die Feststoffe, die auf den Kuchen kommen.',
  Cake: 'Filterkuchen',
  'How a cake resists the beer: viscosity, permeability, resistance and pressure rise.':
    'Wie ein Kuchen dem Bier widersteht: Viskosität, Permeabilität, Widerstand und Druckanstieg.',
  Plan: 'Plan',
  'One beer on one filter: how long a run gets, what it costs, which body feed is best, and what another plan saves.':
    'Ein Bier auf einem Filter: wie lang ein Lauf wird, was er kostet, welche laufende Dosage die beste ist, und was ein anderer Plan spart.',
  Cost: 'Kosten',
  'Quotes, powder and spent cake, per hL and per year.': 'Angebote, Pulver und Altkuchen, je hL und je Jahr.',
  'Laboratory and safety': 'Labor und Sicherheit',
  'Units, laboratory figures, dust in the air, and the ranges of every input.':
    'Einheiten, Laborwerte, Staub in der Luft und die Bereiche jeder Eingabe.',
};
