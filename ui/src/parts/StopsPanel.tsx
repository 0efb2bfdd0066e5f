import { stops } from '../state/here.ts';
import { OverTimePanel } from './OverTimePanel.tsx';

/** The stops over time. They come after the page; until then those of the state before stand here. */
export function StopsPanel() {
  const state = stops.value;
  const shown = (state.kind === 'there' ? state.there : state.before)?.stops_over_time;
  if (state.kind === 'failed') {
    return <p role="status">The stops could not be followed over time. They come again with the next change.</p>;
  }
  return shown ? (
    <div aria-busy={state.kind === 'waiting'} class={state.kind === 'there' ? undefined : 'spread-old'}>
      <OverTimePanel id="followed-stops" title="Stops followed over time" followed={shown} />
    </div>
  ) : null;
}
