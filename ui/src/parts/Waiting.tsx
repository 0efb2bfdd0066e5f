import type { Problem } from '../contract.ts';
import { problemText } from '../state/apply.ts';
import { session } from '../state/here.ts';

export function Loading() {
  return (
    <main class="waiting">
      <h1>Brakewright</h1>
      <p role="status">Reading the build file.</p>
    </main>
  );
}

export function ServerGone() {
  return (
    <main class="waiting">
      <h1>Brakewright</h1>
      <p role="alert">The workbench does not answer. Start it again in its terminal, then try again.</p>
      <Retry />
    </main>
  );
}

/** The build file itself has problems, so there is nothing to compute. */
export function Unreadable({ problems }: { problems: Problem[] }) {
  return (
    <main class="waiting">
      <h1>The build file needs mending first</h1>
      <p role="alert">Open it in a text editor, put these right and try again. Nothing has been changed in it.</p>
      <ul>
        {problems.map((problem, i) => (
          <li key={i}>
            Line {problem.line}, column {problem.column}
            {problem.path && ` (${problem.path})`}: {problemText(problem)}
          </li>
        ))}
      </ul>
      <Retry />
    </main>
  );
}

function Retry() {
  return (
    <button type="button" class="strong" onClick={() => void session.load()}>
      Try again
    </button>
  );
}
