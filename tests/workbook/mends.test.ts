import { readdirSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import {
  CellValueType,
  type ICellData,
  ICommandService,
  IUniverInstanceService,
  requestImmediateMacroTask,
  UndoCommand,
} from '../../taskpane/workbook/engine/core.js';
import { UniverSheetsFilterPlugin } from '../../taskpane/workbook/engine/filter.js';
import {
  BaseReferenceObject,
  FormulaDataModel,
  ICalculateFormulaService,
} from '../../taskpane/workbook/engine/formula.js';
import { bareCellValue } from '../../taskpane/workbook/engine/mends/cellValues.js';
import { leaveEntriesAlone } from '../../taskpane/workbook/engine/mends/leaveEntriesAlone.js';
import { bare } from '../../taskpane/workbook/engine/mends/manyFrames.js';
import { nextTask } from '../../taskpane/workbook/engine/mends/nextTask.js';
import { DataSyncPrimaryController } from '../../taskpane/workbook/engine/rpc.js';
import { servicesOf } from '../../taskpane/workbook/engine/services.js';
import { ClearSelectionContentCommand, SetRangeValuesMutation } from '../../taskpane/workbook/engine/sheets.js';
import { bareEngine } from './bareEngine.js';

type Engine = Awaited<ReturnType<typeof bareEngine>>;
let engine: Engine;
afterEach(() => engine?.univer.dispose());
const commands = () => servicesOf(engine.univer).get(ICommandService);

// Where one of these fails, the engine has been cured: then the mend that it names can go.
describe('the engine without our mends', () => {
  it('still leaves formulas alone that read what an answer no longer fills: vanished.ts', async () => {
    engine = await bareEngine([['=SEQUENCE(B1)', 3, '=A3']]);
    expect(engine.at('C1')).toBe(3);
    engine.sheet.getRange('B1').setValue(1);
    await engine.settled();
    expect([engine.at('A3'), engine.at('C1')]).toEqual([null, 3]);
  });

  it('still shows what was there before where a spilled answer reads a part of another: untilSettled.ts', async () => {
    engine = await bareEngine([[1, '=C3', '=D2:D4+0', '=E2:E5*1', '=SEQUENCE(5)*A1']]);
    engine.sheet.getRange('A1').setValue(2);
    await engine.settled();
    expect(engine.at('E5')).toBe(10);
    expect(engine.at('B1')).not.toBe(10);
  });

  it('still sorts all that is drawn in search of one part, and of each that is added: manyFrames.ts', () => {
    let sorted = 0;
    const getObjectsByOrder = () => {
      sorted += 1;
      return [];
    };
    bare.getObject.call({ _layers: [{ getObjectsByOrder }] } as never, 'frame');
    expect(sorted).toBe(1);
    const parts = [{ oKey: 'one' }, { oKey: 'two' }];
    const looked: string[] = [];
    const layer = {
      _objects: [],
      scene: { getObject: (key: string) => void looked.push(key), setObjectBehavior() {} },
      _layerBehavior() {},
      makeDirty() {},
    };
    bare.addObject.call(layer as never, { classType: 'Group', getObjects: () => parts } as never);
    expect(looked).toEqual(['one', 'two']);
  });

  it('still leaves the channel open that it makes for each task: nextTask.ts', async () => {
    const made: MessageChannel[] = [];
    const Channel = globalThis.MessageChannel;
    class Watched extends Channel {
      constructor() {
        super();
        made.push(this);
      }
    }
    globalThis.MessageChannel = Watched;
    const answered = (port: MessagePort) =>
      new Promise<boolean>((resolve) => {
        port.addEventListener('close', () => resolve(false));
        setTimeout(() => resolve(true), 100);
      });
    const stays = async (later: (work: () => void) => unknown) => {
      await new Promise<void>((resolve) => void later(resolve));
      return answered((made.at(-1) as MessageChannel).port1);
    };
    expect(await stays(requestImmediateMacroTask)).toBe(true);
    expect(await stays(nextTask)).toBe(false);
    globalThis.MessageChannel = Channel;
    for (const { port1 } of made) port1.close();
  });

  it('still shows a number for formulas that read their own answer: circles.ts', async () => {
    engine = await bareEngine([['=B1+1', '=A1+1']]);
    expect([engine.at('A1'), engine.at('B1')].some((value) => value === '#CYCLE!')).toBe(false);
  });

  it('still takes a rule and a note from a cell that is emptied: clearing.ts', async () => {
    engine = await bareEngine([[1]]);
    engine.sheet.getRange('A1').setValue({ v: 1, custom: { note: 'Why' } });
    const ranges = [engine.sheet.getRange('A1').getRange()];
    await commands().executeCommand(ClearSelectionContentCommand.id, { ranges });
    expect(engine.sheet.getSheet().getCellRaw(0, 0)?.custom).toBeUndefined();
  });

  it('still takes arrays after an operator, and a minus before a text or truth, for mistakes: formulaReader.ts', async () => {
    engine = await bareEngine([[3, '=A1*{7,8}', '', '=-"31"', '=-(TRUE)+-TRUE']]);
    expect([engine.at('B1'), engine.at('D1'), engine.at('E1')]).toEqual(['#VALUE!', '#NAME?', '#NAME?']);
  });

  it('still takes a text that reads like an error for one, and a number in the format of texts for none: cellValues.ts', () => {
    const styles = { getStyleByCell: () => ({ n: { pattern: '@' } }) };
    const place = { _unitStylesData: { '': styles }, getUnitId: () => '' };
    const read = (cell: ICellData) =>
      bareCellValue.call(Object.assign(Object.create(BaseReferenceObject.prototype), place), cell);
    expect(read({ v: '#N/A', t: CellValueType.FORCE_STRING }).isError()).toBe(true);
    expect(read({ v: 5, t: CellValueType.NUMBER }).isString()).toBe(true);
  });

  it('still keeps no way back from deleting a large sheet: the threshold in formula/engine.ts', async () => {
    engine = await bareEngine([[1]]);
    servicesOf(engine.univer).get(IUniverInstanceService).focusUnit(engine.workbook.getId());
    const large = engine.workbook.insertSheet('Large');
    large.setRowCount(7000);
    large.getRange(0, 0, 7000, 1).setValues(Array.from({ length: 7000 }, () => [1]));
    engine.workbook.deleteSheet(large.getSheetId());
    await commands().executeCommand(UndoCommand.id);
    expect(engine.workbook.getSheets().map((sheet) => sheet.getSheetName())).not.toContain('Large');
  });

  /** An answer of another thread for A1, which holds an entry by now. */
  const lateAnswer = () =>
    commands().syncExecuteCommand(
      SetRangeValuesMutation.id,
      {
        unitId: engine.workbook.getId(),
        subUnitId: engine.sheet.getSheetId(),
        cellValue: { 0: { 0: { v: 7 } } },
      },
      { applyFormulaCalculationResult: true, fromSync: true, onlyLocal: true },
    );

  it('still lets a late answer take the place of an entry: leaveEntriesAlone.ts', async () => {
    engine = await bareEngine([[1]]);
    lateAnswer();
    expect(engine.at('A1')).toBe(7);
    leaveEntriesAlone(engine.univer);
    engine.sheet.getRange('A1').setValue(2);
    lateAnswer();
    expect(engine.at('A1')).toBe(2);
  });

  it('still loses answers where two calculations are asked for within a moment: oneAtATime.ts', async () => {
    engine = await bareEngine([
      [1, '=A1*2'],
      [1, '=A2*2'],
    ]);
    const injector = servicesOf(engine.univer);
    const [calculation, model] = [injector.get(ICalculateFormulaService), injector.get(FormulaDataModel)];
    const answered: (string | undefined)[][] = [];
    calculation.executionCompleteListener$.subscribe(({ unitData }) => {
      const rows = unitData[engine.workbook.getId()]?.[engine.sheet.getSheetId()];
      answered.push(Object.keys(rows?.getMatrix() ?? {}));
    });
    const range = (row: number) => ({ startRow: row, endRow: row, startColumn: 0, endColumn: 0 });
    const ask = (row: number) =>
      calculation.execute({
        formulaData: model.getFormulaData(),
        arrayFormulaCellData: model.getArrayFormulaCellData(),
        arrayFormulaRange: model.getArrayFormulaRange(),
        forceCalculate: false,
        dirtyRanges: [{ unitId: engine.workbook.getId(), sheetId: engine.sheet.getSheetId(), range: range(row) }],
        ...{ dirtyNameMap: {}, dirtyDefinedNameMap: {}, dirtyUnitFeatureMap: {}, dirtyUnitOtherFormulaMap: {} },
      });
    await Promise.all([ask(0), ask(1)]);
    await expect.poll(() => answered.length).toBe(2);
    expect(answered.flat()).toContain('1');
    expect(answered.flat()).not.toContain('0');
  });

  it('still sends what is done to filters to the thread that calculates: filtersStayHere.ts', async () => {
    engine = await bareEngine([[1]]);
    const sent: string[] = [];
    const registerSyncingMutations = ({ id }: { readonly id: string }) => void sent.push(id);
    servicesOf(engine.univer).add([DataSyncPrimaryController, { useValue: { registerSyncingMutations } as never }]);
    engine.univer.registerPlugin(UniverSheetsFilterPlugin);
    await expect.poll(() => sent.filter((id) => /^sheet\.mutation\..*filter/.test(id)).length).toBeGreaterThan(2);
  });

  it('still brings hyphenation patterns of some eighty languages: noHyphenation.ts', () => {
    const folder = new URL('../../node_modules/@univerjs/engine-render/lib/es/', import.meta.url);
    expect(readdirSync(folder).filter((name) => /^[a-z0-9-]+-[\w-]{8}\.js$/.test(name)).length).toBeGreaterThan(50);
  });
});
