import { useEffect, useRef } from 'preact/hooks';
import type { Working, WorkingStep } from '../contract.ts';
import { openWorking } from '../state/here.ts';

/** A result opened to formula, numbers, result and source; a result a load case has is opened for each of them. */
export function WorkingDialog({ workings }: { workings: Working[] }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const shown = workings.filter((one) => one.key === openWorking.value);
  const open = shown.length > 0;

  useEffect(() => {
    if (open && !dialog.current?.open) {
      dialog.current?.showModal();
    }
    if (!open) {
      dialog.current?.close();
    }
  }, [open]);

  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="working-title" onClose={() => (openWorking.value = null)}>
      <h2 id="working-title">{shown.map((one) => `${one.title}: ${one.result}`).join('; ')}</h2>
      <div class="scroll" tabIndex={0} role="region" aria-label="Steps of the working">
        {shown.map((one, i) => (
          <ol key={i} class="steps" aria-label={`${one.title}: ${one.result}`}>
            {one.steps.map((step, s) => (
              <Step key={s} step={step} />
            ))}
          </ol>
        ))}
      </div>
      <button type="button" onClick={() => dialog.current?.close()}>
        Close
      </button>
    </dialog>
  );
}

function Step({ step }: { step: WorkingStep }) {
  return (
    <li>
      <h3>{step.name}</h3>
      <p class="formula">{step.formula}</p>
      {step.with_numbers && <p class="formula">= {step.with_numbers}</p>}
      <p class="formula">
        <strong>= {step.result}</strong>
      </p>
      {step.source && <p class="source">Source: {step.source}</p>}
    </li>
  );
}
