import {
  BooleanNumber,
  BorderStyleTypes,
  BorderType,
  HorizontalAlign,
  type IStyleData,
  WrapStrategy,
} from '../engine/core.js';
import type { FRange } from '../engine/facade.js';
import { SetHorizontalTextAlignCommand, SetStyleCommand } from '../engine/sheets.js';
import type { Grid } from './boot.js';
import {
  isGrouped,
  type Kind,
  kindOf,
  patternNotation,
  patternOf,
  withDecimals,
  withThousands,
} from './numberPattern.js';
import { asOneStep } from './oneStep.js';
import { activeCell, workbookOf } from './place.js';
import { watchSelection } from './selection.js';

export type Across = 'left' | 'center' | 'right';
export type Lines = 'none' | 'all' | 'outside' | 'bottom';

/** How the selected cell is shown. */
export interface CellLook {
  readonly kind: Kind;
  readonly thousands: boolean;
  readonly bold: boolean;
  readonly wrap: boolean;
  readonly across: Across | undefined;
  readonly fill: string | undefined;
}

/** What the format bar does with the selected cells. */
export interface Formatting {
  watch(listener: (look: CellLook) => void): () => void;
  kind(kind: Kind): void;
  thousands(on: boolean): void;
  decimals(change: 1 | -1): void;
  bold(on: boolean): void;
  wrap(on: boolean): void;
  align(across: Across | undefined): void;
  fill(colour: string | undefined): void;
  lines(lines: Lines): void;
}

const ACROSS: readonly (readonly [HorizontalAlign, Across])[] = [
  [HorizontalAlign.LEFT, 'left'],
  [HorizontalAlign.CENTER, 'center'],
  [HorizontalAlign.RIGHT, 'right'],
];
const LINES: Readonly<Record<Lines, BorderType>> = {
  none: BorderType.NONE,
  all: BorderType.ALL,
  outside: BorderType.OUTSIDE,
  bottom: BorderType.BOTTOM,
};
const LINE_COLOUR = '#6b7c80';

const styleAt = (range: FRange): IStyleData => range.getCellStyleData('cell') ?? {};

/** Every range that is selected; the active cell where nothing is. */
export function selectedRanges(grid: Grid): readonly FRange[] {
  const ranges = workbookOf(grid).getActiveSheet().getSelection()?.getActiveRangeList() ?? [];
  return ranges.length > 0 ? ranges : [activeCell(grid)];
}

function lookAt(cell: FRange): CellLook {
  const { n, bl, tb, ht, bg } = styleAt(cell);
  return {
    kind: kindOf(n?.pattern),
    thousands: isGrouped(n?.pattern),
    bold: bl === BooleanNumber.TRUE,
    wrap: tb === WrapStrategy.WRAP,
    across: ACROSS.find(([align]) => align === ht)?.[1],
    fill: bg?.rgb ?? undefined,
  };
}

/** The decimals that a number without a format is shown with. */
const decimalsOf = (value: unknown): number =>
  typeof value === 'number' ? (/\.(\d+)$/.exec(String(Number(value.toPrecision(10))))?.[1]?.length ?? 0) : 0;

export function formatting(grid: Grid, language: string): Formatting {
  const notation = patternNotation(language);
  const run = (id: string, range: FRange, params: object) =>
    grid.api.syncExecuteCommand(id, {
      unitId: range.getUnitId(),
      subUnitId: range.getSheetId(),
      range: range.getRange(),
      ...params,
    });
  const each = (change: (range: FRange) => void) => asOneStep(grid, () => selectedRanges(grid).forEach(change));
  const pattern = () => styleAt(activeCell(grid)).n?.pattern;
  const format = (written: string) => each((range) => range.setNumberFormat(written));
  return {
    watch(listener) {
      let last = '';
      const look = () => {
        const shown = lookAt(activeCell(grid));
        if (JSON.stringify(shown) === last) return;
        last = JSON.stringify(shown);
        listener(shown);
      };
      return watchSelection(grid, look, { always: true });
    },
    kind: (kind) => format(patternOf(kind, notation)),
    thousands: (on) => format(withThousands(pattern(), on)),
    decimals: (change) => format(withDecimals(pattern(), change, decimalsOf(activeCell(grid).getRawValue()))),
    bold: (on) => each((range) => range.setFontWeight(on ? 'bold' : 'normal')),
    wrap: (on) => each((range) => range.setWrap(on)),
    align: (across) =>
      each((range) =>
        run(SetHorizontalTextAlignCommand.id, range, {
          value: ACROSS.find(([, one]) => one === across)?.[0] ?? HorizontalAlign.UNSPECIFIED,
        }),
      ),
    fill: (colour) =>
      each((range) => {
        if (colour) range.setBackground(colour);
        else run(SetStyleCommand.id, range, { style: { type: 'bg', value: { rgb: null } } });
      }),
    lines: (lines) => each((range) => range.setBorder(LINES[lines], BorderStyleTypes.THIN, LINE_COLOUR)),
  };
}
