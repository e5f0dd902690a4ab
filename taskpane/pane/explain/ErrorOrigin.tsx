import { useEffect, useState } from 'preact/hooks';
import { referenceOf } from '../../formula/references.js';
import { Unknown } from '../../formula/unknown.js';
import { placeText } from '../../host/address.js';
import type { Host, Selection } from '../../host/host.js';
import { errorOrigin } from '../check/errorOrigin.js';
import { sentenceFrom } from '../sentenceFrom.js';
import { useSetting } from '../setting.js';

/** Leads from a cell with an error that was handed on to the cell in which it began. */
export function ErrorOrigin({ host, selection }: { readonly host: Host; readonly selection: Selection }) {
  const { texts } = useSetting();
  const [said, setSaid] = useState('');
  const { sheet, address } = selection;
  useEffect(() => setSaid(''), [sheet, address]);
  const follow = async () => {
    const start = referenceOf(address, sheet);
    if (start instanceof Unknown || start.kind !== 'range') return;
    try {
      const origin = errorOrigin(await host.readAll(), start);
      if (placeText(origin, '') === placeText(start, '')) setSaid(texts.explain.beginsHere);
      else await host.goTo(origin);
    } catch (error) {
      setSaid(sentenceFrom(error, texts));
    }
  };
  return (
    <>
      <button type="button" class="pb-link" onClick={() => void follow()}>
        {texts.explain.errorOrigin}
      </button>
      <p class="pb-quiet" role="status">
        {said}
      </p>
    </>
  );
}
