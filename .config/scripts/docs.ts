import { stale, write } from '../generated.js';

if (process.argv.includes('--check')) {
  const names = stale();
  for (const name of names) console.error(`${name} is not what the declarations make now. Mend it with: npm run docs`);
  if (names.length > 0) process.exit(1);
  console.log('The generated files are current.');
} else {
  console.log(`Written: ${write().join(', ')}`);
}
