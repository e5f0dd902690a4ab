import { writeFileSync } from 'node:fs';
import { honestyPage } from '../../tests/honesty/page.js';
import { path } from '../paths.js';

const PAGE = 'docs/honesty.md';
const page = honestyPage();
writeFileSync(path(PAGE), page);
console.log(`Written: ${PAGE}`);
if (page.includes('| NOT HELD |')) {
  console.error('Some claims are not held; see the page.');
  process.exit(1);
}
