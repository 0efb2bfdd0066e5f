/** Applies a set of edits from a button: a cure, a step, a proposal. */
import type { Edit, Page, Problem } from '../contract.ts';
import { session } from './here.ts';

/** Problems in one sentence each; empty when the change was taken or the notice bar already says what happened. */
export async function apply(edits: (now: Page) => Edit[] | null): Promise<string[]> {
  const outcome = await session.edit(edits);
  return outcome.kind === 'refused' ? outcome.problems.map(problemText) : [];
}

/** The server's message and what it would take. */
export function problemText(problem: Problem): string {
  const stop = /[.!?]$/.test(problem.message) ? '' : '.';
  const allowed = problem.allowed ? ` Allowed: ${problem.allowed}.` : '';
  return `${problem.message}${stop}${allowed}`;
}

/** The same, led by the key when the problem lies elsewhere than at this path. */
export function problemSeenFrom(path: string, problem: Problem): string {
  const elsewhere = problem.path !== '' && problem.path !== path;
  return elsewhere ? `At ${problem.path}, line ${problem.line}: ${problemText(problem)}` : problemText(problem);
}
