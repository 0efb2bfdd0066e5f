import { CurveChart } from '../charts/CurveChart.tsx';
import type { Heat } from '../contract.ts';
import { DataTable } from './DataTable.tsx';

/** How hot the brakes get: peaks of every schedule, then temperatures over time. */
export function HeatPanel({ heat }: { heat: Heat }) {
  return (
    <section aria-labelledby="heat-title">
      <h2 id="heat-title">Heat</h2>
      <DataTable table={heat.table} />
      {heat.charts.map((chart, i) => (
        <CurveChart key={i} chart={chart} marked={null} />
      ))}
      <p>{heat.note}</p>
    </section>
  );
}
