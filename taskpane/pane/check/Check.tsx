import { useEffect, useRef, useState } from 'preact/hooks';
import type { Host } from '../../host/host.js';
import type { RangeReference } from '../../host/reference.js';
import { sayTurned } from '../sayTurned.js';
import { sentenceFrom } from '../sentenceFrom.js';
import { useSetting } from '../setting.js';
import { Findings } from './Findings.js';
import type { Checked } from './finding.js';
import { listSheet } from './listSheet.js';

type Scope = 'sheet' | 'workbook';
const SCOPES: readonly Scope[] = ['sheet', 'workbook'];

/** Reads and checks every formula of the sheet or the workbook, and shows the list. */
export function Check({ host }: { readonly host: Host }) {
  const setting = useSetting();
  const { texts, formats } = setting;
  const { check } = texts;
  const [scope, setScope] = useState<Scope>('workbook');
  const [share, setShare] = useState<number>();
  const [said, setSaid] = useState('');
  const [failed, setFailed] = useState('');
  const [found, setFound] = useState<{ readonly checked: Checked; readonly sheet: string }>();
  const running = useRef<AbortController>(undefined);
  useEffect(() => () => running.current?.abort(), []);

  const run = async (before = '') => {
    if (running.current) return;
    const stop = new AbortController();
    running.current = stop;
    setFailed('');
    setShare(0);
    setSaid(check.reading);
    try {
      const { checkWorkbook } = await import('./checkWorkbook.js');
      // Reading is the smaller part of the work where the workbook is near, and the larger one in Excel.
      const { signal } = stop;
      const contents = await host.readAll({ signal, onProgress: (done) => setShare(done / 2) });
      const checked = await checkWorkbook(contents, {
        scope,
        writing: setting.writing,
        signal,
        onProgress: (done) => setShare(0.5 + done / 2),
      });
      setFound({ checked, sheet: scope === 'sheet' ? contents.active : '' });
      const done = check.done(formats.count(checked.formulas), formats.count(checked.findings.length));
      setSaid(before ? `${before} ${done}` : done);
    } catch (error) {
      setSaid(stop.signal.aborted ? check.cancelled : '');
      if (!stop.signal.aborted) setFailed(sentenceFrom(error, texts));
    }
    running.current = undefined;
    setShare(undefined);
  };
  const act = async (work: Promise<void>, done?: string) => {
    setFailed('');
    try {
      await work;
      if (done) setSaid(done);
    } catch (error) {
      setFailed(sentenceFrom(error, texts));
    }
  };
  const { turnIntoNumbers } = host;
  const turn =
    turnIntoNumbers &&
    ((place: RangeReference) => act(turnIntoNumbers(place).then((turned) => run(sayTurned(turned, setting)))));
  const { checked, sheet } = found ?? {};
  const list = checked && listSheet(checked.findings, setting);
  return (
    <div class="pb-check">
      <p>{check.intro}</p>
      <fieldset class="pb-scope">
        <legend>{check.scope}</legend>
        {SCOPES.map((one) => (
          <label key={one}>
            <input type="radio" name="pb-scope" checked={scope === one} onChange={() => setScope(one)} /> {check[one]}
          </label>
        ))}
      </fieldset>
      {share === undefined ? (
        <button type="button" class="pb-primary" onClick={() => void run()}>
          {check.start}
        </button>
      ) : (
        <button type="button" class="pb-primary" onClick={() => running.current?.abort()}>
          {check.cancel}
        </button>
      )}
      {share !== undefined && (
        <p>
          <progress aria-label={check.progressName} value={share} max={1} />{' '}
          {check.progress(formats.number(Math.round(share * 100) / 100, 'fraction'))}
        </p>
      )}
      <p role="status">{said}</p>
      <div role="alert">{failed && <p class="pb-refusal">{failed}</p>}</div>
      {checked?.formulas === 0 && <p>{check.noFormulas}</p>}
      {checked && checked.formulas > 0 && checked.findings.length === 0 && <p>{check.fine}</p>}
      {checked && checked.findings.length > 0 && list && (
        <>
          <Findings checked={checked} sheet={sheet ?? ''} onGo={(place) => void act(host.goTo(place))} onTurn={turn} />
          <button type="button" onClick={() => void act(host.insertSheet(list), check.listed)}>
            {check.toSheet}
          </button>
        </>
      )}
    </div>
  );
}
