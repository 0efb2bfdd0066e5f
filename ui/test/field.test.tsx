import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../src/App.tsx';
import { session } from '../src/state/here.ts';
import { fieldId } from '../src/state/jump.ts';
import { standInServer } from './server.ts';

const RATIO = fieldId('pedal.ratio');
let root: HTMLElement;
let server: ReturnType<typeof standInServer>;

beforeEach(async () => {
  server = standInServer();
  vi.stubGlobal('fetch', server.send);
  root = document.createElement('div');
  document.body.append(root);
  await act(async () => {
    render(<App />, root);
    await session.load();
  });
});

afterEach(() => {
  render(null, root);
  root.remove();
  vi.unstubAllGlobals();
});

function box(id = RATIO): HTMLInputElement {
  return document.getElementById(id) as HTMLInputElement;
}

async function type(text: string) {
  await act(async () => {
    box().focus();
    box().value = text;
    box().dispatchEvent(new Event('input', { bubbles: true }));
  });
}

async function press(key: string) {
  await act(async () => {
    box().dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
    await settled();
  });
}

/** The session's queue is empty when an edit that changes nothing has had its turn. */
const settled = () => session.edit(() => null);

describe('an input on the page', () => {
  it('shows the value as typed by the builder', () => {
    expect(box(fieldId('apply.front_master.bore')).value).toBe('7/8 in');
  });

  it('saves on Enter with its origin, keeping the cursor where it is', async () => {
    await type('6.0');
    await press('Enter');
    expect(JSON.parse(server.requests.findLast(({ body }) => body !== '')!.body).edits).toEqual([{ path: 'pedal.ratio', text: '6.0 (measured)' }]);
    expect(box().value).toBe('6.0');
    expect(document.activeElement).toBe(box());
  });

  it('goes back on Escape without asking the server', async () => {
    const before = server.requests.length;
    await type('9');
    await press('Escape');
    expect(box().value).toBe('5.2');
    expect(server.requests.length).toBe(before);
  });

  it('keeps a refused text and says beside it what is wrong and what is allowed', async () => {
    await type('quite long');
    await press('Enter');
    expect(box().value).toBe('quite long');
    expect(box().getAttribute('aria-invalid')).toBe('true');
    const alert = document.getElementById(`${RATIO}-problem`);
    expect(alert?.getAttribute('role')).toBe('alert');
    expect(alert?.textContent).toContain('not a number');
    expect(alert?.textContent).toContain('between 1 and 15');
    expect(box().getAttribute('aria-describedby')).toContain(`${RATIO}-problem`);
    await press('Escape');
    expect(document.getElementById(`${RATIO}-problem`)).toBeNull();
    expect(box().value).toBe('5.2');
  });

  it('shows an assumed value as a placeholder, marked as assumed', () => {
    const friction = box(fieldId('front.pad_friction'));
    expect(friction.value).toBe('');
    expect(friction.placeholder).toBe('0.38 (0.30 to 0.45), assumed');
  });
});

describe('a cure', () => {
  it('posts its edits and the new page shows', async () => {
    const button = [...root.querySelectorAll('button')].find((one) => one.textContent?.startsWith('Try this change'))!;
    await act(async () => {
      button.click();
      await settled();
    });
    expect(box(fieldId('apply.balance_bar.offset')).value).toBe('3 mm');
    expect(root.querySelector('.card-value')?.textContent).toBe('396 N');
  });
});

describe('the first screen', () => {
  it('reads verdict, four headline numbers and findings in that order', () => {
    const text = root.textContent ?? '';
    const places = ['The rear wheels lock first', 'Pedal effort at', 'Pedal travel at', 'Front share at', 'Margin before', 'Findings, worst first'];
    const found = places.map((words) => text.indexOf(words));
    expect(found.every((place) => place >= 0)).toBe(true);
    expect([...found].sort((a, b) => a - b)).toEqual(found);
  });

  it('names every state in words beside its mark', () => {
    for (const card of root.querySelectorAll('.card')) {
      expect(card.querySelector('.card-state')?.textContent).toMatch(/Stop|Caution|Fine|Cannot tell/);
    }
  });
});
