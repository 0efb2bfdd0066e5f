/**
 * The page as the server last sent it, and the one way to change it. Changes go out one after the other, each built
 * from the newest answer, so that three quick clicks are three steps.
 */
import { batch, signal } from '@preact/signals';
import type { Edit, Page, Problem, UnitSystem } from '../contract.ts';
import type { Answer, Api } from './api.ts';

export type Outcome =
  | { kind: 'taken' }
  | { kind: 'refused'; problems: Problem[] }
  /** Not saved: the server is gone or had moved on. The notice says which. */
  | { kind: 'not_saved' }
  /** There was nothing to change. */
  | { kind: 'nothing' };

export type Notice = { kind: 'gone' | 'reloaded' | 'unreadable' } | { kind: 'failed'; message: string } | null;

export type Session = ReturnType<typeof createSession>;

export function createSession(api: Api, firstUnits: UnitSystem) {
  const page = signal<Page | null>(null);
  const units = signal<UnitSystem>(firstUnits);
  const notice = signal<Notice>(null);
  /** Why the build file cannot be shown at all. */
  const unreadable = signal<Problem[]>([]);
  let queue: Promise<unknown> = Promise.resolve();

  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const done = queue.then(work);
    queue = done;
    return done;
  }

  function take(answer: Answer, said: Notice = null): Outcome {
    return batch((): Outcome => {
      switch (answer.kind) {
        case 'page':
          page.value = answer.page;
          unreadable.value = [];
          notice.value = said;
          return { kind: 'taken' };
        case 'refused':
          return { kind: 'refused', problems: answer.problems };
        case 'failed':
          notice.value = answer;
          return { kind: 'not_saved' };
        case 'old':
        case 'gone':
          notice.value = { kind: 'gone' };
          return { kind: 'not_saved' };
      }
    });
  }

  async function fetchPage(said: Notice = null): Promise<Outcome> {
    const outcome = take(await api.page(units.value), said);
    if (outcome.kind === 'refused') {
      unreadable.value = outcome.problems;
      notice.value = { kind: 'unreadable' };
    }
    return outcome;
  }

  async function change(call: (now: Page) => Promise<Answer> | null): Promise<Outcome> {
    const sent = page.value === null ? null : call(page.value);
    if (sent === null) {
      return { kind: 'nothing' };
    }
    const answer = await sent;
    if (answer.kind !== 'old') {
      return take(answer);
    }
    await fetchPage({ kind: 'reloaded' });
    return { kind: 'not_saved' };
  }

  return {
    page,
    units,
    notice,
    unreadable,
    load: () => inTurn(() => fetchPage()),
    /** Writes what `edits` makes of the newest page; null or nothing writes nothing. */
    edit: (edits: (now: Page) => Edit[] | null) =>
      inTurn(() =>
        change((now) => {
          const wanted = edits(now);
          return wanted === null || wanted.length === 0 ? null : api.edit(now.revision, units.value, wanted);
        }),
      ),
    undo: () => inTurn(() => change((now) => (now.can_undo ? api.step('undo', now.revision, units.value) : null))),
    redo: () => inTurn(() => change((now) => (now.can_redo ? api.step('redo', now.revision, units.value) : null))),
    showIn: (wanted: UnitSystem) => {
      units.value = wanted;
      return inTurn(() => fetchPage());
    },
    dismiss: () => {
      notice.value = null;
    },
  };
}
