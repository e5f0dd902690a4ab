import { useEffect, useState } from 'preact/hooks';
import type { Host, Selection } from '../../host/host.js';
import { sentenceFrom } from '../sentenceFrom.js';
import { useSetting } from '../setting.js';
import { type Drawn, draw } from './draw.js';
import { PictureFigure } from './PictureFigure.js';
import { speechFor } from './speech.js';

interface Props {
  readonly host: Host;
  readonly selection: Selection;
}

type State = Drawn | { readonly kind: 'failed'; readonly sentence: string } | undefined;

/** The picture of the selected formula, or the sentence that says why there is none. */
export function PictureOf({ host, selection }: Props) {
  const { texts, formats } = useSetting();
  const [state, setState] = useState<State>();
  useEffect(() => {
    let wanted = true;
    const show = (drawn: State) => {
      if (wanted) setState(drawn);
    };
    draw(selection, host, speechFor(texts.picture, formats)).then(show, (error: unknown) =>
      show({ kind: 'failed', sentence: sentenceFrom(error, texts) }),
    );
    return () => {
      wanted = false;
    };
  }, [host, selection, texts, formats]);
  if (!state) return null;
  switch (state.kind) {
    case 'picture':
      return <PictureFigure picture={state.picture} id={state.id} />;
    case 'unknown':
      return <p class="pb-quiet">{texts.picture.unknown[state.unknown.kind](state.unknown.what)}</p>;
    case 'failed':
      return <p class="pb-quiet">{state.sentence}</p>;
    case 'refused':
      // The cell's own sentence stands above already.
      if (state.sentence === selection.message) return null;
      return (
        <p class="pb-quiet">
          {texts.picture.refused(`POWDER.${state.id}`)} <span lang="en">{state.sentence}</span>
        </p>
      );
  }
}
