"""FL-160, the property declaration: one copy for separate property, another for community property.

Never one sheet for both. Which columns are filled in depends on the use: behind a petition the sheet only
says what there is, and for separate property also whose it is.
"""

FORM = "FL-160"
CONTINUATION = "FL-161"
SEPARATE, COMMUNITY = "separate property", "community property"
