// Chest, job and ticks, kept in this browser. A write that fails leaves what was kept before, and says so.
const shelf = "kept";
let opened;

function open() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open("leverage", 1);
    request.onupgradeneeded = () => request.result.createObjectStore(shelf);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  return opened;
}

/** What is kept under a name; null where nothing is, or where this browser keeps nothing. */
export async function kept(name) {
  try {
    const db = await open();
    return await new Promise((resolve, reject) => {
      const request = db.transaction(shelf).objectStore(shelf).get(name);
      request.onsuccess = () => resolve(request.result ?? null);
      request.onerror = () => reject(request.error);
    });
  } catch {
    return null;
  }
}

/** Keeps a value; returns a line to show where it could not be kept, else null. */
export async function keep(name, value) {
  try {
    const db = await open();
    await new Promise((resolve, reject) => {
      const transaction = db.transaction(shelf, "readwrite");
      transaction.objectStore(shelf).put(value, name);
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
      transaction.onerror = () => reject(transaction.error);
    });
    return null;
  } catch (problem) {
    return problem?.name === "QuotaExceededError"
      ? "This browser has no room left. Save it as a file; what was kept before is still there."
      : "This browser does not keep it. Save it as a file before you close the page.";
  }
}
