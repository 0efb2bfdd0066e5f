import { describe, expect, it } from 'vitest';
import { startOf, stepNumber } from '../src/logic/stepNumber.ts';

describe('one step of a typed quantity', () => {
  // Expected texts: the number plus or minus the step named in stepNumber.ts for its unit.
  it.each([
    ['-4 mm', 1, '-3 mm'],
    ['0 mm', -1, '-1 mm'],
    ['1 mm', -1, '0 mm'],
    ['-1 mm', 1, '0 mm'],
    ['\u22124 mm', 1, '-3 mm'],
    ['5.2', 1, '5.3'],
    ['5.25', 1, '5.35'],
    ['30 bar', 1, '31 bar'],
    ['435 psi', -1, '410 psi'],
    ['0.40 ± 0.04', 1, '0.50 ± 0.04'],
    ['2.5 mm ± 0.5 mm', 1, '3.5 mm ± 0.5 mm'],
    ['1/4 in', 1, '0.300 in'],
    ['-1/4 in', -1, '-0.300 in'],
  ] as const)('%s by %d is %s', (text, direction, expected) => {
    expect(stepNumber(text, direction)).toBe(expected);
  });

  it('does not take a thousands comma for a decimal point', () => {
    expect(stepNumber('1,500 psi', 1)).toBeNull();
  });

  it.each(['', 'some', '3 furlongs', '11/4'])('leaves "%s" alone', (text) => {
    expect(stepNumber(text, 1)).toBeNull();
  });
});

describe('where a step starts', () => {
  it('is the written text, else the assumed value without its range', () => {
    expect(startOf('6 mm', '0 mm (-2 mm to 2 mm)')).toBe('6 mm');
    expect(startOf('', '0 mm (-2 mm to 2 mm)')).toBe('0 mm');
    expect(startOf('', '')).toBe('');
  });
});
