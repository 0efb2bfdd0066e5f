/**
 * What happens to one field between the first keystroke and the server's answer. No draft means: the field shows what
 * the page says. A draft survives every answer that is not about it, so nothing typed is lost.
 */
import type { FieldView, Problem } from '../contract.ts';
import { composeText, NOT_SAID, splitText } from './origin.ts';

export interface Draft {
  typed: string;
  origin: string;
  status: 'edited' | 'sending' | 'refused';
  /** What was sent, while it is on its way. */
  sent: string | null;
  problem: Problem | null;
}

export type DraftEvent =
  | { type: 'typed'; text: string }
  | { type: 'origin'; origin: string }
  | { type: 'sent' }
  | { type: 'taken' }
  | { type: 'refused'; problem: Problem }
  /** The server did not answer, or had moved on. */
  | { type: 'not_saved' }
  | { type: 'restored' };

/** The next draft, or null when the field is the page's again. */
export function nextDraft(draft: Draft | null, event: DraftEvent, view: FieldView): Draft | null {
  const now = draft ?? untouched(view);
  switch (event.type) {
    case 'typed':
      return { ...now, typed: event.text, status: 'edited' };
    case 'origin':
      return { ...now, origin: event.origin, status: 'edited' };
    case 'sent':
      return { ...now, status: 'sending', sent: textOf(now) };
    case 'taken':
      return now.sent === textOf(now) ? null : { ...now, status: 'edited', sent: null, problem: null };
    case 'refused':
      return { ...now, status: 'refused', sent: null, problem: event.problem };
    case 'not_saved':
      return { ...now, status: 'edited', sent: null };
    case 'restored':
      return null;
  }
}

/** The text that a commit writes. */
export function textOf(draft: Draft): string {
  return composeText(draft.typed, draft.origin);
}

/** Whether a commit would change anything. */
export function changes(draft: Draft, view: FieldView): boolean {
  return textOf(draft) !== composeText(view.written, view.origin);
}

/** The origin that will be written: the one typed into the text, else the one chosen. */
export function originOf(draft: Draft): string {
  return splitText(draft.typed).origin || draft.origin;
}

function untouched(view: FieldView): Draft {
  return { typed: view.written, origin: view.origin || NOT_SAID, status: 'edited', sent: null, problem: null };
}
