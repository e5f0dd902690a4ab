import { sentenceFrom } from '../../taskpane/pane/sentenceFrom.js';
import { en } from '../../taskpane/texts/en.js';

/** The sentence that the pane shows of a host's call that failed; undefined where it did not. */
export const said = (call: Promise<unknown>): Promise<string | undefined> =>
  call.then(
    () => undefined,
    (error: unknown) => sentenceFrom(error, en),
  );
