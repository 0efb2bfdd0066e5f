/** This browser tab's session, drafts and choices. */
import { computed, signal } from '@preact/signals';
import type { FieldView, LoadCase, Page, Point } from '../contract.ts';
import type { Scene } from '../sceneContract.ts';
import type { SheetList } from '../sheetsContract.ts';
import type { Spread } from '../spreadContract.ts';
import type { FollowedStops } from '../stopsContract.ts';
import { choosePoint } from '../logic/choosePoint.ts';
import { withStops } from '../logic/withStops.ts';
import { createApi } from './api.ts';
import { createDrafts } from './drafts.ts';
import { createLater } from './later.ts';
import { createSession } from './session.ts';
import { rememberedUnits, rememberUnits } from './units.ts';

export const session = createSession(
  createApi((url, init) => fetch(url, init)),
  rememberedUnits(),
);

export const drafts = createDrafts(session);

/** What every ± does together; comes after the page. */
export const spread = createLater<Spread>(session, (url, init) => fetch(url, init), 'api/spread');

/** What can be printed and cut from; comes after the page. */
export const sheets = createLater<SheetList>(session, (url, init) => fetch(url, init), 'api/sheets');

/** What stands where in the car; comes after the page. */
export const scene = createLater<Scene>(session, (url, init) => fetch(url, init), 'api/scene');

/** The stops over time; come after the page. */
export const stops = createLater<FollowedStops>(session, (url, init) => fetch(url, init), 'api/stops');

/** The page with what came after it. */
export const wholePage = computed<Page | null>(() => {
  const page = session.page.value;
  return page === null ? null : withStops(page, stops.value.kind === 'there' ? stops.value.there : null);
});

session.units.subscribe(rememberUnits);

/** Index of the chosen load case and the wanted deceleration; null until the builder moves the slider. */
export const caseIndex = signal(0);
export const wantedDeceleration = signal<number | null>(null);

/** Key of the working that is open. */
export const openWorking = signal<string | null>(null);

export const loadCase = computed<LoadCase | null>(() => {
  const cases = session.page.value?.load_cases ?? [];
  return cases[caseIndex.value] ?? cases[0] ?? null;
});

export const pointIndex = computed(() => choosePoint(loadCase.value?.points ?? [], wantedDeceleration.value));

export const point = computed<Point | null>(() => loadCase.value?.points[pointIndex.value] ?? null);

const fields = computed(() => {
  const all = session.page.value?.inputs.flatMap((section) => section.fields) ?? [];
  return new Map<string, FieldView>(all.map((field) => [field.path, field]));
});

/** The input at a path, if the page has it. */
export function fieldAt(path: string): FieldView | null {
  return fields.value.get(path) ?? null;
}

/** The input at a path, or the first one below it: "front" leads to the front brake's first input. */
export function fieldUnder(path: string): FieldView | null {
  return fieldAt(path) ?? [...fields.value.values()].find((field) => field.path.startsWith(`${path}.`)) ?? null;
}
