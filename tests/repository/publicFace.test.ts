import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';
import { path } from '../../.config/paths.js';
import { catalogue } from '../../src/catalogue.js';
import * as face from '../../src/index.js';
import { codeFiles, textOf } from './files.js';

const values: ReadonlyMap<string, unknown> = new Map(Object.entries(face));

const isCalculation = (value: unknown): boolean => catalogue.includes(value as never);

/** What a module may say at its top level without acting on import. */
const QUIET = new Set([
  ts.SyntaxKind.ImportDeclaration,
  ts.SyntaxKind.ExportDeclaration,
  ts.SyntaxKind.InterfaceDeclaration,
  ts.SyntaxKind.TypeAliasDeclaration,
  ts.SyntaxKind.FunctionDeclaration,
  ts.SyntaxKind.VariableStatement,
]);

describe('the library for programmers', () => {
  let program: ts.Program;
  beforeAll(() => {
    const options = { module: ts.ModuleKind.NodeNext, target: ts.ScriptTarget.ES2022, strict: true, types: [] };
    program = ts.createProgram([path('src/index.ts')], options);
  });

  it('has every calculation by name, but for the two that read the whole catalogue', () => {
    const named: unknown[] = [...values.values()].filter(isCalculation);
    const missing = catalogue.filter((one) => !named.includes(one)).map(({ id }) => id as string);
    expect(missing.sort()).toEqual(['RANGECHECK', 'SAFERANGE']);
    expect(named.length).toBe(catalogue.length - 2);
  });

  it('says in a docstring what each export is; of a calculation its declaration says it', () => {
    const checker = program.getTypeChecker();
    const module = checker.getSymbolAtLocation(program.getSourceFile(path('src/index.ts'))!)!;
    const all = checker.getExportsOfModule(module);
    const bare = all
      .filter(({ name }) => !isCalculation(values.get(name)))
      .map((one) => (one.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(one) : one))
      .filter((one) => one.getDocumentationComment(checker).length === 0);
    expect(all.length).toBeGreaterThan(catalogue.length);
    expect(bare.map(({ name }) => name)).toEqual([]);
  });

  it('does nothing on import: its modules only declare', () => {
    const modules = codeFiles.filter((name) => name.startsWith('src/'));
    const acting = modules.flatMap((name) =>
      ts
        .createSourceFile(name, textOf(name), ts.ScriptTarget.ES2022)
        .statements.filter(({ kind }) => !QUIET.has(kind))
        .map(({ kind }) => `${name}: ${ts.SyntaxKind[kind]}`),
    );
    expect(modules.length).toBeGreaterThan(100);
    expect(acting).toEqual([]);
  });
});
