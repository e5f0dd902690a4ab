/** Small pictures of what a button does; its name says it to those who do not see them. */
const PATHS = {
  left: 'M2 4h12M2 8h8M2 12h10',
  center: 'M2 4h12M4 8h8M3 12h10',
  right: 'M2 4h12M6 8h8M4 12h10',
  wrap: 'M2 4h12M2 8h9a2 2 0 0 1 0 4H8m2-2-2 2 2 2M2 12h3',
  up: 'M4 13V3M2 5l2-2 2 2M9 4h2M9 8h4M9 12h6',
  down: 'M4 3v10m-2-2 2 2 2-2M9 4h6M9 8h4M9 12h2',
  filter: 'M2 3h12L9.500 8.500V13l-3-1.500V8.500z',
  find: 'M7 2.500a4.500 4.500 0 1 0 0 9 4.500 4.500 0 0 0 0-9zM10.500 10.500 14 14',
} as const;

export function Icon({ of }: { of: keyof typeof PATHS }) {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
      <path d={PATHS[of]} fill="none" stroke="currentColor" stroke-width="1.5" stroke-linecap="round" />
    </svg>
  );
}
