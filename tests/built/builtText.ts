import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dist } from '../../.config/paths.js';

/** The text of a file that the build wrote. */
export const builtText = (name: string): string => readFileSync(join(dist, name), 'utf8');
