/**
 * Stands in for the server while working on the page: same addresses, same answers, no law. A change writes the text
 * and leaves the sample's numbers alone, but for the effort, which counts up so that one sees that something came back.
 */
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Connect, Plugin } from 'vite';
import type { EditRequest, Page, Problem, StepRequest, UnitSystem } from '../src/contract.ts';
import { splitText } from '../src/logic/origin.ts';
import { samplePage } from './samplePage.ts';
import { sampleScene } from './sampleScene.ts';
import { sampleSheets } from './sampleSheets.ts';
import { sampleSpread } from './sampleSpread.ts';

export interface Reply {
  status: number;
  body: unknown;
}

export function createStandIn() {
  const past: Page[] = [];
  const future: Page[] = [];
  let page = samplePage('metric');
  let revision = 1;

  const shown = (units: UnitSystem): Reply => ({
    status: 200,
    body: { ...page, revision, units, can_undo: past.length > 0, can_redo: future.length > 0 },
  });

  function edit(request: EditRequest): Reply {
    const next = structuredClone(page);
    const problems = request.edits.flatMap(({ path, text }) => write(next, path, text));
    if (problems.length > 0) {
      return { status: 422, body: { problems } };
    }
    past.push(page);
    future.length = 0;
    page = next;
    revision++;
    const effort = page.headline[0];
    if (effort) {
      effort.value = `${394 + revision} N`;
    }
    return shown(request.units);
  }

  function step(from: Page[], to: Page[], request: StepRequest): Reply {
    const other = from.pop();
    if (other) {
      to.push(page);
      page = other;
      revision++;
    }
    return shown(request.units);
  }

  return (url: string, body: string): Reply => {
    const { pathname, searchParams } = new URL(url, 'http://localhost/');
    if (pathname === '/api/page') {
      return shown(searchParams.get('units') === 'us' ? 'us' : 'metric');
    }
    if (pathname === '/api/sheets') {
      return { status: 200, body: { ...sampleSheets, revision } };
    }
    if (pathname === '/api/scene') {
      return { status: 200, body: { ...sampleScene, revision } };
    }
    if (pathname === '/api/stops') {
      const { verdict, findings } = page;
      return { status: 200, body: { revision, verdict, findings, stops_over_time: null } };
    }
    if (pathname === '/api/spread') {
      return { status: 200, body: { ...sampleSpread, revision } };
    }
    const request = JSON.parse(body) as EditRequest;
    if (request.revision !== revision) {
      return { status: 409, body: { problems: [] } };
    }
    switch (pathname) {
      case '/api/edit':
        return edit(request);
      case '/api/undo':
        return step(past, future, request);
      case '/api/redo':
        return step(future, past, request);
      default:
        return { status: 404, body: { problems: [] } };
    }
  };
}

function write(page: Page, path: string, text: string): Problem[] {
  const field = page.inputs.flatMap((section) => section.fields).find((one) => one.path === path);
  const problem = (message: string, allowed: string) => [{ path, value: text, message, allowed, line: 12, column: 9 }];
  if (!field) {
    return problem(`There is no key ${path}.`, '');
  }
  const { value, origin } = splitText(text);
  if (value === '' && field.required) {
    return problem(`${field.label} cannot be left out.`, field.allowed);
  }
  if (field.kind === 'quantity' && value !== '' && !/^[+-]?\d/.test(value)) {
    return problem(`"${value}" is not a number with a unit.`, field.allowed);
  }
  field.written = value;
  field.origin = value === '' ? '' : origin || 'origin not said';
  field.also = '';
  return [];
}

/** The policy the real server sends. */
export const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; font-src 'self'; " +
  "form-action 'none'; frame-ancestors 'none'; base-uri 'none'";

/** Vite plugin: serves the stand-in to `npm run dev` and, with the policy, to `vite preview`. */
export function standIn(): Plugin {
  return {
    name: 'stand-in-for-the-server',
    configureServer: (server) => void server.middlewares.use(answer(createStandIn())),
    configurePreviewServer: (server) => {
      server.middlewares.use((_request, response, next) => {
        response.setHeader('Content-Security-Policy', POLICY);
        next();
      });
      server.middlewares.use(answer(createStandIn()));
    },
  };
}

function answer(respond: (url: string, body: string) => Reply): Connect.NextHandleFunction {
  return (request: IncomingMessage, response: ServerResponse, next) => {
    if (!request.url?.startsWith('/api/')) {
      next();
      return;
    }
    const url = request.url;
    let body = '';
    request.on('data', (chunk: Buffer) => (body += chunk.toString()));
    request.on('end', () => {
      const reply = respond(url, body);
      response.writeHead(reply.status, { 'Content-Type': 'application/json' });
      response.end(JSON.stringify(reply.body));
    });
  };
}
