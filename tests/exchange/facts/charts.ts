import type { Element } from '@xmldom/xmldom';
import type { Fact } from './fact.js';
import { at, below, everywhere, type FileParts } from './parts.js';

const letters = (element: Element | undefined) =>
  everywhere(element, 't')
    .map((one) => one.textContent)
    .join('');
const rangeOf = (element: Element | undefined) =>
  everywhere(element, 'f')[0]?.textContent?.replaceAll('$', '').replaceAll("'", '');

const SERIES: Readonly<Record<string, string>> = { tx: 'named', cat: 'over', xVal: 'over', val: 'of', yVal: 'of' };

function chartWords(root: Element | undefined): string {
  const chart = at(root, 'chart');
  const area = at(chart, 'plotArea');
  const axes = below(area).flatMap((one) => (one.localName?.endsWith('Ax') ? [letters(at(one, 'title'))] : []));
  const drawn = below(area).flatMap((one) =>
    one.localName?.endsWith('Chart')
      ? [
          `${one.localName.replace('Chart', '')} of ${below(one, 'ser')
            .map((series) =>
              below(series)
                .flatMap((part) =>
                  SERIES[part.localName ?? '']
                    ? [`${SERIES[part.localName ?? '']} ${rangeOf(part) ?? letters(part)}`]
                    : [],
                )
                .join(' '),
            )
            .join('; ')}`,
        ]
      : [],
  );
  return [
    `“${letters(at(chart, 'title'))}”`,
    ...drawn,
    ...(axes.some(Boolean) ? [`axes ${axes.join(' / ')}`] : []),
  ].join(', ');
}

/** What the drawings of a sheet hold: charts by their words and ranges, pictures by their number. */
export function drawingFacts(parts: FileParts, sheet: string, part: string): Fact[] {
  const drawings = parts.targets(part).filter(({ kind }) => kind === 'drawing');
  const inside = drawings.flatMap(({ target }) => parts.targets(target));
  const charts = inside.filter(({ kind }) => kind === 'chart');
  return [
    ...charts.map(
      ({ target }, n): Fact => ({
        kind: 'chart',
        where: `${sheet}, chart ${n + 1}`,
        what: chartWords(parts.root(target)),
      }),
    ),
    ...inside.flatMap(({ kind }): Fact[] =>
      kind === 'image' ? [{ kind: 'picture', where: sheet, what: 'a picture' }] : [],
    ),
  ];
}
