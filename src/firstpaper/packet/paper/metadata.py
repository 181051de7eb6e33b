"""What a file says about itself (XMP)."""

from datetime import date
from html import escape
from typing import Any, NamedTuple

PRODUCER = "ReportLab"
"""The library that wrote the file. The file does not say which program it is from: on a shared computer a
list of recent files, or the window that shows it, would tell what its owner is about.
"""

_PACKET = """<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
 xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
 xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<pdfuaid:part>1</pdfuaid:part>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
<dc:description><rdf:Alt><rdf:li xml:lang="x-default">{subject}</rdf:li></rdf:Alt></dc:description>
<dc:language><rdf:Bag><rdf:li>{lang}</rdf:li></rdf:Bag></dc:language>
<xmp:CreateDate>{on}T00:00:00+00:00</xmp:CreateDate>
<xmp:ModifyDate>{on}T00:00:00+00:00</xmp:ModifyDate>
<pdf:Producer>{producer}</pdf:Producer>
</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>
"""


class Particulars(NamedTuple):
    """What the file says about itself; the day is the only date in it."""

    title: str
    subject: str
    lang: str
    on: date

    def xmp(self, document: Any) -> bytes:
        """The metadata packet (ISO 14289-1, clauses 5 and 7.1)."""
        return _PACKET.format(
            title=escape(self.title),
            subject=escape(self.subject),
            lang=escape(self.lang),
            on=self.on.isoformat(),
            producer=PRODUCER,
        ).encode()

    @property
    def pdf_date(self) -> str:
        """The day as a PDF date."""
        return f"D:{self.on:%Y%m%d}000000+00'00'"
