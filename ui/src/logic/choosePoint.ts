/** Keeps the chosen deceleration across answers in which the points may have moved. */
import type { Point } from '../contract.ts';

/** What is shown first: about a hard stop on a dry road. */
export const FIRST_SHOWN_G = 0.85;

/** Index of the point nearest to the wanted deceleration, or to a hard stop until one is wanted. */
export function choosePoint(points: Point[], wantedOrNot: number | null): number {
  const wanted = wantedOrNot ?? FIRST_SHOWN_G;
  return points.reduce(
    (best, point, i) => (distance(point, wanted) < distance(points[best], wanted) ? i : best),
    0,
  );
}

function distance(point: Point | undefined, wanted: number): number {
  return point ? Math.abs(point.deceleration_g - wanted) : Infinity;
}
