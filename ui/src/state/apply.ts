/** Applies a set of edits from a button: a cure, a step, a proposal. */
import type { Edit, Page, Problem } from '../contract.ts';
import { session } from './here.ts';

/** Problems in one sentence each; empty when the change was taken or the notice bar already says what happened. */
export async function apply(edits: (now: Page) => Edit[] | null): Promise<string[]> {
  const outcome = await session.edit(edits);
  return outcome.kind === 'refused' ? outcome.problems.map(problemText) : [];
}

export function problemText(problem: Problem): string {
  const allowed = problem.allowed ? ` Allowed: ${problem.allowed}.` : '';
  return `${problem.message}${allowed}`;
}
