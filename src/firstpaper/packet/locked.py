"""A finished packet locked with a passphrase, to hand it over by e-mail or on a stick.

AES-256 as PDF 2.0 has it (ISO 32000-2, 7.6), with every permission granted: whoever has the passphrase may
read, print and copy, and a screen reader may read aloud (ISO 14289-1, 7.16). The tags, the language and the
outline stay. Guessing is far cheaper than for a sealed case file, so the passphrase should be a strong one.
"""

import unicodedata
from io import BytesIO


def locked(pdf: bytes, passphrase: str) -> bytes:
    """The same PDF, readable only with the passphrase. The bytes differ at every call."""
    from pypdf import PdfWriter  # noqa: PLC0415  (slow to import)

    writer = PdfWriter(clone_from=BytesIO(pdf))
    writer.encrypt(unicodedata.normalize("NFKC", passphrase), algorithm="AES-256")
    out = BytesIO()
    writer.write(out)
    return out.getvalue()
