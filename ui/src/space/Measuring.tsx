import type { Scene } from '../sceneContract.ts';
import { type End, ends } from './look.ts';
import { apart, placeOf } from './measure.ts';

const PICKED = 'picked';

/** The way between two places, chosen by name or touched in the view. */
export function Measuring({ scene }: { scene: Scene }) {
  const { from, to } = ends.value;
  return (
    <fieldset class="space-measure">
      <legend>Measure between two places</legend>
      <EndChoice label="From" scene={scene} end={from} take={(end) => (ends.value = { ...ends.value, from: end })} />
      <EndChoice label="To" scene={scene} end={to} take={(end) => (ends.value = { ...ends.value, to: end })} />
      <output>{from === null || to === null ? 'Choose two places here, or touch them in the view.' : apart(scene.scale, from.at, to.at)}</output>
      <button type="button" disabled={from === null && to === null} onClick={() => (ends.value = { from: null, to: null })}>
        Take both away
      </button>
    </fieldset>
  );
}

interface Choice {
  label: string;
  scene: Scene;
  end: End | null;
  take: (end: End | null) => void;
}

function EndChoice({ label, scene, end, take }: Choice) {
  const named = scene.places.findIndex((place) => place.name === end?.name);
  return (
    <label>
      {label}
      <select value={end === null ? '' : named < 0 ? PICKED : String(named)} onChange={(event) => take(chosen(event.currentTarget.value))}>
        <option value="">no place yet</option>
        {end !== null && named < 0 && <option value={PICKED}>{end.name}</option>}
        {scene.places.map((place, i) => (
          <option key={place.name} value={String(i)}>
            {place.name}
          </option>
        ))}
      </select>
    </label>
  );

  function chosen(value: string): End | null {
    const place = value === '' ? undefined : scene.places[Number(value)];
    return value === PICKED ? end : place === undefined ? null : { name: place.name, at: placeOf(place.at) };
  }
}
