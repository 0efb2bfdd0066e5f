/** Steps the leading number of a typed quantity and leaves its unit and tolerance as they are. */
import { boreInches } from './stockBores.ts';

/** A plain number, not the start of a fraction or of a number with a thousands comma, and its unit. */
const NUMBER = /^\s*([+-]?\d+(?:\.\d+)?)(?![\d./,])(?:\s*([a-zA-Z%"]+))?/;

/** Inches as a fraction: "1/4 in", "-1-1/8 in". */
const FRACTION = /^\s*([+-]?)((?:\d+[\s-])?\d+\/\d+\s*in)(?![a-zA-Z])/;

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

/** The text one step up or down; null when it starts with no number or has a unit without a step. */
export function stepNumber(text: string, direction: 1 | -1): string | null {
  const plain = inDecimals(text.replace('\u2212', '-'));
  const found = NUMBER.exec(plain);
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
  const value = Number(number) + direction * step;
  return withoutMinusZero(value.toFixed(digits)) + plain.trimStart().slice(number.length);
}

/** What a step starts from: the written text, or the assumed value without its range. */
export function startOf(written: string, assumed: string): string {
  return written !== '' ? written : assumed.replace(/\s*\(.*$/, '');
}

function inDecimals(text: string): string {
  const found = FRACTION.exec(text);
  const inches = found && boreInches(found[2] ?? '');
  return found && inches !== null ? `${found[1]}${inches.toFixed(3)} in${text.slice(found[0].length)}` : text;
}

function decimals(number: string): number {
  return number.split('.')[1]?.length ?? 0;
}

function withoutMinusZero(number: string): string {
  return Number(number) === 0 ? number.replace('-', '') : number;
}
