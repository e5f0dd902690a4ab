/** Runs something and tells how long it kept the processor busy, in milliseconds: a busy machine does not count against it. */
export function processorTime<T>(run: () => T): { readonly result: T; readonly took: number } {
  const before = process.cpuUsage();
  const result = run();
  const { user, system } = process.cpuUsage(before);
  return { result, took: (user + system) / 1000 };
}
