import { type IRange, IUniverInstanceService, type Univer, type Workbook } from '../core.js';
import {
  deserializeRangeWithSheet,
  ErrorType,
  IDependencyManagerService,
  IFormulaDependencyGenerator,
  type IFormulaDependencyTree,
  LexerTreeBuilder,
  sequenceNodeType,
} from '../formula.js';
import { servicesOf } from '../services.js';
import { beforeFirstCalculation } from './firstCalculation.js';
import { groupsIn } from './groupsIn.js';

/** Functions that ask where a cell is, or what kind, and read no answer from it. */
const POSITION = /(?<![\p{L}\p{N}_.])(?:ROWS?|COLUMNS?|AREAS|SHEETS?|ISREF|ISFORMULA|FORMULATEXT)\s*\([^()]*\)/giu;

type Tree = IFormulaDependencyTree;
/** The engine looks for circles itself, but then calculates each of them once a round. */
interface Generator {
  _checkIsCycleDependency(trees: Tree[]): boolean;
}

const has = ({ startRow, endRow, startColumn, endColumn }: IRange, { row, column }: Tree) =>
  !(row < startRow || row > endRow || column < startColumn || column > endColumn);

/** Shows an error in each formula that reads its own answer, directly or through others, in place of a growing number. */
export function markCircles(univer: Univer): void {
  const injector = servicesOf(univer);

  /** Whether `tree` reads the answer of one of `others`, and not only where it is. */
  function readsAnswer(tree: Tree, others: readonly Tree[]): boolean {
    if (tree.formula.search(POSITION) < 0 && !tree.formula.includes('!')) return true;
    const book = injector.get(IUniverInstanceService).getUnit<Workbook>(tree.unitId);
    const lexer = injector.get(LexerTreeBuilder);
    const { refOffsetX = 0, refOffsetY = 0 } = tree;
    const formula = lexer.moveFormulaRefOffset(tree.formula.replace(POSITION, '0'), refOffsetX, refOffsetY);
    return (lexer.sequenceNodesBuilder(formula) ?? []).some((node) => {
      if (typeof node === 'string') return false;
      if (node.nodeType === sequenceNodeType.DEFINED_NAME) return true;
      if (node.nodeType !== sequenceNodeType.REFERENCE) return false;
      const { range, sheetName } = deserializeRangeWithSheet(node.token);
      // A sheet that is not there is taken for the formula's own by the engine.
      const sheet = sheetName ? book?.getSheetBySheetName(sheetName)?.getSheetId() : tree.subUnitId;
      return others.some((other) => other.subUnitId === sheet && has(range, other));
    });
  }

  function mark(trees: Tree[]): void {
    const dependencies = injector.get(IDependencyManagerService);
    const known = new Map(trees.map((tree) => [tree.treeId, tree]));
    const treesOf = (ids: readonly number[]) => ids.flatMap((id) => known.get(id) ?? []);
    const all = new Map<number, readonly number[]>();
    /** Those of a circle that a formula does not read after all. */
    const unread = new Map<number, ReadonlySet<number>>();
    const readersOf = (id: number) => {
      const found =
        all.get(id) ??
        [...dependencies.searchDependency(known.get(id)?.toRTreeItem() ?? [])].filter((one) => known.has(one));
      all.set(id, found);
      return unread.size === 0 ? found : found.filter((one) => !unread.get(one)?.has(id));
    };
    for (;;) {
      const groups = groupsIn([...known.keys()], readersOf);
      const circles = groups.filter(({ circular }) => circular);
      let innocent = false;
      for (const { ids } of circles) {
        const members = treesOf(ids);
        for (const tree of members.filter((one) => !readsAnswer(one, members))) {
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
      mark(trees);
      return false;
    };
  });
}
