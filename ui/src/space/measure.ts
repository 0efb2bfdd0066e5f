import type { SceneScale } from '../sceneContract.ts';

/** x forward, y left, z up, mm. */
export type Place = readonly [number, number, number];

/** A length in the unit shown. */
export function length(scale: SceneScale, millimetre: number): string {
  return `${(millimetre * scale.per_mm).toFixed(scale.decimals)} ${scale.symbol}`;
}

export function distance(from: Place, to: Place): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
}

/** How far apart two places are, straight and along each of the car's axes. */
export function apart(scale: SceneScale, from: Place, to: Place): string {
  const steps = [
    along(scale, to[0] - from[0], 'forward', 'rearward'),
    along(scale, to[1] - from[1], 'left', 'right'),
    along(scale, to[2] - from[2], 'up', 'down'),
  ];
  return `${length(scale, distance(from, to))} apart: ${steps.join(', ')}.`;
}

function along(scale: SceneScale, by: number, plus: string, minus: string): string {
  return `${length(scale, Math.abs(by))} ${by < 0 ? minus : plus}`;
}

/** A place in words, for one picked by hand. */
export function placeWords(scale: SceneScale, place: Place): string {
  return [along(scale, place[0], 'forward', 'rearward'), along(scale, place[1], 'left', 'right'), along(scale, place[2], 'up', 'down')].join(', ');
}

/** The first three numbers of a list as a place. */
export function placeOf(at: number[]): Place {
  return [at[0] ?? 0, at[1] ?? 0, at[2] ?? 0];
}
