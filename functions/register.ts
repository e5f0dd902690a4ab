import type { Answers } from './answers.js';
import { bindAll, type WorksheetFunction } from './bind.js';

interface HostError {
  readonly code: string;
}

/** What the host's runtime offers, as far as it is used here. */
interface Runtime {
  readonly Error: new (code: string, message?: string) => HostError;
  associate(id: string, fn: WorksheetFunction): void;
}

declare const CustomFunctions: Runtime;
declare const Office: { onReady(callback: () => void): unknown } | undefined;

const hasRuntime = (): boolean => typeof CustomFunctions !== 'undefined';

/** The class exists only once the host has loaded, so it is looked up at the moment of need. */
const answers: Answers<HostError> = {
  refused: (message) => new CustomFunctions.Error('#VALUE!', message),
  none: (message) => new CustomFunctions.Error('#N/A', message),
  error: (code) => new CustomFunctions.Error(code),
  isError: (value): value is HostError => value instanceof CustomFunctions.Error,
};

function associate(): void {
  for (const [id, fn] of bindAll(answers)) CustomFunctions.associate(id, fn);
}

// In a page of the host the runtime may arrive after this script; in a plain browser it never does.
if (hasRuntime()) associate();
else if (typeof Office !== 'undefined') Office.onReady(() => hasRuntime() && associate());
