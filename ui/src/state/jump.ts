/** Leads from a part, a finding or a ledger row to the input it is about. */
import { fieldUnder } from './here.ts';

export function fieldId(path: string): string {
  return `field-${path.replace(/[^a-zA-Z0-9_]/g, '-')}`;
}

/** Opens the section of the input, scrolls to it and puts the cursor there. False when the page has no such input. */
export function jumpTo(path: string): boolean {
  const field = fieldUnder(path);
  const box = field && document.getElementById(fieldId(field.path));
  if (!box) {
    return false;
  }
  box.closest('details')?.setAttribute('open', '');
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  box.scrollIntoView({ block: 'center', behavior: calm ? 'auto' : 'smooth' });
  box.focus({ preventScroll: true });
  return true;
}
