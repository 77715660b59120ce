// The bundler takes style sheets as modules.
declare module '*.css';
