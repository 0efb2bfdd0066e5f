import { useState } from 'preact/hooks';
import type { Cure, Finding } from '../contract.ts';
import { workingKey } from '../logic/workingKey.ts';
import { apply } from '../state/apply.ts';
import { fieldUnder, session } from '../state/here.ts';
import { jumpTo } from '../state/jump.ts';
import { FINDINGS_TITLE } from './Findings.tsx';
import { StateMark } from './StateMark.tsx';
import { WorkingButton } from './WorkingButton.tsx';

export function FindingCard({ finding }: { finding: Finding }) {
  return (
    <article class={`finding is-${finding.state}`}>
      <h3>
        <StateMark state={finding.state} />
        <span class="finding-word">{finding.word}:</span> {finding.title}
      </h3>
      <p>{finding.sentence}</p>
      <Numbers finding={finding} />
      {finding.cure && <CureOffer cure={finding.cure} title={finding.title} />}
      {finding.advice && <p class="advice">{finding.advice}</p>}
      <div class="finding-links">
        <WorkingButton working={workingKey(finding, session.page.value?.workings ?? [])} of={finding.title} />
        {finding.inputs.map((path) => (
          <InputLink key={path} path={path} />
        ))}
      </div>
    </article>
  );
}

function Numbers({ finding }: { finding: Finding }) {
  const pairs: [string, string | null][] = [
    ['Found', finding.number],
    ['Limit', finding.limit],
    ['Whose limit', finding.whose],
    ['How sure', finding.tag],
  ];
  const known = pairs.filter(([, text]) => text !== null && text !== '');
  return known.length === 0 ? null : (
    <dl class="numbers">
      {known.map(([name, text]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}

function CureOffer({ cure, title }: { cure: Cure; title: string }) {
  const [refusals, setRefusals] = useState<string[]>([]);

  async function attempt() {
    setRefusals(await apply(() => cure.edits));
    // The finding may be gone with its button: leave the reader at the list, not at the top of the page.
    requestAnimationFrame(() => {
      if (document.activeElement === document.body) {
        document.getElementById(FINDINGS_TITLE)?.focus();
      }
    });
  }

  return (
    <div class="cure">
      <p>
        <strong>Smallest cure:</strong> {cure.sentence}
      </p>
      {cure.edits.length > 0 && (
        <button type="button" class="strong" onClick={() => void attempt()}>
          Try this change<span class="unseen"> against: {title}</span>
        </button>
      )}
      {refusals.length > 0 && (
        <p class="refusal" role="alert">
          {refusals.join(' ')}
        </p>
      )}
    </div>
  );
}

function InputLink({ path }: { path: string }) {
  const field = fieldUnder(path);
  return field === null ? null : (
    <button type="button" class="quiet" onClick={() => jumpTo(path)}>
      Input: {field.label}
    </button>
  );
}
