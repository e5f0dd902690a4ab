/** Where office.js comes from: this site's own copy, or Microsoft's evergreen address (which a store listing requires). */
export type OfficeSource = 'local' | 'evergreen';

const evergreenHost = 'https://appsforoffice.microsoft.com';

/** The script address of office.js, as the pane's page names it. */
export const officeScript: Record<OfficeSource, string> = {
  local: 'assets/office/office.js',
  evergreen: `${evergreenHost}/lib/1/hosted/office.js`,
};

/** The source that a build uses: POWDERBOOK_OFFICE, or this site's own copy. */
export function officeSource(given = process.env.POWDERBOOK_OFFICE): OfficeSource {
  if (!given) return 'local';
  if (given === 'local' || given === 'evergreen') return given;
  throw new Error(`POWDERBOOK_OFFICE must be local or evergreen; given: ${given}`);
}

/** Where Excel on the web runs; a page around it counts too. From memory, not tried there. */
const EXCEL_ON_THE_WEB = [
  'live.com',
  'office.com',
  'office365.com',
  'microsoft.com',
  'cloud.microsoft',
  'sharepoint.com',
];

/** Who may show a page within one of its own: Excel on the web does so with the pane, nobody with the workbook. */
const frames = {
  workbook: "'none'",
  taskpane: ["'self'", ...EXCEL_ON_THE_WEB.map((host) => `https://*.${host}`)].join(' '),
};

/** The policy that a server sends: who may frame a page is read from the header alone, never from the page itself. */
export const servedPolicy = (page: 'taskpane' | 'workbook', office: OfficeSource): string =>
  `${contentPolicy(page, office)}; frame-ancestors ${frames[page]}`;

/** The content-security policy of a page; only the pane's page loads office.js, so only it may name another host. */
export function contentPolicy(page: 'taskpane' | 'workbook', office: OfficeSource): string {
  const scripts = page === 'taskpane' && office === 'evergreen' ? `'self' ${evergreenHost}` : "'self'";
  return [
    "default-src 'none'",
    `script-src ${scripts}`,
    "worker-src 'self'",
    // The grid engine writes style elements and style attributes.
    "style-src 'self' 'unsafe-inline'",
    "connect-src 'self'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}
