import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { path } from './paths.js';

const isRoot = process.getuid?.() === 0;

/** Quiet and self-contained: no sandbox only where root forbids one, and nothing that calls home. */
export const browserFlags = [
  ...(isRoot ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

function runs(executable: string): boolean {
  try {
    execFileSync(executable, ['--version', ...browserFlags], { stdio: 'ignore', timeout: 30_000 });
    return true;
  } catch {
    return false;
  }
}

/** The first Chromium on this machine that starts, or undefined. Throws if the one named by POWDERBOOK_CHROMIUM does not start. */
export function findBrowser(): string | undefined {
  const named = process.env.POWDERBOOK_CHROMIUM;
  if (named) {
    if (runs(named)) return named;
    throw new Error(`POWDERBOOK_CHROMIUM names ${named}, which does not start.`);
  }
  const usual = ['/usr/bin/chromium', 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  const downloaded = chromium.executablePath();
  return [...usual, ...(existsSync(downloaded) ? [downloaded] : [])].find(runs);
}

function install(): void {
  const run = (command: string, ...words: string[]) => execFileSync(command, words, { stdio: 'inherit' });
  if (isRoot && existsSync('/usr/bin/apt-get')) {
    console.log("No Chromium found: installing Debian's package.");
    run('apt-get', 'update', '-qq');
    run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', 'chromium');
  } else {
    console.log("No Chromium found: downloading the browser driver's own.");
    run(process.execPath, path('node_modules/playwright-core/cli.js'), 'install', 'chromium');
  }
}

/** The path of a Chromium that starts, installed if there is none. Says which. */
export function ensureBrowser(): string {
  let found = findBrowser();
  if (!found) {
    install();
    found = findBrowser();
  }
  if (!found) throw new Error('Chromium was installed but does not start. Set POWDERBOOK_CHROMIUM to one that does.');
  console.log(`Chromium for tests and icons: ${found}`);
  return found;
}
