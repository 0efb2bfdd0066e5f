import { useEffect, useState } from 'preact/hooks';
import type { Page } from '../contract.ts';
import { StateMark } from './StateMark.tsx';

/** Repeats verdict and headline at the foot of the window while the cards are out of sight. For the eye only. */
export function SummaryStrip({ page }: { page: Page }) {
  const [away, setAway] = useState(false);

  useEffect(() => {
    const cards = document.getElementById('headline');
    if (!cards || !('IntersectionObserver' in window)) {
      return undefined;
    }
    const watch = new IntersectionObserver((entries) => setAway(entries.every((entry) => !entry.isIntersecting)));
    watch.observe(cards);
    return () => watch.disconnect();
  }, []);

  return away ? (
    <div class="strip" aria-hidden="true">
      <strong>
        <StateMark state={page.verdict.state} size={18} /> {page.verdict.word}
      </strong>
      {page.headline.map((card) => (
        <span key={card.key} class={`is-${card.state}`}>
          <StateMark state={card.state} size={13} />
          <small>{card.key}</small> {card.value}
        </span>
      ))}
    </div>
  ) : null;
}
