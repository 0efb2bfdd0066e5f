import type { Finding } from '../contract.ts';
import { numbered } from '../logic/numbered.ts';
import { worstFirst } from '../logic/severity.ts';
import { FindingCard } from './FindingCard.tsx';

export const FINDINGS_TITLE = 'findings-title';

/** Worst first; what is fine stands folded at the end. */
export function Findings({ findings }: { findings: Finding[] }) {
  const ordered = worstFirst(findings);
  const open = ordered.filter((finding) => finding.state !== 'fine');
  const fine = ordered.filter((finding) => finding.state === 'fine');
  return (
    <section class="findings" aria-labelledby={FINDINGS_TITLE}>
      <h2 id={FINDINGS_TITLE} tabIndex={-1}>
        Findings, worst first
      </h2>
      {open.length === 0 && <p>Nothing to stop or caution about.</p>}
      <List findings={open} />
      {fine.length > 0 && (
        <details class="fold">
          <summary>{fine.length} fine</summary>
          <List findings={fine} />
        </details>
      )}
    </section>
  );
}

function List({ findings }: { findings: Finding[] }) {
  return (
    <ul class="plain">
      {numbered(findings, ({ key }) => key).map(({ name, item: finding }) => (
        <li key={name}>
          <FindingCard finding={finding} />
        </li>
      ))}
    </ul>
  );
}
