"""Comes before all plugins of pytest, for nbval brings in what takes a second in every process that runs tests.

`jsonschema`, which reads the form of a notebook, makes 38 grammars of addresses in any script (RFC 3987) as soon as it
is imported, if the package for them is there. A notebook holds none; without the package it does without.
"""

import sys

sys.modules.setdefault("rfc3987_syntax", None)  # to import it is an ImportError, which jsonschema expects
