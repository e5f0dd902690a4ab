import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Across, CellLook, Formatting, Lines } from '../grid/format.js';
import { KINDS, type Kind } from '../grid/numberPattern.js';
import type { OpenedWorkbook } from '../grid/opened.js';
import type { Tools } from '../grid/tools.js';
import { ChartChoice } from './chartChoice.js';
import { Icon } from './icons.js';
import type { Store } from './state.js';
import { StepButtons } from './stepButtons.js';
import { useWords } from './words.js';

/** Pale enough that black letters can be read on each. */
const FILLS = { yellow: '#fff2b3', green: '#d9efd5', blue: '#d6e8f7', red: '#f9d9d5', grey: '#e4e9e9' } as const;
const ACROSS = ['left', 'center', 'right'] as const satisfies readonly Across[];
const LINES = ['none', 'all', 'outside', 'bottom'] as const satisfies readonly Lines[];
const NOTHING: CellLook = {
  kind: 'general',
  thousands: false,
  bold: false,
  wrap: false,
  across: undefined,
  fill: undefined,
};

interface ButtonProps {
  readonly name: string;
  readonly pressed?: boolean;
  readonly disabled: boolean;
  readonly children: ComponentChildren;
  onClick(): void;
}

function Button({ name, pressed, disabled, children, onClick }: ButtonProps) {
  return (
    <button type="button" title={name} aria-label={name} aria-pressed={pressed} disabled={disabled} onClick={onClick}>
      {children}
    </button>
  );
}

interface ChoiceProps {
  readonly name: string;
  /** What is chosen; a choice without one is made anew each time. */
  readonly value?: string;
  readonly disabled: boolean;
  readonly options: readonly (readonly [value: string, name: string])[];
  onChoice(value: string): void;
}

function Choice({ name, value = '', disabled, options, onChoice }: ChoiceProps) {
  const chosen = ({ currentTarget }: { currentTarget: HTMLSelectElement }) => {
    onChoice(currentTarget.value);
    currentTarget.value = value;
  };
  return (
    <select title={name} aria-label={name} value={value} disabled={disabled} onChange={chosen}>
      {value === '' && <option value="">{name}</option>}
      {options.map(([one, text]) => (
        <option key={one} value={one}>
          {text}
        </option>
      ))}
    </select>
  );
}

interface PartProps {
  readonly format: Formatting | undefined;
  readonly look: CellLook;
  readonly disabled: boolean;
}

function NumberFormats({ format, look, disabled }: PartProps) {
  const { format: words } = useWords();
  return (
    <>
      <Choice
        name={words.kind}
        value={look.kind}
        disabled={disabled}
        options={KINDS.map((kind) => [kind, words.kinds[kind]])}
        onChoice={(kind) => format?.kind(kind as Kind)}
      />
      <Button
        name={words.thousands}
        pressed={look.thousands}
        disabled={disabled}
        onClick={() => format?.thousands(!look.thousands)}
      >
        <span data-sign="000" />
      </Button>
      <Button name={words.more} disabled={disabled} onClick={() => format?.decimals(1)}>
        <span data-sign=".0+" />
      </Button>
      <Button name={words.fewer} disabled={disabled} onClick={() => format?.decimals(-1)}>
        <span data-sign=".0−" />
      </Button>
    </>
  );
}

function Looks({ format, look, disabled }: PartProps) {
  const { format: words } = useWords();
  const colours = Object.entries(FILLS) as [keyof typeof FILLS, string][];
  return (
    <>
      <Button name={words.bold} pressed={look.bold} disabled={disabled} onClick={() => format?.bold(!look.bold)}>
        <span data-sign="B" />
      </Button>
      {ACROSS.map((across) => (
        <Button
          key={across}
          name={words[across]}
          pressed={look.across === across}
          disabled={disabled}
          onClick={() => format?.align(look.across === across ? undefined : across)}
        >
          <Icon of={across} />
        </Button>
      ))}
      <Button name={words.wrap} pressed={look.wrap} disabled={disabled} onClick={() => format?.wrap(!look.wrap)}>
        <Icon of="wrap" />
      </Button>
      <Choice
        name={words.lines}
        disabled={disabled}
        options={LINES.map((lines) => [lines, words.lineKinds[lines]])}
        onChoice={(lines) => format?.lines(lines as Lines)}
      />
      <Choice
        name={words.fill}
        disabled={disabled}
        options={[['none', words.fills.none], ...colours.map(([name]) => [name, words.fills[name]] as const)]}
        onChoice={(name) => format?.fill((FILLS as Readonly<Record<string, string>>)[name])}
      />
    </>
  );
}

/** What is done most with selected cells, for a hand on the mouse and for the Tab key. */
export function FormatBar({ workbook, ready, store }: { workbook?: OpenedWorkbook; ready: boolean; store: Store }) {
  const { format: words } = useWords();
  const [look, setLook] = useState(NOTHING);
  useEffect(() => workbook?.format.watch(setLook), [workbook]);
  const disabled = !ready || !workbook;
  const use = (work: (tools: Tools) => unknown) => async () => {
    try {
      const tools = await workbook?.tools();
      if (tools && work(tools) === false) store.tell(words.notSorted);
    } catch (cause) {
      console.error(cause);
      store.tell(words.notLoaded);
    }
  };
  return (
    <div class="workbook-format" role="toolbar" aria-label={words.heading}>
      <StepButtons steps={disabled ? undefined : workbook?.steps} />
      <NumberFormats format={workbook?.format} look={look} disabled={disabled} />
      <Looks format={workbook?.format} look={look} disabled={disabled} />
      <Button name={words.up} disabled={disabled} onClick={use((tools) => tools.sort(true))}>
        <Icon of="up" />
      </Button>
      <Button name={words.down} disabled={disabled} onClick={use((tools) => tools.sort(false))}>
        <Icon of="down" />
      </Button>
      <Button name={words.filter} disabled={disabled} onClick={use((tools) => tools.filter())}>
        <Icon of="filter" />
      </Button>
      <ChartChoice workbook={workbook} disabled={disabled} store={store} />
      <Button name={words.find} disabled={!workbook} onClick={use((tools) => tools.replace())}>
        <Icon of="find" />
      </Button>
    </div>
  );
}
