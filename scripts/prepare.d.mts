/** Path of a Chromium of this machine. */
export declare const chromium: () => string | undefined
export function buildWhenStale(): Promise<void>
