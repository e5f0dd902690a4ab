import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { dist } from '../../.config/paths.js';
import { contentPolicy } from '../../.config/policy.js';
import { builtText } from './builtText.js';

const tags = (html: string, name: string) => html.match(new RegExp(`<(?:${name})\\b[^>]*>`, 'g')) ?? [];
const sources = (html: string) => tags(html, 'script').map((tag) => /src="?([^" >]+)/.exec(tag)?.[1] ?? 'inline');

describe.each(['taskpane', 'workbook'] as const)('the built page %s.html', (name) => {
  const html = builtText(`${name}.html`);

  it('states its policy before anything that the policy governs', () => {
    const [first] = tags(html, 'meta|script|link|style');
    expect(first).toBe(`<meta http-equiv="Content-Security-Policy" content="${contentPolicy(name, 'local')}">`);
  });

  it('has no script and no style of its own, only files of the site that exist', () => {
    const links = tags(html, 'link').map((tag) => /href="?([^" >]+)/.exec(tag)?.[1] ?? '');
    const files = [...sources(html), ...links];
    expect(files.filter((file) => !existsSync(join(dist, file)))).toEqual([]);
    expect(tags(html, 'style')).toEqual([]);
    expect(html).not.toMatch(/\son\w+=/);
  });
});

describe('the built pages', () => {
  it('load office.js, then the functions, then the pane into Excel', () => {
    expect(sources(builtText('taskpane.html'))).toEqual(['assets/office/office.js', 'functions.js', 'pane.js']);
  });

  it('load no office.js into the embedded workbook', () => {
    expect(sources(builtText('workbook.html')).filter((source) => source.includes('office'))).toEqual([]);
  });

  it('show the embedded workbook to a browser that asks for no page by name', () => {
    expect(builtText('index.html')).toBe(builtText('workbook.html'));
  });
});
