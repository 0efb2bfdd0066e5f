/** Steps the leading number of a typed quantity and leaves its unit and tolerance as they are. */

const NUMBER = /^\s*([+-]?\d+(?:[.,]\d+)?)(?!\/)(?:\s*([a-zA-Z%"]+))?/;

/** A step in the unit as typed: about what a hand turns at once. */
const STEP_BY_UNIT: Record<string, number> = {
  mm: 1,
  cm: 0.1,
  in: 0.05,
  bar: 1,
  kPa: 100,
  MPa: 0.1,
  psi: 25,
};

/** The step for a quantity without a unit, such as a pedal ratio. */
const STEP_OF_PURE_NUMBER = 0.1;

/** The text one step up or down; null when it does not start with a plain number in a known unit. */
export function stepNumber(text: string, direction: 1 | -1): string | null {
  const found = NUMBER.exec(text);
  if (!found) {
    return null;
  }
  const number = found[1] ?? '';
  const unit = found[2];
  const step = unit === undefined ? STEP_OF_PURE_NUMBER : STEP_BY_UNIT[unit];
  if (step === undefined) {
    return null;
  }
  const digits = Math.max(decimals(number), decimals(String(step)));
  const value = Number(number.replace(',', '.')) + direction * step;
  return withoutMinusZero(value.toFixed(digits)) + text.trimStart().slice(number.length);
}

/** What a step starts from: the written text, or the assumed value without its range. */
export function startOf(written: string, assumed: string): string {
  return written !== '' ? written : assumed.replace(/\s*\(.*$/, '');
}

function decimals(number: string): number {
  return number.split(/[.,]/)[1]?.length ?? 0;
}

function withoutMinusZero(number: string): string {
  return Number(number) === 0 ? number.replace('-', '') : number;
}
