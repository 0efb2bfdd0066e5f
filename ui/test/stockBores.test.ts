import { describe, expect, it } from 'vitest';
import { boreInches, nextBore, STOCK_BORES } from '../src/logic/stockBores.ts';

describe('the bore in a text', () => {
  // Arithmetic of the fractions; 1 in = 25.4 mm exactly (international inch, 1959).
  it.each([
    ['7/8 in', 0.875],
    ['1-1/8 in', 1.125],
    ['1 1/4 in', 1.25],
    ['0.700 in', 0.7],
    ['1 in', 1],
    ['25.4 mm', 1],
    ['2.54 cm', 1],
    ['7/8 in ± 0.001 in', 0.875],
  ])('%s', (text, inches) => {
    expect(boreInches(text)).toBeCloseTo(inches, 9);
  });

  it.each(['', 'seven eighths', '0.875', '22 parsec'])('none in "%s"', (text) => {
    expect(boreInches(text)).toBeNull();
  });
});

describe('a step to the next stock bore', () => {
  it('walks the whole list up and down again', () => {
    const up: string[] = [STOCK_BORES[0]];
    for (let next = nextBore(STOCK_BORES[0], 1); next !== null; next = nextBore(next, 1)) {
      up.push(next);
    }
    expect(up).toEqual([...STOCK_BORES]);
    expect(STOCK_BORES.map((bore) => nextBore(bore, -1))).toEqual([null, ...STOCK_BORES.slice(0, -1)]);
  });

  it('takes a metric text for the stock bore it is', () => {
    // 22.2 mm is 7/8 in (22.225 mm) as a part sheet rounds it.
    expect(nextBore('22.2 mm', 1)).toBe('15/16 in');
    expect(nextBore('22.2 mm', -1)).toBe('13/16 in');
  });

  it('leads from a bore between two to its neighbours', () => {
    // 24.6 mm = 0.9685 in lies between 15/16 in (0.9375) and 1 in.
    expect(nextBore('24.6 mm', 1)).toBe('1 in');
    expect(nextBore('24.6 mm', -1)).toBe('15/16 in');
  });

  it('stops where nothing can be read', () => {
    expect(nextBore('big', 1)).toBeNull();
  });
});
