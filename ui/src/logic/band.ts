/** Where the marks of a band stand on a strip of a width, everything inside. */
import type { BandMarks } from '../spreadContract.ts';
import { linear } from './scale.ts';

/** Room for the texts at both ends. */
export const SIDE = 84;

export interface BandPlaces {
  p05: number;
  p25: number;
  p50: number;
  p75: number;
  p95: number;
  nominal: number | null;
  limit: number | null;
}

export function bandPlaces(marks: BandMarks, width: number): BandPlaces {
  const { p05, p25, p50, p75, p95, nominal, limit } = marks;
  const all = [p05, p95, nominal, limit].filter((value): value is number => value !== null);
  const low = Math.min(...all);
  const high = Math.max(...all);
  const x = low === high ? () => width / 2 : linear([low, high], [SIDE, width - SIDE]);
  return {
    p05: x(p05),
    p25: x(p25),
    p50: x(p50),
    p75: x(p75),
    p95: x(p95),
    nominal: nominal === null ? null : x(nominal),
    limit: limit === null ? null : x(limit),
  };
}
