"""What can go wrong with a case file. In every one of these the file on disk is left as it was."""

from firstpaper.errors import UserError


class CaseFileMissing(UserError):
    """There is no case file at {path}.

    Check the name and the folder. To begin a new case, type:

    firstpaper ask {path}
    """

    code = "case_file_missing"


class NotACaseFile(UserError):
    """The file {path} is not a Firstpaper case file.

    It was left alone, because writing to it would destroy what is in it. Choose another name for your
    case file.
    """

    code = "not_a_case_file"


class CaseFileUnreadable(UserError):
    """The case file {path} could not be opened: {reason}.

    Nothing was changed. Check that the disk is connected and that this account may open the file.
    """

    code = "case_file_unreadable"


class CaseFileDamaged(UserError):
    """The case file {path} is damaged: {reason}.

    Nothing was changed or deleted, so what is left in the file can still be read. If you have a copy
    made before, use the copy. If not, keep this file and begin a new one under another name. A text
    editor opens the old file, so you can see your answers while you type them again.
    """

    code = "case_file_damaged"


class CopyKept(UserError):
    """The case file {path} cannot be used: {reason}.

    Nothing is lost yet. A copy of it, saved {when}, is whole. To go on from that copy, type:

    firstpaper undo {path}

    If there is still a file by that name, it is kept beside it under the name {aside}.
    """

    code = "copy_kept"


class CaseFileTooNew(UserError):
    """The case file {path} was saved by a newer Firstpaper (version {saved_by}).

    This is version {version} and it cannot read that file safely, so it left the file alone. Install
    the newer version and try again.
    """

    code = "case_file_too_new"


class CaseFileSealed(UserError):
    """The case file {path} is locked with a passphrase, and there is nobody here to ask for it.

    Type the command yourself in a terminal window. For a script there is the option --passphrase-from.
    """

    code = "case_file_sealed"


class WrongPassphrase(UserError):
    """That passphrase does not open {path}. Nothing was changed.

    Look at the Caps Lock key and the language of the keyboard, and try again. Without the passphrase
    nobody can open the file, and that includes the people who make Firstpaper.
    """

    code = "wrong_passphrase"


class SealBroken(UserError):
    """The passphrase is right, but {path} was changed by something other than Firstpaper.

    This does not happen by accident. Somebody may have put another file in its place. Nothing was changed. Do
    not use this file: go back to a copy of your own, and think about who can reach this computer.
    """

    code = "seal_broken"


class SealTooNew(UserError):
    """The file {path} was locked by a newer Firstpaper, in a way that this version does not know.

    It was left alone. Install the newer version and try again.
    """

    code = "seal_too_new"


class SealingUnavailable(UserError):
    """This computer cannot lock or open a file with a passphrase.

    It has too little memory free, or its copy of the library that does it is too old. Close other
    programs and try again. If that does not help, install Firstpaper again.
    """

    code = "sealing_unavailable"


class NotSaved(UserError):
    """{path} could not be saved. What was saved before is safe and unchanged."""

    code = "not_saved"


class FolderMissing(NotSaved):
    """The folder {folder} is not there.

    A file needs a folder to be saved in. If it is on a USB stick or a shared drive, connect it
    again. If the name is wrong, check it and try again.
    """

    code = "folder_missing"


class FolderReadOnly(NotSaved):
    """This account may not save in the folder {folder}.

    What was already saved is safe and unchanged. Choose a folder of your own, such as Documents, or
    ask the person who looks after this computer.
    """

    code = "folder_read_only"


class DiskFull(NotSaved):
    """There is no room left to save {path}.

    What was saved before is safe and unchanged, but the last change is not in it. Free some space, or
    save on another disk, and give that answer again.
    """

    code = "disk_full"


class SaveFailed(NotSaved):
    """{path} could not be saved: {reason}.

    What was saved before is safe and unchanged, but the last change is not in it. Check the disk, then
    give that answer again.
    """

    code = "save_failed"


class CaseFileInUse(UserError):
    """The case file {path} is open in another window or on another computer (process {process} on {host}).

    Two people writing at once would lose answers, so this window stopped and nothing was changed.
    Close the other one first. If you are sure that nothing else has it open, delete the file {lock}
    and try again.
    """

    code = "case_file_in_use"


class StrangeLock(UserError):
    """Something that is not ours lies where Firstpaper marks a case file as open: {lock}

    It is a link, a text, or a file of another account. It was left alone, because writing to it could
    destroy something. Nothing was changed. Look at what it is. If nobody needs it, delete it and try again.
    If you did not put it there, somebody else can write to this folder: keep your case file in a folder of
    your own.
    """

    code = "strange_lock"


class CopiesStay(UserError):
    """The copies of older saves in {folder} could not be removed, so {path} was left as it was.

    They would have stayed there as they are, beside a file with another lock. Close the programs that have
    them open, make sure that this account may write to that folder, or delete the folder yourself, and try
    again.
    """

    code = "copies_stay"


class ChangedMeanwhile(UserError):
    """{path} was changed or removed by another program while you were at work. Nothing was overwritten.

    What you had here, with your last answer, is kept beside it as {mine}. Look at both. To go on with the
    other one, type the command again. To go on with yours, type:

    firstpaper ask {mine}
    """

    code = "changed_meanwhile"


class LockLost(UserError):
    """Another window took over the case file {path}, so this one stopped before saving.

    What was saved before is safe, but the last answer is not in it. Close the other window, start again
    here and give that answer again.
    """

    code = "lock_lost"


class NotOurOutput(UserError):
    """The file {path} is already there, and it is not a file that this command makes.

    It was left alone, because writing to it would destroy what is in it. Choose another name.
    """

    code = "not_our_output"
