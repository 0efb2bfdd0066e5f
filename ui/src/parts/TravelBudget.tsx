import type { BudgetRow } from '../contract.ts';

const WHERE: Record<BudgetRow['where'], string> = { pedal: 'at the pedal', front: 'front circuit', rear: 'rear circuit' };

/** Where the pedal travel goes. */
export function TravelBudget({ rows }: { rows: BudgetRow[] }) {
  return (
    <section aria-labelledby="budget-title">
      <h2 id="budget-title">Where the pedal travel goes</h2>
      <BudgetBars rows={rows} />
    </section>
  );
}

/** Each share with its name and a bar. */
export function BudgetBars({ rows }: { rows: BudgetRow[] }) {
  const widest = Math.max(...rows.map((row) => row.share), 1e-9);
  return (
    <ul class="budget plain">
      {rows.map((row, i) => (
        <li key={i}>
          <span class="budget-name">
            {row.label} <small>{WHERE[row.where]}</small>
          </span>
          <span class="budget-track">
            <span
              class={`budget-bar at-${row.where}`}
              style={{ width: `${Math.max(0.5, (100 * row.share) / widest)}%` }}
            />
          </span>
          <strong>{row.text}</strong>
        </li>
      ))}
    </ul>
  );
}
