/** The development stand-in, reached through real Request and Response objects; can be cut off. */
import { createStandIn } from '../dev/standIn.ts';

export function standInServer() {
  const respond = createStandIn();
  const requests: { url: string; body: string }[] = [];
  const line = { cut: false, delay: [] as Promise<void>[] };

  async function send(url: string, init?: RequestInit): Promise<Response> {
    const body = String(init?.body ?? '');
    requests.push({ url, body });
    if (line.cut) {
      throw new TypeError('connection refused');
    }
    await line.delay.shift();
    const reply = respond(`http://localhost/${url}`, body);
    return new Response(JSON.stringify(reply.body), { status: reply.status });
  }

  return { send, requests, line, /** Another page's change. */ elsewhere: respond };
}
