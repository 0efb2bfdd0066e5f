import type { Card } from '../contract.ts';
import { STATE_WORDS } from '../logic/words.ts';
import { StateMark } from './StateMark.tsx';
import { WorkingButton } from './WorkingButton.tsx';

/** Effort, travel, balance and margin: one block, never parted; the clutch with them where there is one. */
export function Headline({ cards }: { cards: Card[] }) {
  return (
    <section class="headline" id="headline" aria-label="Effort, travel, balance and margin">
      {cards.map((card) => (
        <article key={card.key} class={`card is-${card.state}`}>
          <h2>{card.label}</h2>
          <p class="card-value">{card.value}</p>
          <p class="card-state">
            <StateMark state={card.state} size={16} /> {STATE_WORDS[card.state]}
          </p>
          <p class="card-note">{card.note}</p>
          <WorkingButton working={card.working} of={card.label} />
        </article>
      ))}
    </section>
  );
}
