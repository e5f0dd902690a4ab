import type { Input } from '../../../src/core/input.js';
import type { Draft } from './draft.js';

/** What a field for an input of this kind is given. */
export interface FieldProps<I extends Input = Input> {
  /** The input's key. */
  readonly name: string;
  readonly input: I;
  readonly draft: Draft;
  readonly problems: Readonly<Record<string, string>>;
  readonly onField: (field: string, text: string) => void;
}
