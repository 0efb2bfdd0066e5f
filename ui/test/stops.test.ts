import { describe, expect, it } from 'vitest';
import { samplePage } from '../dev/samplePage.ts';
import { withStops } from '../src/logic/withStops.ts';
import type { FollowedStops } from '../src/stopsContract.ts';

describe('a page whose stops over time came after it', () => {
  const page = { ...samplePage('metric'), revision: 4 };
  const stops: FollowedStops = {
    revision: 4,
    verdict: { ...page.verdict, sentence: 'One stop locks other wheels first.' },
    findings: page.findings.slice(1),
    stops_over_time: null,
  };

  it('has the verdict and the findings that know of them', () => {
    expect(withStops(page, stops).verdict.sentence).toBe('One stop locks other wheels first.');
    expect(withStops(page, stops).findings).toEqual(page.findings.slice(1));
    expect(withStops(page, stops).load_cases).toBe(page.load_cases);
  });

  it('stays as it came while they are not there, or belong to another state of the file', () => {
    expect(withStops(page, null)).toBe(page);
    expect(withStops(page, { ...stops, revision: 3 })).toBe(page);
  });
});
