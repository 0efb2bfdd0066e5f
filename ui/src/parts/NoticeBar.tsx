import { session } from '../state/here.ts';

/** What happened to the connection, in a sentence, with the way on. */
export function NoticeBar() {
  switch (session.notice.value) {
    case 'gone':
      return (
        <div class="notice" role="alert">
          <p>
            The workbench does not answer, so the last change is not saved. Start it again in its terminal, then try
            again. What you typed is still here.
          </p>
          <button type="button" onClick={() => void session.load()}>
            Try again
          </button>
        </div>
      );
    case 'reloaded':
      return (
        <div class="notice" role="alert">
          <p>
            The build file changed somewhere else. The page now shows it as it is; your last change is not in it, so
            make it again if you still want it.
          </p>
          <button type="button" onClick={session.dismiss}>
            Understood
          </button>
        </div>
      );
    case null:
      return null;
  }
}
