import { kept } from './smallStorage.js';

/** Where it is refused, the workbook that is open speaks for itself. */
const notice = kept(() => sessionStorage, 'powderbook notice');

/** A sentence for whoever sees the page after it opened again: told once. */
export const tellAfterReload = (text: string): boolean => notice.write(text);

export function takeNotice(): string | undefined {
  const text = notice.read();
  notice.forget();
  return text;
}
