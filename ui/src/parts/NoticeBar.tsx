import type { ComponentChildren } from 'preact';
import { session } from '../state/here.ts';
import { ProblemList } from './Waiting.tsx';

/** What came between the page and the build file, in a sentence, with the way on. */
export function NoticeBar() {
  const notice = session.notice.value;
  switch (notice?.kind) {
    case 'gone':
      return (
        <Bar action="Try again" go={session.load}>
          <p>
            The workbench does not answer, so the last change is not saved. Start it again in its terminal, then try
            again. What you typed is still here.
          </p>
        </Bar>
      );
    case 'failed':
      return (
        <Bar action="Try again" go={session.load}>
          <p>The workbench could not do that, and nothing was changed. It says: {notice.message}</p>
        </Bar>
      );
    case 'reloaded':
      return (
        <Bar action="Understood" go={session.dismiss}>
          <p>
            The build file changed somewhere else. The page now shows it as it is; your last change is not in it, so
            make it again if you still want it.
          </p>
        </Bar>
      );
    case 'unreadable':
      return (
        <Bar action="Try again" go={session.load}>
          <p>
            The build file was changed somewhere else and cannot be read any more. What you see is older. Put these
            right in a text editor, then try again.
          </p>
          <ProblemList problems={session.unreadable.value} />
        </Bar>
      );
    case undefined:
      return null;
  }
}

function Bar({ action, go, children }: { action: string; go: () => unknown; children: ComponentChildren }) {
  return (
    <div class="notice" role="alert">
      <div class="notice-said">{children}</div>
      <button type="button" onClick={() => void go()}>
        {action}
      </button>
    </div>
  );
}
