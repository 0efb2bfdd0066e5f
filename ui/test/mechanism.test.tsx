// @vitest-environment happy-dom
import { render } from 'preact';
import { afterEach, expect, it } from 'vitest';
import { bar, pedal } from '../dev/sampleMechanism.ts';
import { BarPanel } from '../src/mechanism/BarPanel.tsx';
import { at, frameOf } from '../src/mechanism/frame.ts';
import { PedalPanel } from '../src/mechanism/PedalPanel.tsx';

afterEach(() => {
  render(null, document.body);
});

const all = (selector: string) => [...document.querySelectorAll(selector)];

it('draws every stance in one frame, and each says in words what it shows', () => {
  render(<BarPanel bar={bar} />, document.body);
  const drawings = all('.stance-drawing');
  expect(drawings.map((one) => one.getAttribute('aria-label'))).toEqual(
    bar.stances.map(({ title, sentence }) => `${title}: ${sentence}`),
  );
  expect(new Set(drawings.map((one) => one.getAttribute('viewBox'))).size).toBe(1);
});

it('puts the front rod above, the push to the right, and all points inside the frame', () => {
  const frame = frameOf(bar.stances.map(({ outline }) => outline));
  for (const { outline } of bar.stances) {
    const front = at(outline.front.socket);
    const rear = at(outline.rear.clevis);
    expect(front.y).toBeLessThan(rear.y);
    expect(front.x).toBeLessThan(frame.left + frame.width);
    expect(rear.x).toBeGreaterThan(frame.left);
  }
});

it('puts the mark of the adjuster by its turns: 6.2 of 20 from the rear end', () => {
  render(<BarPanel bar={bar} />, document.body);
  expect(Number(document.querySelector('.turns-at')?.getAttribute('cx'))).toBeCloseTo(10 + (280 * 6.2) / 20, 6);
});

it('shows two curves of a mechanism, and a sentence alone for a single ratio', () => {
  render(<PedalPanel pedal={pedal} />, document.body);
  expect(all('figure.chart')).toHaveLength(2);
  render(<PedalPanel pedal={{ sentence: 'Only a single ratio is given.', ratio: null, rod_angle: null, hard_stop: 58 }} />, document.body);
  expect(all('figure.chart')).toHaveLength(0);
  expect(document.body.textContent).toContain('Only a single ratio is given.');
});
