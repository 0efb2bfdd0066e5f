import { render } from 'preact';
import { describe, expect, it } from 'vitest';
import { FeelChart } from '../src/charts/FeelChart.tsx';
import { feelChart } from '../dev/sampleCharts.ts';

describe('force against travel', () => {
  const root = document.createElement('div');
  render(<FeelChart feel={feelChart} />, root);

  it('draws one path a series and one mark an end', () => {
    expect(root.querySelectorAll('.chart-box .curve')).toHaveLength(feelChart.chart.series.length);
    expect(root.querySelectorAll('.chart-box .feel-mark')).toHaveLength(feelChart.marks.length);
    expect(root.querySelector('.chart-box title')?.textContent).toBe('the rear master bottoms');
  });

  it('says the same in a sentence and a table', () => {
    expect(root.textContent).toContain(feelChart.chart.description);
    expect(root.querySelectorAll('tbody tr')).toHaveLength(feelChart.table.rows.length);
  });
});
