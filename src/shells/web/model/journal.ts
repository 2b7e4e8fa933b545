import type { History } from './history.ts'

/** What is remembered of a plan between two visits: its steps, and the text that they led to. */
export interface Remembered {
  readonly id: string
  readonly text: string
  readonly history: History
}

const STORE = 'histories'

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open('rootfall', 1)
    request.onupgradeneeded = () => request.result.createObjectStore(STORE, { keyPath: 'id' })
    request.onsuccess = () => resolve(request.result)
    request.onerror = () => reject(request.error)
  })
}

function asked<T>(mode: IDBTransactionMode, ask: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  return opened().then(
    (base) =>
      new Promise<T>((resolve, reject) => {
        const deal = base.transaction(STORE, mode)
        const request = ask(deal.objectStore(STORE))
        deal.oncomplete = () => {
          base.close()
          resolve(request.result)
        }
        deal.onerror = () => reject(deal.error)
      }),
  )
}

/** Keeps the steps of a plan; a browser that keeps nothing loses only the steps, never the plan. */
export const remember = (r: Remembered): Promise<void> =>
  asked('readwrite', (store) => store.put(r)).then(
    () => undefined,
    () => undefined,
  )

export const recalled = (id: string): Promise<Remembered | null> =>
  asked('readonly', (store) => store.get(id) as IDBRequest<Remembered | undefined>).then(
    (r) => r ?? null,
    () => null,
  )
