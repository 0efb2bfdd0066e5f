/** Worst first. */
import type { Finding, State } from '../contract.ts';

const ORDER: Record<State, number> = { stop: 0, caution: 1, cannot_tell: 2, fine: 3 };

/** The findings worst first; equals stay in the server's order. */
export function worstFirst(findings: Finding[]): Finding[] {
  return [...findings].sort((a, b) => ORDER[a.state] - ORDER[b.state]);
}
