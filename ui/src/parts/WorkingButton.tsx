import { openWorking, session } from '../state/here.ts';

/** Opens the working with this key; nothing where there is none. */
export function WorkingButton({ working, of }: { working: string | null; of: string }) {
  const found = session.page.value?.workings.some((one) => one.key === working) ?? false;
  if (!found) {
    return null;
  }
  return (
    <button type="button" class="quiet" onClick={() => (openWorking.value = working)}>
      Show the working<span class="unseen"> of {of}</span>
    </button>
  );
}
