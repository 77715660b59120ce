import fc from 'fast-check';

// A property that fails has noticed the fault: no need to look for the smallest case.
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
