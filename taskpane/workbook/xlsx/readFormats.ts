import { attribute, childOf, childrenOf, type XmlElement } from './readXml.js';

/** The number formats that a file names by number only. Those left out depend on the country or say nothing. */
const BUILT_IN: Readonly<Record<string, string>> = {
  1: '0',
  2: '0.00',
  3: '#,##0',
  4: '#,##0.00',
  9: '0%',
  10: '0.00%',
  11: '0.00E+00',
  12: '# ?/?',
  13: '# ??/??',
  14: 'yyyy-mm-dd',
  15: 'd-mmm-yy',
  16: 'd-mmm',
  17: 'mmm-yy',
  18: 'h:mm AM/PM',
  19: 'h:mm:ss AM/PM',
  20: 'h:mm',
  21: 'h:mm:ss',
  22: 'yyyy-mm-dd h:mm',
  37: '#,##0;(#,##0)',
  38: '#,##0;[Red](#,##0)',
  39: '#,##0.00;(#,##0.00)',
  40: '#,##0.00;[Red](#,##0.00)',
  45: 'mm:ss',
  46: '[h]:mm:ss',
  47: 'mm:ss.0',
  48: '##0.0E+0',
  49: '@',
};

const LONGEST = 255;

/** The format behind each number that a file's looks use. */
export function formatsOf(styles: XmlElement | undefined): (id: string | undefined) => string | undefined {
  const own = new Map(
    childrenOf(childOf(styles, 'numFmts'), 'numFmt').map((one) => [
      attribute(one, 'numFmtId') ?? '',
      attribute(one, 'formatCode') ?? '',
    ]),
  );
  return (id = '') => {
    const format = own.get(id) ?? (Object.hasOwn(BUILT_IN, id) ? BUILT_IN[id] : undefined);
    return format && format.length <= LONGEST && format.toLowerCase() !== 'general' ? format : undefined;
  };
}

/** Whether a format shows a day: words in quotes, colours and the like are no letters of it, and no time of day alone. */
export function isDate(format: string): boolean {
  if (/\[(?:h+|m+|s+)\]/i.test(format) || /general/i.test(format)) return false;
  const letters = format.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, '');
  // Beside hours or seconds an m is a minute, and a month elsewhere.
  return /[dy]/i.test(letters) || (/m/i.test(letters) && !/[hs]/i.test(letters));
}
