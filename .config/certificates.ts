import { X509Certificate } from 'node:crypto';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { generateCertificates, getHttpsServerOptions } from 'office-addin-dev-certs';
import { path } from './paths.js';

export type Certificates = { ca: Buffer; cert: Buffer; key: Buffer };

const folder = 'certificates';
const files = { ca: `${folder}/ca.crt`, cert: `${folder}/localhost.crt`, key: `${folder}/localhost.key` };

/** Certificates for localhost: ones that this machine trusts where that can be arranged, otherwise from a git-ignored folder. */
export async function certificates(): Promise<Certificates> {
  return (await trusted()) ?? untrusted();
}

async function trusted(): Promise<Certificates | undefined> {
  // On Linux the package reports trust that is not there, and browsers keep a list of their own anyway.
  if (process.platform === 'linux') return undefined;
  try {
    const { ca, cert, key } = await getHttpsServerOptions();
    console.log('Using certificates for localhost that this machine trusts.');
    return { ca, cert, key };
  } catch {
    return undefined;
  }
}

async function untrusted(): Promise<Certificates> {
  if (!existsSync(path(files.cert)) || expired()) {
    // The generator keeps what it finds, so an old set has to go first.
    rmSync(path(folder), { recursive: true, force: true });
    await generateCertificates(path(files.ca), path(files.cert), path(files.key), 365, ['localhost', '127.0.0.1']);
  }
  console.log(
    `Using certificates that nothing trusts yet: add ${files.ca} to the trusted roots of the browser or system.`,
  );
  const read = (name: string) => readFileSync(path(name));
  return { ca: read(files.ca), cert: read(files.cert), key: read(files.key) };
}

function expired(): boolean {
  return Date.parse(new X509Certificate(readFileSync(path(files.cert))).validTo) < Date.now();
}
