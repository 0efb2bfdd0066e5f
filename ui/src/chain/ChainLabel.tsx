import { jumpTo } from '../state/jump.ts';
import { BOTTOM, HEIGHT, TOP, WIDTH, type Label, type Place } from './places.ts';

interface Props {
  label: Label;
  lines: string[];
  /** Input the part leads to. */
  input: string | null;
  /** Told when the reader points at the words, so that the drawing can answer. */
  point: (on: boolean) => void;
}

/** The words of one part: beside it on a wide screen, in a numbered list on a narrow one. */
export function ChainLabel({ label, lines, input, point }: Props) {
  const words = (
    <>
      <strong>
        <span class="chain-number">{label.number}</span>
        {label.name}
      </strong>
      {lines.map((line, i) => (
        <span key={i}>{line}</span>
      ))}
    </>
  );
  const side = label.part.split('_')[0];
  return (
    <li class={`chain-label of-${side}`} style={styleOf(label.place)}>
      {input === null ? (
        <div class="chain-words">{words}</div>
      ) : (
        <button
          type="button"
          class="chain-words"
          onClick={() => jumpTo(input)}
          onMouseEnter={() => point(true)}
          onMouseLeave={() => point(false)}
          onFocus={() => point(true)}
          onBlur={() => point(false)}
        >
          {words}
          <span class="unseen">Go to the input</span>
        </button>
      )}
    </li>
  );
}

function styleOf({ left, width, top, bottom }: Place) {
  const vertical =
    top === undefined
      ? { bottom: `${(100 * (BOTTOM - (bottom ?? 0))) / HEIGHT}%` }
      : { top: `${(100 * (top - TOP)) / HEIGHT}%` };
  return { left: `${(100 * left) / WIDTH}%`, width: `${(100 * width) / WIDTH}%`, ...vertical };
}
