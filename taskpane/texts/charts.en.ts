/** The words around the charts of a sheet, in English. */
export const charts = {
  series: 'Series',
  /** How far the figures of a series reach. */
  reach: (name: string, from: string, to: string, count: string) => `${name}: ${from} to ${to} (${count} figures).`,
  one: (name: string, value: string) => `${name}: ${value}.`,
  nothing: 'There are no figures to draw yet: the cells behind this chart are blank or refused.',
  heading: 'Chart',
  draw: 'Draw the selected columns',
  kinds: { lines: 'Lines', points: 'Points', bars: 'Bars' },
  go: 'Go to a chart',
  keys: 'Arrow keys move this chart, with Shift they size it. Delete removes it, Escape goes back to the cells.',
  remove: 'Delete chart',
  column: (letters: string) => `Column ${letters}`,
  /** A title from what goes upwards and what goes across. */
  over: {
    lines: (upwards: string, across: string) => `${upwards} over ${across}`,
    points: (upwards: string, across: string) => `${upwards} over ${across}`,
    bars: (upwards: string, across: string) => `${upwards} by ${across}`,
  },
  twoColumns:
    'A chart needs two columns: select what goes across and, right of it, the figures that go upwards, with their titles.',
  tooMany: (most: string, given: string) =>
    `A chart holds up to ${most} columns of figures besides the first; ${given} are selected. Select fewer.`,
};
