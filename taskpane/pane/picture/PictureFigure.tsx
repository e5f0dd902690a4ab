import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Heading } from '../Heading.js';
import { useSetting } from '../setting.js';
import { drawnIn } from './drawnIn.js';
import { Export } from './Export.js';
import { Figures } from './Figures.js';
import type { Picture } from './picture.js';

const LEAST_WIDTH = 220;
/** Enlarged text stops growing where the words of a narrow picture would run out of it; the table has them in full. */
const LETTERS_A_LINE = 17;

/** The room that a place on the page has, and the size of its text; measured again when either changes. */
function useRoom() {
  const place = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState<{ width: number; text: number }>();
  useLayoutEffect(() => {
    const element = place.current;
    if (!element) return;
    const measure = () => {
      const width = Math.max(LEAST_WIDTH, Math.floor(element.clientWidth));
      const text = Math.min(Number.parseFloat(getComputedStyle(element).fontSize), width / LETTERS_A_LINE);
      setRoom((before) => (before?.width === width && before.text === text ? before : { width, text }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { place, room };
}

interface Props {
  readonly picture: Picture;
  /** The function that is drawn. */
  readonly id: string;
}

/** The drawing, what it shows in words, its figures, and what stands behind it. */
export function PictureFigure({ picture, id }: Props) {
  const { texts, formats } = useSetting();
  const { place, room } = useRoom();
  const drawing = useRef<SVGSVGElement>(null);
  const key = useId();
  const drawn = room && drawnIn({ ...room, number: formats.number }, picture, texts.picture);
  return (
    <figure class="pb-picture" aria-labelledby={`${key}-heading`}>
      <Heading level={3} id={`${key}-heading`}>
        {picture.title}
      </Heading>
      <div class="pb-drawing" ref={place}>
        {room && drawn && (
          <svg
            ref={drawing}
            role="img"
            aria-labelledby={`${key}-title ${key}-summary`}
            viewBox={`0 0 ${room.width} ${drawn.height}`}
            width={room.width}
            height={drawn.height}
            font-size={room.text}
          >
            <title id={`${key}-title`}>{`${picture.title}: POWDER.${id}`}</title>
            <desc id={`${key}-summary`}>{picture.summary}</desc>
            {drawn.drawing}
          </svg>
        )}
      </div>
      <p aria-hidden="true">{picture.summary}</p>
      {picture.notes.map(({ text, english }) => (
        <p key={text} class="pb-quiet" lang={english ? 'en' : undefined}>
          {text}
        </p>
      ))}
      <Figures table={picture.table} />
      <Export drawing={drawing} name={`POWDER-${id}`} />
    </figure>
  );
}
