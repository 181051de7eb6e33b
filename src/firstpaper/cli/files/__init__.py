"""Files that commands read and write: case files and their passphrases, files of facts, packets, blanks."""
