// A press on a reminder brings the app to the front, or opens it.
self.addEventListener('notificationclick', (event) => {
  event.notification.close();
  event.waitUntil(
    self.clients
      .matchAll({ type: 'window', includeUncontrolled: true })
      .then(([page]) => (page ? page.focus() : self.clients.openWindow('/'))),
  );
});
