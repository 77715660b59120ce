// danfojs-node reads CSV and JSON from a web address as `request.get(url)` or `request({ url, method, headers })`: a readable
// stream of the body that first emits `response`.
const { PassThrough, Readable } = require('node:stream');

function request(options) {
  const { url, ...init } = typeof options === 'string' ? { url: options } : options;
  const body = new PassThrough();
  fetch(url, init).then(
    (response) => {
      body.emit('response', { statusCode: response.status, statusMessage: response.statusText });
      if (response.body === null) body.end();
      else
        Readable.fromWeb(response.body)
          .on('error', (error) => body.destroy(error))
          .pipe(body);
    },
    (error) => body.destroy(error),
  );
  return body;
}

module.exports = Object.assign(request, { get: request });
