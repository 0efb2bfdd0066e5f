import { useState } from 'preact/hooks';
import type { FieldView } from '../contract.ts';
import { startOf } from '../logic/stepNumber.ts';
import { apply } from '../state/apply.ts';
import { fieldAt } from '../state/here.ts';
import { QUICK, quickEdit, type Quick } from './quickSteps.ts';

/** One click, one step, one answer. */
export function QuickControls() {
  const shown = QUICK.map((quick) => ({ quick, field: fieldAt(quick.path) })).filter(({ field }) => usable(field));
  return shown.length === 0 ? null : (
    <div class="quick" role="group" aria-label="Try a change">
      <h3>Try a change</h3>
      <div class="quick-grid">
        {shown.map(({ quick, field }) => (
          <Stepper key={quick.path} quick={quick} field={field as FieldView} />
        ))}
      </div>
    </div>
  );
}

function usable(field: FieldView | null): boolean {
  return field !== null && startOf(field.written, field.assumed) !== '';
}

function Stepper({ quick, field }: { quick: Quick; field: FieldView }) {
  const [refusals, setRefusals] = useState<string[]>([]);
  const now = startOf(field.written, field.assumed);

  async function turn(direction: 1 | -1) {
    setRefusals(await apply((page) => quickEdit(page, quick, direction)));
  }

  return (
    <div class="stepper" role="group" aria-label={quick.name}>
      <span class="stepper-name">{quick.name}</span>
      <div class="stepper-row">
        <StepButton sign="−" says={`${quick.name}, ${quick.less}`} can={quick.step(now, -1) !== null} go={() => turn(-1)} />
        <output>
          {now}
          {field.written === '' && <small> assumed</small>}
        </output>
        <StepButton sign="+" says={`${quick.name}, ${quick.more}`} can={quick.step(now, 1) !== null} go={() => turn(1)} />
      </div>
      <span class="stepper-ways" aria-hidden="true">
        <span>− {quick.less}</span>
        <span>+ {quick.more}</span>
      </span>
      {refusals.length > 0 && (
        <p class="refusal" role="alert">
          {refusals.join(' ')}
        </p>
      )}
    </div>
  );
}

function StepButton({ sign, says, can, go }: { sign: string; says: string; can: boolean; go: () => unknown }) {
  return (
    <button type="button" aria-label={says} aria-disabled={!can} onClick={() => void go()}>
      {sign}
    </button>
  );
}
