// serve.mjs FOLDER PORT: serves until it is stopped; takes a free port where that one is in use.
import { serveFolder } from './static-server.mjs';

const [folder, port] = process.argv.slice(2);
const { address } = await serveFolder(folder, { port: Number(port) }).catch((fault) => {
  if (fault.code !== 'EADDRINUSE') throw fault;
  return serveFolder(folder);
});
console.log(`\nTagstrip stands at ${address} until you press Ctrl-C.`);
