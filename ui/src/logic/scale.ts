/** Straight-line scales and round ticks for charts. */

export interface Scale {
  (value: number): number;
  domain: readonly [number, number];
}

/** Maps domain to range; a domain without width maps to the range's start. */
export function linear(domain: readonly [number, number], range: readonly [number, number]): Scale {
  const [d0, d1] = domain;
  const [r0, r1] = range;
  const slope = d1 === d0 ? 0 : (r1 - r0) / (d1 - d0);
  return Object.assign((value: number) => r0 + (value - d0) * slope, { domain });
}

/** Round ticks (1, 2 or 5 times a power of ten) inside the domain, about as many as asked for. */
export function ticks([low, high]: readonly [number, number], about: number): number[] {
  const step = niceStep((high - low) / Math.max(1, about));
  if (!(step > 0) || !Number.isFinite(step)) {
    return [low];
  }
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => round((first + i) * step));
}

/** Domain widened to round ends: from zero, or from below it, up to the next round tick. */
export function niceDomain(values: number[], about = 5): [number, number] {
  const finite = values.filter(Number.isFinite);
  const low = Math.min(0, ...finite);
  const high = Math.max(0, ...finite);
  if (low === high) {
    return [0, 1];
  }
  const step = niceStep((high - low) / about);
  return [round(Math.floor(low / step + 1e-9) * step), round(Math.ceil(high / step - 1e-9) * step)];
}

/** A tick's text with just the digits that tell neighbours apart. */
export function tickText(value: number): string {
  return String(round(value)).replace('-', '\u2212');
}

function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const lead = rough / power;
  return (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10) * power;
}

function round(value: number): number {
  return Number(value.toPrecision(10));
}
