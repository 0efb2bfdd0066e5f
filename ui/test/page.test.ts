import { afterEach, describe, expect, it } from 'vitest';
import { labelsOf } from '../src/chain/places.ts';
import { QUICK, quickEdit } from '../src/chain/quickSteps.ts';
import { choosePoint, FIRST_SHOWN_G } from '../src/logic/choosePoint.ts';
import { readFlowList, writeFlowList } from '../src/logic/flowList.ts';
import { numbered } from '../src/logic/numbered.ts';
import { reportText } from '../src/logic/report.ts';
import { worstFirst } from '../src/logic/severity.ts';
import { workingKey } from '../src/logic/workingKey.ts';
import { rememberedUnits, rememberUnits } from '../src/state/units.ts';
import { stepOf } from '../src/state/keys.ts';
import { samplePage } from '../dev/samplePage.ts';

const page = samplePage('metric');

describe('the unit preference', () => {
  afterEach(() => localStorage.clear());

  it('is metric until the builder says otherwise, then remembered', () => {
    expect(rememberedUnits()).toBe('metric');
    rememberUnits('us');
    expect(rememberedUnits()).toBe('us');
  });

  it('is metric when something else was kept', () => {
    localStorage.setItem('brakewright.units', 'cubits');
    expect(rememberedUnits()).toBe('metric');
  });
});

describe('the report as text', () => {
  it('holds verdict, all four headline numbers, every finding and every caution', () => {
    const text = reportText(page);
    expect(text).toContain(page.verdict.sentence);
    for (const card of page.headline) {
      expect(text).toContain(`${card.label}: ${card.value}`);
    }
    for (const finding of page.findings) {
      expect(text).toContain(`${finding.word}: ${finding.title}`);
    }
    for (const caution of page.cautions) {
      expect(text).toContain(caution);
    }
    expect(text).not.toContain('null');
  });
});

describe('findings', () => {
  it('stand worst first and keep the server’s order among equals', () => {
    const states = worstFirst(page.findings).map(({ state }) => state);
    expect(states).toEqual(['stop', 'caution', 'caution', 'cannot_tell', 'fine', 'fine']);
    const cautions = (list: typeof page.findings) => list.filter(({ state }) => state === 'caution').map(({ key }) => key);
    expect(cautions(worstFirst(page.findings))).toEqual(cautions(page.findings));
  });

  it('open the working of the headline number they judge', () => {
    const finding = { ...page.findings[0]!, key: 'pedal_reserve' };
    expect(workingKey(finding, page.workings)).toBe('travel');
    expect(workingKey({ ...finding, key: 'balance' }, page.workings)).toBe('balance');
    expect(workingKey({ ...finding, key: 'hose_age' }, page.workings)).toBeNull();
  });
});

describe('the chosen deceleration', () => {
  const points = page.load_cases[0]!.points;

  it('is a hard stop until the builder chooses', () => {
    // The sample's points stand every 0.05 g, so 0.85 g is one of them.
    expect(points[choosePoint(points, null)]!.deceleration_g).toBe(FIRST_SHOWN_G);
    expect(choosePoint(points.slice(0, 4), null)).toBe(3);
  });

  it('stays the same deceleration when the points move', () => {
    const index = choosePoint(points.slice(3), 0.5);
    expect(points.slice(3)[index]!.deceleration_g).toBe(0.5);
  });

  it('is the first when there are none', () => {
    expect(choosePoint([], null)).toBe(0);
    expect(choosePoint([], 0.5)).toBe(0);
  });
});

describe('quick steps', () => {
  const quick = (path: string) => QUICK.find((one) => one.path === path)!;

  it('write the next stock bore as a fraction and do not carry the old origin over', () => {
    // 7/8 in is the sample's front bore; 15/16 in is the next on the stock list.
    expect(quickEdit(page, quick('apply.front_master.bore'), 1)).toEqual([
      { path: 'apply.front_master.bore', text: '15/16 in' },
    ]);
  });

  it('do nothing to a field the page does not have', () => {
    expect(quickEdit(page, quick('apply.bore'), 1)).toBeNull();
  });
});

describe('the drawn chain', () => {
  it('names what the car has and nothing else', () => {
    const parts = (chain: Partial<typeof page.chain>) => labelsOf({ ...page.chain, ...chain }).map(({ part }) => part);
    expect(parts({})).toContain('bar');
    expect(parts({})).not.toContain('booster');
    expect(parts({ apply: 'tandem_master', booster: true })).toContain('booster');
    expect(parts({ apply: 'tandem_master', booster: true })).not.toContain('bar');
    expect(parts({ valve: false })).not.toContain('valve');
  });
});

describe('names in a list', () => {
  it('stay apart when the server repeats a key, and stay the same when another item goes', () => {
    const names = (keys: string[]) => numbered(keys, (key) => key).map(({ name }) => name);
    expect(names(['a', 'b', 'a'])).toEqual(['a', 'b', 'a 2']);
    expect(names(['b', 'a'])).toEqual(['b', 'a']);
  });
});

describe('several choices', () => {
  it('are read and written as a flow list, none as an empty one', () => {
    expect(readFlowList('[un_r13h, state_assessment]')).toEqual(['un_r13h', 'state_assessment']);
    expect(readFlowList('')).toEqual([]);
    expect(writeFlowList([])).toBe('[]');
    expect(readFlowList(writeFlowList(['a', 'b']))).toEqual(['a', 'b']);
  });
});

describe('undo by keys', () => {
  function press(target: HTMLElement, init: KeyboardEventInit) {
    document.body.append(target);
    let step: ReturnType<typeof stepOf> = null;
    target.addEventListener('keydown', (event) => (step = stepOf(event)));
    target.dispatchEvent(new KeyboardEvent('keydown', { bubbles: true, ...init }));
    target.remove();
    return step;
  }

  it('steps back and forth anywhere but in a text', () => {
    const button = document.createElement('button');
    expect(press(button, { key: 'z', ctrlKey: true })).toBe('undo');
    expect(press(button, { key: 'Z', ctrlKey: true, shiftKey: true })).toBe('redo');
    expect(press(button, { key: 'z', metaKey: true })).toBe('undo');
    expect(press(button, { key: 'z' })).toBeNull();
  });

  it('leaves the text box its own undo', () => {
    expect(press(document.createElement('input'), { key: 'z', ctrlKey: true })).toBeNull();
    expect(press(document.createElement('textarea'), { key: 'z', ctrlKey: true })).toBeNull();
  });
});
