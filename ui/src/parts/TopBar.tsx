import type { Page, UnitSystem } from '../contract.ts';
import { session } from '../state/here.ts';
import { CopyReport } from './CopyReport.tsx';

export function TopBar({ page }: { page: Page }) {
  return (
    <header class="topbar">
      <p class="brand">
        <span class="brand-name">Brakewright</span>
        <span class="file">
          {page.file}
          {page.demo && ' · demo car, a copy: change what you like'}
        </span>
      </p>
      <div class="tools" role="group" aria-label="Page tools">
        <StepButton label="Undo" keys="Control+Z" can={page.can_undo} go={session.undo} />
        <StepButton label="Redo" keys="Control+Shift+Z" can={page.can_redo} go={session.redo} />
        <UnitsSwitch />
        <CopyReport page={page} />
      </div>
    </header>
  );
}

/** Stays focusable when there is nothing to step to, so that the focus is not lost. */
function StepButton({ label, keys, can, go }: { label: string; keys: string; can: boolean; go: () => unknown }) {
  return (
    <button type="button" aria-disabled={!can} aria-keyshortcuts={keys} onClick={() => void go()}>
      {label}
    </button>
  );
}

function UnitsSwitch() {
  return (
    <label class="units">
      <span>Units</span>
      <select
        value={session.units.value}
        onChange={(event) => void session.showIn(event.currentTarget.value as UnitSystem)}
      >
        <option value="metric">metric</option>
        <option value="us">US</option>
      </select>
    </label>
  );
}
