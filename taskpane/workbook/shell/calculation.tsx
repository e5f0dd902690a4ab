import { useEffect, useState } from 'preact/hooks';
import type { Calculation, CalculationState } from '../calculation/standing.js';
import { useWords } from './words.js';

/** Says that a calculation lasts, and stops it; says that nothing is calculated, and begins again. */
export function CalculationStatus({ calculation }: { calculation: Calculation | undefined }) {
  const { calculation: words } = useWords().workbook;
  const [state, setState] = useState<CalculationState>('idle');
  useEffect(() => calculation?.watch(setState), [calculation]);
  const told = calculation && state !== 'idle' ? words[state] : undefined;
  const act = () => (state === 'busy' ? calculation?.stop() : calculation?.begin());
  return (
    <>
      <p class="workbook-calculation" role="status">
        {told?.says}
      </p>
      {told && (
        <button type="button" onClick={act}>
          {told.button}
        </button>
      )}
    </>
  );
}
