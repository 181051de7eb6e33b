"""FL-105, the declaration under the UCCJEA: where the children have lived. One module for each part.

FL-105(A) is its added page, with room for one more child. All modules read standing facts. The item
numbers of the sheet of 2025 are not known, so every answer is found by its words.
"""

FORM = "FL-105"
ADDED_PAGE = "FL-105(A)"
LAW = "Fam. Code 3429(a)"
HAS_ROOM_FOR = 2
"""How many children the form itself has a block for, as copies of 2009 show it."""
