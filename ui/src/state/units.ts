/** Which unit system the builder reads in, remembered in this browser. */
import type { UnitSystem } from '../contract.ts';

const KEY = 'brakewright.units';

/** The remembered system; metric when none is, or when the browser keeps nothing. */
export function rememberedUnits(): UnitSystem {
  try {
    return localStorage.getItem(KEY) === 'us' ? 'us' : 'metric';
  } catch {
    return 'metric';
  }
}

export function rememberUnits(units: UnitSystem): void {
  try {
    localStorage.setItem(KEY, units);
  } catch {
    // A browser that keeps nothing still shows the chosen units until it is closed.
  }
}
