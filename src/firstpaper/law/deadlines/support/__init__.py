"""Days on which it hangs from when on support is paid."""
