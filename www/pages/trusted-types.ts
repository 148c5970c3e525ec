interface Rules {
  readonly createScriptURL?: (address: string) => string;
  readonly createScript?: (text: string) => string;
}

interface Factory {
  createPolicy<R extends Rules>(name: string, rules: R): { readonly [Name in keyof R]: (text: string) => unknown };
}

/** The browser's trusted types, where it has them. */
export function trustedTypesOf(scope: typeof globalThis): Factory | undefined {
  return (scope as { trustedTypes?: Factory }).trustedTypes;
}
