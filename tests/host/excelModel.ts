import { createContext, runInContext } from 'node:vm';
import { type Bridge, platformFile, surroundings } from './surroundings.js';

const SCRIPT = 'excel-web-16.00.js';
const platform = platformFile(SCRIPT);
/** Actions that ask for properties; all others set, call or look something up. */
const QUERY = 2;

/** One request to Excel in a browser. */
export interface Sent {
  /** Of the body, in UTF-8. */
  readonly bytes: number;
  readonly actions: number;
  readonly objects: number;
}

interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly ObjectPathId: number;
}
interface ObjectPath {
  readonly Name: string;
}
interface Request {
  readonly id: number;
  readonly message: {
    readonly body: { readonly Actions: readonly Action[]; readonly ObjectPaths: Readonly<Record<number, ObjectPath>> };
  };
}

/**
 * Excel's own object model, as it comes with office.js, before a host that takes every request and has one empty sheet.
 * What is asked of it is written down: how long each request is, how many actions it has and of how many objects.
 */
export function excelModel(): { readonly Excel: typeof Excel; readonly sent: readonly Sent[] } {
  const sent: Sent[] = [];
  const bridge: Bridge = {
    onMessageFromHost() {},
    sendMessageToHost(text) {
      const { id, message } = JSON.parse(text) as Request;
      const { Actions: actions, ObjectPaths: paths } = message.body;
      const bytes = Buffer.byteLength(JSON.stringify(message.body));
      sent.push({ bytes, actions: actions.length, objects: Object.keys(paths).length });
      const answerTo = ({ ActionType: type, ObjectPathId: path }: Action) =>
        type === QUERY && paths[path]?.Name === 'Worksheets' ? { _Items: [{ Id: '{1}', Name: 'Sheet1' }] } : null;
      const body = { Results: actions.map((action) => ({ ActionId: action.Id, Value: answerTo(action) })) };
      const response = { id, type: 1, message: { statusCode: 200, headers: {}, body: JSON.stringify(body) } };
      setImmediate(() => bridge.onMessageFromHost(JSON.stringify(response)));
    },
  };
  const scope = createContext(surroundings(SCRIPT, bridge));
  scope.window = scope;
  runInContext(platform, scope, { filename: SCRIPT });
  return { Excel: scope.Excel as typeof Excel, sent };
}
