/** The spread over cars built like this. It comes after the page, anew for each state of the file. */
import { effect, signal } from '@preact/signals';
import type { Spread } from '../spreadContract.ts';
import type { Session } from './session.ts';

export type SpreadState =
  /** Being computed; what stood there before is of an older state. */
  | { kind: 'waiting'; before: Spread | null }
  | { kind: 'there'; spread: Spread }
  | { kind: 'failed'; before: null };

type Send = (url: string, init?: RequestInit) => Promise<Response>;

export function createSpread(session: Pick<Session, 'page'>, send: Send) {
  const spread = signal<SpreadState>({ kind: 'waiting', before: null });
  let asked = '';
  let asking = new AbortController();

  async function ask(units: string, revision: number, signalOfThis: AbortSignal) {
    const answer = await fetchSpread(send, units, signalOfThis);
    if (signalOfThis.aborted || (answer !== null && answer !== 'failed' && answer.revision !== revision)) {
      return;
    }
    if (answer === 'failed') {
      spread.value = { kind: 'failed', before: null };
    } else if (answer !== null) {
      spread.value = { kind: 'there', spread: answer };
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
    const last = spread.peek();
    spread.value = { kind: 'waiting', before: last.kind === 'there' ? last.spread : last.before };
    void ask(page.units, page.revision, asking.signal);
  });

  return spread;
}

/** Null when the file moved on meanwhile. */
async function fetchSpread(send: Send, units: string, aborted: AbortSignal): Promise<Spread | null | 'failed'> {
  try {
    const response = await send(`api/spread?units=${units}`, { headers: { Accept: 'application/json' }, signal: aborted });
    if (response.status === 204) {
      return null;
    }
    return response.ok ? ((await response.json()) as Spread) : 'failed';
  } catch {
    return 'failed';
  }
}
