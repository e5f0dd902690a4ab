import { type IRange, IUniverInstanceService, type Univer, type Workbook } from '../core.js';
import {
  deserializeRangeWithSheet,
  ErrorType,
  IDependencyManagerService,
  IFormulaDependencyGenerator,
  type IFormulaDependencyTree,
  LexerTreeBuilder,
} from '../formula.js';
import { servicesOf } from '../services.js';
import { within } from '../within.js';
import { beforeFirstCalculation } from './firstCalculation.js';
import { groupsIn } from './groupsIn.js';
import { ASKS_PLACE, rangesRead } from './readPlaces.js';

type Tree = IFormulaDependencyTree;
type Item = ReturnType<Tree['toRTreeItem']>;

/** The engine looks for circles itself, but then calculates each of them once a round. */
interface Generator {
  /** What formulas read by way of functions that find places, such as INDIRECT. */
  readonly _dependencyRTreeCacheForAddressFunction: { bulkSearch(place: Item): Set<number> };
  _checkIsCycleDependency(trees: Tree[]): boolean;
}

/** The place in one row or column that stands beside a formula. */
const beside = (range: IRange, { row, column }: Tree): IRange => ({
  ...(range.startColumn === range.endColumn ? { startRow: row, endRow: row } : range),
  ...(range.startColumn === range.endColumn
    ? { startColumn: range.startColumn, endColumn: range.startColumn }
    : { startColumn: column, endColumn: column }),
});

/** Which formulas read the answer of another by way of functions that find places, by the other's id. */
type Followed = ReadonlyMap<number, ReadonlySet<number>>;

/** Shows an error in each formula that reads its own answer, directly or through others, in place of a growing number. */
export function markCircles(univer: Univer): void {
  const injector = servicesOf(univer);

  /** Whether `tree` reads the answer of one of `others`, and not only where it is. */
  function readsAnswer(tree: Tree, others: readonly Tree[], followed: Followed): boolean {
    if (others.some((one) => followed.get(one.treeId)?.has(tree.treeId))) return true;
    if (!ASKS_PLACE.test(tree.formula) && !tree.formula.includes('!')) return true;
    const book = injector.get(IUniverInstanceService).getUnit<Workbook>(tree.unitId);
    const { refOffsetX = 0, refOffsetY = 0 } = tree;
    const formula = injector.get(LexerTreeBuilder).moveFormulaRefOffset(tree.formula, refOffsetX, refOffsetY);
    return (
      rangesRead(formula)?.some(({ range: text, single }) => {
        const { range, sheetName } = deserializeRangeWithSheet(text);
        // A sheet that is not there is taken for the formula's own by the engine.
        const sheet = sheetName ? book?.getSheetBySheetName(sheetName)?.getSheetId() : tree.subUnitId;
        const read = single ? beside(range, tree) : range;
        return others.some((other) => other.subUnitId === sheet && within(read, other.row, other.column));
      }) ?? true
    );
  }

  function mark(trees: Tree[], generator: Generator): void {
    const dependencies = injector.get(IDependencyManagerService);
    const known = new Map(trees.map((tree) => [tree.treeId, tree]));
    const treesOf = (ids: readonly number[]) => ids.flatMap((id) => known.get(id) ?? []);
    const all = new Map<number, readonly number[]>();
    /** Those of a circle that a formula does not read after all. */
    const unread = new Map<number, ReadonlySet<number>>();
    const followed = new Map<number, ReadonlySet<number>>();
    const search = (id: number): readonly number[] => {
      const place = known.get(id)?.toRTreeItem();
      if (!place) return [];
      const byPlace = generator._dependencyRTreeCacheForAddressFunction.bulkSearch(place);
      if (byPlace.size > 0) followed.set(id, byPlace);
      return [...new Set([...dependencies.searchDependency(place), ...byPlace])].filter((one) => known.has(one));
    };
    const readersOf = (id: number) => {
      const found = all.get(id) ?? search(id);
      all.set(id, found);
      return unread.size === 0 ? found : found.filter((one) => !unread.get(one)?.has(id));
    };
    for (;;) {
      const groups = groupsIn([...known.keys()], readersOf);
      const circles = groups.filter(({ circular }) => circular);
      let innocent = false;
      for (const { ids } of circles) {
        const members = treesOf(ids);
        for (const tree of members.filter((one) => !readsAnswer(one, members, followed))) {
          unread.set(tree.treeId, new Set(ids));
          innocent = true;
        }
      }
      if (innocent) continue;
      // The engine takes them from the end; it cannot know an order through what it takes for a circle.
      if (unread.size > 0) trees.splice(0, trees.length, ...treesOf(groups.flatMap(({ ids }) => ids)));
      const circular = new Set(circles.flatMap(({ ids }) => ids));
      for (const [place, tree] of trees.entries()) {
        if (circular.has(tree.treeId))
          trees[place] = Object.create(tree, { formula: { value: `=${ErrorType.CYCLE}` } });
      }
      return;
    }
  }

  beforeFirstCalculation(univer, () => {
    const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
    generator._checkIsCycleDependency = (trees) => {
      mark(trees, generator);
      return false;
    };
  });
}
