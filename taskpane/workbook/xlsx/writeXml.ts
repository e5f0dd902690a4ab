type Attributes = Readonly<Record<string, string | number | undefined>>;

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Words as a part may hold them: characters that XML knows no way to say, or changes, are written by their code. */
export const escaped = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML does not allow.
    .replace(/[\u0000-\u0008\u000b-\u001f\ufffe\uffff]/g, (one) => `_x${code(one)}_`)
    .replace(/[&<>"]/g, (one) => ENTITIES[one] as string);

/** The same of a text, in which what only looks like such a code stays what it is. */
export const escapedText = (text: string): string => escaped(text.replace(/_(?=x[0-9A-F]{4}_)/gi, '_x005F_'));

const inAttribute = (text: string): string => escaped(text).replace(/[\t\n]/g, (one) => `&#${one.charCodeAt(0)};`);

const code = (one: string): string => one.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');

/** An element with its attributes; those without a value are left out. Children are XML already. */
export function element(name: string, attributes: Attributes = {}, ...children: readonly string[]): string {
  const said = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${inAttribute(String(value))}"`)
    .join('');
  const inner = children.join('');
  return inner === '' ? `<${name}${said}/>` : `<${name}${said}>${inner}</${name}>`;
}

export const part = (root: string): string => `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${root}`;
