import { keepAnswers, natives } from '../exchange/natives.js';

// Has LibreOffice calculate the cases of native functions anew and compares what is kept of it; with `keep`, keeps it.

if (process.argv.includes('keep')) keepAnswers();
else {
  const { failures } = natives();
  for (const one of failures) console.error(`FAILED: ${one}`);
  process.exitCode = failures.length > 0 ? 1 : 0;
}
