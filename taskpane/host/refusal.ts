import type { Texts } from '../texts/texts.js';

export type Say = (words: Texts['host']) => string;

/** Why a workbook did not do what was asked of it; the pane says it in its own language. */
export class Refusal extends Error {
  readonly say: Say;

  constructor(say: Say, options?: ErrorOptions) {
    super('The workbook refused.', options);
    this.say = say;
  }
}

/** Why nothing was written: there is something in the cells. The pane then offers to write all the same. */
export class NotEmpty extends Refusal {
  constructor(address: string, taken: string) {
    super((words) => words.notEmpty(address, taken));
  }
}
