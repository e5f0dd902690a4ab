import type { ICellData, IRange, IUnitRange, ObjectMatrix, Univer } from '../core.js';
import {
  ErrorType,
  ErrorValueObject,
  ICalculateFormulaService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
} from '../formula.js';
import { servicesOf } from '../services.js';
import { beforeFirstCalculation } from './firstCalculation.js';

type Sheets<T> = Record<string, Record<string, T | undefined> | undefined>;
type Ranges = Sheets<Record<number, Record<number, IRange>>>;
type Cells = Sheets<ObjectMatrix<ICellData | null>>;
type Value = Parameters<IFormulaRuntimeService['setRuntimeData']>[0];

interface Runtime extends IFormulaRuntimeService {
  readonly _runtimeClearArrayFormulaCellData: Cells;
}

interface Calculator {
  _apply(again?: boolean): Promise<{ readonly runtimeFeatureRange: object } | undefined>;
  _executeStep(): Promise<boolean | undefined>;
  /** The second names what features such as rules of validation have changed. */
  _getArrayFormulaDirtyRangeAndExcludedRange(answers: object, features: object): { readonly dirtyRanges: IUnitRange[] };
}

/** Whatever else a calculation was asked to do is done in its first pass. */
const ONLY_DIRTY_RANGES = {
  _forceCalculate: false,
  _dirtyDefinedNameMap: {},
  _dirtySuperTableMap: {},
  _dirtyUnitFeatureMap: {},
  _dirtyUnitOtherFormulaMap: {},
};

/** What is calculated anew each time, such as RAND. */
interface Generator {
  _detectForcedRecalculationNode(...given: unknown[]): boolean;
}

interface Answer {
  readonly range: IRange;
  readonly cells: readonly (ICellData | null)[];
}

type Place = { readonly unitId: string; readonly sheetId: string; readonly row: number; readonly column: number };

function answerAt({ unitId, sheetId, row, column }: Place, ranges: Ranges, cells: Cells): Answer | undefined {
  const range = ranges[unitId]?.[sheetId]?.[row]?.[column];
  if (!range) return undefined;
  const matrix = cells[unitId]?.[sheetId];
  const filled: (ICellData | null)[] = [];
  for (let r = range.startRow; r <= range.endRow; r++)
    for (let c = range.startColumn; c <= range.endColumn; c++) filled.push(matrix?.getValue(r, c) || null);
  return { range, cells: filled };
}

const width = ({ startColumn, endColumn }: IRange) => endColumn - startColumn;
const height = ({ startRow, endRow }: IRange) => endRow - startRow;

/** Whether other cells than the formula's own show the same; what reads its own cell follows in the engine's order. */
function fillsTheSame(one: Answer | undefined, other: Answer | undefined): boolean {
  if (!one || !other) return one === other;
  if (width(one.range) !== width(other.range) || height(one.range) !== height(other.range)) return false;
  return one.cells.every((cell, index) => {
    const now = other.cells[index];
    return index === 0 || (cell?.v === now?.v && cell?.t === now?.t);
  });
}

/** A range without its first cell. */
function besideFirst(range: IRange): IRange[] {
  const parts: IRange[] = [];
  if (width(range) > 0) parts.push({ ...range, startColumn: range.startColumn + 1, endRow: range.startRow });
  if (height(range) > 0) parts.push({ ...range, startRow: range.startRow + 1 });
  return parts;
}

/**
 * The engine calculates what reads a part of a spilled answer in a second pass, and leaves spilled answers out of it: one
 * that reads a part of another shows what was there before. Here passes follow each other until none changes what another
 * one fills. A chain of spilled answers needs as many passes as it has links; what still changes then reads its own answer.
 */
export function calculateUntilSettled(univer: Univer): void {
  const injector = servicesOf(univer);

  beforeFirstCalculation(univer, () => {
    const calculator = injector.get(ICalculateFormulaService) as unknown as Calculator;
    const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
    const runtime = injector.get(IFormulaRuntimeService) as Runtime;
    const config = injector.get(IFormulaCurrentConfigService);
    const detectsForced = generator._detectForcedRecalculationNode.bind(generator);
    const setRuntimeData = runtime.setRuntimeData.bind(runtime);
    const ranges = () => runtime.getUnitArrayFormula() as Ranges;
    const cells = () => runtime.getRuntimeArrayFormulaCellData() as unknown as Cells;
    /** Spilled answers of this calculation. */
    let spilled = new Set<string>();
    let circular = new Set<string>();
    let changed = new Map<string, IUnitRange[]>();
    let first = true;

    /** Takes an answer back that an earlier pass gave; the new one may fill less. */
    function takeBack(place: Place): Answer | undefined {
      const { unitId, sheetId, row, column } = place;
      runtime._runtimeClearArrayFormulaCellData[unitId]?.[sheetId]?.realDeleteValue(row, column);
      const earlier = answerAt(place, ranges(), cells());
      if (!earlier) return undefined;
      const { startRow, endRow, startColumn, endColumn } = earlier.range;
      const matrix = cells()[unitId]?.[sheetId];
      for (let r = startRow; r <= endRow; r++)
        for (let c = startColumn; c <= endColumn; c++) matrix?.realDeleteValue(r, c);
      delete ranges()[unitId]?.[sheetId]?.[row]?.[column];
      return earlier;
    }

    runtime.setRuntimeData = (value: Value) => {
      const { currentUnitId: unitId, currentSubUnitId: sheetId, currentRow: row, currentColumn: column } = runtime;
      const place = { unitId, sheetId, row, column };
      const key = `${unitId} ${sheetId} ${row} ${column}`;
      const earlier = first ? undefined : takeBack(place);
      setRuntimeData(circular.has(key) ? ErrorValueObject.create(ErrorType.CYCLE) : value);
      const now = answerAt(place, ranges(), cells());
      if (!now && !earlier) return;
      spilled.add(key);
      const before =
        earlier ??
        answerAt(place, config.getArrayFormulaRange() as Ranges, config.getArrayFormulaCellData() as unknown as Cells);
      if (fillsTheSame(before, now)) return;
      const dirty = [earlier, now].flatMap((one) => (one ? besideFirst(one.range) : []));
      changed.set(
        key,
        dirty.map((range) => ({ unitId, sheetId, range })),
      );
    };

    generator._detectForcedRecalculationNode = (...given) => first && detectsForced(...given);

    calculator._executeStep = async () => {
      spilled = new Set();
      circular = new Set();
      changed = new Map();
      first = true;
      const done = await calculator._apply();
      if (!done) return undefined;
      let others = calculator._getArrayFormulaDirtyRangeAndExcludedRange({}, done.runtimeFeatureRange).dirtyRanges;
      first = false;
      for (let pass = 0; changed.size > 0 || others.length > 0; pass++) {
        if (pass > spilled.size) for (const key of changed.keys()) circular.add(key);
        runtime.clearArrayObjectCache();
        config.loadDirtyRangesAndExcludedCell([...[...changed.values()].flat(), ...others], {});
        Object.assign(config, ONLY_DIRTY_RANGES);
        changed = new Map();
        others = [];
        if (!(await calculator._apply(true))) return undefined;
      }
      return true;
    };
  });
}
