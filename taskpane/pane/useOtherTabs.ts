import { useEffect, useState } from 'preact/hooks';

type OtherTabs = typeof import('./otherTabs.js');

interface Loaded {
  readonly parts?: OtherTabs;
  readonly error?: unknown;
}

/** The tabs that are not open at first, once one of them is wanted. A failed loading is tried again at the next visit. */
export function useOtherTabs(wanted: boolean): Loaded {
  const [loaded, setLoaded] = useState<Loaded>({});
  useEffect(() => {
    if (!wanted || loaded.parts) return;
    import(/* webpackChunkName: "tabs" */ './otherTabs.js').then(
      (parts) => setLoaded({ parts }),
      (error: unknown) => setLoaded({ error }),
    );
  }, [wanted]);
  return loaded;
}
