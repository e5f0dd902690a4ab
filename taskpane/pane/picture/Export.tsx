import type { RefObject } from 'preact';
import { useState } from 'preact/hooks';
import { useSetting } from '../setting.js';
import { asPng, standalone } from './standalone.js';

interface Props {
  readonly drawing: RefObject<SVGSVGElement | null>;
  /** The file's name without its ending. */
  readonly name: string;
}

function save(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  // The download has begun by then, and the picture need not stay in memory.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** As a picture where the browser takes one, otherwise as text. */
async function toClipboard(svg: string): Promise<'copied' | 'copiedText' | 'notCopied'> {
  try {
    // The promise is handed over undone: some browsers ask that writing begins with the click itself.
    await navigator.clipboard.write([new ClipboardItem({ 'image/png': asPng(svg) })]);
    return 'copied';
  } catch {
    return (
      navigator.clipboard?.writeText(svg).then(
        () => 'copiedText' as const,
        () => 'notCopied' as const,
      ) ?? 'notCopied'
    );
  }
}

/** The ways in which a picture leaves the pane. */
export function Export({ drawing, name }: Props) {
  const { texts } = useSetting();
  const words = texts.picture;
  const [told, setTold] = useState('');
  const text = (): string | undefined => {
    const seen = drawing.current;
    return seen ? standalone(seen, getComputedStyle(seen).backgroundColor) : undefined;
  };
  const copy = async () => {
    const svg = text();
    if (svg) setTold(words[await toClipboard(svg)]);
  };
  const asFile = async (ending: 'png' | 'svg') => {
    const svg = text();
    if (!svg) return;
    save(ending === 'png' ? await asPng(svg) : new Blob([svg], { type: 'image/svg+xml' }), `${name}.${ending}`);
    setTold(words.saved(`${name}.${ending}`));
  };
  return (
    <div>
      <div class="pb-export">
        <button type="button" onClick={() => void copy()}>
          {words.copy}
        </button>
        <button type="button" onClick={() => void asFile('png')}>
          {words.savePng}
        </button>
        <button type="button" onClick={() => void asFile('svg')}>
          {words.saveSvg}
        </button>
      </div>
      <p role="status" class="pb-quiet">
        {told}
      </p>
    </div>
  );
}
