/** The page in plain text, for a forum or a message: verdict, headline, findings. */
import type { Finding, Page } from '../contract.ts';

export function reportText(page: Page): string {
  return [
    page.name,
    `${page.verdict.word}. ${page.verdict.sentence}`,
    '',
    ...page.headline.map((card) => `${card.label}: ${card.value}${card.note ? ` (${card.note})` : ''}`),
    '',
    'Findings',
    ...page.findings.map(findingText),
    '',
    ...page.cautions,
  ].join('\n');
}

function findingText(finding: Finding): string {
  const found = [finding.number, finding.limit && `limit ${finding.limit}`, finding.whose, finding.tag].filter(Boolean);
  const numbers = found.length > 0 ? ` [${found.join('; ')}]` : '';
  const next = finding.cure?.sentence ?? finding.advice;
  return `- ${finding.word}: ${finding.title}. ${finding.sentence}${numbers}${next ? `\n  ${next}` : ''}`;
}
