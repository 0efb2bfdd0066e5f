import { useEffect, useRef, useState } from 'preact/hooks';
import type { Page } from '../contract.ts';

/** Reads the new verdict and headline aloud after a change, and nothing on the first page. */
export function Announcer({ page }: { page: Page }) {
  const [said, say] = useState('');
  const heard = useRef(page.revision);

  useEffect(() => {
    if (heard.current !== page.revision) {
      heard.current = page.revision;
      say(`${page.verdict.word}. ${page.headline.map((card) => `${card.label} ${card.value}`).join(', ')}.`);
    }
  }, [page]);

  return (
    <p class="unseen" role="status">
      {said}
    </p>
  );
}
