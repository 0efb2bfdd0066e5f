import { describe, expect, it } from 'vitest';
import { composeText, NOT_SAID, splitText } from '../src/logic/origin.ts';

// The build file's own way of writing an origin: value, blank, origin in brackets (docs/fileformat, examples/).
describe('the text that is written', () => {
  it('carries the chosen origin in brackets', () => {
    expect(composeText('7/8 in', 'part sheet')).toBe('7/8 in (part sheet)');
  });

  it('carries none when the builder does not say', () => {
    expect(composeText(' 97.5 in ', NOT_SAID)).toBe('97.5 in');
    expect(composeText('97.5 in', '')).toBe('97.5 in');
  });

  it('keeps an origin typed by hand instead of adding a second', () => {
    expect(composeText('0.40 ± 0.04 (assumed)', 'measured')).toBe('0.40 ± 0.04 (assumed)');
  });

  it('stays empty when the box is empty, so that the key is removed', () => {
    expect(composeText('  ', 'measured')).toBe('');
  });
});

describe('a typed text taken apart', () => {
  it('gives back what was joined', () => {
    expect(splitText(composeText('1-1/8 in', 'measured'))).toEqual({ value: '1-1/8 in', origin: 'measured' });
  });

  it('leaves other brackets alone', () => {
    expect(splitText('Plum (mk 2)')).toEqual({ value: 'Plum (mk 2)', origin: '' });
  });
});
