import { CurveChart } from '../charts/CurveChart.tsx';
import type { OverTime } from '../contract.ts';
import { DataTable } from './DataTable.tsx';

/** Something followed over time: its table, its charts, what to know about them. */
export function OverTimePanel({ id, title, followed }: { id: string; title: string; followed: OverTime }) {
  return (
    <section aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{title}</h2>
      <DataTable table={followed.table} />
      {followed.charts.map((chart, i) => (
        <CurveChart key={i} chart={chart} marked={null} />
      ))}
      <p>{followed.note}</p>
    </section>
  );
}
