import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { App } from '../src/App.tsx';
import { session } from '../src/state/here.ts';
import { standInServer } from './server.ts';

describe('the sheets', () => {
  const root = document.createElement('div');

  afterEach(() => {
    render(null, root);
    root.remove();
    vi.unstubAllGlobals();
  });

  it('come with a picture and a file for each use, and say which must not be worked from', async () => {
    vi.stubGlobal('fetch', standInServer().send);
    document.body.append(root);
    await act(async () => {
      render(<App />, root);
      await session.load();
      await settled();
    });
    const panel = root.querySelector('#sheets')!;
    const cards = [...panel.querySelectorAll('.sheet-card')];
    expect(cards.map((card) => card.querySelector('.sheet-stamp')?.textContent?.trim() ?? null)).toEqual([
      null,
      'DO NOT DRIVE SO: Rear wheels lock first',
    ]);
    expect(files(cards[0]!)).toEqual(['sheets/brake-pedal-arm-a4.pdf', 'sheets/brake-pedal-arm.svg', 'sheets/brake-pedal-arm.dxf']);
    expect(cards[0]!.querySelector('img')!.getAttribute('src')).toContain('sheets/brake-pedal-arm.svg?');

    await act(() => choose(panel.querySelector('select')!, 'letter'));
    await act(() => choose(panel.querySelector('input')!, 'R. Miller & son'));
    expect(files(cards[0]!)[0]).toBe('sheets/brake-pedal-arm-letter.pdf');
    expect(panel.querySelector('.sheet-choices a')!.getAttribute('href')).toMatch(/^sheets\/all-letter\.zip\?.*owner=R\.\+Miller\+%26\+son/);
  });
});

function files(card: Element): string[] {
  return [...card.querySelectorAll('a')].map((link) => link.getAttribute('href')!.split('?')[0]!);
}

function choose(control: HTMLInputElement | HTMLSelectElement, value: string) {
  control.value = value;
  control.dispatchEvent(new Event('change', { bubbles: true }));
}

function settled() {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
