import { describe, expect, it } from 'vitest';
import { builtText } from './builtText.js';

describe('the notices of other people’s code in the site', () => {
  const text = builtText('licences.txt');
  const named = Array.from(text.matchAll(/^={80}\n(\S+) \S+ \((.+)\)\n={80}$/gm), ([, name]) => name);

  it('name what functions, pane and workbook are made with, office.js among it', () => {
    expect(named).toEqual(expect.arrayContaining(['pure-rand', 'preact', 'd3-scale', 'react', '@univerjs/core']));
    expect(named).toEqual(expect.arrayContaining(['webpack', '@microsoft/office-js', '@borgar/fx']));
    expect(new Set(named).size).toBeGreaterThan(80);
  });

  it('name no tool that only builds or tests', () => {
    expect(named.filter((name) => /^(?:axe-core|lightningcss|vitest|typescript|fast-check|zod)$/.test(name!))).toEqual(
      [],
    );
  });

  it('give the text of a licence', () => {
    expect(text).toContain('Permission is hereby granted, free of charge');
    expect(text).toContain('Apache License');
  });
});
