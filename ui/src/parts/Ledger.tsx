import type { LedgerRow } from '../contract.ts';
import { fieldUnder } from '../state/here.ts';
import { jumpTo } from '../state/jump.ts';

/** So many stand open; the rest is folded. */
const FIRST = 6;

/** What is assumed, and what is worth measuring first. */
export function Ledger({ rows }: { rows: LedgerRow[] }) {
  const ranked = [...rows].sort((a, b) => a.rank - b.rank);
  return (
    <section aria-labelledby="ledger-title">
      <h2 id="ledger-title">What to measure next</h2>
      <p>Everything here is assumed. The first moves the results most.</p>
      {ranked.length === 0 ? (
        <p>Nothing is assumed.</p>
      ) : (
        <Rows rows={ranked.slice(0, FIRST)} />
      )}
      {ranked.length > FIRST && (
        <details class="fold">
          <summary>{ranked.length - FIRST} more that move less</summary>
          <Rows rows={ranked.slice(FIRST)} />
        </details>
      )}
    </section>
  );
}

function Rows({ rows }: { rows: LedgerRow[] }) {
  return (
    <ol class="ledger plain">
      {rows.map((row) => (
        <Assumption key={row.path} row={row} />
      ))}
    </ol>
  );
}

function Assumption({ row }: { row: LedgerRow }) {
  return (
    <li class="assumption">
      <h3>
        <span class="rank">{row.rank}</span> {row.title}
      </h3>
      <p class="assumption-value">
        <strong>{row.value}</strong> {row.range && <>({row.range})</>} · {row.by_builder ? 'your own guess' : 'assumed'}
      </p>
      {row.moves.length > 0 && <p>Moves {row.moves.join('; ')}.</p>}
      <p class="source">
        {row.basis}
        {row.tag && ` · ${row.tag}`}
      </p>
      {row.how && <p>{row.how}</p>}
      {fieldUnder(row.path) && (
        <button type="button" class="quiet" onClick={() => jumpTo(row.path)}>
          Enter it<span class="unseen">: {row.title}</span>
        </button>
      )}
    </li>
  );
}
