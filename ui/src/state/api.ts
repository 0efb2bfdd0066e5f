/** The four calls to the server. Every outcome is a value; nothing is thrown. */
import type { Edit, Page, Problem, Refusal, UnitSystem } from '../contract.ts';

export type Answer =
  | { kind: 'page'; page: Page }
  | { kind: 'refused'; problems: Problem[] }
  /** The page on screen is older than the build file. */
  | { kind: 'old' }
  /** The server met something it did not expect, in its words. */
  | { kind: 'failed'; message: string }
  /** No answer, or none that can be read. */
  | { kind: 'gone' };

export interface Api {
  page(units: UnitSystem): Promise<Answer>;
  edit(revision: number, units: UnitSystem, edits: Edit[]): Promise<Answer>;
  step(which: 'undo' | 'redo', revision: number, units: UnitSystem): Promise<Answer>;
}

type Send = (url: string, init?: RequestInit) => Promise<Response>;

/** Calls relative to the page's own address. */
export function createApi(send: Send): Api {
  return {
    page: (units) => ask(send, `api/page?units=${units}`),
    edit: (revision, units, edits) => ask(send, 'api/edit', { revision, units, edits }),
    step: (which, revision, units) => ask(send, `api/${which}`, { revision, units }),
  };
}

async function ask(send: Send, url: string, body?: object): Promise<Answer> {
  try {
    return await read(await send(url, body === undefined ? { headers: { Accept: 'application/json' } } : post(body)));
  } catch {
    return { kind: 'gone' };
  }
}

function post(body: object): RequestInit {
  return {
    method: 'POST',
    headers: { Accept: 'application/json', 'Content-Type': 'application/json' },
    body: JSON.stringify(body),
  };
}

async function read(response: Response): Promise<Answer> {
  if (response.ok) {
    return { kind: 'page', page: (await response.json()) as Page };
  }
  if (response.status === 409) {
    return { kind: 'old' };
  }
  if (response.status === 422) {
    return { kind: 'refused', problems: ((await response.json()) as Refusal).problems };
  }
  return { kind: 'failed', message: await whatItSays(response) };
}

/** The server's words: a refusal's first message, or its plain text. */
async function whatItSays(response: Response): Promise<string> {
  const text = await response.text();
  try {
    return (JSON.parse(text) as Refusal).problems[0]?.message ?? text;
  } catch {
    return text;
  }
}
