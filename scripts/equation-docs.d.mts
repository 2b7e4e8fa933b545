/** The written form of every equation, by its name. */
export declare const equationTable: () => Record<string, Readonly<Record<string, string>>>
/** Puts the table and the relations beside the page. */
export declare const equationDocs: () => import('vite').Plugin
