import { unpacked } from '../engine/packed.js';
import { trustedTypesOf } from './trusted-types.js';

/**
 * The first script of the one file: unpacks the program and runs it. The policy lets nothing run but what has the
 * program's hash, so that whatever was changed on its way is not run at all.
 */
async function load(): Promise<void> {
  const bytes = await unpacked(document.querySelector('#program')?.textContent ?? '');
  const program = new TextDecoder().decode(bytes);
  const policy = trustedTypesOf(globalThis)?.createPolicy('tagstrip', { createScript: (text) => text });
  const script = document.createElement('script');
  // The type says string; under trusted types only the policy's own object will do.
  script.text = (policy === undefined ? program : policy.createScript(program)) as string;
  document.body.append(script);
}

void load();
