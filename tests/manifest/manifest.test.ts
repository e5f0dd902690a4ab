import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { developmentAddress } from '../../.config/address.js';
import { path } from '../../.config/paths.js';
import { starterSheets } from '../../src/sheets/index.js';
import { commandOf } from '../../taskpane/pane/ribbon.js';
import { childrenOf, readManifest } from './readManifest.js';

const manifest = readManifest(readFileSync(path('manifest.xml'), 'utf8'));
const { version } = JSON.parse(readFileSync(path('package.json'), 'utf8'));

const names = (name: string) => childrenOf(manifest.all(name)[0]!).map((child) => child.localName);
const attributes = (name: string, attribute: string) => manifest.all(name).map((one) => one.getAttribute(attribute));
const resources = ['Image', 'Url', 'String']
  .flatMap((name) => manifest.all(name))
  .filter((one) => one.hasAttribute('id'));
const resourceIds = resources.map((one) => one.getAttribute('id')!);
const textOfResource = (resid: string | null) =>
  resources.find((one) => one.getAttribute('id') === resid)?.getAttribute('DefaultValue');

describe('the manifest', () => {
  it('names its parts in the order that Excel demands', () => {
    expect(childrenOf(manifest.root).map((child) => child.localName)).toEqual([
      'Id',
      'Version',
      'ProviderName',
      'DefaultLocale',
      'DisplayName',
      'Description',
      'IconUrl',
      'HighResolutionIconUrl',
      'SupportUrl',
      'Hosts',
      'Requirements',
      'DefaultSettings',
      'Permissions',
      'VersionOverrides',
    ]);
    expect(names('VersionOverrides')).toEqual(['Hosts', 'Resources']);
    expect(names('Resources')).toEqual(['Images', 'Urls', 'ShortStrings', 'LongStrings']);
    const [, workbook] = manifest.all('Host');
    expect(childrenOf(workbook!).map((child) => child.localName)).toEqual([
      'Runtimes',
      'AllFormFactors',
      'DesktopFormFactor',
    ]);
    expect(names('DesktopFormFactor')).toEqual(['GetStarted', 'FunctionFile', 'ExtensionPoint', 'ExtensionPoint']);
    expect(names('ExtensionPoint')).toEqual(['Script', 'Page', 'Metadata', 'Namespace']);
  });

  it('has an id that is a UUID and the version of package.json', () => {
    expect(manifest.text('Id')).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(manifest.text('Version')).toBe(`${version}.0`);
  });

  it('asks to write into the workbook and for nothing beyond', () => {
    expect(manifest.text('Permissions')).toBe('ReadWriteDocument');
  });

  it('asks for the shared runtime and for custom functions with errors of their own, and for nothing newer', () => {
    const sets = manifest.all('Set').map((one) => [one.getAttribute('Name'), one.getAttribute('MinVersion')]);
    expect(sets).toEqual([
      ['SharedRuntime', '1.1'],
      // Errors with a sentence. Rich values come with 1.4, which no volume-licensed Excel has; they are unwrapped where they come.
      ['CustomFunctionsRuntime', '1.3'],
    ]);
  });

  it('runs functions, pane and commands in one runtime that lives as long as the workbook', () => {
    expect(attributes('Runtime', 'lifetime')).toEqual(['long']);
    const [runtime] = attributes('Runtime', 'resid');
    const page = childrenOf(manifest.all('Page')[0]!)[0]!.getAttribute('resid');
    const pane = childrenOf(manifest.all('Action')[0]!).find((one) => one.localName === 'SourceLocation')!;
    expect([page, pane.getAttribute('resid'), ...attributes('FunctionFile', 'resid')]).toEqual([
      runtime,
      runtime,
      runtime,
    ]);
    expect(manifest.all('SourceLocation')[0]!.getAttribute('DefaultValue')).toBe(textOfResource(runtime!));
  });

  it('offers every starter sheet in the ribbon by its name, and has the command of each', () => {
    const items = manifest.all('Item').map((item) => {
      const [label] = childrenOf(item);
      return [textOfResource(label!.getAttribute('resid')), childrenOf(item).at(-1)!.textContent!.trim()];
    });
    expect(items).toEqual(starterSheets.map(({ name, key }) => [name, commandOf(key)]));
  });

  it('offers in the menu on cells the pane that explains them', () => {
    expect(attributes('OfficeMenu', 'id')).toEqual(['ContextMenuCell']);
    const panes = manifest.all('TaskpaneId').map((one) => one.textContent);
    expect(new Set(panes)).toEqual(new Set(['Powderbook.Pane']));
    expect(panes).toHaveLength(2);
  });

  it('puts its functions under POWDER', () => {
    expect(textOfResource(attributes('Namespace', 'resid')[0]!)).toBe('POWDER');
  });

  it('names only resources that exist, each once, and none that nothing uses', () => {
    const used = Array.from(manifest.root.getElementsByTagName('*')).flatMap((one) => one.getAttribute('resid') ?? []);
    expect(new Set(resourceIds).size).toBe(resourceIds.length);
    expect([...new Set(used)].sort()).toEqual([...resourceIds].sort());
  });

  it('keeps names and texts within the lengths that Excel allows', () => {
    const tooLong = (name: string, most: number) =>
      childrenOf(manifest.all(name)[0]!).filter((one) => one.getAttribute('DefaultValue')!.length > most);
    expect(tooLong('ShortStrings', 125)).toEqual([]);
    expect(tooLong('LongStrings', 250)).toEqual([]);
    expect(resourceIds.filter((id) => id.length > 32)).toEqual([]);
    expect(manifest.text('DisplayName').length).toBeLessThanOrEqual(125);
    expect(manifest.text('Description').length).toBeLessThanOrEqual(250);
  });

  it('names no address but the development one', () => {
    const values = Array.from(manifest.root.getElementsByTagName('*')).flatMap(
      (one) => one.getAttribute('DefaultValue') ?? [],
    );
    const addresses = values.filter((value) => value.includes('://'));
    expect(addresses.length).toBeGreaterThan(5);
    expect(addresses.filter((value) => !value.startsWith(`${developmentAddress}/`))).toEqual([]);
  });
});
