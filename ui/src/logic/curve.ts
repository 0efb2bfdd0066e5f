/** From numbers to path data, with gaps where there is no value. */

export interface Spot {
  x: number;
  y: number;
}

/** SVG path through the spots; null breaks the line. */
export function pathOf(spots: (Spot | null)[]): string {
  let pen: 'M' | 'L' = 'M';
  const parts: string[] = [];
  for (const spot of spots) {
    if (spot === null) {
      pen = 'M';
      continue;
    }
    parts.push(`${pen}${spot.x.toFixed(1)} ${spot.y.toFixed(1)}`);
    pen = 'L';
  }
  return parts.join('');
}

/** Height of a curve at x on the straight line between its neighbours; null outside or beside a gap. For markers only. */
export function heightAt(xs: number[], ys: (number | null)[], x: number): number | null {
  for (let i = 0; i < xs.length; i++) {
    const x1 = xs[i] as number;
    const y1 = ys[i] ?? null;
    if (x1 === x) {
      return y1;
    }
    const x0 = xs[i - 1];
    if (x1 > x) {
      const y0 = ys[i - 1] ?? null;
      return x0 === undefined || y0 === null || y1 === null ? null : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
    }
  }
  return null;
}

/** Pushes labels apart so that no two are closer than the gap, and keeps them between the ends where there is room. */
export function spread(wanted: number[], gap: number, top: number, bottom: number): number[] {
  const order = wanted.map((y, i) => ({ y, i })).sort((a, b) => a.y - b.y);
  let floor = top;
  for (const label of order) {
    label.y = Math.max(label.y, floor);
    floor = label.y + gap;
  }
  let ceiling = bottom;
  for (const label of [...order].reverse()) {
    label.y = Math.min(label.y, ceiling);
    ceiling = label.y - gap;
  }
  const placed = new Array<number>(wanted.length);
  for (const label of order) {
    placed[label.i] = label.y;
  }
  return placed;
}
