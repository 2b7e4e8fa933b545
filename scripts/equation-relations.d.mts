/** Equations that gave the numbers of findings, by finding. */
export declare const equationRelations: () => Promise<Record<string, string[]>>
