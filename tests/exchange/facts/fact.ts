/** What a fact is about: the columns of the comparison. */
export const KINDS = [
  'value',
  'formula',
  'array',
  'name',
  'number format',
  'font',
  'fill',
  'border',
  'alignment',
  'rich text',
  'column width',
  'row height',
  'hidden row or column',
  'outline',
  'merged cells',
  'frozen panes',
  'sheet',
  'view',
  'tab colour',
  'conditional format',
  'rule for entries',
  'note',
  'link',
  'table',
  'filter',
  'print',
  'chart',
  'protection',
  'picture',
] as const;

export type FactKind = (typeof KINDS)[number];

/** One thing that a file says, such as the value of a cell. */
export interface Fact {
  readonly kind: FactKind;
  /** What it is said of: a sheet and a cell or range, or a name. */
  readonly where: string;
  readonly what: string;
}
