import { useRef, useState } from 'preact/hooks';
import { useWords } from './words.js';

const LEAST = 280;
const MOST = 640;
const USUAL = 352;
const STEP = 24;

/** The border between sheet and functions: dragged, or moved with the arrow keys. */
export function Splitter() {
  const [width, setWidth] = useState(USUAL);
  const dragging = useRef(false);
  const words = useWords().workbook.parts;
  const set = (wanted: number) => {
    const next = Math.round(Math.min(MOST, Math.max(LEAST, wanted)));
    setWidth(next);
    document.documentElement.style.setProperty('--pane-width', `${next}px`);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a rule cannot be moved; a focusable separator with a value can.
    <div
      class="workbook-splitter"
      role="separator"
      tabIndex={0}
      aria-label={words.width}
      aria-orientation="vertical"
      aria-valuenow={width}
      aria-valuemin={LEAST}
      aria-valuemax={MOST}
      onPointerDown={(event) => {
        dragging.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={(event) => dragging.current && set(window.innerWidth - event.clientX)}
      onPointerUp={() => {
        dragging.current = false;
      }}
      onKeyDown={({ key }) => {
        if (key === 'ArrowLeft') set(width + STEP);
        if (key === 'ArrowRight') set(width - STEP);
      }}
    />
  );
}
