import type { Tabled } from '../contract.ts';
import { DataTable } from './DataTable.tsx';

/** The pedals side by side: gaps and spacing open, the rest folded. */
export function FootwellPanel({ footwell }: { footwell: Tabled }) {
  return (
    <section aria-labelledby="footwell-title">
      <h2 id="footwell-title">The footwell</h2>
      <p>{footwell.note}</p>
      <p>
        <a href="#sheets">The pedals from above, from the left and from the driver, among the sheets</a>
      </p>
      {footwell.tables.slice(0, 2).map((table) => (
        <DataTable key={table.caption} table={table} />
      ))}
      <details class="fold small">
        <summary>What comes near, where the pads are</summary>
        {footwell.tables.slice(2).map((table) => (
          <DataTable key={table.caption} table={table} />
        ))}
      </details>
    </section>
  );
}
