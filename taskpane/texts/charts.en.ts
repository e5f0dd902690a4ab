/** The words around the charts of a sheet, in English. */
export const charts = {
  heading: (count: string) => `Charts of this sheet: ${count}`,
  series: 'Series',
  /** How far the figures of a series reach. */
  reach: (name: string, from: string, to: string, count: string) => `${name}: ${from} to ${to} (${count} figures).`,
  one: (name: string, value: string) => `${name}: ${value}.`,
  nothing: 'There are no figures to draw yet: the cells behind this chart are blank or refused.',
};
