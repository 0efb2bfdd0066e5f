/** The inputs turned most, and how one click changes each. */
import type { Edit, FieldView, Page } from '../contract.ts';
import { nextBore } from '../logic/stockBores.ts';
import { startOf, stepNumber } from '../logic/stepNumber.ts';

export interface Quick {
  path: string;
  name: string;
  less: string;
  more: string;
  step: (text: string, direction: 1 | -1) => string | null;
}

const bore = (path: string, name: string): Quick => ({
  path,
  name,
  less: 'smaller',
  more: 'larger',
  step: nextBore,
});

/** Those of them that a page has are shown. */
export const QUICK: Quick[] = [
  {
    path: 'apply.balance_bar.offset',
    name: 'Bar bearing offset',
    less: 'toward the rear',
    more: 'toward the front',
    step: stepNumber,
  },
  bore('apply.front_master.bore', 'Front master bore'),
  bore('apply.rear_master.bore', 'Rear master bore'),
  bore('apply.bore', 'Tandem master bore'),
  { path: 'pedal.ratio', name: 'Pedal ratio', less: 'less', more: 'more', step: stepNumber },
  { path: 'apply.proportioning_valve.knee', name: 'Valve knee', less: 'earlier', more: 'later', step: stepNumber },
  bore('front.wheel_cylinder', 'Front wheel cylinder'),
  bore('rear.wheel_cylinder', 'Rear wheel cylinder'),
];

/**
 * The edit of one click on the newest page; null at the end of a list or where nothing can be stepped. The new value
 * is a wish, not a measurement, so the old origin is not carried over.
 */
export function quickEdit(page: Page, quick: Quick, direction: 1 | -1): Edit[] | null {
  const field = fieldOf(page, quick.path);
  const text = field && quick.step(startOf(field.written, field.assumed), direction);
  return text ? [{ path: quick.path, text }] : null;
}

export function fieldOf(page: Page, path: string): FieldView | null {
  return page.inputs.flatMap((section) => section.fields).find((field) => field.path === path) ?? null;
}
