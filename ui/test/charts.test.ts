import { describe, expect, it } from 'vitest';
import { forceTableOf, tableOf } from '../src/charts/chartTable.ts';
import { heightAt, pathOf, spread } from '../src/logic/curve.ts';
import { linear, niceDomain, ticks, tickText } from '../src/logic/scale.ts';
import { effortChart, loadCase } from '../dev/sampleCharts.ts';

// Expected values here are plain arithmetic on the lines above them.
describe('scales', () => {
  it('map ends to ends and the middle to the middle, upside down too', () => {
    const y = linear([0, 10], [300, 100]);
    expect([y(0), y(5), y(10)]).toEqual([300, 200, 100]);
  });

  it('survive a domain without width', () => {
    expect(linear([3, 3], [0, 100])(3)).toBe(0);
  });

  it('put ticks on ones, twos or fives', () => {
    expect(ticks([0, 1], 5)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
    expect(ticks([0, 480], 5)).toEqual([0, 100, 200, 300, 400]);
    expect(ticks([-0.3, 0.3], 3)).toEqual([-0.2, 0, 0.2]);
  });

  it('hold all values between round ends and always zero', () => {
    expect(niceDomain([12, 463])).toEqual([0, 500]);
    expect(niceDomain([-0.12, 0.4])).toEqual([-0.2, 0.4]);
    expect(niceDomain([])).toEqual([0, 1]);
  });

  it('write 0.30000000000000004 as people do', () => {
    expect(tickText(0.1 + 0.2)).toBe('0.3');
    expect(tickText(-5)).toBe('\u22125');
  });
});

describe('curves', () => {
  it('break where there is no value', () => {
    expect(pathOf([{ x: 0, y: 1 }, { x: 1, y: 2 }, null, { x: 3, y: 4 }])).toBe('M0.0 1.0L1.0 2.0M3.0 4.0');
  });

  it('are read between their points, never across a gap or beyond the ends', () => {
    expect(heightAt([0, 2], [10, 20], 1)).toBe(15);
    expect(heightAt([0, 2], [10, 20], 2)).toBe(20);
    expect(heightAt([0, 2, 4], [10, null, 30], 3)).toBeNull();
    expect(heightAt([1, 2], [10, 20], 0.5)).toBeNull();
    expect(heightAt([1, 2], [10, 20], 2.5)).toBeNull();
  });
});

describe('labels at the ends of curves', () => {
  it('keep their distance, their order and the frame', () => {
    const placed = spread([100, 102, 101, 250], 17, 30, 250);
    const sorted = [...placed].sort((a, b) => a - b);
    expect(placed[0]).toBeLessThan(placed[2] as number);
    expect(placed[2]).toBeLessThan(placed[1] as number);
    for (let i = 1; i < sorted.length; i++) {
      expect((sorted[i] as number) - (sorted[i - 1] as number)).toBeGreaterThanOrEqual(17);
    }
    expect(Math.min(...placed)).toBeGreaterThanOrEqual(30);
    expect(Math.max(...placed)).toBeLessThanOrEqual(250);
  });
});

describe('tables for people who cannot see a chart', () => {
  it('have a row for every x of any curve and an empty place for a missing value', () => {
    const table = tableOf({
      ...effortChart,
      series: [
        { label: 'a', style: 'case_1', x: [0.1, 0.2], y: [1, null] },
        { label: 'b', style: 'limit', x: [0.2, 0.3], y: [5, 6] },
      ],
    });
    expect(table.columns).toEqual([effortChart.x_label, 'a', 'b']);
    expect(table.rows).toEqual([
      ['0.1', '1', ''],
      ['0.2', '', '5'],
      ['0.3', '', '6'],
    ]);
  });

  it('hold both curves of the force diagram', () => {
    const chart = loadCase('any', '', 1).force_chart;
    const names = forceTableOf(chart).rows.map(([name]) => name);
    expect(names.filter((name) => name === 'ideal')).toHaveLength(chart.ideal.length);
    expect(names.filter((name) => name === 'installed')).toHaveLength(chart.installed.length);
  });
});
