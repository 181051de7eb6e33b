"""One sheet with everything that the markup knows, several times over."""

LONG_WORD = "Wolfeschlegelsteinhausenbergerdorff" * 9
NAMES = "Nguyễn Thị Ánh, Łukasz Żółć, Zoë Ñandú, Ольга Іваненко, Ελένη Παππά, Đặng Quỳnh"

_ROWS = "".join(
    f"<tr><th>{n}a</th><td><tick marked/> Petitioner</td><td>Why so. {'Some more. ' * (n % 9)}</td></tr>"
    for n in range(1, 40)
)

SHEET = f"""
<h1>Petition worksheet</h1>
<p>Goes with <strong>FL-100</strong>, edition of <em>January 1, 2020</em>.<br/><small>Check the date.</small>
<strong><em>Both.</em></strong></p>
<div class="note"><p><strong>Good to know.</strong> You can change it.</p><ul><li>one</li></ul></div>
<h2>Item 1: Your legal relationship</h2>
<ul><li><tick marked></tick> We are married</li><li><tick/> We are domestic partners</li></ul>
<p><tick/> A paragraph that starts with a box and hangs, with as many words as two lines of text take.</p>
<h3>What to write</h3>
<ol><li>Your name.</li><li>{NAMES}<ul><li>nested</li><li>points<ol><li>deep</li></ol></li></ul></li>
<li><p>One paragraph.</p><p>Another.</p></li></ol>
<p>Case number: <line width="40"/> leave blank</p><p>Signature: <line></line></p>
<line/>
<hr/>
<div class="warning"><strong>Stop.</strong> If you are in danger, call 911.</div>
<table widths="12 28 60"><thead><tr><th>Item</th><th>Mark</th><th>Why</th></tr></thead>
<tbody>{_ROWS}<tr><td colspan="2">Long name</td><td>{LONG_WORD}</td></tr></tbody></table>
<pagebreak/>
<section class="keep"><h2>Money</h2>
<table><tr><th>What</th><th class="number">Amount</th></tr>
<tr><td>House</td><td class="number">$450,000</td></tr>
</table></section>
<table class="plain" widths="60 40"><tr><td>Petitioner<br/>Respondent</td>
<td>Case number: <line/></td></tr></table>
<!-- a remark for whoever edits the template -->
"""
