import type { Page } from '../contract.ts';
import type { FollowedStops } from '../stopsContract.ts';

/** The page with what its stops over time say; as it came while they are not there, or of another state of the file. */
export function withStops(page: Page, stops: FollowedStops | null): Page {
  return stops !== null && stops.revision === page.revision
    ? { ...page, verdict: stops.verdict, findings: stops.findings }
    : page;
}
