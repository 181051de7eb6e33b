"""What can be wrong with a file that somebody brings."""

from firstpaper.errors import UserError


class NotAPdf(UserError):
    """{name} is no PDF that can be read, so nothing was done with it.

    It may be damaged, or only part of it was downloaded. Get the form again from the court's own site.
    """

    code = "blank_not_a_pdf"


class TooMuch(UserError):
    """{name} is far bigger than a court form, so it was not opened.

    Check that it is the form itself, and get it again from the court's own site.
    """

    code = "blank_too_big"


class NoFields(UserError):
    """{name} has no fields to fill in, so it cannot be filled by a program.

    It may be a form that somebody printed or scanned. Get the fillable form from the court's own site, or
    copy the worksheet onto paper by hand.
    """

    code = "blank_no_fields"


class OnlyXfa(UserError):
    """{name} keeps its fields in a way that only one kind of program can read, so it was not used.

    Open it in that program and print it to a new PDF. You can then fill it in by hand, with the worksheet.
    """

    code = "blank_only_xfa"


class Locked(UserError):
    """{name} is locked with a password, so it was not opened.

    A form of the court needs none. Get it again from the court's own site.
    """

    code = "blank_locked"


class FillingForbidden(UserError):
    """{name} says that it may not be filled in or changed, so it was left alone.

    Get the fillable form from the court's own site, or copy the worksheet onto paper by hand.
    """

    code = "blank_filling_forbidden"


class AlreadySigned(UserError):
    """{name} has been signed, so it was left alone. Changing it would break the signature.

    Bring a blank form that nobody has signed.
    """

    code = "blank_signed"


class MapNotReadable(UserError):
    """{name} is no map of a form, or it was damaged, so it was not used.

    Make a new one from the blank form, like this: firstpaper blank FL-100.pdf
    """

    code = "map_not_readable"


class MapOfAnotherBlank(UserError):
    """{name} was made for another file than the blank form beside it. Not even one byte may differ.

    Make a map of this blank: firstpaper blank, with the name of the PDF. What fits is carried over for you to
    confirm.
    """

    code = "map_of_another_blank"


class FormNotRecognised(UserError):
    """{name} does not say which form it is, or it is one that we do not fill in. Nothing was written.

    If you are sure what it is, say so: --form FL-100. Every field must then be confirmed by hand.
    """

    code = "form_not_recognised"
