import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { dist } from '../paths.js';
import { table } from '../scripts/table.js';

const kibibytes = (bytes: number): string => `${(bytes / 1024).toFixed(1)} KiB`;

/** Every script and style sheet of the build, the largest first; what loads later counts with its part. */
export function sizes(): string {
  const files = readdirSync(dist).filter((name) => /\.(js|css)$/.test(name));
  const parts = new Map<string, { files: number; plain: number; gzipped: number }>();
  for (const name of files) {
    const bytes = readFileSync(join(dist, name));
    const [part, ...rest] = name.split('.');
    const key = rest.length === 1 ? name : `${part}.*, later`;
    const sum = parts.get(key) ?? { files: 0, plain: 0, gzipped: 0 };
    sum.files += 1;
    sum.plain += bytes.length;
    sum.gzipped += gzipSync(bytes, { level: 9 }).length;
    parts.set(key, sum);
  }
  const rows = [...parts].sort(([, one], [, other]) => other.gzipped - one.gzipped);
  return table(
    ['part', 'files', 'size', 'gzipped'],
    rows.map(([name, sum]) => [name, String(sum.files), kibibytes(sum.plain), kibibytes(sum.gzipped)]),
  );
}
