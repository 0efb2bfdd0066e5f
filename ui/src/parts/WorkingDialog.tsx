import { useEffect, useRef } from 'preact/hooks';
import type { Working, WorkingStep } from '../contract.ts';
import { openWorking } from '../state/here.ts';

/** One result opened to formula, numbers, result and source. */
export function WorkingDialog({ workings }: { workings: Working[] }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const working = workings.find((one) => one.key === openWorking.value) ?? null;
  const open = working !== null;

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
      <h2 id="working-title">
        {working?.title}: {working?.result}
      </h2>
      <div class="scroll" tabIndex={0} role="region" aria-label="Steps of the working">
        <ol class="steps">{working?.steps.map((step, i) => <Step key={i} step={step} />)}</ol>
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
