import { CurveChart } from '../charts/CurveChart.tsx';
import type { Clutch } from '../contract.ts';
import { DataTable } from './DataTable.tsx';
import { BudgetBars } from './TravelBudget.tsx';

/** Effort and bearing travel over the clutch pedal, both plates, and where the travel goes. */
export function ClutchPanel({ clutch }: { clutch: Clutch }) {
  return (
    <section aria-labelledby="clutch-title">
      <h2 id="clutch-title">Clutch</h2>
      <div class="pair">
        <CurveChart chart={clutch.effort_chart} marked={null} />
        <CurveChart chart={clutch.travel_chart} marked={null} />
      </div>
      <DataTable table={clutch.table} />
      <h3>Where the clutch pedal travel goes until a new plate is free</h3>
      <BudgetBars rows={clutch.losses} />
    </section>
  );
}
