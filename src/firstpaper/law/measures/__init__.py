"""Computing that several rules and forms share: pure, typed, and without findings.

A measure answers "how much" or "which day". What that means for the filer is for the rules to say.
"""
