"""Runs the suites of this folder and closes with a count."""
import pathlib
import sys
import unittest

here = pathlib.Path(__file__).parent
sys.path.insert(0, str(here))
names = sys.argv[1:] or sorted(p.stem for p in here.glob("test_*.py"))
suite = unittest.TestSuite()
for name in names:
    for test in unittest.defaultTestLoader.loadTestsFromName(name):
        suite.addTest(test)
result = unittest.TextTestRunner(verbosity=2).run(suite)
# A test with several failing parts counts once; a skipped one hides a part and counts as failed.
bad = {str(getattr(case, "test_case", case)) for case, _ in result.failures + result.errors + result.skipped}
print(f"{max(0, result.testsRun - len(bad))} passed, {len(bad)} failed")
sys.exit(1 if bad else 0)
