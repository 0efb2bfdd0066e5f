/** What part of the plan a drawing shows, in millimetres: x along the push, y down toward the rear master. */
import type { BarOutline, Spot } from '../mechanismContract.ts';

export interface Frame {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** Room round the outermost points: half a clevis, a master's body, a name. */
const MARGIN = { left: 22, right: 58, side: 26 };

/** A point on the sheet, mm. */
export function at({ across_m, ahead_m }: Spot): { x: number; y: number } {
  return { x: ahead_m * 1000, y: -across_m * 1000 };
}

/** One frame for all stances, so that they are drawn to one scale and lie above each other. */
export function frameOf(outlines: BarOutline[]): Frame {
  const points = outlines.flatMap(spotsOf).map(at);
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const left = Math.min(...xs) - MARGIN.left;
  const top = Math.min(...ys) - MARGIN.side;
  return {
    left,
    top,
    width: Math.max(...xs) + MARGIN.right - left,
    height: Math.max(...ys) + MARGIN.side - top,
  };
}

function spotsOf({ bearing, front, rear, front_ahead_most, rear_ahead_most }: BarOutline): Spot[] {
  const lines = [front_ahead_most, rear_ahead_most].flatMap((line) => [line.front, line.rear]);
  return [bearing, front.clevis, front.socket, rear.clevis, rear.socket, ...lines];
}
