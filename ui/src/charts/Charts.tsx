import type { LoadCase, Page } from '../contract.ts';
import { DataTable } from '../parts/DataTable.tsx';
import { point } from '../state/here.ts';
import { CurveChart } from './CurveChart.tsx';
import { ForceDiagram } from './ForceDiagram.tsx';

/** Balance of the chosen load case. */
export function CaseCharts({ loadCase }: { loadCase: LoadCase }) {
  const marked = point.value?.deceleration_g ?? null;
  return (
    <section aria-labelledby="balance-title">
      <h2 id="balance-title">Balance, {loadCase.name}</h2>
      <p>{loadCase.lock_sentence}</p>
      <div class="pair">
        <div>
          <ForceDiagram chart={loadCase.force_chart} marked={marked} />
          <details class="fold">
            <summary>All numbers at every deceleration</summary>
            <DataTable table={loadCase.table} />
          </details>
        </div>
        <div>
          <CurveChart chart={loadCase.adhesion_chart} marked={marked} />
          <DataTable table={loadCase.lock_table} />
        </div>
      </div>
    </section>
  );
}

/** Effort and travel of all load cases. */
export function CarCharts({ page }: { page: Page }) {
  const marked = point.value?.deceleration_g ?? null;
  return (
    <section aria-labelledby="effort-title">
      <h2 id="effort-title">Effort and travel</h2>
      <div class="pair">
        <CurveChart chart={page.effort_chart} marked={marked} />
        <CurveChart chart={page.travel_chart} marked={marked} />
      </div>
    </section>
  );
}
