import { beforeEach, describe, expect, it } from 'vitest';
import { quickEdit, QUICK, fieldOf } from '../src/chain/quickSteps.ts';
import type { Page } from '../src/contract.ts';
import { createApi } from '../src/state/api.ts';
import { createDrafts } from '../src/state/drafts.ts';
import { createSession, type Session } from '../src/state/session.ts';
import { standInServer } from './server.ts';

const RATIO = 'pedal.ratio';
let server: ReturnType<typeof standInServer>;
let session: Session;

beforeEach(async () => {
  server = standInServer();
  session = createSession(createApi(server.send), 'metric');
  await session.load();
});

function page(): Page {
  return session.page.value as Page;
}

function written(path: string): string {
  return fieldOf(page(), path)?.written ?? 'no such field';
}

describe('a change', () => {
  it('is one request, and its answer is the page', async () => {
    const before = server.requests.length;
    const outcome = await session.edit(() => [{ path: RATIO, text: '6.0 (measured)' }]);
    expect(outcome.kind).toBe('taken');
    expect(server.requests.slice(before).map(({ url }) => url)).toEqual(['api/edit']);
    expect(written(RATIO)).toBe('6.0');
  });

  it('names the revision it is built on', async () => {
    await session.edit(() => [{ path: RATIO, text: '6.0' }]);
    await session.edit(() => [{ path: RATIO, text: '6.1' }]);
    const revisions = server.requests.filter(({ body }) => body).map(({ body }) => JSON.parse(body).revision);
    expect(revisions).toEqual([1, 2]);
  });

  it('asks nothing when there is nothing to change', async () => {
    const before = server.requests.length;
    expect((await session.edit(() => null)).kind).toBe('nothing');
    expect((await session.undo()).kind).toBe('nothing');
    expect(server.requests.length).toBe(before);
  });

  it('makes three steps of three quick clicks, though the answers are slow', async () => {
    const ratio = QUICK.find(({ path }) => path === RATIO);
    const start = Number(written(RATIO));
    await Promise.all([1, 2, 3].map(() => session.edit((now) => ratio ? quickEdit(now, ratio, 1) : null)));
    // Three steps of 0.1, the step of a number without a unit.
    expect(Number(written(RATIO))).toBeCloseTo(start + 0.3, 9);
  });

  it('can be undone and done again', async () => {
    const before = written(RATIO);
    await session.edit(() => [{ path: RATIO, text: '7' }]);
    await session.undo();
    expect(written(RATIO)).toBe(before);
    await session.redo();
    expect(written(RATIO)).toBe('7');
  });
});

describe('a refusal', () => {
  it('comes back with its reason and leaves the page alone', async () => {
    const before = page();
    const outcome = await session.edit(() => [{ path: RATIO, text: 'long' }]);
    expect(outcome).toMatchObject({ kind: 'refused', problems: [{ path: RATIO, value: 'long' }] });
    expect(session.page.value).toBe(before);
    expect(session.notice.value).toBeNull();
  });
});

describe('a build file changed elsewhere', () => {
  it('is shown anew, said so, and the change is not made behind the builder’s back', async () => {
    server.elsewhere(
      'http://localhost/api/edit',
      JSON.stringify({ revision: 1, units: 'metric', edits: [{ path: RATIO, text: '4.4' }] }),
    );
    const outcome = await session.edit(() => [{ path: RATIO, text: '9' }]);
    expect(outcome.kind).toBe('not_saved');
    expect(session.notice.value).toEqual({ kind: 'reloaded' });
    expect(written(RATIO)).toBe('4.4');
  });
});

describe('a server that is gone', () => {
  it('is said, keeps the page, and is forgotten when it answers again', async () => {
    const before = page();
    server.line.cut = true;
    expect((await session.edit(() => [{ path: RATIO, text: '6' }])).kind).toBe('not_saved');
    expect(session.notice.value).toEqual({ kind: 'gone' });
    expect(session.page.value).toBe(before);
    server.line.cut = false;
    await session.load();
    expect(session.notice.value).toBeNull();
  });

  it('never blocks the next change', async () => {
    server.line.cut = true;
    await session.edit(() => [{ path: RATIO, text: '6' }]);
    server.line.cut = false;
    expect((await session.edit(() => [{ path: RATIO, text: '6' }])).kind).toBe('taken');
  });

  it('that meets something unexpected is quoted', async () => {
    const broken = createSession(
      createApi(async () => new Response(JSON.stringify({ problems: [{ message: 'disk full' }] }), { status: 500 })),
      'metric',
    );
    await broken.load();
    expect(broken.notice.value).toEqual({ kind: 'failed', message: 'disk full' });
  });
});

describe('a build file that cannot be read', () => {
  it('is a list of problems instead of a page', async () => {
    const problem = { path: 'car.wheelbase', value: '', message: 'missing', allowed: '', line: 4, column: 1 };
    const broken = createSession(
      createApi(async () => new Response(JSON.stringify({ problems: [problem] }), { status: 422 })),
      'metric',
    );
    await broken.load();
    expect(broken.unreadable.value).toEqual([problem]);
    expect(broken.page.value).toBeNull();
  });
});

describe('what is typed', () => {
  it('survives a refusal and another field’s change, and goes when it is taken', async () => {
    const drafts = createDrafts(session);
    const ratio = () => fieldOf(page(), RATIO)!;
    drafts.type(ratio(), 'long');
    await drafts.commit(ratio());
    expect(drafts.of(RATIO)).toMatchObject({ typed: 'long', status: 'refused' });
    await session.edit(() => [{ path: 'car.wheelbase', text: '98 in' }]);
    expect(drafts.of(RATIO)).toMatchObject({ typed: 'long' });
    drafts.type(ratio(), '5.5');
    await drafts.commit(ratio());
    expect(drafts.of(RATIO)).toBeNull();
    expect(written(RATIO)).toBe('5.5');
  });

  it('survives a server that is gone', async () => {
    const drafts = createDrafts(session);
    const ratio = fieldOf(page(), RATIO)!;
    drafts.type(ratio, '5.9');
    server.line.cut = true;
    await drafts.commit(ratio);
    expect(drafts.of(RATIO)).toMatchObject({ typed: '5.9', status: 'edited' });
  });

  it('removes an optional value when the box is emptied, and not a needed one', async () => {
    const drafts = createDrafts(session);
    const knee = fieldOf(page(), 'pedal.travel_to_stop')!;
    drafts.type(knee, '');
    await drafts.commit(knee);
    expect(written('pedal.travel_to_stop')).toBe('');
    const base = fieldOf(page(), 'car.wheelbase')!;
    drafts.type(base, '');
    await drafts.commit(base);
    expect(drafts.of('car.wheelbase')?.status).toBe('refused');
    expect(written('car.wheelbase')).not.toBe('');
  });

  it('is not sent when it changes nothing', async () => {
    const drafts = createDrafts(session);
    const ratio = fieldOf(page(), RATIO)!;
    drafts.type(ratio, ratio.written);
    const before = server.requests.length;
    await drafts.commit(ratio);
    expect(server.requests.length).toBe(before);
    expect(drafts.of(RATIO)).toBeNull();
  });
});
