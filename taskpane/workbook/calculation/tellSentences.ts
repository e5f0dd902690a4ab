import { CommandType, type IMutation } from '../engine/core.js';
import type { Change } from '../formula/messages.js';

interface Told {
  readonly changes: readonly Change[];
}

/** Brings the sentences behind error values from the thread that calculates to the page that shows them. */
export const tellSentences = (take?: (changes: readonly Change[]) => void): IMutation<Told> => ({
  id: 'powderbook.mutation.tell-sentences',
  type: CommandType.MUTATION,
  handler: (_, { changes }) => {
    take?.(changes);
    return true;
  },
});
