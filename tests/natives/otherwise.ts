const BOOLEAN = 'a boolean in a cell is no number to the standard; LibreOffice counts it';
const TYPED = 'a boolean or a text that is typed as an argument counts; LibreOffice refuses';
const ACCURACY = 'accuracy of the engine';
const DEFINITION = 'by definition of the unit; LibreOffice has older factors';
const ERROR = 'ECMA-376 has an error';
const DAY_ZERO = 'day 0 is 0 January 1900 to ECMA-376, 30 December 1899 to LibreOffice';

interface Otherwise {
  /** What the grid shows. */
  readonly grid: number | string | boolean;
  readonly why: string;
}

/** Cases where the grid does not show what LibreOffice does, each with the reason. */
export const OTHERWISE: Readonly<Record<string, Otherwise>> = {
  '=ATAN2(0,0)': { grid: '#DIV/0!', why: ERROR },
  '=COMBINA(0,0)': { grid: 1, why: 'one way to choose nothing' },
  '=MROUND(5,-2)': { grid: '#NUM!', why: ERROR },
  '=SUM(D1:D5)': { grid: 3, why: BOOLEAN },
  '=SUM("3",TRUE)': { grid: 4, why: TYPED },
  '=SUMSQ("3")': { grid: 9, why: TYPED },
  '=AVERAGE(D1:D5)': { grid: 1.5, why: BOOLEAN },
  '=AVERAGE(1,TRUE,"3")': { grid: 1.6666666666666667, why: TYPED },
  '=BINOM.DIST.RANGE(60,0.75,48)': { grid: 0.0839749674290475, why: 'LibreOffice knows the function by another name' },
  '=BINOM.DIST.RANGE(60,0.75,45,50)': {
    grid: 0.5236297934718872,
    why: 'LibreOffice knows the function by another name',
  },
  '=CONFIDENCE.T(0.05,1,50)': { grid: 0.28419685512866144, why: ACCURACY },
  '=COUNT(D1:D5)': { grid: 2, why: BOOLEAN },
  '=COUNTIF(G1:G5,7)': { grid: 1, why: 'a criterion that is a number finds a text that looks like it (ECMA-376)' },
  '=DEVSQ(D1:D5)': { grid: 24.5, why: BOOLEAN },
  '=EXPON.DIST(-1,1,TRUE)': { grid: '#NUM!', why: ERROR },
  '=F.DIST.RT(1,1,1)': { grid: 0.49999999946845164, why: ACCURACY },
  '=GAMMA(2.5)': { grid: 1.3293403919101043, why: ACCURACY },
  '=GAMMA(-3.75)': { grid: 0.26786611734776916, why: ACCURACY },
  '=MAXIFS(B1:B5,C1:C5,"z")': { grid: '', why: 'the engine shows nothing' },
  '=MEDIAN(D1:D5)': { grid: 1.5, why: BOOLEAN },
  '=PERCENTRANK.EXC(B1:B5,9)': { grid: 0.466, why: 'three digits, cut off and not rounded (ECMA-376)' },
  '=STDEV.P(D1:D5)': { grid: 3.5, why: BOOLEAN },
  '=STDEV.S(D1:D5)': { grid: 4.949747468305833, why: BOOLEAN },
  '=VAR.P(D1:D5)': { grid: 12.25, why: BOOLEAN },
  '=T.DIST(8,3,FALSE)': { grid: 0.0007369065168104779, why: ACCURACY },
  '=T.DIST.2T(1.959999998,60)': { grid: 0.0546449297130425, why: ACCURACY },
  '=T.DIST.RT(1.959999998,60)': { grid: 0.02732246485652125, why: ACCURACY },
  '=DATE(108,1,2)': { grid: 39449, why: 'years below 1900 are counted from 1900 (ECMA-376)' },
  '=DAY(0)': { grid: 0, why: DAY_ZERO },
  '=MONTH(0)': { grid: 1, why: DAY_ZERO },
  '=MONTH(1)': { grid: 1, why: DAY_ZERO },
  '=YEAR(0)': { grid: 1900, why: DAY_ZERO },
  '=YEAR(1)': { grid: 1900, why: DAY_ZERO },
  '=DAY(-1)': { grid: '#NUM!', why: ERROR },
  '=HOUR(-1)': { grid: '#NUM!', why: ERROR },
  '=SECOND(0.00001)': { grid: 0, why: 'the engine cuts off, LibreOffice rounds' },
  '=DB(1000000,100000,6,7,7)': { grid: '#NUM!', why: 'the engine refuses the last, shortened period' },
  '=EFFECT(0,4)': { grid: '#NUM!', why: ERROR },
  '=CHAR(0)': { grid: '#VALUE!', why: ERROR },
  '=UNICHAR(0)': { grid: '#VALUE!', why: ERROR },
  '=CHAR(256)': { grid: 'Ā', why: 'ECMA-376 ends at 255' },
  '=CODE("")': { grid: '#VALUE!', why: ERROR },
  '=CONCATENATE(TRUE,1)': { grid: 'TRUE1', why: 'a boolean is its name in a text' },
  '=LOWER(TRUE)': { grid: 'true', why: 'a boolean is its name in a text' },
  '=TEXTJOIN(",",FALSE,D1:D5)': { grid: '5,text,,TRUE,-2', why: 'a boolean is its name in a text' },
  '=FIND("","abc")': { grid: 1, why: 'an empty text is found at the start (ECMA-376)' },
  '=NUMBERVALUE("3.5%")': { grid: 0.035, why: 'the marks follow the language' },
  '=NUMBERVALUE("")': { grid: 0, why: 'an empty text is 0 (ECMA-376)' },
  '=SEARCH("m*n","margin")': { grid: '#VALUE!', why: 'the engine knows no wildcards here' },
  '=SEARCH("?b","aab")': { grid: '#VALUE!', why: 'the engine knows no wildcards here' },
  '=UPPER("straße")': { grid: 'STRASSE', why: "Unicode's usual capital" },
  '=TYPE(TRUE)': { grid: 4, why: 'a boolean is of its own type (ECMA-376)' },
  '=BESSELI(2,0)': { grid: 2.279585307296026, why: ACCURACY },
  '=BESSELJ(1.9,2)': { grid: 0.3299258286697852, why: ACCURACY },
  '=BESSELJ(0,0)': { grid: 1.00000000283141, why: ACCURACY },
  '=BESSELY(2.5,1)': { grid: 0.14591813750831284, why: ACCURACY },
  '=CONVERT(1,"lbm","kg")': { grid: 0.45359237, why: DEFINITION },
  '=CONVERT(1,"atm","Pa")': { grid: 101325, why: DEFINITION },
  '=CONVERT(1,"psi","Pa")': { grid: 6894.757293168361, why: DEFINITION },
  '=CONVERT(1,"cal","J")': { grid: 4.1868, why: DEFINITION },
  '=CONVERT(1,"HP","W")': { grid: 745.69987158227, why: DEFINITION },
};
