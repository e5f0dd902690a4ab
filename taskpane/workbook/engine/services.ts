import type { Injector, Univer } from './core.js';

/** The engine's services. It offers no public way to them; this is the one place that takes the private one. */
export const servicesOf = (univer: Univer): Injector => univer.__getInjector();
