import type { Section } from '../contract.ts';
import { Field } from './Field.tsx';

/** Everything the build file can hold, section by section. */
export function Inputs({ sections }: { sections: Section[] }) {
  return (
    <section class="inputs" id="inputs" tabIndex={-1} aria-labelledby="inputs-title">
      <h2 id="inputs-title">Inputs</h2>
      <p>
        Type a value as it stands on the part or the tape, with its unit: <code>7/8 in</code>, <code>97.5 in</code>,{' '}
        <code>0.40 ± 0.04</code>. Enter keeps it, Escape brings the old one back, an empty box takes it out.
      </p>
      {sections.map((section, i) => (
        <details key={section.title} class="fold" open={i === 0}>
          <summary>
            <h3>{section.title}</h3> <span class="fold-note">{summaryOf(section)}</span>
          </summary>
          <div class="fields">
            {section.fields.map((field) => (
              <Field key={field.path} view={field} />
            ))}
          </div>
        </details>
      ))}
    </section>
  );
}

function summaryOf(section: Section): string {
  const assumed = section.fields.filter((field) => field.written === '' && field.assumed !== '').length;
  const inputs = `${section.fields.length} ${section.fields.length === 1 ? 'input' : 'inputs'}`;
  return assumed === 0 ? inputs : `${inputs}, ${assumed} assumed`;
}
