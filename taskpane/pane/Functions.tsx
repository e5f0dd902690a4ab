import { useLayoutEffect, useRef } from 'preact/hooks';
import { catalogue } from '../../src/catalogue.js';
import type { Host } from '../host/host.js';
import { FunctionCard } from './card/FunctionCard.js';
import { FunctionList, type ListState } from './list/FunctionList.js';

interface Props extends ListState {
  readonly host: Host;
  readonly chosen: string | undefined;
  readonly onChoose: (id: string | undefined) => void;
}

/** The list of functions, or the one that was chosen. Going back puts the focus where it was. */
export function Functions({ host, chosen, onChoose, ...list }: Props) {
  const calculation = catalogue.find(({ id }) => id === chosen);
  const left = useRef<string>(undefined);
  useLayoutEffect(() => {
    if (chosen !== undefined) left.current = chosen;
    else if (left.current !== undefined) document.getElementById(`pb-choose-${left.current}`)?.focus();
  }, [chosen]);
  if (calculation) {
    return (
      <FunctionCard key={calculation.id} calculation={calculation} host={host} onBack={() => onChoose(undefined)} />
    );
  }
  return <FunctionList {...list} onChoose={onChoose} />;
}
