/** Words of a question that say nothing about which function answers it, in English and German. */
export const PASSED_OVER: ReadonlySet<string> = new Set(
  `a about all am an and any are as at be by can could did do does enough for from get give go goes going had has have
  gets how i if in into is many much new old often per reach reaches it its just know me must my need now of off on
  one or our out please read set should so some take tell than that the their them then there they this to too use want
  was we what when where which who why will with would you your
  aber als am an ein einstellen neu neue neuen neuer neues stelle stellen viel viele auf aus bei bin brauche braucht
  das dem den der des die dies eine einem einen einer er es fur hat ich ihr im in ist kann man mein meine meinem
  meinen meiner mit muss noch oder sein sie sind soll um und uns unser von wann warum was welche welcher welches wenn
  wer werden wie wieso wir wird wo zu zum zur`.split(/\s+/),
);

/**
 * What people say → words of the declarations, any of which will do. German words lead to the English
 * ones, since ids, labels and questions are English.
 */
const SAYINGS: readonly (readonly [said: string, meant: string])[] = [
  ['hectolitre hectoliter hektoliter', 'hl'],
  ['last lasts lasting dauert halt lange', 'last'],
  ['cost costs expensive money kosten kostet teuer geld', 'cost'],
  ['price prices preis preise quote quotes offer offers angebot angebote supplier lieferant', 'price quote supplier'],
  ['cheap cheaper cheapest billiger gunstiger', 'cheaper least'],
  ['gel gels stabiliser stabilizer silica stabilisator kieselgel', 'stabiliser'],
  [
    'replace replaces replacing swap swapping exchange switch substitute instead ersetzen tauschen wechseln',
    'replaces swap',
  ],
  ['wet damp moist humid moisture humidity feucht feuchte nass wasser', 'moist water'],
  ['pump pumpe', 'pump'],
  ['pressure druck', 'pressure'],
  ['up rise rises rising climb climbs grow grows steigt anstieg', 'rise'],
  ['fast quick quickly schnell', 'fast'],
  ['empty refill leer nachfullen', 'made lasts'],
  ['tank behalter', 'tank'],
  ['dust dusty staub', 'dust'],
  ['dangerous harmful safe health gefahrlich schadlich gesund', 'breathe limit safe'],
  ['cloudy clear trub klar', 'haze clear'],
  ['filter filtering filtration filtern', 'filter filtration'],
  ['run runs filtration lauf filterlauf laufe standzeit', 'run'],
  ['powder powders diatomite pulver', 'powder'],
  ['dose dosing dosage gabe dosierung dosis', 'dose'],
  ['save saves saving savings sparen ersparnis', 'save saves saving'],
  ['precoat anschwemmung grundanschwemmung', 'precoat'],
  ['feed laufend dosage', 'feed'],
  ['cake kuchen filterkuchen', 'cake'],
  ['waste disposal dump entsorgung abfall', 'disposal spent'],
  ['sulphite sulfite so2 sulphur sulfit', 'sulphite'],
  ['iron lead arsenic metal eisen blei metall', 'metal iron'],
  ['label declare deklarieren etikett', 'declare label'],
  ['unit units einheit einheiten', 'unit'],
  ['permeable durchlassig', 'permeability'],
  ['pay pays worth lohnt worthwhile', 'saves saving worth'],
  ['dearer teurer uncertain sure unsicher sicher', 'uncertain sure'],
  ['fit fits room space passt platz', 'room thick depth'],
  ['leaf leaves candle candles septum', 'septum candle'],
  ['wetter', 'moister moist'],
  ['trial trials log reading readings versuch', 'log run'],
  ['water wasser', 'water'],
  ['delivery lieferung', 'delivery'],
  ['year jahr', 'year'],
  ['slurry suspension', 'slurry'],
  ['thick deep dick', 'thick depth'],
  ['big large gross', 'large'],
];

const MEANT: ReadonlyMap<string, readonly string[]> = new Map(
  SAYINGS.flatMap(([said, meant]) => said.split(' ').map((word) => [word, meant.split(' ')] as const)),
);

/** Any one of these in a declaration will do for a word of a question. */
export const meantBy = (word: string): readonly string[] => {
  const singular = word.length > 4 && word.endsWith('s') ? [word.slice(0, -1)] : [];
  // German writes words together: a Dosierpumpe is a Pumpe.
  const last = MEANT.has(word) ? word : [...MEANT.keys()].find((key) => key.length > 4 && word.endsWith(key));
  return [word, ...singular, ...(MEANT.get(last ?? word) ?? [])];
};
