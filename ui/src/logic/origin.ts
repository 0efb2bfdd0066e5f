/** Where a value comes from, in the words of the build file, and how they are joined to the value's text. */

export const NOT_SAID = 'origin not said';

export const ORIGINS = ['measured', 'part sheet', 'assumed', 'computed', NOT_SAID] as const;

const TRAILING = /\s*\((measured|part sheet|assumed|computed)\)\s*$/i;

/** Text to write: the value with its origin in brackets. An origin typed into the text wins over the chosen one. */
export function composeText(typed: string, origin: string): string {
  const text = typed.trim();
  if (text === '' || origin === '' || origin === NOT_SAID || TRAILING.test(text)) {
    return text;
  }
  return `${text} (${origin})`;
}

/** Takes a typed text apart again: value and origin, the latter empty when none is typed. */
export function splitText(text: string): { value: string; origin: string } {
  const found = TRAILING.exec(text);
  return found
    ? { value: text.slice(0, found.index).trim(), origin: (found[1] ?? '').toLowerCase() }
    : { value: text.trim(), origin: '' };
}
