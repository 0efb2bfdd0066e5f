import { describe, expect, it } from 'vitest';
import type { FieldView, Problem } from '../src/contract.ts';
import { changes, nextDraft, originOf, type Draft, type DraftEvent } from '../src/logic/draft.ts';

const view: FieldView = {
  path: 'pedal.ratio',
  label: 'pedal ratio',
  kind: 'quantity',
  written: '5.2',
  origin: 'measured',
  assumed: '',
  also: '',
  how: '',
  allowed: '1 to 15',
  required: false,
  choices: [],
  units: [],
};

const problem: Problem = {
  path: view.path,
  value: '52',
  message: 'too much',
  allowed: '1 to 15',
  line: 3,
  column: 9,
};

function after(...events: DraftEvent[]): Draft | null {
  return events.reduce<Draft | null>((draft, event) => nextDraft(draft, event, view), null);
}

describe('one field between keystroke and answer', () => {
  it('starts from what the page says, with its origin', () => {
    expect(after({ type: 'typed', text: '5.4' })).toMatchObject({ typed: '5.4', origin: 'measured', status: 'edited' });
  });

  it('is the page’s again once the answer came', () => {
    expect(after({ type: 'typed', text: '5.4' }, { type: 'sent' }, { type: 'taken' })).toBeNull();
  });

  it('keeps a refused text with the reason, also while it is being mended', () => {
    const refused = after({ type: 'typed', text: '52' }, { type: 'sent' }, { type: 'refused', problem });
    expect(refused).toMatchObject({ typed: '52', status: 'refused', problem });
    expect(nextDraft(refused, { type: 'typed', text: '5' }, view)).toMatchObject({ typed: '5', problem });
  });

  it('forgets the reason when the mended text is taken', () => {
    expect(
      after(
        { type: 'typed', text: '52' },
        { type: 'sent' },
        { type: 'refused', problem },
        { type: 'typed', text: '5.2' },
        { type: 'sent' },
        { type: 'taken' },
      ),
    ).toBeNull();
  });

  it('keeps what was typed on while the first text was on its way', () => {
    expect(
      after({ type: 'typed', text: '5' }, { type: 'sent' }, { type: 'typed', text: '5.6' }, { type: 'taken' }),
    ).toMatchObject({ typed: '5.6', status: 'edited', sent: null, problem: null });
  });

  it('keeps the text when nobody answered', () => {
    expect(after({ type: 'typed', text: '5.4' }, { type: 'sent' }, { type: 'not_saved' })).toMatchObject({
      typed: '5.4',
      status: 'edited',
    });
  });

  it('goes back on Escape', () => {
    expect(after({ type: 'typed', text: '9' }, { type: 'restored' })).toBeNull();
  });
});

describe('what a commit would change', () => {
  it('is nothing when text and origin are as they were', () => {
    expect(changes(after({ type: 'typed', text: ' 5.2 ' }) as Draft, view)).toBe(false);
  });

  it('is the origin alone, too', () => {
    expect(changes(after({ type: 'origin', origin: 'part sheet' }) as Draft, view)).toBe(true);
  });

  it('is the removal of the key when the box is emptied', () => {
    expect(changes(after({ type: 'typed', text: '' }) as Draft, view)).toBe(true);
  });

  it('shows the origin that will be written', () => {
    expect(originOf(after({ type: 'typed', text: '5.4 (assumed)' }) as Draft)).toBe('assumed');
    expect(originOf(after({ type: 'typed', text: '5.4' }) as Draft)).toBe('measured');
  });
});
