import fc from 'fast-check';

// One seed for every run, so that a change is judged by itself and not by its luck. To look further:
// FAST_CHECK_SEED=$RANDOM npm test
fc.configureGlobal({ seed: Number(process.env['FAST_CHECK_SEED'] ?? 20261125) });
