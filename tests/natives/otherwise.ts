import type { Value } from './answers.js';

const BOOLEAN = 'a boolean in a cell is no number to the standard; LibreOffice counts it';
const TYPED = 'a boolean or a text that is typed as an argument counts; LibreOffice refuses';
const ACCURACY = 'accuracy of the engine';
const DEFINITION = 'by definition of the unit; LibreOffice has older factors';
const ERROR = 'ECMA-376 has an error';
const ZERO = 'a division by 0; LibreOffice calls it a number that is none';
const PERIODS = 'the times of payment are counted in coupon periods, as prices are; LibreOffice counts years by days';
const COMPLEX = 'a complex number without an imaginary part is a number; LibreOffice writes it as a text';
const OTHER_NAME = 'LibreOffice knows the function by another name';
const BYTE = 'one byte of the usual code (windows-1252); LibreOffice takes that of its machine, here UTF-8';
const DAY_ZERO = 'day 0 is 0 January 1900 to ECMA-376, 30 December 1899 to LibreOffice';

interface Otherwise {
  /** What the grid shows. */
  readonly grid: Value;
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
  '=BINOM.DIST.RANGE(60,0.75,48)': { grid: 0.0839749674290475, why: OTHER_NAME },
  '=BINOM.DIST.RANGE(60,0.75,45,50)': {
    grid: 0.5236297934718872,
    why: OTHER_NAME,
  },
  '=CONFIDENCE.T(0.05,1,50)': { grid: 0.28419685512866144, why: ACCURACY },
  '=COUNT(D1:D5)': { grid: 2, why: BOOLEAN },
  '=COUNTIF(G1:G5,7)': { grid: 1, why: 'a criterion that is a number finds a text that looks like it (ECMA-376)' },
  '=DEVSQ(D1:D5)': { grid: 24.5, why: BOOLEAN },
  '=EXPON.DIST(-1,1,TRUE)': { grid: '#NUM!', why: ERROR },
  '=MEDIAN(D1:D5)': { grid: 1.5, why: BOOLEAN },
  '=PERCENTRANK.EXC(B1:B5,9)': { grid: 0.466, why: 'three digits, cut off and not rounded (ECMA-376)' },
  '=STDEV.P(D1:D5)': { grid: 3.5, why: BOOLEAN },
  '=STDEV.S(D1:D5)': { grid: 4.949747468305833, why: BOOLEAN },
  '=VAR.P(D1:D5)': { grid: 12.25, why: BOOLEAN },
  '=DATE(108,1,2)': { grid: 39449, why: 'years below 1900 are counted from 1900 (ECMA-376)' },
  '=DAY(0)': { grid: 0, why: DAY_ZERO },
  '=MONTH(0)': { grid: 1, why: DAY_ZERO },
  '=MONTH(1)': { grid: 1, why: DAY_ZERO },
  '=YEAR(0)': { grid: 1900, why: DAY_ZERO },
  '=YEAR(1)': { grid: 1900, why: DAY_ZERO },
  '=DAY(-1)': { grid: '#NUM!', why: ERROR },
  '=HOUR(-1)': { grid: '#NUM!', why: ERROR },
  '=EFFECT(0,4)': { grid: '#NUM!', why: ERROR },
  '=CHAR(0)': { grid: '#VALUE!', why: ERROR },
  '=UNICHAR(0)': { grid: '#VALUE!', why: ERROR },
  '=CODE("")': { grid: '#VALUE!', why: ERROR },
  '=CONCATENATE(TRUE,1)': { grid: 'TRUE1', why: 'a boolean is its name in a text' },
  '=LOWER(TRUE)': { grid: 'true', why: 'a boolean is its name in a text' },
  '=TEXTJOIN(",",FALSE,D1:D5)': { grid: '5,text,,TRUE,-2', why: 'a boolean is its name in a text' },
  '=FIND("","abc")': { grid: 1, why: 'an empty text is found at the start (ECMA-376)' },
  '=NUMBERVALUE("3.5%")': { grid: 0.035, why: 'the marks follow the language' },
  '=NUMBERVALUE("")': { grid: 0, why: 'an empty text is 0 (ECMA-376)' },
  '=UPPER("straße")': { grid: 'STRASSE', why: "Unicode's usual capital" },
  '=TYPE(TRUE)': { grid: 4, why: 'a boolean is of its own type (ECMA-376)' },
  '=CONVERT(1,"lbm","kg")': { grid: 0.45359237, why: DEFINITION },
  '=CONVERT(1,"atm","Pa")': { grid: 101325, why: DEFINITION },
  '=CONVERT(1,"psi","Pa")': { grid: 6894.757293168361, why: DEFINITION },
  '=CONVERT(1,"cal","J")': { grid: 4.1868, why: DEFINITION },
  '=CONVERT(1,"HP","W")': { grid: 745.69987158227, why: DEFINITION },
  '=COT(0)': { grid: '#DIV/0!', why: ZERO },
  '=COTH(0)': { grid: '#DIV/0!', why: ZERO },
  '=CSC(0)': { grid: '#DIV/0!', why: ZERO },
  '=CSCH(0)': { grid: '#DIV/0!', why: ZERO },
  '=POWER(0,-1)': { grid: '#DIV/0!', why: ZERO },
  '=STANDARDIZE(1,1,0)': { grid: '#NUM!', why: ERROR },
  '=DURATION(DATE(2025,2,15),DATE(2032,11,15),0.08,0.09,2,1)': { grid: 5.739631309136344, why: PERIODS },
  '=MDURATION(DATE(2025,2,15),DATE(2032,11,15),0.08,0.09,2,1)': { grid: 5.492470152283583, why: PERIODS },
  '=YIELD(DATE(2025,2,15),DATE(2032,11,15),0.0575,101,100,1,1)': { grid: 0.055827342774857965, why: ACCURACY },
  '=IMCOS("0.5")': { grid: 0.877582561890373, why: COMPLEX },
  '=IMEXP("0")': { grid: 1, why: COMPLEX },
  '=IMPOWER("4",0.5)': { grid: 2, why: COMPLEX },
  '=IMSUB("1+i","1+i")': { grid: 0, why: COMPLEX },
  '=IMSUM("1+i","2-i")': { grid: 3, why: COMPLEX },
  '=IMCOSH("4+3i")': { grid: '-27.0349456030742+3.85115333481178i', why: OTHER_NAME },
  '=IMCOT("4+3i")': { grid: '0.00490118239430447-0.999266927805902i', why: OTHER_NAME },
  '=IMCSC("4+3i")': { grid: '-0.0754898329158637+0.0648774713706355i', why: OTHER_NAME },
  '=IMCSCH("4+3i")': { grid: '-0.036275889628626-0.0051744731840194i', why: OTHER_NAME },
  '=IMSEC("4+3i")': { grid: '-0.0652940278579471-0.0752249603027732i', why: OTHER_NAME },
  '=IMSECH("4+3i")': { grid: '-0.0362534969158689-0.00516434460775318i', why: OTHER_NAME },
  '=IMSINH("4+3i")': { grid: '-27.0168132580039+3.85373803791938i', why: OTHER_NAME },
  '=IMTAN("4+3i")': { grid: '0.00490825806749606+1.00070953606723i', why: OTHER_NAME },
  '=CHAR(128)': { grid: '€', why: BYTE },
  '=CHAR(255)': { grid: 'ÿ', why: BYTE },
  '=CHAR(150)': { grid: '–', why: BYTE },
  '=CODE("€")': { grid: 128, why: BYTE },
  '=CODE("ü")': { grid: 252, why: BYTE },
  '=CODE("–")': { grid: 150, why: BYTE },
};
