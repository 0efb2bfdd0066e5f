import { signal } from '@preact/signals';
import type { SheetList, SheetView } from '../sheetsContract.ts';
import { session, sheets } from '../state/here.ts';
import { StateMark } from './StateMark.tsx';

const paper = signal<'a4' | 'letter'>('a4');
const owner = signal('');
const maker = signal('');

/** Templates, cutting and setting sheets: a look at each, and its files for printer and machine. */
export function SheetsPanel() {
  const state = sheets.value;
  const shown = state.kind === 'there' ? state.there : state.before;
  return (
    <section id="sheets" aria-labelledby="sheets-title" aria-busy={state.kind === 'waiting'}>
      <h2 id="sheets-title">Sheets for the bench</h2>
      {state.kind === 'failed' && <p role="status">The sheets could not be drawn. They come again with the next change.</p>}
      {shown === null ? (
        state.kind === 'waiting' && <p class="later-wait">Sheets are being drawn.</p>
      ) : (
        <Sheets list={shown} />
      )}
    </section>
  );
}

function Sheets({ list }: { list: SheetList }) {
  if (list.sheets.length === 0) {
    return <p>{list.advice}</p>;
  }
  return (
    <>
      <p>{list.advice}</p>
      <div class="sheet-choices">
        <label>
          Paper
          <select value={paper.value} onChange={(event) => (paper.value = event.currentTarget.value === 'letter' ? 'letter' : 'a4')}>
            <option value="a4">A4</option>
            <option value="letter">Letter</option>
          </select>
        </label>
        <Name label="Owner in the title block" value={owner} />
        <Name label="Made by" value={maker} />
        <a class="sheet-file" href={address(list, `all-${paper.value}.zip`)} download={`sheets-${paper.value}.zip`}>
          All as one archive (ZIP)
        </a>
      </div>
      <ul class="sheet-cards plain">
        {list.sheets.map((sheet) => (
          <Card key={sheet.key} list={list} sheet={sheet} />
        ))}
      </ul>
    </>
  );
}

function Name({ label, value }: { label: string; value: typeof owner }) {
  return (
    <label>
      {label}
      <input type="text" maxLength={60} autoComplete="off" value={value.value} onChange={(event) => (value.value = event.currentTarget.value)} />
    </label>
  );
}

function Card({ list, sheet }: { list: SheetList; sheet: SheetView }) {
  const files = [
    { name: `${sheet.key}-${paper.value}.pdf`, kind: 'PDF' },
    { name: `${sheet.key}.svg`, kind: 'SVG' },
    { name: `${sheet.key}.dxf`, kind: 'DXF' },
  ];
  return (
    <li class={sheet.stamp === null ? 'sheet-card' : 'sheet-card is-stop'}>
      <h3>{sheet.title}</h3>
      <p class="soft">
        {sheet.use}, {sheet.size} at true scale
      </p>
      {sheet.stamp !== null && (
        <p class="sheet-stamp">
          <StateMark state="stop" /> {sheet.stamp}
        </p>
      )}
      <img src={address(list, `${sheet.key}.svg`)} alt={`${sheet.title}, made smaller; its numbers are in the files`} loading="lazy" />
      <p class="sheet-files">
        {files.map(({ name, kind }) => (
          <a key={kind} class="sheet-file" href={address(list, name)} download={name}>
            {kind}
            <span class="unseen"> of {sheet.title}</span>
          </a>
        ))}
      </p>
    </li>
  );
}

/** Anew for each state of the file, so that no old drawing is shown from memory. */
function address(list: SheetList, name: string): string {
  const query = new URLSearchParams({ units: session.units.value, state: String(list.revision) });
  if (owner.value !== '') {
    query.set('owner', owner.value);
  }
  if (maker.value !== '') {
    query.set('by', maker.value);
  }
  return `sheets/${name}?${query.toString()}`;
}
