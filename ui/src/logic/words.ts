import type { State } from '../contract.ts';

/** The word of a state where the server sends none beside it. */
export const STATE_WORDS: Record<State, string> = {
  stop: 'Stop',
  caution: 'Caution',
  fine: 'Fine',
  cannot_tell: 'Cannot tell',
};
