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

/** Nothing came to show: the server is gone, or says why it cannot. */
export function ServerGone() {
  const notice = session.notice.value;
  const said = notice?.kind === 'failed' ? `It says: ${notice.message}` : 'Start it again in its terminal, then try again.';
  return (
    <main class="waiting">
      <h1>Brakewright</h1>
      <p role="alert">The workbench does not give the page. {said}</p>
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
      <ProblemList problems={problems} />
      <Retry />
    </main>
  );
}

/** Problems of the build file, each with its place in it. */
export function ProblemList({ problems }: { problems: Problem[] }) {
  return (
    <ul class="problems">
      {problems.map((problem, i) => (
        <li key={i}>
          Line {problem.line}, column {problem.column}
          {problem.path && ` (${problem.path})`}: {problemText(problem)}
        </li>
      ))}
    </ul>
  );
}

function Retry() {
  return (
    <button type="button" class="strong" onClick={() => void session.load()}>
      Try again
    </button>
  );
}
