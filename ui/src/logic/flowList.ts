/** Flow lists of plain words, as the build file writes several choices: "[a, b]". */

export function readFlowList(text: string): string[] {
  return text
    .replace(/^\s*\[|\]\s*$/g, '')
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
}

export function writeFlowList(words: string[]): string {
  return `[${words.join(', ')}]`;
}
