import type { BarView } from '../mechanismContract.ts';
import { DataTable } from '../parts/DataTable.tsx';
import { BarDrawing } from './BarDrawing.tsx';
import { frameOf } from './frame.ts';
import { TurnsLeft } from './TurnsLeft.tsx';

/** How the balance bar stands, drawn to one scale, and what its adjuster has left. */
export function BarPanel({ bar }: { bar: BarView }) {
  const frame = frameOf(bar.stances.map(({ outline }) => outline));
  return (
    <section aria-labelledby="bar-title">
      <h2 id="bar-title">Balance bar</h2>
      <p>
        Seen from above, to one scale: the push comes from the left, the front rod is the upper one. Dashed: how far the
        bar can tilt. The grey line is the bar square at rest.
      </p>
      <TurnsLeft range={bar.range} />
      <div class="stances">
        {bar.stances.map((stance) => (
          <figure key={stance.key} class="stance">
            <figcaption>
              <h3>{stance.title}</h3>
              <p>{stance.sentence}</p>
            </figcaption>
            <BarDrawing stance={stance} frame={frame} />
          </figure>
        ))}
      </div>
      <details class="fold small">
        <summary>
          Numbers<span class="unseen"> of the balance bar</span>
        </summary>
        <DataTable table={bar.table} />
      </details>
    </section>
  );
}
