import { Marked } from 'marked';
import type { Family } from '../../src/core/calculation.js';
import { reference } from './reference.js';

const marked = new Marked({
  renderer: {
    // Each function is reached by its own address, as the host's help links write it.
    heading({ tokens, depth, text }) {
      return `<h${depth} id="${text.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
    },
  },
});

const STYLE = `:root{color-scheme:light dark;font:1rem/1.5 system-ui,sans-serif}
body{max-width:75rem;margin:0 auto;padding:1rem}
table{border-collapse:collapse;display:block;overflow-x:auto}
th,td{border:1px solid color-mix(in srgb,currentColor 30%,transparent);padding:.3rem .6rem;text-align:left;vertical-align:top}
:target{outline:2px solid;outline-offset:.3rem}`;

/** The function reference as a page of its own: the worksheet's help links lead here. */
export function functionsPage(families: readonly Family[]): string {
  const policy = "default-src 'none'; style-src 'unsafe-inline'; img-src 'self'; base-uri 'none'; form-action 'none'";
  return `<!doctype html>
<html lang="en">
<head><meta http-equiv="Content-Security-Policy" content="${policy}">
<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Powderbook: function reference</title><link rel="icon" href="assets/icon.svg"><style>${STYLE}</style></head>
<body><main>
${marked.parse(reference(families), { async: false })}</main></body>
</html>
`;
}
