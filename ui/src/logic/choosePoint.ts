/** Keeps the chosen deceleration across answers in which the points may have moved. */
import type { Point } from '../contract.ts';

/** Index of the point nearest to the wanted deceleration; without one, the last that the travel allows. */
export function choosePoint(points: Point[], wanted: number | null): number {
  if (wanted === null) {
    const last = points.findLastIndex((point) => point.within_travel);
    return last >= 0 ? last : Math.max(0, points.length - 1);
  }
  return points.reduce(
    (best, point, i) => (distance(point, wanted) < distance(points[best], wanted) ? i : best),
    0,
  );
}

function distance(point: Point | undefined, wanted: number): number {
  return point ? Math.abs(point.deceleration_g - wanted) : Infinity;
}
