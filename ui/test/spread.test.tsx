import { signal } from '@preact/signals';
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { App } from '../src/App.tsx';
import type { Page } from '../src/contract.ts';
import { bandPlaces, SIDE } from '../src/logic/band.ts';
import { session } from '../src/state/here.ts';
import type { Spread } from '../src/spreadContract.ts';
import { createLater } from '../src/state/later.ts';
import { samplePage } from '../dev/samplePage.ts';
import { sampleSpread } from '../dev/sampleSpread.ts';
import { standInServer } from './server.ts';

const marks = sampleSpread.bands[0]!.marks!;

describe('the marks of a band', () => {
  it('stand between the ends, in proportion', () => {
    // 348 N to 455 N on 107 pixels between the sides: one pixel a newton.
    const at = bandPlaces(marks, 107 + 2 * SIDE);
    expect(at.p05).toBeCloseTo(SIDE, 9);
    expect(at.p50).toBeCloseTo(SIDE + 48, 9);
    expect(at.limit).toBeCloseTo(SIDE + 97, 9);
    expect(at.p95).toBeCloseTo(SIDE + 107, 9);
  });

  it('make room for a limit far outside', () => {
    const at = bandPlaces({ ...marks, limit: 700 }, 500);
    expect(at.limit).toBeCloseTo(500 - SIDE, 9);
    expect(at.p95).toBeLessThan(500 - SIDE);
  });

  it('stand in the middle when nothing spreads', () => {
    const still = { ...marks, p05: 400, p25: 400, p50: 400, p75: 400, p95: 400, nominal: 400, limit: null };
    expect(bandPlaces(still, 500)).toMatchObject({ p05: 250, p95: 250, nominal: 250, limit: null });
  });
});

describe('the spread', () => {
  it('is asked for once a state, and an answer to an older state is not shown', async () => {
    const page = signal<Page | null>(null);
    const answers: ((status: number, revision: number) => void)[] = [];
    const spread = createLater<Spread>({ page }, () =>
      new Promise((resolve) => {
        answers.push((status, revision) =>
          resolve(new Response(status === 204 ? null : JSON.stringify({ ...sampleSpread, revision }), { status })));
      }), 'api/spread');
    page.value = { ...samplePage('metric'), revision: 1 };
    page.value = { ...samplePage('metric'), revision: 1 };
    expect(answers.length).toBe(1);
    page.value = { ...samplePage('metric'), revision: 2 };
    expect(answers.length).toBe(2);
    answers[0]!(200, 1);
    await settled();
    expect(spread.value.kind).toBe('waiting');
    answers[1]!(200, 2);
    await settled();
    expect(spread.value).toMatchObject({ kind: 'there', there: { revision: 2 } });
    page.value = { ...samplePage('metric'), revision: 3 };
    answers[2]!(204, 3);
    await settled();
    expect(spread.value).toMatchObject({ kind: 'waiting', before: { revision: 2 } });
  });

  it('says when it could not be computed', async () => {
    const page = signal<Page | null>({ ...samplePage('metric') });
    const spread = createLater<Spread>({ page }, () => Promise.reject(new TypeError('gone')), 'api/spread');
    await settled();
    expect(spread.value.kind).toBe('failed');
  });
});

describe('the panel', () => {
  const root = document.createElement('div');

  afterEach(() => {
    render(null, root);
    root.remove();
    vi.unstubAllGlobals();
  });

  it('shows bands with a word each, the table, and owners that lead to their input', async () => {
    vi.stubGlobal('fetch', standInServer().send);
    document.body.append(root);
    await act(async () => {
      render(<App />, root);
      await session.load();
      await settled();
    });
    const panel = root.querySelector('#spread')!;
    expect(panel.getAttribute('aria-busy')).toBe('false');
    expect(panel.textContent).toContain('Often over the limit');
    expect(panel.querySelectorAll('.band svg[role=img]').length).toBe(2);
    expect(panel.querySelector('svg[role=img]')!.getAttribute('aria-label')).toContain('348 N to 455 N');
    expect(panel.textContent).toContain('12.0 ± 0.5 %');
    const owner = [...panel.querySelectorAll('button')].find((one) => one.textContent?.includes('pad friction'))!;
    owner.click();
    expect(document.activeElement?.id).toBe('field-front-pad_friction');
  });
});

function settled() {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
