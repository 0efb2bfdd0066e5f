import type { Tabled } from '../contract.ts';
import { DataTable } from './DataTable.tsx';

/** What carries the pedal: the note and the variants open, the rest folded. */
export function MountPanel({ mount }: { mount: Tabled }) {
  const [variants, ...others] = mount.tables;
  const last = others.at(-1);
  return (
    <section aria-labelledby="mount-title">
      <h2 id="mount-title">The mount</h2>
      <p>{mount.note}</p>
      {variants && <DataTable table={variants} />}
      {last && <DataTable table={last} />}
      {others.length > 1 && (
        <details class="fold small">
          <summary>Movement, stress, bolts, welds, endurance, what the body takes</summary>
          {others.slice(0, -1).map((table) => (
            <DataTable key={table.caption} table={table} />
          ))}
        </details>
      )}
    </section>
  );
}
