import fc from 'fast-check';
import { CellError } from '../functions/answers.js';

/** Numbers at which arithmetic goes wrong first. */
const NUMBERS = [
  ...[0, -0, 1, -1, 0.5, 1e-9, 1e9, 65, 100, 1e15, 1e21, 1e100, 1e300, -1e300],
  ...[5e-324, Number.MIN_VALUE * 7, 2.2e-308, Number.MAX_VALUE, -Number.MAX_VALUE, Number.EPSILON],
  ...[Number.MAX_SAFE_INTEGER, 2 ** 53 + 2, 4_194_304, 4_194_305, 0.1 + 0.2, 0.999, 0.9999999],
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
];

const TEXTS = [
  ...['1.200', '1,200', '65 %', '0.65', '1e3', '12 hL', ' 90 ', '-5', '0x10', 'NaN', 'Infinity', '1/2', '5-10', '½'],
  ...['bar', 'hL', 'g/hL', 'm²', 'barrel', 'hydrogel', ' HYDROGEL ', 'pvpp', 'EU', 'Filter area m²', 'Body feed'],
  ...['=1+1', '=POWDER.DRYMASS(1,0)', '@A1', '+1', '-1', "'1", '#N/A', '#VALUE!', 'TRUE', '2026-11-25', '25.11.2026'],
  ...['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', 'length', 'null', 'undefined'],
  ...[
    ' ',
    '\t',
    '\n',
    '\u00a0',
    '\u200b',
    '\ufeff',
    '\u202e',
    '\0',
    '💧🍺',
    'İı',
    'ﬀ',
    'e\u0301',
    '\ud800',
    '<b>',
    '"',
  ],
  ...['x'.repeat(61), 'ä'.repeat(1000), 'm²'.repeat(200), '('.repeat(500), ' '.repeat(32_767), '9'.repeat(32_767)],
];

const BLANKS = [0, null, undefined, ''];

const CODES = ['#DIV/0!', '#REF!', '#NAME?', '#NUM!', '#NULL!'];

/** Rich values as the host writes them, and some that it should not. */
const RICH = [
  { type: 'FormattedNumber', basicType: 'Double', basicValue: 0.65, numberFormat: '0 %' },
  { type: 'Double', basicType: 'Double', basicValue: Number.NaN },
  { type: 'String', basicType: 'String', basicValue: '12' },
  { type: 'String', basicType: 'String', basicValue: '' },
  { type: 'Boolean', basicType: 'Boolean', basicValue: true },
  { type: 'Empty', basicType: 'Empty', basicValue: '' },
  { type: 'Empty', basicType: 'Empty' },
  { type: 'Entity', text: 'Beer', basicType: 'Error', basicValue: '#VALUE!', properties: {} },
  { type: 'Error', basicType: 'Error', basicValue: '#BUSY!', errorType: 'Busy' },
  { type: 'Error' },
  { type: 'Error', basicValue: null },
  { type: 'WebImage', address: 'https://example.com/a.png' },
  { basicValue: { basicValue: 1 } },
  { basicValue: [1] },
  { refused: 'no' },
  { none: 'no' },
  {},
];

const richNumber = fc
  .double()
  .map((basicValue) => ({ type: 'FormattedNumber', basicType: 'Double', basicValue, numberFormat: '0.00' }));

/** One cell, as a host might hand it over on its worst day. */
export const hostileCell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...NUMBERS) },
  { weight: 2, arbitrary: fc.double() },
  { weight: 4, arbitrary: fc.constantFrom(...BLANKS) },
  { weight: 4, arbitrary: fc.constantFrom(...TEXTS) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 20 }) },
  { weight: 1, arbitrary: fc.boolean() },
  { weight: 2, arbitrary: fc.constantFrom(...CODES).map((code) => new CellError(code)) },
  { weight: 2, arbitrary: fc.constantFrom<unknown>(...RICH) },
  { weight: 1, arbitrary: richNumber },
  { weight: 1, arbitrary: fc.date({ noInvalidDate: true }) },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<unknown> },
  { weight: 1, arbitrary: fc.bigInt() },
);

const matrixOf = (cell: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc
    .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 4 }))
    .chain(([rows, columns]) =>
      fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
    );

const ragged = fc.array(fc.array(hostileCell, { maxLength: 4 }), { maxLength: 5 });

/** A long range, said by its length so that a fault shrinks to the shortest that shows it. */
const long = fc
  .tuple(fc.integer({ min: 100, max: 3000 }), hostileCell, fc.boolean())
  .map(([length, cell, upright]) =>
    upright ? Array.from({ length }, () => [cell]) : [Array.from({ length }, () => cell)],
  );

/** One argument of any form: a bare cell, a list, a rectangle, a ragged or an empty range, a long one, nothing. */
export const hostileArgument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 8, arbitrary: hostileCell.map((cell) => [[cell]]) },
  { weight: 3, arbitrary: hostileCell },
  { weight: 4, arbitrary: matrixOf(hostileCell) },
  { weight: 2, arbitrary: matrixOf(fc.oneof(fc.double({ min: 0, max: 1000, noNaN: true }), fc.constantFrom(0, null))) },
  { weight: 2, arbitrary: fc.array(hostileCell, { maxLength: 4 }) },
  { weight: 2, arbitrary: ragged },
  { weight: 2, arbitrary: fc.constantFrom<unknown>([], [[]], [[], []], [[], [1]], [[[1]]], null, undefined) },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 3 }) as fc.Arbitrary<unknown> },
);

/** A long argument is rare: most of what it costs is its length. */
export const longArgument = long;
