// Where each role works.
export const HOME = { mixer: '/bench', checker: '/bench', formulator: '/office', manager: '/office' } as const;
