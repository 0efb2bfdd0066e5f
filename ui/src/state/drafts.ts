/** What is typed but not yet saved, by key path. */
import { signal } from '@preact/signals';
import type { FieldView, Problem } from '../contract.ts';
import { changes, nextDraft, textOf, type Draft, type DraftEvent } from '../logic/draft.ts';
import type { Session } from './session.ts';

export type Drafts = ReturnType<typeof createDrafts>;

export function createDrafts(session: Session) {
  const all = signal<ReadonlyMap<string, Draft>>(new Map());

  function tell(view: FieldView, event: DraftEvent): void {
    const next = nextDraft(all.value.get(view.path) ?? null, event, view);
    const copy = new Map(all.value);
    if (next === null) {
      copy.delete(view.path);
    } else {
      copy.set(view.path, next);
    }
    all.value = copy;
  }

  async function commit(view: FieldView): Promise<void> {
    const draft = all.value.get(view.path);
    if (draft === undefined || draft.status === 'sending') {
      return;
    }
    if (!changes(draft, view)) {
      tell(view, { type: 'restored' });
      return;
    }
    tell(view, { type: 'sent' });
    const outcome = await session.edit(() => [{ path: view.path, text: textOf(draft) }]);
    if (outcome.kind === 'refused') {
      tell(view, { type: 'refused', problem: problemAt(view, outcome.problems) });
    } else {
      tell(view, { type: outcome.kind === 'taken' ? 'taken' : 'not_saved' });
    }
  }

  return {
    of: (path: string): Draft | null => all.value.get(path) ?? null,
    type: (view: FieldView, text: string) => tell(view, { type: 'typed', text }),
    pickOrigin: (view: FieldView, origin: string) => tell(view, { type: 'origin', origin }),
    restore: (view: FieldView) => tell(view, { type: 'restored' }),
    commit,
  };
}

/** The problem that is about this field, else the first one. */
function problemAt(view: FieldView, problems: Problem[]): Problem {
  return (
    problems.find((problem) => problem.path === view.path) ??
    problems[0] ?? {
      path: view.path,
      value: '',
      message: 'The server refused this value without saying why.',
      allowed: view.allowed,
      line: 0,
      column: 0,
    }
  );
}
