import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { natives } from '../exchange/natives.js';
import { hasPrograms } from '../exchange/programs.js';
import { workbooks } from '../exchange/workbooks.js';
import { path } from '../paths.js';

// Writes docs/exchange.md, or with --check says whether the committed one is current. Needs LibreOffice and openpyxl.

if (!hasPrograms()) {
  console.error('The comparison needs LibreOffice (soffice) and openpyxl for python3 on this machine.');
  process.exit(1);
}

const file = path('docs/exchange.md');
const sections = [await workbooks(), natives()];
const failures = sections.flatMap((one) => one.failures);
const text = `# What goes from one program to another

Made by \`npm run exchange\` from the workbooks of \`tests/exchange\` and the cases of \`tests/natives\`; do not edit by hand. It needs LibreOffice and openpyxl.

${sections.map(({ section }) => section).join('\n\n')}
`;
for (const one of failures) console.error(`FAILED: ${one}`);
if (process.argv.includes('--check')) {
  const current = existsSync(file) && readFileSync(file, 'utf8') === text;
  if (!current) console.error('docs/exchange.md is not what the comparison gives now. Mend it with: npm run exchange');
  process.exit(failures.length > 0 || !current ? 1 : 0);
}
writeFileSync(file, text);
console.log(`Written: docs/exchange.md, ${failures.length} failures`);
process.exit(failures.length > 0 ? 1 : 0);
