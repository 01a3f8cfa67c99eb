/** `npm start`: builds the site with the demo works and serves it until stopped. */
import { build, preview } from 'astro';

await build({ logLevel: 'warn' });
const server = await preview({ server: { port: Number(process.env['PORT'] ?? 4321) }, logLevel: 'error' });
console.log(`trayhand is at http://localhost:${server.port}/ (stop it with Ctrl-C)`);
await server.closed();
