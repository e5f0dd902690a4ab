import type { Bridge } from './surroundings.js';

/** How a parameter may be handed over: error cells as the runtime's own class, and values with a type of their own. */
const ALLOW_ERRORS = 4;
const ALLOW_RICH_DATA = 8;
const INVOCATION = [1, 1000, ''] as const;

type Answer = readonly [id: number, done: boolean, value: unknown, errorCode?: number];
interface Action {
  readonly Id: number;
  readonly Name: string;
  readonly ArgumentInfo?: { readonly Arguments: readonly [readonly Answer[]] };
}
interface Request {
  readonly id: number;
  readonly type: number;
  readonly message: { readonly body: { readonly Actions: readonly Action[] } };
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;
const isOldError = (value: unknown) => isObject(value) && 'code' in value;

/** Whether a cell anywhere in the parameters is one of a kind. */
const some = (value: unknown, is: (cell: unknown) => boolean): boolean =>
  Array.isArray(value) ? value.some((one) => some(one, is)) : is(value);

/** Values with a type of their own cross as text. */
const rich = (value: unknown): unknown =>
  Array.isArray(value) ? value.map(rich) : isObject(value) ? { value: JSON.stringify(value) } : value;

/**
 * The host's end of the bridge between a host and the custom-functions runtime. Everything crosses as JSON, so what JSON
 * cannot hold does not arrive. An error that the runtime itself answers, such as for an unknown name, is thrown.
 */
export function bridgeTo() {
  const waiting = new Map<number, (answer: Answer) => void>();
  let last = 0;
  const bridge: Bridge = {
    onMessageFromHost: () => {
      throw new Error('The runtime has not put in its handler.');
    },
    sendMessageToHost(text) {
      const { id, message } = JSON.parse(text) as Request;
      const { Actions: actions } = message.body;
      for (const { Name: name, ArgumentInfo: info } of actions) {
        if (name !== 'SetInvocationArrayResults') continue;
        for (const answer of info?.Arguments[0] ?? []) waiting.get(answer[0])?.(answer);
      }
      const body = { Results: actions.map(({ Id }) => ({ ActionId: Id, Value: null })) };
      const response = { id, type: 1, message: { statusCode: 200, headers: {}, body: JSON.stringify(body) } };
      setImmediate(() => bridge.onMessageFromHost(JSON.stringify(response)));
    },
  };

  /** Has one function called as a cell of a sheet calls it. */
  async function invoke(name: string, parameters: readonly unknown[]): Promise<unknown> {
    last += 1;
    const id = last;
    const answered = new Promise<Answer>((resolve) => waiting.set(id, resolve));
    const isRich = !some(parameters, isOldError) && some(parameters, isObject);
    const flags = isRich ? ALLOW_RICH_DATA : ALLOW_ERRORS;
    const message = [id, name, isRich ? rich(parameters) : parameters, 'Sheet1!A1', flags];
    const entries = [[...INVOCATION, JSON.stringify(message), id]];
    bridge.onMessageFromHost(JSON.stringify({ type: 3, message: { entries } }));
    const [, done, value, code] = await answered;
    waiting.delete(id);
    if (!done) throw new Error(`The runtime answers ${name} with its error ${code}: ${JSON.stringify(value)}`);
    return value;
  }

  return { bridge, invoke };
}
