import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';

/** Starts a server on this machine only, and says in one sentence when the port is taken. Gives the port in use. */
export function listen(server: Server, port: number, host = 'localhost'): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', (failure: NodeJS.ErrnoException) => {
      const taken = `Port ${port} is in use by another program: stop that one, then try again.`;
      reject(failure.code === 'EADDRINUSE' ? new Error(taken) : failure);
    });
    server.listen(port, host, () => resolve((server.address() as AddressInfo).port));
  });
}
