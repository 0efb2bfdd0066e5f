/** What the stops over time add to the page, sent by the Java side after it. */
import type { Finding, OverTime, Verdict } from './contract.ts';

/** GET /api/stops?units=metric|us: apart from the page, because it takes a moment. */
export interface FollowedStops {
  /** Of the build file that it belongs to. */
  revision: number;
  /** Of all findings, those of the stops among them. */
  verdict: Verdict;
  findings: Finding[];
  /** Null when none are asked for. */
  stops_over_time: OverTime | null;
}
