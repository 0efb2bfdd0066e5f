/** The stock bores a stepper walks through, written as the fraction that is cast on the part. */

const MM_PER_INCH = 25.4;

export const STOCK_BORES = [
  '5/8 in',
  '0.700 in',
  '3/4 in',
  '13/16 in',
  '7/8 in',
  '15/16 in',
  '1 in',
  '1-1/16 in',
  '1-1/8 in',
  '1-1/4 in',
] as const;

/** Two bores closer than this are the same part: half a 1/32 in step, in inches. */
const SAME = 1 / 64;

/** Bore in inches of a text such as "7/8 in", "1-1/8 in", "0.700 in" or "22.2 mm"; null when it is none of these. */
export function boreInches(text: string): number | null {
  const found = /^\s*(?:(\d+)[\s-]+)?(\d+(?:\.\d+)?)(?:\/(\d+))?\s*(in|"|mm|cm)?(?![\w/.])/.exec(text);
  if (!found) {
    return null;
  }
  const [, whole, number, under, unit] = found;
  const value = Number(whole ?? 0) + Number(number) / Number(under ?? 1);
  if (!Number.isFinite(value) || unit === undefined) {
    return null;
  }
  return unit === 'mm' ? value / MM_PER_INCH : unit === 'cm' ? (value * 10) / MM_PER_INCH : value;
}

/** The next stock bore up (+1) or down (-1) from the bore in the text; null at the end of the list. */
export function nextBore(text: string, direction: 1 | -1): string | null {
  const now = boreInches(text);
  if (now === null) {
    return null;
  }
  const ordered = direction === 1 ? [...STOCK_BORES] : [...STOCK_BORES].reverse();
  return ordered.find((stock) => direction * ((boreInches(stock) ?? 0) - now) > SAME / 2) ?? null;
}
