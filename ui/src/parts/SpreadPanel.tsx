import type { Table } from '../contract.ts';
import type { Band, Spread } from '../spreadContract.ts';
import { BandMark } from '../charts/BandMark.tsx';
import { fieldUnder, spread } from '../state/here.ts';
import { jumpTo } from '../state/jump.ts';
import { DataTable } from './DataTable.tsx';
import { StateMark } from './StateMark.tsx';

/** What every ± and every assumption does together. It comes after the rest of the page. */
export function SpreadPanel() {
  const state = spread.value;
  const shown = state.kind === 'there' ? state.there : state.before;
  return (
    <section id="spread" aria-labelledby="spread-title" aria-busy={state.kind === 'waiting'}>
      <h2 id="spread-title">Spread</h2>
      <p>Cars built like this one differ within every ± and every assumed range. This is how far, and whose doing it is.</p>
      {state.kind === 'failed' && <p role="status">The spread could not be computed. It comes again with the next change.</p>}
      {state.kind === 'waiting' && (
        <p class="later-wait">
          {shown === null ? 'Cars are being drawn.' : 'Cars are being drawn anew; what stands here is of the state before.'}
        </p>
      )}
      {shown && (
        <div class={state.kind === 'there' ? undefined : 'later-old'}>
          <Bands spread={shown} />
        </div>
      )}
    </section>
  );
}

function Bands({ spread: shown }: { spread: Spread }) {
  const drawn = shown.bands.filter((band) => band.key !== 'critical');
  return (
    <>
      {shown.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      <ul class="bands plain">
        {drawn.map((band) => (
          <li key={band.label} class={`band is-${band.state}`}>
            <h3>{band.label}</h3>
            <p class="band-word">
              <StateMark state={band.state} /> {band.word}
            </p>
            {band.marks && <BandMark marks={band.marks} name={band.label} />}
            {band.marks && <Legend band={band} />}
            <p>{band.sentence}</p>
          </li>
        ))}
      </ul>
      <details class="fold small">
        <summary>
          Numbers<span class="unseen"> of the bands</span>
        </summary>
        <DataTable table={numbers(shown.bands)} />
      </details>
      <DataTable table={shown.rear_first} />
      <h3>What owns the spread</h3>
      <p>The share of the variance that would go, on average, if that one value were known.</p>
      {shown.bands
        .filter((band) => band.owners.length > 0)
        .map((band, i) => (
          <Owners key={band.label} band={band} open={i === 0} />
        ))}
      <p class="source">{shown.basis}</p>
    </>
  );
}

function Legend({ band }: { band: Band }) {
  const texts = band.marks?.texts;
  return (
    <p class="band-legend">
      {texts?.nominal && (
        <span>
          <svg width="14" height="14" viewBox="0 0 14 14" aria-hidden="true">
            <path class="band-nominal" d="M7 1l6 6-6 6-6-6z" />
          </svg>{' '}
          {texts.nominal} as the file stands
        </span>
      )}
      {texts?.limit && (
        <span>
          <svg width="14" height="14" viewBox="0 0 14 14" aria-hidden="true">
            <path class="band-limit" d="M7 0v14" />
          </svg>{' '}
          {texts.limit} {band.key === 'front_share' ? 'asked for by the load' : 'is the limit'}
        </span>
      )}
    </p>
  );
}

function Owners({ band, open }: { band: Band; open: boolean }) {
  const widest = Math.max(...band.owners.map((owner) => owner.share), 1e-9);
  return (
    <details class="fold" open={open}>
      <summary>
        <h4>{band.label}</h4>
      </summary>
      <ol class="budget plain">
        {band.owners.map((owner) => (
          <li key={owner.path}>
            <span class="budget-name">
              {fieldUnder(owner.path) ? (
                <button type="button" class="link" onClick={() => jumpTo(owner.path)}>
                  {owner.title}
                </button>
              ) : (
                owner.title
              )}
            </span>
            <span class="budget-track">
              <span class="budget-bar" style={{ width: `${Math.max(0.5, (100 * owner.share) / widest)}%` }} />
            </span>
            <strong>{owner.text}</strong>
          </li>
        ))}
        {band.together !== null && (
          <li>
            <span class="budget-name">all others, and several together</span>
            <span />
            <strong>{band.together}</strong>
          </li>
        )}
      </ol>
    </details>
  );
}

function numbers(bands: Band[]): Table {
  return {
    caption: 'How many cars in 100 lie below',
    columns: ['result', '5', '25', '50', '75', '95', 'as it stands', 'limit'],
    rows: bands.flatMap(({ label, marks }) =>
      marks === null
        ? []
        : [[label, marks.texts.p05, marks.texts.p25, marks.texts.p50, marks.texts.p75, marks.texts.p95,
            marks.texts.nominal ?? '-', marks.texts.limit ?? '-']],
    ),
  };
}
