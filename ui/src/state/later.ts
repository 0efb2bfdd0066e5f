/** What comes after the page, anew for each state of the file: the spread, the sheets. */
import { effect, signal } from '@preact/signals';
import type { Session } from './session.ts';

interface Numbered {
  revision: number;
}

export type Later<T> =
  /** Being computed; what stood there before is of an older state. */
  | { kind: 'waiting'; before: T | null }
  | { kind: 'there'; there: T }
  | { kind: 'failed'; before: null };

type Send = (url: string, init?: RequestInit) => Promise<Response>;

export function createLater<T extends Numbered>(session: Pick<Session, 'page'>, send: Send, address: string) {
  const later = signal<Later<T>>({ kind: 'waiting', before: null });
  let asked = '';
  let asking = new AbortController();

  async function ask(units: string, revision: number, signalOfThis: AbortSignal) {
    const answer = await answerOf<T>(send, `${address}?units=${units}`, signalOfThis);
    if (signalOfThis.aborted || (answer !== null && answer !== 'failed' && answer.revision !== revision)) {
      return;
    }
    if (answer === 'failed') {
      later.value = { kind: 'failed', before: null };
    } else if (answer !== null) {
      later.value = { kind: 'there', there: answer };
    }
  }

  effect(() => {
    const page = session.page.value;
    const wanted = page === null ? '' : `${page.units} ${page.revision}`;
    if (page === null || wanted === asked) {
      return;
    }
    asked = wanted;
    asking.abort();
    asking = new AbortController();
    const last = later.peek();
    later.value = { kind: 'waiting', before: last.kind === 'there' ? last.there : last.before };
    void ask(page.units, page.revision, asking.signal);
  });

  return later;
}

/** Null when the file moved on meanwhile. */
async function answerOf<T>(send: Send, url: string, aborted: AbortSignal): Promise<T | null | 'failed'> {
  try {
    const response = await send(url, { headers: { Accept: 'application/json' }, signal: aborted });
    if (response.status === 204) {
      return null;
    }
    return response.ok ? ((await response.json()) as T) : 'failed';
  } catch {
    return 'failed';
  }
}
