import type { Verdict as VerdictData } from '../contract.ts';
import { StateMark } from './StateMark.tsx';

export function Verdict({ verdict, name, story }: { verdict: VerdictData; name: string; story: string | null }) {
  return (
    <section class={`verdict is-${verdict.state}`} aria-labelledby="car-name">
      <div class="verdict-car">
        <h1 id="car-name">{name}</h1>
        {story && (
          <details class="story">
            <summary>Its story</summary>
            <p>{story}</p>
          </details>
        )}
      </div>
      <div class="verdict-said">
        <p class="verdict-line">
          <StateMark state={verdict.state} size={34} />
          <strong class="verdict-word">{verdict.word}.</strong> <span>{verdict.sentence}</span>
        </p>
        <Counts counts={verdict.counts} />
      </div>
    </section>
  );
}

function Counts({ counts }: { counts: VerdictData['counts'] }) {
  return (
    <ul class="counts" aria-label="Findings by state">
      <li>
        <StateMark state="stop" size={16} /> {counts.stop} stop
      </li>
      <li>
        <StateMark state="caution" size={16} /> {counts.caution} caution
      </li>
      <li>
        <StateMark state="cannot_tell" size={16} /> {counts.cannot_tell} cannot tell
      </li>
      <li>
        <StateMark state="fine" size={16} /> {counts.fine} fine
      </li>
    </ul>
  );
}
