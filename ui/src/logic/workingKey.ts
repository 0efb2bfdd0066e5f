/** Which working opens the number of a finding. */
import type { Finding, Working } from '../contract.ts';

/** Findings that judge a headline number, by their key. */
const BY_FINDING: Record<string, string> = {
  pedal_effort: 'effort',
  pedal_travel: 'travel',
  pedal_reserve: 'travel',
  master_stroke: 'travel',
  front_share: 'balance',
  bar_range: 'balance',
  rear_locks_first: 'margin',
  drum_self_lock: 'drum_factor',
  drum_sensitivity: 'drum_factor',
};

/** The working of the finding's own key, else of the headline number it judges; null without either. */
export function workingKey(finding: Finding, workings: Working[]): string | null {
  const has = (key: string | undefined) => workings.some((working) => working.key === key);
  const judged = BY_FINDING[finding.key];
  return has(finding.key) ? finding.key : judged !== undefined && has(judged) ? judged : null;
}
