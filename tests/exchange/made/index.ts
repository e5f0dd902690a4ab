import type { Made } from '../make.js';
import { alignment, borders, fills, fonts, formats, shape } from './appearance.js';
import { filters } from './filters.js';
import { arrays, formulas, intersection, sharedFormulas } from './formulas.js';
import { foreign, younger } from './functions.js';
import { large } from './large.js';
import { names, tables } from './names.js';
import { charts, notes } from './objects.js';
import { print } from './print.js';
import { conditions, protection, validations } from './rules.js';
import { from1904, values } from './values.js';

/** The corpus: one theme a workbook, by the name that the table of docs/exchange.md gives it. */
export const CORPUS: Readonly<Record<string, Made>> = {
  values,
  'days from 1904': from1904,
  formulas,
  'shared formulas': sharedFormulas,
  'arrays and spills': arrays,
  'implicit intersection': intersection,
  'younger functions': younger,
  'foreign formulas': foreign,
  names,
  tables,
  'number formats': formats,
  fonts,
  fills,
  borders,
  alignment,
  'shape of sheets': shape,
  print,
  'conditional formats': conditions,
  'rules for entries': validations,
  filters,
  'notes and links': notes,
  charts,
  protection,
  'many rows': large(2000),
};
