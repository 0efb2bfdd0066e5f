/** What the builder chose to see in space. */
import { signal } from '@preact/signals';
import type { Scene, SceneGroup, ScenePush } from '../sceneContract.ts';
import type { Place } from './measure.ts';
import type { SpaceView } from './SpaceView.ts';

export const hidden = signal<ReadonlySet<SceneGroup>>(new Set());
export const pushKey = signal<string | null>(null);
/** How many times as large a movement is drawn; null for one that can well be seen. */
export const exaggeration = signal<number | null>(null);
export const chosen = signal<string | null>(null);
/** The view while it is open. */
export const view = signal<SpaceView | null>(null);

/** One end of what is measured: a named place, or one picked in the view. */
export interface End {
  name: string;
  at: Place;
}

export const ends = signal<{ from: End | null; to: End | null }>({ from: null, to: null });

/** A place picked in the view begins a measurement, ends it, or begins the next one. */
export function pick(end: End) {
  const { from, to } = ends.value;
  ends.value = from === null || to !== null ? { from: end, to: null } : { from, to: end };
}

export const GROUPS: Record<SceneGroup, string> = {
  pedals: 'pedals',
  mount: 'mount',
  lines: 'lines',
  footwell: 'footwell',
  surroundings: 'what is around',
};

export function pushOf(scene: Scene): ScenePush | null {
  return scene.pushes.find((push) => push.key === pushKey.value) ?? null;
}

/** Share of the car's length by which the largest movement is drawn when the builder has not said how large. */
const WELL_SEEN = 0.06;

/** A factor with one leading digit that makes the largest movement well seen. */
export function fittingTimes(scene: Scene, push: ScenePush): number {
  const largest = Math.max(0, ...push.moved.flatMap((moved) => moved.shifts.map(Math.abs)));
  const moved = new Set(push.moved.map((one) => one.body));
  const numbers = scene.bodies.filter((body) => moved.has(body.key)).flatMap((body) => body.points);
  const size = numbers.length === 0 ? 0 : Math.max(...numbers) - Math.min(...numbers);
  if (largest === 0 || size === 0) {
    return 1;
  }
  const wanted = (WELL_SEEN * size) / largest;
  const power = 10 ** Math.floor(Math.log10(wanted));
  return Math.min(1000, Math.max(1, Math.floor(wanted / power) * power));
}
