import { formula, number, sheetData } from '../cells.js';
import type { Made } from '../make.js';

/** Younger functions as files mark them, and the answers that their definitions give. */
const YOUNGER: readonly (readonly [string, number | string | boolean])[] = [
  ['_xlfn.CONCAT("a","b")', 'ab'],
  ['_xlfn.TEXTJOIN("-",TRUE,A1:A3)', '1-2-3'],
  ['_xlfn.IFS(A1>1,"more",TRUE,"less")', 'less'],
  ['_xlfn.SWITCH(A2,1,"one",2,"two")', 'two'],
  ['_xlfn.MAXIFS(A1:A6,A1:A6,"<5")', 4],
  ['_xlfn.MINIFS(A1:A6,A1:A6,">2")', 3],
  ['_xlfn.STDEV.S(A1:A6)', 1.8708286933869707],
  ['_xlfn.VAR.P(A1:A6)', 2.9166666666666665],
  ['_xlfn.PERCENTILE.INC(A1:A6,0.5)', 3.5],
  ['_xlfn.QUARTILE.EXC(A1:A6,1)', 1.75],
  ['_xlfn.NORM.DIST(0,0,1,TRUE)', 0.5],
  ['_xlfn.NORM.S.INV(0.5)', 0],
  ['_xlfn.T.INV.2T(0.05,10)', 2.2281388519649385],
  ['_xlfn.CEILING.MATH(2.1)', 3],
  ['_xlfn.FLOOR.MATH(2.9)', 2],
  ['_xlfn.IFNA(NA(),"none")', 'none'],
  ['_xlfn.DAYS(46000,45990)', 10],
  ['_xlfn.ISOWEEKNUM(46000)', 50],
  ['_xlfn.XOR(TRUE,FALSE)', true],
  ['_xlfn.BITAND(6,3)', 2],
  ['_xlfn.UNICODE("A")', 65],
  ['_xlfn.NUMBERVALUE("1.234,5",",",".")', 1234.5],
  ['_xlfn.XLOOKUP(3,A1:A6,A1:A6)', 3],
  ['_xlfn.XMATCH(4,A1:A6)', 4],
  ['_xlfn.LET(_xlpm.x,A2,_xlpm.y,_xlpm.x+1,_xlpm.x*_xlpm.y)', 6],
  ['SUM(_xlfn.SEQUENCE(3))', 6],
  ['SUM(_xlfn._xlws.FILTER(A1:A6,A1:A6>4))', 11],
  ['SUM(_xlfn.UNIQUE(A1:A6))', 21],
  ['SUM(_xlfn.VSTACK(A1:A2,A3:A4))', 10],
  ['SUM(_xlfn.TAKE(A1:A6,2))', 3],
  ['ROWS(_xlfn.TOCOL(A1:A6))', 6],
  ['_xlfn.LAMBDA(_xlpm.a,_xlpm.a*2)(A3)', 6],
  ['SUM(_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.a,_xlpm.a*2)))', 12],
];

export const younger: Made = {
  sheets: [
    {
      name: 'Younger',
      inside: sheetData(
        YOUNGER.flatMap(([text, answer], n) => [
          ...(n < 6 ? [number(`A${n + 1}`, n + 1)] : []),
          formula(`B${n + 1}`, text, answer),
        ]),
      ),
    },
  ],
};

/** What the grid cannot calculate keeps its formula and its last answer. */
export const foreign: Made = {
  after: '<externalReferences><externalReference r:id="outside"/></externalReferences>',
  links: [['outside', 'externalLink', 'externalLinks/externalLink1.xml']],
  types: {
    '/xl/externalLinks/externalLink1.xml':
      'application/vnd.openxmlformats-officedocument.spreadsheetml.externalLink+xml',
  },
  more: {
    'xl/externalLinks/externalLink1.xml':
      '<externalLink xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><externalBook xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="rId1"><sheetNames><sheetName val="Prices"/></sheetNames></externalBook></externalLink>',
    'xl/externalLinks/_rels/externalLink1.xml.rels':
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLinkPath" Target="prices.xlsx" TargetMode="External"/></Relationships>',
  },
  sheets: [
    {
      name: 'Foreign',
      inside: sheetData([
        number('A1', 1),
        formula('B1', '[1]Prices!$A$1*2', 84),
        formula('B2', 'SUM(January:March!A1)', 6),
        formula('B3', 'CUBEVALUE("connection","[Measure]")', 7),
        formula('B4', 'B3+1', 8),
        formula('B5', '_xll.OTHERADDIN(A1)', 9),
        formula('B6', '_xlfn.WEBSERVICE("https://example.com")', 'last answer'),
      ]),
    },
    ...['January', 'February', 'March'].map((name, n) => ({ name, inside: sheetData([number('A1', n + 1)]) })),
  ],
};
