"""A laid-out picture as SVG that stands in the page itself, for a screen."""

from html import escape

from firstpaper.packet.pictures.shapes import FONT_SIZE, Area, Drawing, Label, Shape, Stroke


def svg(drawing: Drawing) -> str:
    """The picture, read out as its words. Words are set to the measured width, so that they never meet."""
    shapes = "".join(map(_shape, drawing.shapes))
    return (
        f'<svg class="picture" role="img" aria-label="{escape(drawing.alt)}" '
        f'viewBox="0 0 {drawing.width:.1f} {drawing.height:.1f}" font-size="{FONT_SIZE:g}">{shapes}</svg>'
    )


def _shape(shape: Shape) -> str:
    match shape:
        case Stroke(x1, y1, x2, y2, weight, grey):
            level = round(grey * 255)
            return (
                f'<path d="M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}" '
                f'stroke="rgb({level},{level},{level})" stroke-width="{weight:g}"/>'
            )
        case Area(corners, black):
            path = "L".join(f"{x:.1f} {y:.1f}" for x, y in corners)
            return f'<path d="M{path}Z" fill="{"#000" if black else "#fff"}" stroke="#000"/>'
        case Label(x, y, text, width, bold):
            heavy = ' font-weight="600"' if bold else ""
            return (
                f'<text x="{x:.1f}" y="{y:.1f}" textLength="{width:.1f}" lengthAdjust="spacingAndGlyphs"'
                f"{heavy}>{escape(text)}</text>"
            )
