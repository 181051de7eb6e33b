"""What each sheet says: one module a kind of sheet, each making `Sheet`s from a `Brief`."""
