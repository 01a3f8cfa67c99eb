import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';

const kinds: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.woff2': 'font/woff2',
};

export interface Served {
  /** Address of the root, with its closing slash. */
  readonly url: string;
  close(): Promise<void>;
}

/** The file that an address names inside `root`, or undefined; a folder is its index.html. */
function fileFor(root: string, path: string): string | undefined {
  const file = normalize(join(root, path));
  if (!file.startsWith(normalize(root) + sep)) return undefined;
  const page = path.endsWith('/') ? join(file, 'index.html') : file;
  return statSync(page, { throwIfNoEntry: false })?.isFile() === true ? page : undefined;
}

/** Serves the built site as a plain static host would: no rewriting, a folder without its slash is moved on. */
export async function serve(root = 'dist'): Promise<Served> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname);
    const file = fileFor(root, path === '/' ? '/index.html' : path);
    if (file === undefined) {
      const moved = fileFor(root, `${path}/`) !== undefined;
      response.writeHead(moved ? 301 : 404, moved ? { location: `${path}/` } : {}).end();
      return;
    }
    response.writeHead(200, {
      'content-type': kinds[extname(file)] ?? 'application/octet-stream',
      'cache-control': 'no-cache',
      'x-content-type-options': 'nosniff',
    });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/`,
    close: () =>
      new Promise((closed) => {
        server.closeAllConnections();
        server.close(() => closed());
      }),
  };
}
