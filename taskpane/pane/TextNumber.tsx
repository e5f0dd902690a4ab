import { useEffect, useState } from 'preact/hooks';
import type { Host, Selection } from '../host/host.js';
import { looksLikeNumber } from '../workbook/entry/textNumber.js';
import { sayTurned } from './sayTurned.js';
import { sentenceFrom } from './sentenceFrom.js';
import { useSetting } from './setting.js';

/** Says that a text looks like a number, and turns it and the texts around it into numbers. */
export function TextNumber({ host, selection }: { readonly host: Host; readonly selection: Selection }) {
  const setting = useSetting();
  const words = setting.texts.textNumbers;
  const [said, setSaid] = useState('');
  const { sheet, address, value, formula, kept } = selection;
  useEffect(() => setSaid(''), [sheet, address]);
  const isText = typeof value === 'string' && formula === undefined && kept === undefined;
  const marked = isText && looksLikeNumber(value, setting.writing);
  const { turnIntoNumbers } = host;
  const turn = () =>
    turnIntoNumbers?.().then(
      (turned) => setSaid(sayTurned(turned, setting)),
      (error) => setSaid(sentenceFrom(error, setting.texts)),
    );
  return (
    <>
      {marked && turnIntoNumbers && (
        <div class="pb-text-number">
          <p>{words.looks}</p>
          <button type="button" onClick={() => void turn()}>
            {words.turn}
          </button>
        </div>
      )}
      <p role="status">{said}</p>
    </>
  );
}
