const INSTALLED_WITHIN_MS = 20_000;

/**
 * Loads the page anew from the hub, which speaks another version than it. What the device keeps is
 * of the old one: it fetches the new files first, or, where it finds none, forgets what it keeps.
 */
export async function renew(reload = () => location.reload()): Promise<void> {
  const found = await navigator.serviceWorker?.getRegistration();
  if (found) await goOver(found).catch(() => forget(found));
  reload();
}

async function goOver(found: ServiceWorkerRegistration): Promise<void> {
  await found.update();
  const next = found.installing ?? found.waiting;
  if (!next) return forget(found);
  await reaches(next, 'installed');
  next.postMessage('take over');
  await reaches(next, 'activated');
}

function reaches(worker: ServiceWorker, state: 'installed' | 'activated'): Promise<void> {
  const isThere = () => worker.state === state || worker.state === 'activated';
  return new Promise((resolve, reject) => {
    const look = () => {
      if (isThere()) resolve();
      else if (worker.state === 'redundant') reject(new Error('the newer files did not come'));
    };
    worker.addEventListener('statechange', look);
    setTimeout(() => reject(new Error('the newer files are late')), INSTALLED_WITHIN_MS);
    look();
  });
}

async function forget(found: ServiceWorkerRegistration): Promise<void> {
  await found.unregister();
  for (const name of await caches.keys()) await caches.delete(name);
}
