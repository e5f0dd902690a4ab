/**
 * What a function takes in a place of its arguments: one value (v), a range as it is (r), or a range or array of which it
 * calculates every element (a). Of some it is not known what becomes of a calculation with ranges in a formula that is no
 * array formula (u).
 */
export type Kind = 'v' | 'r' | 'a' | 'u';

/**
 * Places that take more than one value, by function; all others take one. The last letter, or the letters in brackets, go
 * on for all that follow. OpenFormula 1.2, parts 6.5 to 6.20: Reference, NumberSequence and the like are r, ForceArray is a;
 * younger functions that answer with arrays take arrays, and LOOKUP and INDEX calculate every element (common practice).
 */
const LISTED = `
  r: SUM SUMSQ PRODUCT COUNT COUNTA COUNTBLANK AVERAGE AVERAGEA MIN MINA MAX MAXA MEDIAN STDEV STDEVP STDEVA STDEVPA STDEV.S
    STDEV.P VAR VARP VARA VARPA VAR.S VAR.P AVEDEV DEVSQ GEOMEAN HARMEAN KURT SKEW SKEW.P GCD LCM MULTINOMIAL AND OR XOR
    CONCAT ROW ROWS COLUMN COLUMNS AREAS ISREF ISFORMULA FORMULATEXT SHEET SHEETS N T IMSUM IMPRODUCT SINGLE
  rv: COUNTIF IRR MIRR LARGE SMALL PERCENTILE PERCENTILE.INC PERCENTILE.EXC QUARTILE QUARTILE.INC QUARTILE.EXC PERCENTRANK
    PERCENTRANK.INC PERCENTRANK.EXC TRIMMEAN ZTEST Z.TEST OFFSET
  rvr: SUMIF AVERAGEIF DAVERAGE DCOUNT DCOUNTA DGET DMAX DMIN DPRODUCT DSTDEV DSTDEVP DSUM DVAR DVARP
  r(rv): SUMIFS AVERAGEIFS MAXIFS MINIFS
  (rv): COUNTIFS
  vr: SUBTOTAL NPV CELL CHOOSE IF
  vrv: RANK RANK.EQ RANK.AVG MATCH VLOOKUP HLOOKUP
  vvr: AGGREGATE NETWORKDAYS WORKDAY TEXTJOIN
  vvvr: NETWORKDAYS.INTL WORKDAY.INTL
  a: SUMPRODUCT SUMX2MY2 SUMX2PY2 SUMXMY2 MDETERM MINVERSE MMULT TRANSPOSE MODE MODE.SNGL MODE.MULT CORREL PEARSON RSQ SLOPE
    INTERCEPT STEYX COVAR COVARIANCE.P COVARIANCE.S FTEST F.TEST CHITEST CHISQ.TEST HSTACK VSTACK FILTER SORTBY BYROW BYCOL
    MAP REDUCE SCAN FLATTEN
  av: INDEX SORT UNIQUE TAKE DROP EXPAND CHOOSECOLS CHOOSEROWS TOCOL TOROW WRAPCOLS WRAPROWS ARRAYTOTEXT ARRAY_CONSTRAIN
  aav: TTEST T.TEST XIRR PROB
  va: FORECAST FORECAST.LINEAR FVSCHEDULE LOOKUP XNPV
  vav: XMATCH
  vaav: XLOOKUP
  vvva: SERIESSUM
  u: LINEST LOGEST TREND GROWTH FREQUENCY`;

interface Places {
  readonly first: string;
  readonly repeated: string;
}

const KINDS: ReadonlyMap<string, Places> = new Map(
  LISTED.split(/\n {2}(?! )/).flatMap((line) => {
    const [, places = '', names = ''] = /^(\S+): (.*)$/s.exec(line) ?? [];
    const [, first = '', repeated = ''] = /^(\w*)\((\w+)\)$/.exec(places) ?? [
      '',
      places.slice(0, -1),
      places.slice(-1),
    ];
    return names
      .split(/\s+/)
      .filter(Boolean)
      .map((name) => [name, { first, repeated }] as const);
  }),
);

/** What a function takes in a place, counted from 0. Our own functions take ranges everywhere. */
export function kindAt(name: string, place: number, ours: boolean): Kind {
  if (ours) return 'r';
  const { first, repeated } = KINDS.get(name) ?? { first: '', repeated: 'v' };
  return (first[place] ?? repeated[(place - first.length) % repeated.length] ?? 'v') as Kind;
}

/** Functions that can answer with several values although each place that takes one value holds one. */
export const GIVES_ARRAYS: ReadonlySet<string> = new Set(
  `TRANSPOSE MMULT MINVERSE MUNIT MODE.MULT FREQUENCY LINEST LOGEST TREND GROWTH HSTACK VSTACK FILTER SORT SORTBY UNIQUE TAKE
  DROP EXPAND CHOOSECOLS CHOOSEROWS TOCOL TOROW WRAPCOLS WRAPROWS SEQUENCE RANDARRAY TEXTSPLIT BYROW BYCOL MAP SCAN MAKEARRAY
  XLOOKUP FLATTEN ARRAY_CONSTRAIN REGEXEXTRACT`.split(/\s+/),
);

/** Functions that answer with places on a sheet, which may be several. */
export const GIVES_PLACES: ReadonlySet<string> = new Set(['OFFSET', 'INDIRECT', 'INDEX']);

/** Functions that hand on one of their arguments from the second on. */
export const HANDS_ON: ReadonlySet<string> = new Set(['IF', 'CHOOSE']);
