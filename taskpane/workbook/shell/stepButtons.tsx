import { useEffect, useState } from 'preact/hooks';
import type { Steps, StepsLeft } from '../grid/steps.js';
import { useWords } from './words.js';

/** What the keys for undo and redo do, for a hand on the mouse. */
export function StepButtons({ steps }: { steps: Steps | undefined }) {
  const { back, forth } = useWords().workbook.steps;
  const [left, setLeft] = useState<StepsLeft>({ back: false, forth: false });
  useEffect(() => steps?.watch(setLeft), [steps]);
  return (
    <>
      <button type="button" disabled={!steps || !left.back} onClick={() => steps?.back()}>
        {back}
      </button>
      <button type="button" disabled={!steps || !left.forth} onClick={() => steps?.forth()}>
        {forth}
      </button>
    </>
  );
}
