import { afterEach, describe, expect, it, vi } from 'vitest';
import { cellReference } from '../../taskpane/host/address.js';
import { excelHost } from '../../taskpane/host/excel.js';
import { host as words } from '../../taskpane/texts/host.en.js';
import { said } from './said.js';

afterEach(() => vi.unstubAllGlobals());

/** An Excel that refuses whatever it is asked with one of its codes. */
function refusing(code: string) {
  const run = async () => {
    throw Object.assign(new Error('This message is for programmers.'), { code });
  };
  vi.stubGlobal('Excel', { run });
  return excelHost();
}
const place = cellReference('Sheet1', 0, 0);
const asks = {
  write: (code: string) => refusing(code).write({ rows: [[{ text: 'Dose' }]] }),
  goTo: (code: string) => refusing(code).goTo(place),
  read: (code: string) => refusing(code).read([place]),
};

describe('what Excel refuses', () => {
  it.each([
    ['InvalidOperationInCellEditMode', words.editing],
    ['AccessDenied', words.protected],
    ['InactiveWorkbook', words.inactive],
    ['ServiceNotAvailable', words.hostBusy],
    ['RangeExceedsLimit', words.tooMuch],
    ['ResponsePayloadSizeLimitExceeded', words.tooMuch],
    ['UnsupportedSheet', words.otherSheet],
  ])('is told alike whatever was asked for: %s', async (code, sentence) => {
    for (const ask of Object.values(asks)) expect(await said(ask(code))).toBe(sentence);
  });

  it('is told by what was asked for where a code has more than one meaning', async () => {
    expect(await said(asks.write('InvalidArgument'))).toBe(words.noRoomInExcel);
    expect(await said(asks.goTo('InvalidArgument'))).toBe(words.gone);
    expect(await said(asks.read('InvalidArgument'))).toBe(words.excel('This message is for programmers.'));
    expect(await said(asks.write('MergedRangeConflict'))).toBe(words.merged);
  });
});
