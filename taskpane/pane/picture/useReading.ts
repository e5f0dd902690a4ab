import { useEffect, useState } from 'preact/hooks';

type Reading = typeof import('./reading.js');

/** The part of the pane that reads formulas, once a formula asks for it. It stays away where it cannot be loaded. */
export function useReading(wanted: boolean): Reading | undefined {
  const [reading, setReading] = useState<Reading>();
  useEffect(() => {
    if (!wanted || reading) return;
    let shown = true;
    import('./reading.js').then(
      (loaded) => shown && setReading(loaded),
      () => {},
    );
    return () => {
      shown = false;
    };
  }, [wanted, reading]);
  return reading;
}
